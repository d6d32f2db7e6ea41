package trammel.planning.learning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import trammel.planning.labour.Operation;
import trammel.planning.labour.ThreePoint;

/**
 * A shop's own hours, learned from its closed jobs.
 *
 * <p>The hours of an operation are taken as standard hours x shop factor x chance. The logarithm of
 * the factor is the shop's pace, the same for all operations, plus the operation's own; both start
 * as normal about 0 with a deviation of a fifth, so that few jobs move them little and many jobs
 * all the way. Each closed job is one observation of them, with the spread and the correlation that
 * the catalog gives its hours; the posterior is worked out job by job. Hours of several operations
 * that were written down together are one observation of their sum, made linear about the present
 * estimate. Sources: Kalman, A new approach to linear filtering and prediction problems, Journal of
 * Basic Engineering 82, 1960; Gelman and others, Bayesian Data Analysis, chapters 2 and 5, both
 * from memory.
 *
 * <p>If the shop's jobs scatter more or less than the catalog says, the spread follows: the
 * variance has a scaled inverse chi-squared prior worth {@value #PRIOR_JOBS} jobs at the catalog's
 * figure, updated with the squared one-step-ahead errors of whole jobs (Gelman and others, section
 * 2.6).
 */
public final class LearnedHours {
  /** Deviation of the shop's pace in logarithms before any job is closed. */
  private static final double PACE_DEVIATION = 0.2;

  /** Deviation of an operation's own factor in logarithms before any job is closed. */
  private static final double OWN_DEVIATION = 0.2;

  private static final int PRIOR_JOBS = 8;

  /** Hours never spread to less than this share of their mean. */
  private static final double LEAST_SHARE = 0.05;

  private final double correlation;
  private final Map<String, Integer> indexes = new LinkedHashMap<>();
  private final Map<String, Integer> jobsByKey = new HashMap<>();
  private RealVector mean = new ArrayRealVector(1);
  private RealMatrix covariance = new Array2DRowRealMatrix(1, 1);
  private double meanVariation;
  private int variations;
  private double squares = PRIOR_JOBS;
  private double freedoms = PRIOR_JOBS;
  private int jobs;

  private LearnedHours(double correlation) {
    this.correlation = correlation;
    covariance.setEntry(0, 0, PACE_DEVIATION * PACE_DEVIATION);
  }

  /**
   * What jobs teach, in the order in which they were closed.
   *
   * @param correlation how much the hours of a job's operations run over together, 0 to 1
   */
  public static LearnedHours from(List<ClosedJob> jobs, double correlation) {
    LearnedHours learned = new LearnedHours(correlation);
    for (ClosedJob job : jobs) {
      learned.take(job);
    }
    return learned;
  }

  /** How many jobs it learned from. */
  public int jobs() {
    return jobs;
  }

  /** How many jobs told something about an operation. */
  public int jobs(String key) {
    return jobsByKey.getOrDefault(key, 0);
  }

  /** What an operation's standard hours are multiplied by. */
  public double factor(String key) {
    Integer index = indexes.get(key);
    return Math.exp(mean.getEntry(0) + (index == null ? 0 : mean.getEntry(index)));
  }

  /** Standard deviation of the logarithm of that factor. */
  public double factorDeviation(String key) {
    return Math.sqrt(factorVariance(key));
  }

  private double factorVariance(String key) {
    Integer index = indexes.get(key);
    double pace = covariance.getEntry(0, 0);
    return index == null
        ? pace + OWN_DEVIATION * OWN_DEVIATION
        : pace + covariance.getEntry(index, index) + 2 * covariance.getEntry(0, index);
  }

  /** What the spread of the catalog's hours is multiplied by, chance alone. */
  public double scatter() {
    return Math.sqrt(squares / freedoms);
  }

  /** Correlation between the hours of two operations, what is not known of the pace included. */
  public double correlation() {
    if (jobs == 0) {
      return correlation;
    }
    double chance = scatter() * scatter() * meanVariation;
    double own = 0;
    for (String key : indexes.keySet()) {
      own += factorVariance(key) / indexes.size();
    }
    double pace = covariance.getEntry(0, 0);
    return Math.min(1, (correlation * chance + pace) / (chance + Math.max(own, pace)));
  }

  /** An operation with the shop's own hours; the catalog's while nothing is learned. */
  public Operation of(Operation operation) {
    if (jobs == 0) {
      return operation;
    }
    ThreePoint standard = operation.hoursPerUnit();
    double factor = factor(operation.key());
    double mean = factor * standard.mean();
    double variation = standard.mean() > 0 ? standard.standardDeviation() / standard.mean() : 0;
    double chance = scatter() * scatter() * variation * variation;
    double wider =
        variation > 0 ? Math.sqrt(chance + factorVariance(operation.key())) / variation : 1;
    double low = mean + factor * wider * (standard.low() - standard.mean());
    double likely = mean + factor * wider * (standard.likely() - standard.mean());
    double high = mean + factor * wider * (standard.high() - standard.mean());
    return operation.withHours(
        kept(mean, low, likely, high),
        operation.sourceNote() + "; x " + rounded(factor) + " by the shop's closed jobs");
  }

