package trammel.assembly.fit;

import java.util.ArrayList;
import java.util.List;
import trammel.assembly.Turned;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Point2;

/** A profile turned about an axis: a bolt, a barrel, a tyre, an air spring. */
final class FilledTurned extends Filled {
  private static final int LINES = 16;

  /** Of the turn to each line, the first again at the end. */
  private static final double[] COSINES = new double[LINES + 1];

  private static final double[] SINES = new double[LINES + 1];

  static {
    for (int k = 0; k <= LINES; k++) {
      COSINES[k] = Math.cos(2 * Math.PI * k / LINES);
      SINES[k] = Math.sin(2 * Math.PI * k / LINES);
    }
  }

  /** How far the filled profile goes on beyond the axis, so that the axis is no surface (mm). */
  private static final double PAST_AXIS_MM = 1e4;

  private final Turned turned;
  private final boolean hollow;
  private List<Point2> outer;
  private Rings profile;

  private FilledTurned(Turned turned, boolean hollow, double[] least, double[] most) {
    super(least, most);
    this.turned = turned;
    this.hollow = hollow;
  }

  static FilledTurned of(Turned turned, boolean hollow) {
    Bounds bounds = turned.profile().bounds();
    double radiusMm = bounds.maxXMm();
    return new FilledTurned(
        turned,
        hollow,
        new double[] {-radiusMm, -radiusMm, bounds.minYMm()},
        new double[] {radiusMm, radiusMm, bounds.maxYMm()});
  }

  private List<Point2> outer() {
    if (outer == null) {
      outer = turned.profile().polygon(CHORD_MM);
    }
    return outer;
  }

  private Rings profile() {
    if (profile == null) {
      profile =
          new Rings(
              List.of(hollow ? pastTheAxis(outer()) : filled(outer(), turned.profile().bounds())));
    }
    return profile;
  }

  /** Points on the axis moved far past it: what ends there is solid through the axis. */
  private static List<Point2> pastTheAxis(List<Point2> outer) {
    return outer.stream()
        .map(p -> p.xMm() < Loop.JOIN_MM ? new Point2(-PAST_AXIS_MM, p.yMm()) : p)
        .toList();
  }

  /** A ring with its bore filled: its outside down to the axis. */
  private static List<Point2> filled(List<Point2> outer, Bounds bounds) {
    if (bounds.minXMm() < Loop.JOIN_MM) {
      return pastTheAxis(outer);
    }
    return List.of(
        new Point2(-PAST_AXIS_MM, bounds.minYMm()),
        new Point2(bounds.maxXMm(), bounds.minYMm()),
        new Point2(bounds.maxXMm(), bounds.maxYMm()),
        new Point2(-PAST_AXIS_MM, bounds.maxYMm()));
  }

  /** Rings round its corners and lines from corner to corner. */
  @Override
  double[] drawnEdges() {
    List<Point2> outer = outer();
    List<double[]> all = new ArrayList<>();
    for (int k = 0; k < LINES; k++) {
      for (int i = 0; i < outer.size(); i++) {
        Point2 point = outer.get(i);
        Point2 next = outer.get((i + 1) % outer.size());
        if (point.xMm() > Loop.JOIN_MM) {
          all.add(edge(point, k, point, k + 1));
        }
        if (point.xMm() > Loop.JOIN_MM || next.xMm() > Loop.JOIN_MM) {
          all.add(edge(point, k, next, k));
        }
      }
    }
    double[] edges = new double[6 * all.size()];
    for (int i = 0; i < all.size(); i++) {
      System.arraycopy(all.get(i), 0, edges, 6 * i, 6);
    }
    return edges;
  }

  private static double[] edge(Point2 from, int fromLine, Point2 to, int toLine) {
    return new double[] {
      from.xMm() * COSINES[fromLine],
      from.xMm() * SINES[fromLine],
      from.yMm(),
      to.xMm() * COSINES[toLine],
      to.xMm() * SINES[toLine],
      to.yMm()
    };
  }

  @Override
  double depthMm(double xMm, double yMm, double zMm) {
    return profile().depthMm(Math.sqrt(xMm * xMm + yMm * yMm), zMm);
  }
}
