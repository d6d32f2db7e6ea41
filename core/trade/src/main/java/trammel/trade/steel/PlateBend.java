package trammel.trade.steel;

import trammel.engine.quantity.Given;

/**
 * One bend in a plate.
 *
 * @param thicknessMm thickness, mm
 * @param insideRadiusMm inside radius of the bend, mm
 * @param kFactor place of the neutral line from the inside as a fraction of the thickness, 0 to 1;
 *     0.42 to 0.47 for cold-rolled steel at small radii
 * @param angleRad angle the plate is turned through, rad, above 0 and less than 180°
 */
public record PlateBend(
    double thicknessMm, double insideRadiusMm, double kFactor, double angleRad) {

  /** Bends close to 180° have no meeting point of the outside faces. */
  private static final double LARGEST_ANGLE_RAD = Math.toRadians(175);

  public PlateBend {
    Given.positive("thickness of a bent plate", thicknessMm, 100, "mm", "Give the plate itself.");
    Given.within(
        "inside radius of a bend", insideRadiusMm, 0, 1000, "mm", "Give the radius of the punch.");
    Given.within("k factor of a bend", kFactor, 0, 1, "", "Steel is about 0.42.");
    Given.positive(
        "bend angle in rad",
        angleRad,
        LARGEST_ANGLE_RAD,
        "",
        "Give the angle turned through: 90° (1.571 rad) for a square corner.");
  }

  /** Bend allowance, length of the neutral line in the bend: A (R + K T), mm. */
  public double allowanceMm() {
    return angleRad * (insideRadiusMm + kFactor * thicknessMm);
  }

  /** Outside set-back, from bend line to the corner of the outside faces: (R + T) tan(A/2), mm. */
  public double outsideSetbackMm() {
    return (insideRadiusMm + thicknessMm) * Math.tan(angleRad / 2);
  }

  /** Bend deduction, what the outside legs together are longer than the flat: 2 OSSB − BA, mm. */
  public double deductionMm() {
    return 2 * outsideSetbackMm() - allowanceMm();
  }
}