  /** Where a wide spread would reach to nothing, the low end is held and the mean kept. */
  private static ThreePoint kept(double mean, double low, double likely, double high) {
    double least = LEAST_SHARE * mean;
    if (low >= least) {
      return new ThreePoint(low, Math.max(low, likely), Math.max(likely, high));
    }
    double heldLikely = Math.max(least, Math.min(likely, (6 * mean - 2 * least) / 5));
    double heldHigh = Math.max(heldLikely, 6 * mean - 4 * heldLikely - least);
    return new ThreePoint(least, heldLikely, heldHigh);
  }

  private static String rounded(double factor) {
    return trammel.planning.quantity.DecimalText.fixed(factor, 2);
  }

  private void take(ClosedJob job) {
    for (ClosedOperation operation : job.operations()) {
      addKey(operation.key());
      meanVariation += (square(operation.variation()) - meanVariation) / ++variations;
    }
    learnScatter(job);
    List<Observation> observations = observations(job);
    if (!observations.isEmpty()) {
      update(observations);
      jobs++;
    }
  }

  private void addKey(String key) {
    if (indexes.containsKey(key)) {
      return;
    }
    int size = mean.getDimension();
    indexes.put(key, size);
    mean = mean.append(0);
    RealMatrix larger = new Array2DRowRealMatrix(size + 1, size + 1);
    larger.setSubMatrix(covariance.getData(), 0, 0);
    larger.setEntry(size, size, OWN_DEVIATION * OWN_DEVIATION);
    covariance = larger;
  }

  /**
   * One sum of hours that was written down.
   *
   * @param weights share of each unknown in the logarithm of the sum
   * @param left logarithm of the hours used over those expected
   * @param pull sum of share x variation, for what is common to the job
   * @param own sum of (share x variation) squared, for what is not
   */
  private record Observation(RealVector weights, double left, double pull, double own) {}

  private List<Observation> observations(ClosedJob job) {
    List<Observation> observations = new ArrayList<>();
    for (ClosedOperation operation : job.operations()) {
      if (operation.usedHours().isPresent()) {
        observations.add(observation(List.of(operation), operation.usedHours().getAsDouble()));
        jobsByKey.merge(operation.key(), 1, Integer::sum);
      }
    }
    OptionalDouble together = job.togetherHours();
    if (together.isPresent()) {
      observations.add(observation(job.together(), together.getAsDouble()));
      for (ClosedOperation operation : job.together()) {
        jobsByKey.merge(operation.key(), 1, Integer::sum);
      }
    }
    return observations;
  }

  private Observation observation(List<ClosedOperation> operations, double used) {
    double expected = 0;
    for (ClosedOperation operation : operations) {
      expected += operation.standardHours() * factor(operation.key());
    }
    RealVector weights = new ArrayRealVector(mean.getDimension());
    weights.setEntry(0, 1);
    double pull = 0;
    double own = 0;
    for (ClosedOperation operation : operations) {
      double share = operation.standardHours() * factor(operation.key()) / expected;
      weights.addToEntry(indexes.get(operation.key()), share);
      pull += share * operation.variation();
      own += square(share * operation.variation());
    }
    // The logarithm of hours with a mean of 1 has a mean of minus half its variance.
    double variance = square(scatter()) * (correlation * pull * pull + (1 - correlation) * own);
    return new Observation(weights, Math.log(used / expected) + variance / 2, pull, own);
  }

  private void update(List<Observation> observations) {
    int count = observations.size();
    RealMatrix weights = new Array2DRowRealMatrix(count, mean.getDimension());
    RealMatrix noise = new Array2DRowRealMatrix(count, count);
    RealVector left = new ArrayRealVector(count);
    double chance = square(scatter());
    for (int i = 0; i < count; i++) {
      weights.setRowVector(i, observations.get(i).weights());
      left.setEntry(i, observations.get(i).left());
      for (int k = 0; k < count; k++) {
        double shared = correlation * observations.get(i).pull() * observations.get(k).pull();
        double own = i == k ? (1 - correlation) * observations.get(i).own() : 0;
        noise.setEntry(i, k, chance * (shared + own));
      }
    }
    RealMatrix across = covariance.multiply(weights.transpose());
    RealMatrix gain =
        across.multiply(
            new LUDecomposition(weights.multiply(across).add(noise)).getSolver().getInverse());
    mean = mean.add(gain.operate(left));
    covariance = covariance.subtract(gain.multiply(across.transpose()));
  }

  /** The whole job against what was expected of it before it was known. */
  private void learnScatter(ClosedJob job) {
    OptionalDouble whole = job.wholeHours();
    if (whole.isEmpty()) {
      return;
    }
    Observation seen = observation(job.operations(), whole.getAsDouble());
    double chance = correlation * square(seen.pull()) + (1 - correlation) * seen.own();
    double unknown = seen.weights().dotProduct(covariance.operate(seen.weights()));
    squares += square(seen.left()) / (chance + unknown);
    freedoms++;
  }

  private static double square(double value) {
    return value * value;
  }
}
