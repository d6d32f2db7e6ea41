package trammel.engine.springs;

import trammel.engine.quantity.Given;
import trammel.engine.quantity.Gravity;

/**
 * Undamped natural frequency of a sprung mass. Air-spring manuals print 188/√δ(in) cycles a minute;
 * the exact constant, 187.6, is used here (0.2 % lower).
 */
public final class RideFrequency {
  private static final String MASS_ADVICE = "Use the weight on this corner less the unsprung part.";

  private RideFrequency() {}

  /**
   * Frequency from rate and mass, √(k/m)/2π.
   *
   * @param wheelRateNPerMm rate at the wheel, N/mm, over 0
   * @param sprungMassKg mass carried by it, kg, over 0
   * @return frequency, Hz
   * @throws IllegalArgumentException if an input is not over 0
   */
  public static double hertz(double wheelRateNPerMm, double sprungMassKg) {
    Given.positive("wheel rate", wheelRateNPerMm, "N/mm", "State a rate over zero.");
    Given.positive("sprung mass", sprungMassKg, "kg", MASS_ADVICE);
    return Math.sqrt(1000.0 * wheelRateNPerMm / sprungMassKg) / (2.0 * Math.PI);
  }

  /**
   * Frequency from static deflection, √(g/δ)/2π. True for a constant rate; for an air spring use
   * load over rate as the deflection.
   *
   * <p>Source: air-spring engineering manual EMDG198, pp. 22-23.
   *
   * @param deflectionMm load over rate, mm, over 0
   * @return frequency, Hz
   * @throws IllegalArgumentException if the deflection is not over 0
   */
  public static double hertzFromDeflection(double deflectionMm) {
    Given.positive("static deflection", deflectionMm, "mm", "Divide the load by the rate.");
    return Math.sqrt(Gravity.MM_PER_S2 / deflectionMm) / (2.0 * Math.PI);
  }

  /**
   * Wheel rate that gives a wanted frequency.
   *
   * @param frequencyHz wanted frequency, Hz, over 0
   * @param sprungMassKg mass carried, kg, over 0
   * @return rate at the wheel, N/mm
   * @throws IllegalArgumentException if an input is not over 0
   */
  public static double wheelRateForNPerMm(double frequencyHz, double sprungMassKg) {
    Given.within(
        "ride frequency", frequencyHz, 1e-3, 1000, "Hz", "Road vehicles ride at 1 to 2.5 Hz.");
    Given.positive("sprung mass", sprungMassKg, "kg", MASS_ADVICE);
    double radPerS = 2.0 * Math.PI * frequencyHz;
    return sprungMassKg * radPerS * radPerS / 1000.0;
  }
}
