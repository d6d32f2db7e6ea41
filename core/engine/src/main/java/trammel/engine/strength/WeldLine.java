package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * A straight weld in the plane of a weld group, treated as a line.
 *
 * @param startXMm start, mm
 * @param startYMm start, mm
 * @param endXMm end, mm
 * @param endYMm end, mm; at least 1 mm from the start
 */
public record WeldLine(double startXMm, double startYMm, double endXMm, double endYMm) {
  /**
   * Checks the line.
   *
   * @throws IllegalArgumentException if a coordinate is over 100 m or the line is under 1 mm long
   */
  public WeldLine {
    checkCoordinate(startXMm);
    checkCoordinate(startYMm);
    checkCoordinate(endXMm);
    checkCoordinate(endYMm);
    double length = Math.hypot(endXMm - startXMm, endYMm - startYMm);
    if (length < 1.0) {
      throw Given.refusal(
          "weld line",
          Given.text(length) + " mm long",
          "at least 1 mm long",
          "Check its two ends.");
    }
  }

  private static void checkCoordinate(double valueMm) {
    Given.within("weld coordinate", valueMm, -100_000, 100_000, "mm", "Check its unit.");
  }

  /**
   * Length of the weld.
   *
   * @return length, mm
   */
  public double lengthMm() {
    return Math.hypot(endXMm - startXMm, endYMm - startYMm);
  }

  double middleXMm() {
    return 0.5 * (startXMm + endXMm);
  }

  double middleYMm() {
    return 0.5 * (startYMm + endYMm);
  }
}
