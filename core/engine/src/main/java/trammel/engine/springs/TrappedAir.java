package trammel.engine.springs;

import trammel.engine.quantity.Given;

/**
 * Air shut in a spring, p V^n constant on absolute pressure. The exponent is 1.0 for slow movement
 * (temperature stays) and 1.38 to 1.4 for fast movement; 1.38 is what air-spring makers use.
 */
public final class TrappedAir {
  /** Standard atmosphere, MPa (14.696 psi). Air-spring manuals round it to 14.7 psi. */
  public static final double ATMOSPHERE_MPA = 0.101325;

  /** Exponent for fast movement. Source: air-spring engineering manual EMDG198, pp. 22-23. */
  public static final double FAST = 1.38;

  /** Exponent for movement so slow that the temperature stays. */
  public static final double SLOW = 1.0;

  private static final double LARGEST_GAUGE_MPA = 10.0;

  private TrappedAir() {}

  /**
   * Gauge pressure after a sealed volume has changed.
   *
   * @param gaugeMPa gauge pressure before, MPa, 0 to 10
   * @param volumeBeforeMm3 volume before, mm³, over 0
   * @param volumeAfterMm3 volume after, mm³, over 0 and not under a hundredth of before
   * @param exponent 1.0 (slow) to 1.4 (fast)
   * @return gauge pressure after, MPa; negative when it is under the atmosphere
   * @throws IllegalArgumentException if an input is outside its range
   */
  public static double gaugeAfterMPa(
      double gaugeMPa, double volumeBeforeMm3, double volumeAfterMm3, double exponent) {
    checkGauge(gaugeMPa);
    checkExponent(exponent);
    Given.positive("volume before", volumeBeforeMm3, "mm³", "State a volume over zero.");
    Given.positive("volume after", volumeAfterMm3, "mm³", "State a volume over zero.");
    double ratio = volumeBeforeMm3 / volumeAfterMm3;
    Given.within("squeeze of the air", ratio, 0.01, 100, "times", "Check both volumes.");
    return (gaugeMPa + ATMOSPHERE_MPA) * Math.pow(ratio, exponent) - ATMOSPHERE_MPA;
  }

  /**
   * Rate of an air spring whose effective area does not change, n p A²/V on absolute pressure.
   *
   * <p>Source: derivative of the gas law; textbook, from memory.
   *
   * @param gaugeMPa gauge pressure, MPa, 0 to 10
   * @param areaMm2 effective area, mm², over 0
   * @param volumeMm3 volume with its reservoir, mm³, over 0
   * @param exponent 1.0 (slow) to 1.4 (fast)
   * @return rate, N/mm
   * @throws IllegalArgumentException if an input is outside its range
   */
  public static double constantAreaRateNPerMm(
      double gaugeMPa, double areaMm2, double volumeMm3, double exponent) {
    checkGauge(gaugeMPa);
    checkExponent(exponent);
    Given.positive("effective area", areaMm2, "mm²", "Divide load by pressure.");
    Given.positive("air volume", volumeMm3, "mm³", "State a volume over zero.");
    return exponent * (gaugeMPa + ATMOSPHERE_MPA) * areaMm2 * areaMm2 / volumeMm3;
  }

  static void checkGauge(double gaugeMPa) {
    Given.within(
        "gauge pressure",
        gaugeMPa,
        0,
        LARGEST_GAUGE_MPA,
        "MPa",
        "Read it on the gauge, which shows zero in open air.");
  }

  static void checkExponent(double exponent) {
    Given.within(
        "gas exponent", exponent, SLOW, 1.4, "", "Use 1.0 for slow and 1.38 for fast movement.");
  }
}
