package trammel.engine.springs;

import trammel.engine.quantity.Given;

/** Rates of springs as they are mounted. All functions are pure. */
public final class SpringRates {
  /** Largest lean from upright that is taken, rad (80°). */
  private static final double LARGEST_TILT_RAD = Math.toRadians(80);

  private static final String RATE_ADVICE = "State the rate printed on the spring, over zero.";
  private static final String TILT_ADVICE = "Measure the lean from upright.";

  private SpringRates() {}

  /**
   * Rate at the wheel of a spring that works through a linkage, k MR².
   *
   * <p>Source: Barton and Fieldhouse, Automotive Chassis Engineering (2018), eq. 3.33, which uses
   * the reciprocal of this motion ratio.
   *
   * @param rateNPerMm the spring's own rate, N/mm, over 0
   * @param motionRatio spring travel over wheel travel, over 0 and up to 10
   * @return wheel rate, N/mm
   * @throws IllegalArgumentException if an input is outside its range
   */
  public static double wheelRateNPerMm(double rateNPerMm, double motionRatio) {
    Given.positive("spring rate", rateNPerMm, "N/mm", RATE_ADVICE);
    Given.within(
        "motion ratio", motionRatio, 1e-3, 10, "", "Divide spring travel by wheel travel.");
    return rateNPerMm * motionRatio * motionRatio;
  }

  /**
   * Vertical rate of a leaning spring on a rigid axle in heave, k cos²θ. The change of the lean
   * itself, a small term, is left out.
   *
   * <p>Some trade tables multiply the rate by cos θ once; that is the factor of the force ({@link
   * #verticalForceFactor}), not of the rate: the lean shortens the spring's travel by cos θ and
   * leans its force by cos θ again. The square is used here.
   *
   * @param rateNPerMm the spring's own rate, N/mm, over 0
   * @param tiltRad lean from upright, rad, −80° to 80°
   * @return vertical rate, N/mm
   * @throws IllegalArgumentException if an input is outside its range
   */
  public static double leaningRateNPerMm(double rateNPerMm, double tiltRad) {
    Given.positive("spring rate", rateNPerMm, "N/mm", RATE_ADVICE);
    double factor = verticalForceFactor(tiltRad);
    return rateNPerMm * factor * factor;
  }

  /**
   * Vertical rate of a leaning spring under load, with the change of the lean itself: k cos²θ −
   * (F/L) sin²θ.
   *
   * @param rateNPerMm the spring's own rate, N/mm, over 0
   * @param tiltRad lean from upright, rad, −80° to 80°
   * @param forceN force along the spring, N, compression positive, 0 or more
   * @param lengthMm length between the spring's pivots, mm, over 0
   * @return vertical rate, N/mm; negative where the lean runs away under the load
   * @throws IllegalArgumentException if an input is outside its range
   */
  public static double loadedLeaningRateNPerMm(
      double rateNPerMm, double tiltRad, double forceN, double lengthMm) {
    double unloaded = leaningRateNPerMm(rateNPerMm, tiltRad);
    Given.notNegative("spring force", forceN, "N", "Count compression as positive.");
    Given.positive("spring length", lengthMm, "mm", "Measure between the two pivots.");
    double sine = Math.sin(tiltRad);
    return unloaded - forceN / lengthMm * sine * sine;
  }

  /**
   * Share of a leaning spring's force that lifts, cos θ.
   *
   * @param tiltRad lean from upright, rad, −80° to 80°
   * @return factor, 0.17 to 1
   * @throws IllegalArgumentException if the lean is outside its range
   */
  public static double verticalForceFactor(double tiltRad) {
    Given.angle("spring lean", tiltRad, -LARGEST_TILT_RAD, LARGEST_TILT_RAD, TILT_ADVICE);
    return Math.cos(tiltRad);
  }

  /**
   * Rate of two springs one on top of the other, such as suspension and tyre.
   *
   * @param firstNPerMm rate, N/mm, over 0
   * @param secondNPerMm rate, N/mm, over 0
   * @return combined rate, N/mm, under the softer of the two
   * @throws IllegalArgumentException if a rate is not over 0
   */
  public static double inSeriesNPerMm(double firstNPerMm, double secondNPerMm) {
    Given.positive("first rate", firstNPerMm, "N/mm", RATE_ADVICE);
    Given.positive("second rate", secondNPerMm, "N/mm", RATE_ADVICE);
    return 1.0 / (1.0 / firstNPerMm + 1.0 / secondNPerMm);
  }
}
