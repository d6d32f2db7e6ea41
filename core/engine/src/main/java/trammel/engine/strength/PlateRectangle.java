package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * One upright rectangle of a built-up section: a flange, a web, a plate seen on end.
 *
 * @param leftMm left edge, mm
 * @param bottomMm lower edge, mm
 * @param widthMm width, mm, over 0, up to 10000
 * @param heightMm height, mm, over 0, up to 10000
 */
public record PlateRectangle(double leftMm, double bottomMm, double widthMm, double heightMm) {
  /**
   * Checks the rectangle.
   *
   * @throws IllegalArgumentException if a dimension is outside its range
   */
  public PlateRectangle {
    Given.within("left edge", leftMm, -10_000, 10_000, "mm", "Measure from the rail.");
    Given.within("lower edge", bottomMm, -10_000, 10_000, "mm", "Measure from the rail.");
    Given.within("rectangle width", widthMm, 1e-3, 10_000, "mm", "Leave out a part of no width.");
    Given.within(
        "rectangle height", heightMm, 1e-3, 10_000, "mm", "Leave out a part of no height.");
  }

  double rightMm() {
    return leftMm + widthMm;
  }

  double topMm() {
    return bottomMm + heightMm;
  }

  double areaMm2() {
    return widthMm * heightMm;
  }

  double centreXMm() {
    return leftMm + widthMm / 2.0;
  }

  double centreYMm() {
    return bottomMm + heightMm / 2.0;
  }

  boolean overlaps(PlateRectangle other) {
    double across = Math.min(rightMm(), other.rightMm()) - Math.max(leftMm, other.leftMm);
    double up = Math.min(topMm(), other.topMm()) - Math.max(bottomMm, other.bottomMm);
    return across > TOUCHING_MM && up > TOUCHING_MM;
  }

  /** Overlap that counts as touching, mm: rounding of sums of plate thicknesses. */
  private static final double TOUCHING_MM = 1e-6;
}
