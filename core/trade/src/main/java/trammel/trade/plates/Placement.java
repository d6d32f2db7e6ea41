package trammel.trade.plates;

import trammel.trade.given.Dimension;

/**
 * Where a shape is put: mirrored (x changes sign) if asked, then turned anticlockwise about the
 * origin, then shifted.
 */
public record Placement(boolean mirrored, double angleRad, double xMm, double yMm) {
  public Placement {
    Dimension.finiteMm("x shift", xMm);
    Dimension.finiteMm("y shift", yMm);
    if (!Double.isFinite(angleRad)) {
      throw Dimension.refuse("turn", "not a number", "any finite angle", "Give it again.");
    }
  }

  public static Placement shift(double xMm, double yMm) {
    return new Placement(false, 0.0, xMm, yMm);
  }

  public static Placement turn(double angleRad) {
    return new Placement(false, angleRad, 0.0, 0.0);
  }

  public static Placement mirror() {
    return new Placement(true, 0.0, 0.0, 0.0);
  }

  public Point2 of(Point2 point) {
    double x = mirrored ? -point.xMm() : point.xMm();
    double y = point.yMm();
    if (angleRad == 0.0) {
      return new Point2(x + xMm, y + yMm);
    }
    double cos = Math.cos(angleRad);
    double sin = Math.sin(angleRad);
    return new Point2(x * cos - y * sin + xMm, x * sin + y * cos + yMm);
  }
}
