package trammel.planning.labour;

import trammel.planning.given.Given;

/** The standard normal distribution. */
public final class NormalCurve {

  private static final double FURTHEST = 8;

  private NormalCurve() {}

  /**
   * Chance that a standard normal variable is not above z. Series 26.2.11 of Abramowitz and Stegun,
   * exact to double rounding within ±8 and 0 or 1 beyond.
   */
  public static double chanceWithin(double z) {
    if (z < -FURTHEST) {
      return 0;
    }
    if (z > FURTHEST) {
      return 1;
    }
    double term = z;
    double sum = z;
    for (int i = 3; Math.abs(term) > 1e-17 * Math.abs(sum); i += 2) {
      term *= z * z / i;
      sum += term;
    }
    double chance = 0.5 + sum * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    return Math.max(0, Math.min(1, chance));
  }

  /**
   * z that a standard normal variable does not exceed with a given chance: z80 = 0.8416.
   *
   * @param chance above 0, below 1
   * @throws IllegalArgumentException outside that range
   */
  public static double quantile(double chance) {
    Given.between(
        chance, 1e-12, 1 - 1e-12, "Chance of a normal quantile", "P80 is 0.8; 0 and 1 have none.");
    double below = -FURTHEST;
    double above = FURTHEST;
    while (above - below > 1e-12) {
      double middle = (below + above) / 2;
      if (chanceWithin(middle) < chance) {
        below = middle;
      } else {
        above = middle;
      }
    }
    return (below + above) / 2;
  }
}
