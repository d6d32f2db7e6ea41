package trammel.trade.plates;

import trammel.trade.given.Dimension;

/** A point in a plate's own axes, mm. */
public record Point2(double xMm, double yMm) {
  public Point2 {
    Dimension.finiteMm("x of a point", xMm);
    Dimension.finiteMm("y of a point", yMm);
  }

  /** The point at a radius and an angle (anticlockwise from x) about a centre. */
  public static Point2 polar(Point2 centre, double radiusMm, double angleRad) {
    return new Point2(
        centre.xMm + radiusMm * Math.cos(angleRad), centre.yMm + radiusMm * Math.sin(angleRad));
  }

  public double distanceMm(Point2 other) {
    // Not hypot, which is slow: parts of a vehicle neither overflow nor vanish when squared.
    double dx = other.xMm - xMm;
    double dy = other.yMm - yMm;
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** Direction from here to the other point, anticlockwise from x, -pi to pi. */
  public double headingRad(Point2 other) {
    return Math.atan2(other.yMm - yMm, other.xMm - xMm);
  }

  public Point2 shifted(double byXMm, double byYMm) {
    return new Point2(xMm + byXMm, yMm + byYMm);
  }
}
