package trammel.planning.learning;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
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
import trammel.trade.labour.Operation;
import trammel.trade.labour.ThreePoint;

/**
 * A shop's own hours, learned from its closed jobs by credibility: how far a job came out from what
 * was expected of it is taken in the share Z = what was not known / (what was not known + how jobs
 * scatter), both as variances. One job moves a factor a little, many jobs all the way.
 *
 * <p>The hours of an operation are taken as standard hours x (1 + the shop's pace + the operation's
 * own deviation) + chance. Pace and deviation start at 0, each known to a standard deviation of a
 * fifth: common practice, no source. Chance has the spread and the correlation that the catalog
 * gives the hours. Everything is in hours and not in their logarithms, because a quote prints mean
 * hours: jobs that take exactly these leave every factor where it is, and factors close in on the
 * mean of what jobs take, not on its median. Hours of several operations that were written down
 * together are one observation of their sum. With many operations the shares are matrices, worked
 * out job by job. Sources: Bühlmann, Experience rating and credibility, ASTIN Bulletin 4, 1967, the
 * best linear estimate from means and variances alone; Kalman, A new approach to linear filtering
 * and prediction problems, Journal of Basic Engineering 82, 1960, for the update; both from memory.
 *
 * <p>No job is like the next, and what a shop does differently on purpose is not yet in the catalog
 * when its first jobs are closed. A job therefore counts as a quarter of an observation: the
 * variance of its chance is taken four times as large. Source: Ibrahim and Chen, Power prior
 * distributions for regression models, Statistical Science 15, 2000, from memory; the quarter is
 * this tool's own choice. What lies further out than two standard deviations of what was expected
 * counts as that far: a mishap, or hours written into the wrong line, say little of the next job.
 * Source: Huber, Robust estimation of a location parameter, Annals of Mathematical Statistics 35,
 * 1964, from memory.
 *
 * <p>If the shop's jobs scatter more or less than the catalog says, the spread follows: the
 * variance has a scaled inverse chi-squared prior worth {@value #PRIOR_JOBS} jobs at the catalog's
 * figure, updated with the squared one-step-ahead errors of whole jobs. Source: Gelman and others,
 * Bayesian Data Analysis, section 2.6, from memory.
 */
public final class LearnedHours {
  /** How far the shop's pace may be from the catalog's before any job is closed, of 1. */
  private static final double PACE_DEVIATION = 0.2;

  /** How far an operation may be from that pace before any job is closed, of 1. */
  private static final double OWN_DEVIATION = 0.2;

  /** What share of an observation one job counts as. */
  private static final double TOLD_BY_ONE_JOB = 0.25;

  /** How many standard deviations from what was expected an observation counts at most. */
  private static final double MOST_SURPRISE = 2;

  /** No operation is ever taken to need less than this share of its standard hours. */
  private static final double LEAST_FACTOR = 0.1;

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
    double factor = 1 + mean.getEntry(0) + (index == null ? 0 : mean.getEntry(index));
    return Math.max(LEAST_FACTOR, factor);
  }

  /** Standard deviation of that factor: how far it may still be from the shop's true one. */
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
    double level = 0;
    for (String key : indexes.keySet()) {
      own += factorVariance(key) / indexes.size();
      level += square(factor(key)) / indexes.size();
    }
    double pace = covariance.getEntry(0, 0);
    chance *= level;
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
    double unknown = factorVariance(operation.key()) / square(factor);
    double wider = variation > 0 ? Math.sqrt(chance + unknown) / variation : 1;
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
    return trammel.reading.quantity.DecimalText.fixed(factor, 2);
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
   * One sum of hours that was written down; all in shares of the standard hours of the sum.
   *
   * @param weights share of each unknown in the sum
   * @param left hours used less those expected
   * @param pull sum of share x deviation, for what is common to the job
   * @param own sum of (share x deviation) squared, for what is not
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
    double standard = 0;
    for (ClosedOperation operation : operations) {
      standard += operation.standardHours();
    }
    RealVector weights = new ArrayRealVector(mean.getDimension());
    weights.setEntry(0, 1);
    double expected = 0;
    double pull = 0;
    double own = 0;
    for (ClosedOperation operation : operations) {
      double share = operation.standardHours() / standard;
      double factor = factor(operation.key());
      weights.addToEntry(indexes.get(operation.key()), share);
      expected += share * factor;
      pull += share * factor * operation.variation();
      own += square(share * factor * operation.variation());
    }
    double chance = square(scatter()) * chance(pull, own);
    double most = MOST_SURPRISE * Math.sqrt(chance + unknown(weights));
    double left = Math.max(-most, Math.min(most, used / standard - expected));
    return new Observation(weights, left, pull, own);
  }

  /** Variance by the catalog of hours that run over together in part. */
  private double chance(double pull, double own) {
    return correlation * square(pull) + (1 - correlation) * own;
  }

  /** Variance of what is not known yet of the factors. */
  private double unknown(RealVector weights) {
    return weights.dotProduct(covariance.operate(weights));
  }

  private void update(List<Observation> observations) {
    int count = observations.size();
    RealMatrix weights = new Array2DRowRealMatrix(count, mean.getDimension());
    RealMatrix noise = new Array2DRowRealMatrix(count, count);
    RealVector left = new ArrayRealVector(count);
    double chance = square(scatter()) / TOLD_BY_ONE_JOB;
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
    squares += square(seen.left()) / (chance(seen.pull(), seen.own()) + unknown(seen.weights()));
    freedoms++;
  }

  private static double square(double value) {
    return value * value;
  }

  /**
   * Writes all that was learned.
   *
   * @throws IOException if it cannot be written
   */
  public void writeTo(DataOutput out) throws IOException {
    out.writeDouble(correlation);
    out.writeInt(indexes.size());
    for (String key : indexes.keySet()) {
      out.writeUTF(key);
      out.writeInt(jobs(key));
    }
    for (int i = 0; i < mean.getDimension(); i++) {
      out.writeDouble(mean.getEntry(i));
      for (int k = 0; k < mean.getDimension(); k++) {
        out.writeDouble(covariance.getEntry(i, k));
      }
    }
    out.writeDouble(meanVariation);
    out.writeInt(variations);
    out.writeDouble(squares);
    out.writeDouble(freedoms);
    out.writeInt(jobs);
  }

  /**
   * Reads what {@link #writeTo} wrote, of the same release.
   *
   * @throws IOException if it ends early
   */
  public static LearnedHours readFrom(DataInput in) throws IOException {
    LearnedHours learned = new LearnedHours(in.readDouble());
    int keys = in.readInt();
    for (int i = 0; i < keys; i++) {
      String key = in.readUTF();
      learned.indexes.put(key, i + 1);
      int told = in.readInt();
      if (told > 0) {
        learned.jobsByKey.put(key, told);
      }
    }
    learned.mean = new ArrayRealVector(keys + 1);
    learned.covariance = new Array2DRowRealMatrix(keys + 1, keys + 1);
    for (int i = 0; i <= keys; i++) {
      learned.mean.setEntry(i, in.readDouble());
      for (int k = 0; k <= keys; k++) {
        learned.covariance.setEntry(i, k, in.readDouble());
      }
    }
    learned.meanVariation = in.readDouble();
    learned.variations = in.readInt();
    learned.squares = in.readDouble();
    learned.freedoms = in.readDouble();
    learned.jobs = in.readInt();
    return learned;
  }
}
