package trammel.engine.springs;

import trammel.engine.quantity.Given;

/** Roll of a body on rigid axles. */
public final class RollStiffness {
  private RollStiffness() {}

  /**
   * Roll stiffness of a rigid axle on two equal springs, ½ k s².
   *
   * <p>Source: Gillespie, Fundamentals of Vehicle Dynamics (1992), ch. 6, from memory.
   *
   * @param rateNPerMm vertical rate of one side, N/mm, over 0
   * @param springBaseMm distance between the two springs across the vehicle, mm, over 0
   * @return roll stiffness, Nmm/rad
   * @throws IllegalArgumentException if an input is not over 0
   */
  public static double rigidAxleNmmPerRad(double rateNPerMm, double springBaseMm) {
    Given.positive("spring rate", rateNPerMm, "N/mm", "State the vertical rate of one side.");
    Given.positive("spring base", springBaseMm, "mm", "Measure from spring to spring.");
    return 0.5 * rateNPerMm * springBaseMm * springBaseMm;
  }

  /**
   * Body roll for each g of cornering, W h / (ΣKφ − W h).
   *
   * <p>Source: Gillespie, ch. 6, from memory.
   *
   * @param sprungWeightN sprung weight, N, over 0
   * @param heightAboveRollAxisMm height of its centre of gravity above the roll axis, mm, 0 or more
   * @param totalNmmPerRad sum of the roll stiffness of all axles and bars, Nmm/rad, over W h
   * @return roll for 1 g, rad
   * @throws IllegalArgumentException if the springs cannot hold the body upright
   */
  public static double rollRadPerG(
      double sprungWeightN, double heightAboveRollAxisMm, double totalNmmPerRad) {
    Given.positive("sprung weight", sprungWeightN, "N", "State it over zero.");
    Given.notNegative(
        "height above the roll axis", heightAboveRollAxisMm, "mm", "Take the height as positive.");
    double toppling = sprungWeightN * heightAboveRollAxisMm;
    Given.positive("roll stiffness", totalNmmPerRad, "Nmm/rad", "Add the stiffness of all axles.");
    if (totalNmmPerRad <= toppling * (1.0 + 1e-9)) {
      throw Given.refusal(
          "roll stiffness",
          Given.text(totalNmmPerRad) + " Nmm/rad",
          "over weight times height, " + Given.text(toppling) + " Nmm/rad",
          "Use stiffer springs, a wider spring base or an anti-roll bar.");
    }
    return toppling / (totalNmmPerRad - toppling);
  }
}
