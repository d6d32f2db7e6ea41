package trammel.trade.labour;

import org.apache.commons.math3.distribution.BetaDistribution;
import trammel.engine.quantity.Given;

/**
 * A beta distribution stretched over a range.
 *
 * @param low lower end
 * @param high upper end; equal to the lower end for a single figure
 * @param alpha first shape number, above 0
 * @param beta second shape number, above 0
 */
public record BetaRange(double low, double high, double alpha, double beta) {

  private static final double LARGEST_SHAPE = 1e7;
  private static final double NARROW = 1e-9;
  private static final double QUANTILE_TOLERANCE = 1e-14;

  public BetaRange {
    if (!(low <= high) || Double.isInfinite(low) || Double.isInfinite(high)) {
      throw new IllegalArgumentException(
          "A range was given as "
              + low
              + " to "
              + high
              + "; the ends must be in order and finite.");
    }
    Given.positive("first shape number of a beta distribution", alpha, LARGEST_SHAPE, "", "");
    Given.positive("second shape number of a beta distribution", beta, LARGEST_SHAPE, "", "");
  }

  /** A figure that is known. */
  public static BetaRange single(double value) {
    return new BetaRange(value, value, 1, 1);
  }

  /**
   * The beta distribution over a range that has a given mean and standard deviation.
   *
   * @param low lower end
   * @param high upper end
   * @param mean mean, within the range
   * @param standardDeviation spread, less than the widest a range can hold
   * @return the distribution; the mean alone when the spread is nothing beside the range
   * @throws IllegalArgumentException when the range cannot hold them
   */
  public static BetaRange matching(double low, double high, double mean, double standardDeviation) {
    double width = high - low;
    if (standardDeviation <= NARROW * width || width == 0) {
      return single(mean);
    }
    double place = (mean - low) / width;
    double shapes =
        place * (1 - place) * width * width / (standardDeviation * standardDeviation) - 1;
    double bounded = Math.min(shapes, LARGEST_SHAPE);
    return new BetaRange(low, high, place * bounded, (1 - place) * bounded);
  }

  /** Mean. */
  public double mean() {
    return low + (high - low) * alpha / (alpha + beta);
  }

  /** Standard deviation. */
  public double standardDeviation() {
    double sum = alpha + beta;
    return (high - low) / sum * Math.sqrt(alpha * beta / (sum + 1));
  }

  /** Chance that the value is not above the given one. */
  public double chanceWithin(double value) {
    if (value < low) {
      return 0;
    }
    if (value >= high) {
      return 1;
    }
    return shape().cumulativeProbability((value - low) / (high - low));
  }

  /**
   * Value that is not exceeded with a given chance.
   *
   * @param chance 0 to 1; 0.8 for P80
   * @throws IllegalArgumentException when the chance is outside 0 to 1
   */
  public double quantile(double chance) {
    Given.within("chance of a quantile", chance, 0, 1, "", "P80 is 0.8.");
    if (low == high) {
      return low;
    }
    return low + (high - low) * shape().inverseCumulativeProbability(chance);
  }

  private BetaDistribution shape() {
    return new BetaDistribution(null, alpha, beta, QUANTILE_TOLERANCE);
  }
}
