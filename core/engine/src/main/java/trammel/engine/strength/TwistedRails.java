package trammel.engine.strength;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;

/**
 * Two alike rails twisted by what is welded to their sides, between the frame's own crossmembers
 * ahead and behind, which do not let them turn but let them warp.
 *
 * <p>A rail is a chain: stretches that are closed by a plate, or stations where something is welded
 * on, turn as one piece and hold the section from warping; what lies open between them is twisted.
 * A closed channel is some hundred times stiffer than an open one, so it is taken as rigid. New
 * crossmembers bend as the rails lean and so tie them together. Turns and torques are positive
 * where the inner side of a rail goes up, on either side.
 */
public final class TwistedRails {
  /** What is shorter than this between two stretches is no stretch of its own (mm). */
  private static final double LEAST_MM = 1;

  /**
   * A piece of a rail that turns as one.
   *
   * @param left true for the left rail
   * @param rearMm its rear end along the rail (mm)
   * @param frontMm its front end (mm), not behind the rear one
   */
  public record Stretch(boolean left, double rearMm, double frontMm) {
    /** A station where something is welded on. */
    public static Stretch at(boolean left, double atMm) {
      return new Stretch(left, atMm, atMm);
    }
  }

  /**
   * An open piece of rail between two others.
   *
   * @param left true for the left rail
   * @param rearMm its rear end (mm)
   * @param frontMm its front end (mm)
   * @param bothHeld whether neither end can warp
   */
  public record Span(boolean left, double rearMm, double frontMm, boolean bothHeld) {
    double lengthMm() {
      return frontMm - rearMm;
    }
  }

  /**
   * A torque on a rail.
   *
   * @param left true for the left rail
   * @param atMm where (mm)
   * @param torqueNmm inner side up positive (Nmm)
   */
  public record Torque(boolean left, double atMm, double torqueNmm) {}

  /**
   * An upright push on a crossmember.
   *
   * @param tie which one
   * @param fromLeftMm its distance from the left end (mm)
   * @param upN the push, up positive (N)
   */
  public record Push(int tie, double fromLeftMm, double upN) {}

  /**
   * What rails and crossmembers bear.
   *
   * @param spanNmm torque along each of {@link #spans} (Nmm), either way
   * @param spanMPa stress in each of them (MPa)
   * @param tieEndNmm greatest moment at an end of each crossmember (Nmm)
   * @param tieMostNmm greatest moment anywhere in it (Nmm)
   * @param turnRad greatest turn of a rail (rad)
   */
  public record Borne(
      double[] spanNmm,
      double[] spanMPa,
      double[] tieEndNmm,
      double[] tieMostNmm,
      double turnRad) {}

  private final TwistedSection section;
  private final List<RailTie> ties;
  private final List<Stretch> nodes = new ArrayList<>();
  private final List<Span> spans = new ArrayList<>();
  private final List<int[]> ends = new ArrayList<>();
  private final int[][] tied;
  private final int[] unknown;
  private final int free;
  private final Optional<DecompositionSolver> solver;
  private final double innerArmMm;

  /**
   * @param section of both rails
   * @param flangeMm width of a rail (mm): where crossmembers meet its inner face
   * @param bayRearMm where the frame's own crossmember behind stands (mm)
   * @param bayFrontMm where that ahead stands (mm)
   * @param stretches what turns as one piece, in any order; such as overlap become one
   * @param ties crossmembers, each at a station of both rails
   */
  public TwistedRails(
      TwistedSection section,
      double flangeMm,
      double bayRearMm,
      double bayFrontMm,
      List<Stretch> stretches,
      List<RailTie> ties) {
    this.section = section;
    this.ties = List.copyOf(ties);
    innerArmMm = flangeMm + section.shearCentreOutMm();
    List<Stretch> all = new ArrayList<>(stretches);
    for (RailTie tie : ties) {
      all.add(Stretch.at(true, tie.atMm()));
      all.add(Stretch.at(false, tie.atMm()));
    }
    for (boolean left : new boolean[] {true, false}) {
      chain(merged(all, left), left, bayRearMm, bayFrontMm);
    }
    tied = new int[ties.size()][];
    for (int i = 0; i < tied.length; i++) {
      double atMm = ties.get(i).atMm();
      tied[i] = new int[] {node(true, atMm), node(false, atMm)};
    }
    unknown = new int[nodes.size()];
    int turning = 0;
    for (int i = 0; i < unknown.length; i++) {
      Stretch node = nodes.get(i);
      unknown[i] = node.rearMm() > bayRearMm && node.frontMm() < bayFrontMm ? turning++ : -1;
    }
    free = turning;
    solver = solver();
  }

