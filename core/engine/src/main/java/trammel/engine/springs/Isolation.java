package trammel.engine.springs;

import trammel.engine.quantity.Given;

/** How much of a vibration an undamped spring lets through. */
public final class Isolation {
  private Isolation() {}

  /**
   * Transmitted share of a vibration, 1/((f/fn)² − 1).
   *
   * <p>Source: air-spring engineering manual EMDG198, pp. 22-23.
   *
   * @param naturalHz natural frequency on the spring, Hz, over 0
   * @param forcingHz frequency of the vibration, Hz, over √2 times the natural one: below that the
   *     spring magnifies and there is no isolation to speak of
   * @return transmitted share, 0 to 1
   * @throws IllegalArgumentException if the spring would not isolate at all
   */
  public static double transmission(double naturalHz, double forcingHz) {
    Given.within("natural frequency", naturalHz, 1e-3, 1e5, "Hz", "State it over zero.");
    Given.within("forcing frequency", forcingHz, 1e-3, 1e5, "Hz", "State it over zero.");
    double ratio = forcingHz / naturalHz;
    double denominator = ratio * ratio - 1.0;
    if (denominator < 1.0) {
      throw Given.refusal(
          "forcing frequency",
          Given.text(forcingHz) + " Hz",
          "at least 1.41421 times the natural frequency, "
              + Given.text(naturalHz * Math.sqrt(2.0))
              + " Hz",
          "Below it the spring magnifies the vibration: use a softer spring.");
    }
    return 1.0 / denominator;
  }
}
