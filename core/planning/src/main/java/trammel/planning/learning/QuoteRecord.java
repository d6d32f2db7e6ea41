package trammel.planning.learning;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How past quotes did: how often the hours really used stayed within those that eight of ten jobs
 * were to stay within.
 *
 * @param jobs jobs whose whole hours are known
 * @param within how many stayed within
 */
public record QuoteRecord(int jobs, int within) {
  /** Normal deviate of a two-sided interval of nine in ten. */
  private static final double NINE_IN_TEN = 1.6448536269514722;

  /** Counts closed jobs. */
  public static QuoteRecord of(List<ClosedJob> closed) {
    int jobs = 0;
    int within = 0;
    for (ClosedJob job : closed) {
      OptionalDouble whole = job.wholeHours();
      if (whole.isPresent()) {
        jobs++;
        within += whole.getAsDouble() <= job.quotedEightOfTen() ? 1 : 0;
      }
    }
    return new QuoteRecord(jobs, within);
  }

  /** Share that stayed within. */
  public double share() {
    return jobs == 0 ? 0 : (double) within / jobs;
  }

  /**
   * Least share that these jobs speak for, nine times in ten. Source: Wilson, Probable inference,
   * the law of succession, and statistical inference, JASA 22, 1927, from memory.
   */
  public double leastShare() {
    return middle() - half();
  }

  /** Largest share that these jobs speak for, nine times in ten. */
  public double mostShare() {
    return middle() + half();
  }

  private double middle() {
    double z2 = NINE_IN_TEN * NINE_IN_TEN;
    return jobs == 0 ? 0.5 : (share() + z2 / (2 * jobs)) / (1 + z2 / jobs);
  }

  private double half() {
    if (jobs == 0) {
      return 0.5;
    }
    double z2 = NINE_IN_TEN * NINE_IN_TEN;
    double spread = share() * (1 - share()) / jobs + z2 / (4.0 * jobs * jobs);
    return NINE_IN_TEN * Math.sqrt(spread) / (1 + z2 / jobs);
  }
}
