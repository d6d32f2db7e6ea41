package trammel.trade.plates;

import java.util.ArrayList;
import java.util.List;

/**
 * The path of a taut belt round discs: their convex hull, made of common outer tangents and of arcs
 * of the discs. This is the shape of most brackets: round noses about the holes, straight sides
 * down to the corners of the weld base.
 *
 * <p>Found by walking from disc to disc, always to the one whose tangent needs the least further
 * turn (gift wrapping). The outward normal of the outer tangent of discs i, j lies at acos((ri -
 * rj)/d) clockwise from the line of centres.
 */
public final class Belt {
  private static final double FULL_TURN_RAD = 2.0 * Math.PI;
  private static final double SAME_RAD = 1e-9;

  private final List<Disc> discs;

  private Belt(List<Disc> discs) {
    this.discs = discs;
  }

  /**
   * The belt, anticlockwise.
   *
   * @throws IllegalArgumentException when the discs enclose no area
   */
  public static Loop around(List<Disc> discs) {
    List<Disc> outer = withoutHidden(discs);
    if (outer.size() == 1 && outer.get(0).radiusMm() > 0.0) {
      return Loop.circle(outer.get(0).centre(), outer.get(0).radiusMm());
    }
    if (outer.size() < 2) {
      throw new IllegalArgumentException(
          "A belt goes round "
              + discs.size()
              + " corner points in one place; it needs at least 1 disc with a radius, or 3 corners."
              + "\nAdd what the shape must hold.");
    }
    return new Belt(outer).walk();
  }

  /** Drops every disc that lies wholly within another. */
  private static List<Disc> withoutHidden(List<Disc> discs) {
    List<Disc> kept = new ArrayList<>(discs.size());
    for (int i = 0; i < discs.size(); i++) {
      boolean hidden = false;
      for (int j = 0; j < discs.size() && !hidden; j++) {
        hidden = j != i && hides(discs.get(j), discs.get(i), j < i);
      }
      if (!hidden) {
        kept.add(discs.get(i));
      }
    }
    return kept;
  }

  private static boolean hides(Disc by, Disc what, boolean earlier) {
    double spareMm = by.radiusMm() - what.radiusMm() - by.centre().distanceMm(what.centre());
    double otherSpareMm = what.radiusMm() - by.radiusMm() - by.centre().distanceMm(what.centre());
    boolean same = Math.abs(spareMm) < Loop.JOIN_MM && Math.abs(otherSpareMm) < Loop.JOIN_MM;
    return same ? earlier : spareMm > -Loop.JOIN_MM;
  }

  private Loop walk() {
    int lowest = 0;
    for (int i = 1; i < discs.size(); i++) {
      if (bottom(discs.get(i)) < bottom(discs.get(lowest))) {
        lowest = i;
      }
    }
    Tangent first = next(lowest, -Math.PI / 2.0);
    first = next(first.to, first.normalRad);
    List<Edge> edges = new ArrayList<>();
    Tangent current = first;
    int most = 4 * discs.size();
    for (int step = 0; step < most; step++) {
      Tangent following = next(current.to, current.normalRad);
      edges.add(new Straight(onDisc(current.from, current), onDisc(current.to, current)));
      addArc(edges, current, following);
      if (following.from == first.from && following.to == first.to) {
        return new Loop(edges);
      }
      current = following;
    }
    throw new IllegalStateException("the belt round " + discs + " does not close");
  }

  private static double bottom(Disc disc) {
    return disc.centre().yMm() - disc.radiusMm();
  }

  private void addArc(List<Edge> edges, Tangent before, Tangent after) {
    Disc disc = discs.get(before.to);
    double sweepRad = turnRad(before.normalRad, after.normalRad);
    if (disc.radiusMm() * sweepRad > Loop.JOIN_MM) {
      edges.add(new Arc(onDisc(before.to, before), onDisc(after.from, after), disc.centre(), true));
    }
  }

  private Point2 onDisc(int index, Tangent tangent) {
    Disc disc = discs.get(index);
    return disc.radiusMm() == 0.0
        ? disc.centre()
        : Point2.polar(disc.centre(), disc.radiusMm(), tangent.normalRad);
  }

  /** The tangent that leaves the disc after the least turn; of equals the longest. */
  private Tangent next(int from, double fromNormalRad) {
    Disc disc = discs.get(from);
    Tangent best = null;
    double bestTurnRad = 0.0;
    double bestReachMm = 0.0;
    for (int to = 0; to < discs.size(); to++) {
      if (to == from) {
        continue;
      }
      Disc other = discs.get(to);
      double apartMm = disc.centre().distanceMm(other.centre());
      double openRad = Math.acos((disc.radiusMm() - other.radiusMm()) / apartMm);
      double normalRad = disc.centre().headingRad(other.centre()) - openRad;
      double turnRad = turnRad(fromNormalRad, normalRad);
      boolean sooner = best == null || turnRad < bestTurnRad - SAME_RAD;
      boolean level = best != null && Math.abs(turnRad - bestTurnRad) <= SAME_RAD;
      if (sooner || (level && apartMm > bestReachMm)) {
        best = new Tangent(from, to, normalRad);
        bestTurnRad = turnRad;
        bestReachMm = apartMm;
      }
    }
    return best;
  }

  private static double turnRad(double fromRad, double toRad) {
    double turn = toRad - fromRad;
    turn -= FULL_TURN_RAD * Math.floor(turn / FULL_TURN_RAD);
    return turn > FULL_TURN_RAD - SAME_RAD ? 0.0 : turn;
  }

  private record Tangent(int from, int to, double normalRad) {}
}
