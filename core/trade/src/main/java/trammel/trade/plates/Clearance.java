package trammel.trade.plates;

import java.util.Arrays;

/** Least distances and crossings between edges, by closed forms. */
final class Clearance {
  private static final int MOST_CROSSINGS = 2;

  private Clearance() {}

  /** Least distance between two edges; 0 when they cross or touch. */
  static double betweenMm(Edge a, Edge b) {
    if (crossings(a, b).length > 0) {
      return 0.0;
    }
    double least =
        Math.min(
            Math.min(a.distanceMm(b.from()), a.distanceMm(b.to())),
            Math.min(b.distanceMm(a.from()), b.distanceMm(a.to())));
    if (a instanceof Arc arc && b instanceof Straight line) {
      return Math.min(least, insideMm(line, arc));
    }
    if (a instanceof Straight line && b instanceof Arc arc) {
      return Math.min(least, insideMm(line, arc));
    }
    if (a instanceof Arc one && b instanceof Arc other) {
      return Math.min(least, insideMm(one, other));
    }
    return least;
  }

  /** Gap where a line's perpendicular through the arc's centre meets both, else infinity. */
  private static double insideMm(Straight line, Arc arc) {
    double fraction = line.footFraction(arc.centre());
    if (fraction < 0.0 || fraction > 1.0) {
      return Double.POSITIVE_INFINITY;
    }
    Point2 foot = line.at(fraction);
    return arc.distanceMm(foot);
  }

  /** Gap along the line of the two centres where it meets both arcs, else infinity. */
  private static double insideMm(Arc one, Arc other) {
    double apartMm = one.centre().distanceMm(other.centre());
    if (apartMm < Loop.JOIN_MM) {
      return Double.POSITIVE_INFINITY;
    }
    double headingRad = one.centre().headingRad(other.centre());
    double least = Double.POSITIVE_INFINITY;
    for (int side = 0; side < 2; side++) {
      double oneRad = headingRad + side * Math.PI;
      if (one.spans(oneRad)) {
        Point2 onOne = Point2.polar(one.centre(), one.radiusMm(), oneRad);
        least = Math.min(least, other.distanceMm(onOne));
      }
    }
    return least;
  }

  /** The points, two at most, that both edges pass through; edges lying on each other give none. */
  static Point2[] crossings(Edge a, Edge b) {
    if (a instanceof Straight one) {
      return b instanceof Straight other ? crossings(one, other) : crossings(one, (Arc) b);
    }
    Arc arc = (Arc) a;
    return b instanceof Straight line ? crossings(line, arc) : crossings(arc, (Arc) b);
  }

  private static Point2[] crossings(Straight a, Straight b) {
    double ax = a.to().xMm() - a.from().xMm();
    double ay = a.to().yMm() - a.from().yMm();
    double bx = b.to().xMm() - b.from().xMm();
    double by = b.to().yMm() - b.from().yMm();
    double cross = ax * by - ay * bx;
    if (Math.abs(cross) < 1e-12 * a.lengthMm() * b.lengthMm()) {
      return new Point2[0];
    }
    double gapX = b.from().xMm() - a.from().xMm();
    double gapY = b.from().yMm() - a.from().yMm();
    double alongA = (gapX * by - gapY * bx) / cross;
    double alongB = (gapX * ay - gapY * ax) / cross;
    if (alongA < 0.0 || alongA > 1.0 || alongB < 0.0 || alongB > 1.0) {
      return new Point2[0];
    }
    return new Point2[] {a.at(alongA)};
  }

  private static Point2[] crossings(Straight line, Arc arc) {
    double foot = line.footFraction(arc.centre());
    double dx = line.to().xMm() - line.from().xMm();
    double dy = line.to().yMm() - line.from().yMm();
    double lengthMm = Math.hypot(dx, dy);
    double footX = line.from().xMm() + foot * dx;
    double footY = line.from().yMm() + foot * dy;
    double offMm = Math.hypot(footX - arc.centre().xMm(), footY - arc.centre().yMm());
    double radiusMm = arc.radiusMm();
    if (offMm > radiusMm) {
      return new Point2[0];
    }
    double halfChord = Math.sqrt(radiusMm * radiusMm - offMm * offMm) / lengthMm;
    Point2[] found = new Point2[MOST_CROSSINGS];
    int count = 0;
    for (int side = -1; side <= 1; side += 2) {
      double fraction = foot + side * halfChord;
      if (fraction >= 0.0 && fraction <= 1.0) {
        Point2 point = line.at(fraction);
        if (arc.spans(arc.centre().headingRad(point))) {
          found[count++] = point;
        }
      }
    }
    return Arrays.copyOf(found, count);
  }

  private static Point2[] crossings(Arc a, Arc b) {
    double apartMm = a.centre().distanceMm(b.centre());
    double radiusA = a.radiusMm();
    double radiusB = b.radiusMm();
    if (apartMm < Loop.JOIN_MM
        || apartMm > radiusA + radiusB
        || apartMm < Math.abs(radiusA - radiusB)) {
      return new Point2[0];
    }
    double alongMm = (apartMm * apartMm + radiusA * radiusA - radiusB * radiusB) / (2.0 * apartMm);
    double halfChordMm = Math.sqrt(Math.max(0.0, radiusA * radiusA - alongMm * alongMm));
    double headingRad = a.centre().headingRad(b.centre());
    double openRad = Math.atan2(halfChordMm, alongMm);
    Point2[] found = new Point2[MOST_CROSSINGS];
    int count = 0;
    for (int side = -1; side <= 1; side += 2) {
      double angleRad = headingRad + side * openRad;
      Point2 point = Point2.polar(a.centre(), radiusA, angleRad);
      if (a.spans(angleRad) && b.spans(b.centre().headingRad(point))) {
        found[count++] = point;
      }
    }
    return Arrays.copyOf(found, count);
  }
}
