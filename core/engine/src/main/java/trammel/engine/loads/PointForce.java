package trammel.engine.loads;

import trammel.engine.quantity.Given;

/**
 * A force and the point it acts at, in vehicle axes.
 *
 * @param name what exerts it
 * @param xMm point, mm forward
 * @param yMm point, mm to the left
 * @param zMm point, mm above the ground
 * @param forceXN force forward, N
 * @param forceYN force to the left, N
 * @param forceZN force upward, N
 */
public record PointForce(
    String name,
    double xMm,
    double yMm,
    double zMm,
    double forceXN,
    double forceYN,
    double forceZN) {
  /**
   * Checks that all are numbers.
   *
   * @throws IllegalArgumentException if one is not a number or over 10¹²
   */
  public PointForce {
    Given.finite("position X", xMm, "mm");
    Given.finite("position Y", yMm, "mm");
    Given.finite("position Z", zMm, "mm");
    Given.finite("force X", forceXN, "N");
    Given.finite("force Y", forceYN, "N");
    Given.finite("force Z", forceZN, "N");
  }
}
