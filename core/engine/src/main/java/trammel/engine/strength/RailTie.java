package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * A crossmember that holds two rails against twist by its own bending: a beam from rail to rail on
 * two legs, which may be of no length.
 *
 * @param atMm where it stands along the rails (mm)
 * @param spanMm between its ends (mm), above 0
 * @param bendingNmm2 E I of the beam in the upright plane across (Nmm²), above 0
 * @param legRadPerNmm how far the end of a leg turns against its other end for 1 Nmm (rad), 0 for
 *     none
 */
public record RailTie(double atMm, double spanMm, double bendingNmm2, double legRadPerNmm) {
  public RailTie {
    Given.finite("station of a crossmember (mm)", atMm);
    Given.positive("span of a crossmember (mm)", spanMm);
    Given.positive("bending stiffness of a crossmember (Nmm2)", bendingNmm2);
    Given.notNegative("give of a crossmember's leg (rad/Nmm)", legRadPerNmm);
  }

  /** Moment at both ends for each radian that both rails lean in: 2 E I/L with the legs' give. */
  double leaningNmm() {
    return 1 / (spanMm / (2 * bendingNmm2) + legRadPerNmm);
  }

  /** The same where one rail leans in and the other out: 6 E I/L with the legs' give. */
  double swayingNmm() {
    return 1 / (spanMm / (6 * bendingNmm2) + legRadPerNmm);
  }

  /**
   * Slope of the end nearer to where distances start when it lies on its ends, pushed by 1 N: P b
   * (L² − b²)/(6 E I L), as handbooks of beams have it.
   *
   * @param fromMm distance of the push from that end (mm), within the span
   */
  double slopePerN(double fromMm) {
    double b = spanMm - fromMm;
    return b * (spanMm * spanMm - b * b) / (6 * bendingNmm2 * spanMm);
  }
}
