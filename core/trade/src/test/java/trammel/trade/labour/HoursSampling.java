package trammel.trade.labour;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import trammel.engine.quantity.Given;

/**
 * Hours of a job by sampling, against which the formula of {@link HoursEstimate} is held. Each line
 * is a beta-PERT variable; one factor common to the job moves them together (Gaussian copula). The
 * same seed gives the same hours on every machine.
 */
final class HoursSampling {

  /** Each line's quantiles are tabulated over ±5 standard normal units. */
  private static final int TABLE_STEPS = 200;

  private static final double TABLE_END = 5;

  private final double[] sorted;

  /**
   * Samples a job.
   *
   * @param hours hours of each line
   * @param commonShare correlation of the normal variables behind any two lines, 0 to 1
   * @param samples how many jobs to draw, 100 to 10 million
   * @param seed start of the random numbers
   */
  public HoursSampling(List<ThreePoint> hours, double commonShare, int samples, long seed) {
    Given.within("share of the common factor", commonShare, 0, 1, "", "0 is independent.");
    Given.count("number of samples", samples, 100, 10_000_000, "2000 is enough to look at.");
    this.sorted = draw(tables(hours), commonShare, samples, seed);
    Arrays.sort(sorted);
  }

  private static double[][] tables(List<ThreePoint> hours) {
    double[][] tables = new double[hours.size()][TABLE_STEPS + 1];
    for (int i = 0; i < tables.length; i++) {
      BetaRange range = hours.get(i).distribution();
      for (int j = 0; j <= TABLE_STEPS; j++) {
        tables[i][j] =
            range.quantile(NormalCurve.chanceWithin(2 * TABLE_END * j / TABLE_STEPS - TABLE_END));
      }
    }
    return tables;
  }

  private static double[] draw(double[][] tables, double commonShare, int samples, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double common = Math.sqrt(commonShare);
    double own = Math.sqrt(1 - commonShare);
    double[] totals = new double[samples];
    for (int s = 0; s < samples; s++) {
      double shared = common * normal(random);
      double total = 0;
      for (double[] table : tables) {
        total += lookUp(table, shared + own * normal(random));
      }
      totals[s] = total;
    }
    return totals;
  }

  private static double normal(SplittableRandom random) {
    double radius = Math.sqrt(-2 * Math.log(1 - random.nextDouble()));
    return radius * Math.cos(2 * Math.PI * random.nextDouble());
  }

  private static double lookUp(double[] table, double z) {
    double place = (Math.max(-TABLE_END, Math.min(TABLE_END, z)) + TABLE_END) / (2 * TABLE_END);
    double step = place * TABLE_STEPS;
    int below = Math.min(TABLE_STEPS - 1, (int) step);
    return table[below] + (step - below) * (table[below + 1] - table[below]);
  }

  /** Mean of the sampled jobs, h. */
  public double meanHours() {
    double sum = 0;
    for (double total : sorted) {
      sum += total;
    }
    return sum / sorted.length;
  }

  /** Standard deviation of the sampled jobs, h. */
  public double standardDeviation() {
    double mean = meanHours();
    double squares = 0;
    for (double total : sorted) {
      squares += (total - mean) * (total - mean);
    }
    return Math.sqrt(squares / sorted.length);
  }

  /**
   * Hours that a given part of the sampled jobs did not exceed.
   *
   * @param chance 0 to 1; 0.8 for P80
   */
  public double quantileHours(double chance) {
    Given.within("chance of a quantile", chance, 0, 1, "", "P80 is 0.8.");
    double place = chance * (sorted.length - 1);
    int below = Math.min(sorted.length - 2, (int) place);
    return sorted[below] + (place - below) * (sorted[below + 1] - sorted[below]);
  }
}