  private static List<Stretch> merged(List<Stretch> all, boolean left) {
    List<Stretch> sorted =
        all.stream()
            .filter(one -> one.left() == left)
            .sorted(Comparator.comparingDouble(Stretch::rearMm))
            .toList();
    List<Stretch> merged = new ArrayList<>();
    for (Stretch next : sorted) {
      int last = merged.size() - 1;
      if (last >= 0 && next.rearMm() < merged.get(last).frontMm() + LEAST_MM) {
        Stretch before = merged.get(last);
        double frontMm = Math.max(before.frontMm(), next.frontMm());
        merged.set(last, new Stretch(left, before.rearMm(), frontMm));
      } else {
        merged.add(next);
      }
    }
    return merged;
  }

  private void chain(List<Stretch> chain, boolean left, double bayRearMm, double bayFrontMm) {
    int before = -1;
    double fromMm = bayRearMm;
    for (Stretch node : chain) {
      int here = nodes.size();
      nodes.add(node);
      addSpan(before, here, new Span(left, fromMm, node.rearMm(), before >= 0));
      before = here;
      fromMm = node.frontMm();
    }
    if (before >= 0) {
      addSpan(before, -1, new Span(left, fromMm, bayFrontMm, false));
    }
  }

  private void addSpan(int rear, int front, Span span) {
    if (span.lengthMm() > 0) {
      spans.add(span);
      ends.add(new int[] {rear, front});
    }
  }

  private int node(boolean left, double atMm) {
    int nearest = -1;
    double leastMm = Double.POSITIVE_INFINITY;
    for (int i = 0; i < nodes.size(); i++) {
      Stretch node = nodes.get(i);
      double offMm = Math.max(0, Math.max(node.rearMm() - atMm, atMm - node.frontMm()));
      if (node.left() == left && offMm < leastMm) {
        leastMm = offMm;
        nearest = i;
      }
    }
    return nearest;
  }

  /** The open pieces, those of the left rail first, from the rear forward. */
  public List<Span> spans() {
    return List.copyOf(spans);
  }

  private double rate(int span) {
    Span open = spans.get(span);
    double lengthMm = Math.max(LEAST_MM, open.lengthMm());
    return 1 / section.turnPerNmm(lengthMm, open.bothHeld());
  }

  /** Solves for the turns of all nodes that can turn; empty where none can. */
  private Optional<DecompositionSolver> solver() {
    if (free == 0) {
      return Optional.empty();
    }
    double[][] stiffness = new double[free][free];
    for (int i = 0; i < spans.size(); i++) {
      couple(stiffness, ends.get(i)[0], ends.get(i)[1], rate(i), rate(i));
    }
    for (int i = 0; i < tied.length; i++) {
      double leaning = ties.get(i).leaningNmm();
      double swaying = ties.get(i).swayingNmm();
      couple(stiffness, tied[i][0], tied[i][1], (swaying + leaning) / 2, (swaying - leaning) / 2);
    }
    return Optional.of(
        new CholeskyDecomposition(new Array2DRowRealMatrix(stiffness, false)).getSolver());
  }

  private void couple(double[][] stiffness, int one, int other, double own, double between) {
    int a = one < 0 ? -1 : unknown[one];
    int b = other < 0 ? -1 : unknown[other];
    if (a >= 0) {
      stiffness[a][a] += own;
    }
    if (b >= 0) {
      stiffness[b][b] += own;
    }
    if (a >= 0 && b >= 0) {
      stiffness[a][b] -= between;
      stiffness[b][a] -= between;
    }
  }

