package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * A rod end or spherical bearing. Source of the misalignment formula: a maker's catalogue P-1930,
 * p. 214.
 *
 * @param ballWidthMm width over the ball's faces W, mm, 1 to 500
 * @param ballDiameterMm diameter of the sphere E, mm, over the ball width, up to 700
 * @param housingWidthMm width of the housing H, mm, 0.5 and up, under the ball width
 * @param outerDiameterMm outer diameter of the head D, mm, over the sphere, up to 1500
 * @param chamferMm chamfer of the head C, mm, 0 and up, under a tenth of the head
 */
public record RodEnd(
    double ballWidthMm,
    double ballDiameterMm,
    double housingWidthMm,
    double outerDiameterMm,
    double chamferMm) {
  /** Working load over static capacity. Source: a maker's terms of use; common practice. */
  public static final double WORKING_SHARE = 0.25;

  /**
   * Checks the rod end.
   *
   * @throws IllegalArgumentException if a dimension is outside its range
   */
  public RodEnd {
    Given.within("ball width", ballWidthMm, 1, 500, "mm", "Measure over the faces of the ball.");
    Given.within(
        "ball diameter",
        ballDiameterMm,
        1.001 * ballWidthMm,
        700,
        "mm",
        "The ball is wider round.");
    Given.within(
        "housing width", housingWidthMm, 0.5, 0.999 * ballWidthMm, "mm", "The ball stands proud.");
    Given.within(
        "head outer diameter",
        outerDiameterMm,
        1.001 * ballDiameterMm,
        1500,
        "mm",
        "The head goes round the ball.");
    Given.within("head chamfer", chamferMm, 0, 0.1 * outerDiameterMm, "mm", "Give 0 for none.");
  }

  /**
   * Tilt until the head touches a clevis whose cheeks are as far apart as the ball is wide, a2 =
   * asin(W/A) − asin(H/A), A = √((D − 2C)² + H²).
   *
   * @return angle to each side, rad
   */
  public double tiltInClevisRad() {
    double across = Math.hypot(outerDiameterMm - 2.0 * chamferMm, housingWidthMm);
    return Math.asin(Math.min(1.0, ballWidthMm / across)) - Math.asin(housingWidthMm / across);
  }

  /**
   * Tilt until the edge of the ball's face enters the housing, a3 = asin(W/E) − asin(H/E).
   *
   * @return angle to each side, rad
   */
  public double tiltOfBallRad() {
    return Math.asin(ballWidthMm / ballDiameterMm) - Math.asin(housingWidthMm / ballDiameterMm);
  }

  /**
   * Load to work with, a quarter of the radial static capacity.
   *
   * @param staticCapacityN radial static capacity, N, over 0
   * @return working load, N
   * @throws IllegalArgumentException if the capacity is not over 0
   */
  public static double workingLoadN(double staticCapacityN) {
    Given.positive(
        "static capacity", staticCapacityN, "N", "Read the radial static load of the rod end.");
    return WORKING_SHARE * staticCapacityN;
  }
}
