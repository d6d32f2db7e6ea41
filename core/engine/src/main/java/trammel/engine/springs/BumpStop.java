package trammel.engine.springs;

import trammel.engine.quantity.Given;

/**
 * A rubber bump stop as a spring that stiffens, F = a x + b x³, and how hard a wheel meets it: what
 * moves upward is caught by spring and stop together, ½ m v² = k (d x + x²/2) + a x²/2 + b x⁴/4,
 * where the spring is squeezed by d already when the stop is met. Its weight is carried by the
 * spring from ride on and drops out. Source: conservation of energy.
 *
 * @param linearNPerMm a (N/mm), 0 or more
 * @param cubicNPerMm3 b (N/mm³), 0 or more; a and b are not both 0
 * @param metAtMmPerS upward speed of the wheel at which it meets the stop (mm/s), above 0
 */
public record BumpStop(double linearNPerMm, double cubicNPerMm3, double metAtMmPerS) {
  private static final int HALVINGS = 80;

  public BumpStop {
    Given.notNegative("rate of the bump stop (N/mm)", linearNPerMm);
    Given.notNegative("stiffening of the bump stop (N/mm3)", cubicNPerMm3);
    Given.positive("speed at which a bump stop is met (mm/s)", metAtMmPerS);
    Given.positive("stiffness of the bump stop", linearNPerMm + cubicNPerMm3);
  }

  /** Force when it is squeezed by so much (N). */
  public double forceN(double squeezedMm) {
    return linearNPerMm * squeezedMm + cubicNPerMm3 * squeezedMm * squeezedMm * squeezedMm;
  }

  /** Energy that it has taken up then (Nmm). */
  public double energyNmm(double squeezedMm) {
    double squared = squeezedMm * squeezedMm;
    return linearNPerMm * squared / 2 + cubicNPerMm3 * squared * squared / 4;
  }

  /**
   * How far it is squeezed when a wheel meets it.
   *
   * @param sprungKg what the wheel carries and catches (kg), above 0
   * @param wheelNPerMm rate of the spring at the wheel (N/mm), 0 for none
   * @param aboveRideMm how far above ride the stop is met (mm), 0 or more
   * @return squeeze (mm)
   */
  public double squeezedMm(double sprungKg, double wheelNPerMm, double aboveRideMm) {
    Given.positive("mass that a bump stop catches (kg)", sprungKg);
    double energyNmm = movingNmm(sprungKg);
    double low = 0;
    double high = 1;
    while (takenNmm(high, wheelNPerMm, aboveRideMm) < energyNmm) {
      high *= 2;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (takenNmm(middle, wheelNPerMm, aboveRideMm) < energyNmm) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** Energy of a mass that comes up at the speed at which the stop is met (Nmm). */
  public double movingNmm(double sprungKg) {
    return 0.5 * sprungKg / 1000 * metAtMmPerS * metAtMmPerS;
  }

  private double takenNmm(double squeezedMm, double wheelNPerMm, double aboveRideMm) {
    return wheelNPerMm * squeezedMm * (aboveRideMm + squeezedMm / 2) + energyNmm(squeezedMm);
  }

  /**
   * How much further than under its resting weight a spring is squeezed at most by a weight that
   * falls on it: the whole squeeze is s (1 + √(1 + 2 h/s)).
   *
   * @param weightN the weight (N), above 0
   * @param rateNPerMm rate of the spring (N/mm), above 0
   * @param fallMm how far it falls before it meets the spring (mm), 0 or more
   * @return squeeze of the spring in all (mm). Source: Gere, Mechanics of Materials, problem 2.8-5
   */
  public static double underFallMm(double weightN, double rateNPerMm, double fallMm) {
    Given.positive("weight", weightN, "N", "State it over zero.");
    Given.positive("spring rate", rateNPerMm, "N/mm", "State it over zero.");
    Given.notNegative("height of the fall", fallMm, "mm", "Measure from the weight to the spring.");
    double restingMm = weightN / rateNPerMm;
    return restingMm * (1 + Math.sqrt(1 + 2 * fallMm / restingMm));
  }
}
