package trammel.trade.labour;

import trammel.engine.quantity.Given;

/**
 * A low, a likely and a high figure for hours, read as a beta-PERT distribution.
 *
 * <p>The mean is (low + 4 likely + high) / 6. Two spreads are in use and differ by up to a third:
 * the trade's rule (high − low) / 6, and the true standard deviation of the beta-PERT shape,
 * √((mean − low)(high − mean) / 7). Everything this tool works out from sums uses the second; the
 * first is here to compare with other people's sheets.
 *
 * @param low lowest figure that is still realistic, h, 0 to 100 000
 * @param likely most likely figure, h
 * @param high highest figure that is still realistic, h
 */
public record ThreePoint(double low, double likely, double high) {

  private static final double MOST_HOURS = 100_000;

  public ThreePoint {
    if (!(low >= 0 && low <= likely && likely <= high && high <= MOST_HOURS)) {
      throw new IllegalArgumentException(
          "Hours were given as low "
              + low
              + ", likely "
              + likely
              + ", high "
              + high
              + "; allowed is 0 <= low <= likely <= high <= "
              + MOST_HOURS
              + ". Put the three in that order.");
    }
  }

  /** A figure that is known: all three equal. */
  public static ThreePoint exactly(double hours) {
    return new ThreePoint(hours, hours, hours);
  }

  /** Mean of the distribution, h. */
  public double mean() {
    return (low + 4 * likely + high) / 6;
  }

  /** True standard deviation of the beta-PERT shape, h. */
  public double standardDeviation() {
    double mean = mean();
    return Math.sqrt(Math.max(0, (mean - low) * (high - mean) / 7));
  }

  /** The trade's rule (high − low) / 6, h. */
  public double ruleOfSixDeviation() {
    return (high - low) / 6;
  }

  /** The beta-PERT distribution; one that is a single figure when low equals high. */
  public BetaRange distribution() {
    return high > low
        ? new BetaRange(
            low,
            high,
            1 + 4 * (likely - low) / (high - low),
            1 + 4 * (high - likely) / (high - low))
        : BetaRange.single(low);
  }

  /**
   * Hours that are not exceeded with a given chance.
   *
   * @param chance 0 to 1; 0.8 for P80
   */
  public double quantile(double chance) {
    return distribution().quantile(chance);
  }

  /**
   * All three multiplied, for a quantity or a factor.
   *
   * @param factor 0 or more
   */
  public ThreePoint times(double factor) {
    Given.within("multiplier of hours", factor, 0, MOST_HOURS, "", "Give a quantity or a factor.");
    return new ThreePoint(low * factor, likely * factor, high * factor);
  }

  /** Low with low, likely with likely, high with high. */
  public ThreePoint plus(ThreePoint other) {
    return new ThreePoint(low + other.low, likely + other.likely, high + other.high);
  }
}
