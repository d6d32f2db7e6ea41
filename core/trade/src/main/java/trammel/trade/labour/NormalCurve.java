package trammel.trade.labour;

import org.apache.commons.math3.distribution.NormalDistribution;
import trammel.engine.quantity.Given;

/** The standard normal distribution. */
public final class NormalCurve {

  private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);

  private NormalCurve() {}

  /** Chance that a standard normal variable is not above z. */
  public static double chanceWithin(double z) {
    return STANDARD.cumulativeProbability(z);
  }

  /**
   * z that a standard normal variable does not exceed with a given chance: z80 = 0.8416.
   *
   * @param chance above 0, below 1
   * @throws IllegalArgumentException outside that range
   */
  public static double quantile(double chance) {
    Given.within(
        "chance of a normal quantile",
        chance,
        1e-12,
        1 - 1e-12,
        "",
        "P80 is 0.8; 0 and 1 have none.");
    return STANDARD.inverseCumulativeProbability(chance);
  }
}