  /** What all bear under torques on the rails and pushes on the crossmembers. */
  public Borne under(List<Torque> torques, List<Push> pushes) {
    double[] load = new double[free];
    for (Torque torque : torques) {
      add(load, node(torque.left(), torque.atMm()), torque.torqueNmm());
    }
    double[][] slopes = new double[ties.size()][2];
    for (Push push : pushes) {
      RailTie tie = ties.get(push.tie());
      double fromMm = within(push.fromLeftMm(), tie.spanMm());
      double rightShare = fromMm / tie.spanMm();
      slopes[push.tie()][0] += push.upN() * tie.slopePerN(fromMm);
      slopes[push.tie()][1] += push.upN() * tie.slopePerN(tie.spanMm() - fromMm);
      add(load, tied[push.tie()][0], push.upN() * (1 - rightShare) * innerArmMm);
      add(load, tied[push.tie()][1], push.upN() * rightShare * innerArmMm);
    }
    for (int i = 0; i < tied.length; i++) {
      add(load, tied[i][0], endNmm(ties.get(i), slopes[i][0], slopes[i][1]));
      add(load, tied[i][1], endNmm(ties.get(i), slopes[i][1], slopes[i][0]));
    }
    return borne(solved(load), slopes, pushes);
  }

  private static double within(double fromMm, double spanMm) {
    return Math.max(0, Math.min(spanMm, fromMm));
  }

  private void add(double[] load, int node, double torqueNmm) {
    if (node >= 0 && unknown[node] >= 0) {
      load[unknown[node]] += torqueNmm;
    }
  }

  /** Moment that a crossmember whose ends are turned so puts at the first of them. */
  private static double endNmm(RailTie tie, double hereRad, double thereRad) {
    double own = (tie.swayingNmm() + tie.leaningNmm()) / 2;
    double between = (tie.swayingNmm() - tie.leaningNmm()) / 2;
    return own * hereRad - between * thereRad;
  }

  private double[] solved(double[] load) {
    return solver.map(one -> one.solve(new ArrayRealVector(load, false)).toArray()).orElse(load);
  }

  private double turn(double[] turns, int node) {
    return node < 0 || unknown[node] < 0 ? 0 : turns[unknown[node]];
  }

  private Borne borne(double[] turns, double[][] slopes, List<Push> pushes) {
    double[] spanNmm = new double[spans.size()];
    double[] spanMPa = new double[spans.size()];
    for (int i = 0; i < spanNmm.length; i++) {
      double apart = turn(turns, ends.get(i)[1]) - turn(turns, ends.get(i)[0]);
      spanNmm[i] = Math.abs(apart) * rate(i);
      Span span = spans.get(i);
      double lengthMm = Math.max(LEAST_MM, span.lengthMm());
      spanMPa[i] = section.stressMPa(spanNmm[i], lengthMm, span.bothHeld());
    }
    double[] tieEndNmm = new double[ties.size()];
    double[] tieMostNmm = new double[ties.size()];
    for (int i = 0; i < tieEndNmm.length; i++) {
      double leftRad = slopes[i][0] - turn(turns, tied[i][0]);
      double rightRad = slopes[i][1] - turn(turns, tied[i][1]);
      double left = endNmm(ties.get(i), leftRad, rightRad);
      double right = endNmm(ties.get(i), rightRad, leftRad);
      tieEndNmm[i] = Math.max(Math.abs(left), Math.abs(right));
      tieMostNmm[i] = Math.max(tieEndNmm[i], underPushes(i, left, right, pushes));
    }
    double most = 0;
    for (double turn : turns) {
      most = Math.max(most, Math.abs(turn));
    }
    return new Borne(spanNmm, spanMPa, tieEndNmm, tieMostNmm, most);
  }

  /** Greatest moment of a crossmember under a push: as on its ends, less what they hold. */
  private double underPushes(int index, double leftNmm, double rightNmm, List<Push> pushes) {
    double spanMm = ties.get(index).spanMm();
    double most = 0;
    for (Push here : pushes) {
      if (here.tie() == index) {
        double x = within(here.fromLeftMm(), spanMm);
        double moment = -leftNmm * (1 - x / spanMm) - rightNmm * x / spanMm;
        for (Push push : pushes) {
          if (push.tie() == index) {
            double a = within(push.fromLeftMm(), spanMm);
            moment += push.upN() * Math.min(a, x) * (spanMm - Math.max(a, x)) / spanMm;
          }
        }
        most = Math.max(most, Math.abs(moment));
      }
    }
    return most;
  }
}
