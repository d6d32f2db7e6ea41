package trammel.planning.learning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.SplittableRandom;
import trammel.engine.quantity.Phrase;
import trammel.trade.labour.BetaRange;
import trammel.trade.labour.HoursEstimate;
import trammel.trade.labour.NormalCurve;
import trammel.trade.labour.Operation;
import trammel.trade.labour.OperationLine;
import trammel.trade.labour.ThreePoint;

/**
 * A shop with a pace of its own, a factor of its own for each operation and a scatter of its own,
 * all unknown to the estimate, which closes job after job. Everything about it is invented.
 */
final class SimulatedShop {
  private static final double CORRELATION = 0.3;
  private static final double[][] STANDARD = {
    {1.5, 2, 4}, {0.5, 0.8, 1.5}, {2, 3, 6}, {4, 5, 9}, {0.2, 0.3, 0.5}, {6, 8, 14},
    {1, 1.5, 2}, {3, 4, 8}, {0.8, 1, 2.5}, {2, 2.5, 3.5}, {5, 6, 12}, {1, 2, 3}
  };

  private final Random random;
  private final double[] factors = new double[STANDARD.length];
  private final double scatter;
  private final List<ClosedJob> closed = new ArrayList<>();

  SimulatedShop(long seed) {
    // Neighbouring seeds of this generator begin alike: unmixed, all shops would have like paces.
    random = new Random(new SplittableRandom(seed).nextLong());
    double pace = 0.2 * random.nextGaussian();
    for (int i = 0; i < factors.length; i++) {
      factors[i] = Math.exp(pace + 0.2 * random.nextGaussian());
    }
    scatter = 0.8 + 0.4 * random.nextDouble();
  }

  List<ClosedJob> closed() {
    return closed;
  }

  LearnedHours learned() {
    return LearnedHours.from(closed, CORRELATION);
  }

  double trueFactor(int operation) {
    return factors[operation];
  }

  static String key(int operation) {
    return "operation-" + operation;
  }

  static int operations() {
    return STANDARD.length;
  }

  private static Operation operation(int index) {
    double[] hours = STANDARD[index];
    return new Operation(
        key(index),
        key(index),
        "piece",
        new ThreePoint(hours[0], hours[1], hours[2]),
        List.of(),
        "invented");
  }

  /** Quotes and does one more job; true if its hours stayed within eight of ten. */
  boolean closeAJob() {
    LearnedHours learned = learned();
    List<OperationLine> lines = new ArrayList<>();
    List<Integer> chosen = new ArrayList<>();
    for (int i = 0; i < STANDARD.length; i++) {
      if (random.nextDouble() < 0.75) {
        chosen.add(i);
        int quantity = 1 + random.nextInt(4);
        lines.add(
            new OperationLine(
                learned.of(operation(i)),
                quantity,
                Phrase.text(quantity + " pieces"),
                List.of(),
                Phrase.of("invented")));
      }
    }
    if (chosen.isEmpty()) {
      return closeAJob();
    }
    HoursEstimate quote = new HoursEstimate(lines, learned.correlation());
    double eightOfTen = quote.p80Hours();
    double shared = random.nextGaussian();
    double whole = 0;
    List<ClosedOperation> operations = new ArrayList<>();
    boolean apart = random.nextBoolean();
    for (int k = 0; k < chosen.size(); k++) {
      OperationLine standard =
          new OperationLine(
              operation(chosen.get(k)),
              lines.get(k).quantity(),
              Phrase.text("pieces"),
              List.of(),
              Phrase.of("invented"));
      double used = factors[chosen.get(k)] * drawn(standard, shared);
      whole += used;
      operations.add(
          new ClosedOperation(
              key(chosen.get(k)),
              standard.hours().mean(),
              standard.hours().standardDeviation(),
              apart ? OptionalDouble.of(used) : OptionalDouble.empty()));
    }
    closed.add(
        new ClosedJob(
            "J" + closed.size(),
            LocalDate.of(2026, 1, 1).plusDays(closed.size()),
            quote.meanHours(),
            eightOfTen,
            operations,
            OptionalDouble.of(whole)));
    return whole <= eightOfTen;
  }

  /** Hours of a line: its beta distribution, moved with the rest of the job, scattered as it is. */
  private double drawn(OperationLine line, double shared) {
    double normal =
        Math.sqrt(CORRELATION) * shared + Math.sqrt(1 - CORRELATION) * random.nextGaussian();
    BetaRange range = line.hours().distribution();
    double mean = line.hours().mean();
    double hours = range.quantile(NormalCurve.chanceWithin(normal));
    return Math.max(0.1 * mean, mean + scatter * (hours - mean));
  }
}
