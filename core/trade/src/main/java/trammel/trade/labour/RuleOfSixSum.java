package trammel.trade.labour;

import java.util.List;

/**
 * The text-book sum of three-point figures: means add, variances of (high − low) / 6 add, and the
 * total is taken as normal. Kept to compare with other people's sheets; {@link HoursEstimate} uses
 * the true spread and a correlation.
 *
 * @param hours the figures to add
 */
public record RuleOfSixSum(List<ThreePoint> hours) {

  public RuleOfSixSum {
    hours = List.copyOf(hours);
  }

  /** Sum of means, h. */
  public double meanHours() {
    double mean = 0;
    for (ThreePoint one : hours) {
      mean += one.mean();
    }
    return mean;
  }

  /** Spread when every figure is independent of the others, h. */
  public double independentDeviation() {
    double squares = 0;
    for (ThreePoint one : hours) {
      squares += one.ruleOfSixDeviation() * one.ruleOfSixDeviation();
    }
    return Math.sqrt(squares);
  }

  /** Spread when all run over together, h. */
  public double togetherDeviation() {
    double sum = 0;
    for (ThreePoint one : hours) {
      sum += one.ruleOfSixDeviation();
    }
    return sum;
  }

  /** Chance that independent figures add up to no more than the given hours. */
  public double chanceWithin(double totalHours) {
    double deviation = independentDeviation();
    if (deviation == 0) {
      return totalHours >= meanHours() ? 1 : 0;
    }
    return NormalCurve.chanceWithin((totalHours - meanHours()) / deviation);
  }

  /** Hours that independent figures do not exceed with a given chance, above 0 and below 1. */
  public double quantileHours(double chance) {
    return meanHours() + NormalCurve.quantile(chance) * independentDeviation();
  }
}
