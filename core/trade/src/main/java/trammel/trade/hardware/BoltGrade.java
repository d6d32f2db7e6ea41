package trammel.trade.hardware;

import trammel.trade.given.Dimension;

/**
 * Strength grade of a bolt.
 *
 * @param name as marked or ordered
 * @param proofMPa proof strength
 * @param yieldMPa yield strength
 * @param tensileMPa tensile strength
 * @param largestMm largest diameter these strengths hold for
 */
public record BoltGrade(
    String name, double proofMPa, double yieldMPa, double tensileMPa, double largestMm) {
  private static final double MPA_PER_KSI = 6.894757293168361;

  /** SAE J429 grade 5, to 1 in. */
  public static final BoltGrade GRADE_5 = ofKsi("grade 5", 85.0, 92.0, 120.0, 25.4);

  /** SAE J429 grade 8, to 1 1/2 in. */
  public static final BoltGrade GRADE_8 = ofKsi("grade 8", 120.0, 130.0, 150.0, 38.1);

  public BoltGrade {
    Dimension.text("bolt grade", name);
    if (!(proofMPa > 0.0 && proofMPa <= yieldMPa && yieldMPa <= tensileMPa)
        || Double.isInfinite(tensileMPa)) {
      throw Dimension.refuse(
          "strength of bolt " + name,
          "proof " + proofMPa + ", yield " + yieldMPa + ", tensile " + tensileMPa + " MPa",
          "above 0 and rising in that order",
          "Copy the three values from the bolt's standard.");
    }
    Dimension.positiveMm("largest diameter of " + name, largestMm);
  }

  /** A grade whose strengths are given in ksi (1000 lb/in2). */
  public static BoltGrade ofKsi(
      String name, double proofKsi, double yieldKsi, double tensileKsi, double largestMm) {
    return new BoltGrade(
        name, proofKsi * MPA_PER_KSI, yieldKsi * MPA_PER_KSI, tensileKsi * MPA_PER_KSI, largestMm);
  }

  public double proofLoadN(ScrewThread thread) {
    return proofMPa * stressAreaMm2(thread);
  }

  public double tensileLoadN(ScrewThread thread) {
    return tensileMPa * stressAreaMm2(thread);
  }

  private double stressAreaMm2(ScrewThread thread) {
    Dimension.atMostMm(
        "diameter of a " + name + " bolt",
        thread.diameterMm(),
        largestMm,
        "Larger bolts of this grade are weaker: enter their strengths as a grade of their own.");
    return thread.stressAreaMm2();
  }
}
