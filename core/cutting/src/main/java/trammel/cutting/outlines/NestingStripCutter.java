package trammel.cutting.outlines;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Stream;
import trammel.cutting.CuttingStatus;
import trammel.cutting.background.TwoAtATime;
import trammel.cutting.internal.Deadline;

/**
 * Nests outlines on a short length of strip.
 *
 * <p>From loose columns of parts the strip is shortened again and again, and what then overlaps is
 * pulled apart. By the clock two threads work side by side from one record. By counted effort two
 * workers go their own way for a round and then on from the shorter strip: the plan is the same on
 * one processor and on two.
 */
public final class NestingStripCutter {
  /** Time a problem is given unless the caller says otherwise. */
  public static final Duration USUAL_LIMIT = Duration.ofSeconds(10);

  private static final long SEED = 20_260_105L;
  private static final double NOISE = 1e-9;
  private static final int WORKERS = 2;

  private final Supplier<Deadline> deadline;
  private final boolean counted;
  private final int threads;

  /** A cutter with the effort of the usual time, counted: its plan is the same on any machine. */
  public NestingStripCutter() {
    this(Deadline.eachCounted(USUAL_LIMIT), true, processors());
  }

  /**
   * @param limit longest time for one problem; what is best by then is handed over
   */
  public NestingStripCutter(Duration limit) {
    this(Deadline.eachIn(limit), false, processors());
  }

  /**
   * @param counted whether each of the deadlines counts effort
   * @param threads 1 or 2
   */
  private NestingStripCutter(Supplier<Deadline> deadline, boolean counted, int threads) {
    this.deadline = deadline;
    this.counted = counted;
    this.threads = threads;
  }

  /**
   * A cutter whose plan is the same on any machine.
   *
   * @param limit the effort counted is about what that time takes on a quiet processor
   */
  public static NestingStripCutter counted(Duration limit) {
    return new NestingStripCutter(Deadline.eachCounted(limit), true, processors());
  }

  /**
   * A cutter whose answer does not depend on how fast the machine is.
   *
   * @param steps of each of the two workers; a second takes some 500 million
   * @param threads 1 or 2, which changes nothing but the time
   */
  static NestingStripCutter withEffort(long steps, int threads) {
    return new NestingStripCutter(Deadline.eachAfterSteps(steps), true, threads);
  }

  private static int processors() {
    return Math.min(WORKERS, Runtime.getRuntime().availableProcessors());
  }

  /** Places all parts of the problem. */
  public NestingStripPlan cut(NestingStripProblem problem) {
    Deadline end = deadline.get();
    OutlineShape[][] items = Nest.items(problem.parts());
    if (items.length == 0) {
      return new NestingStripPlan(
          List.of(), 0, 0, CuttingStatus.PROVEN_OPTIMAL, end.elapsedSeconds());
    }
    double boundMm = boundMm(problem, items);
    Nest best = shortest(problem, items, boundMm - 2 * problem.marginMm(), end);
    double lengthMm = best.reach() + 2 * problem.marginMm();
    boundMm = Math.min(lengthMm, boundMm);
    return new NestingStripPlan(
        placed(problem.parts(), best, 0, problem.marginMm()),
        lengthMm,
        boundMm,
        lengthMm - boundMm < NOISE * lengthMm
            ? CuttingStatus.PROVEN_OPTIMAL
            : CuttingStatus.BOUNDED,
        end.elapsedSeconds());
  }

  private Nest shortest(
      NestingStripProblem problem, OutlineShape[][] items, double shortestMm, Deadline end) {
    double widthMm = problem.widthMm() - 2 * problem.marginMm();
    NoFitTable table = new NoFitTable(items, problem.kerfMm(), widthMm);
    Nest nest = ColumnStart.of(items, widthMm, table.clearance);
    StripRecord record = new StripRecord(nest);
    SplittableRandom random = new SplittableRandom(SEED);
    StripWorker[] workers = new StripWorker[counted ? WORKERS : threads];
    StripRecord[] records = new StripRecord[workers.length];
    for (int w = 0; w < workers.length; w++) {
      records[w] = counted ? new StripRecord(nest) : record;
      Deadline own = counted ? deadline.get() : end;
      workers[w] = new StripWorker(records[w], nest, shortestMm, table, random.split(), own);
    }
    if (counted) {
      workInRounds(workers, records, nest, record);
    } else {
      TwoAtATime.all(Stream.of(workers).map(NestingStripCutter::alone).toList(), threads);
    }
    record.copyTo(nest);
    return nest;
  }

  private static Callable<StripRecord> alone(StripWorker worker) {
    return worker::run;
  }

  /** After each round every worker goes on from the shortest strip. */
  private void workInRounds(
      StripWorker[] workers, StripRecord[] records, Nest nest, StripRecord shortest) {
    for (int round = 0; round < StripWorker.ROUNDS; round++) {
      int number = round;
      List<Callable<StripRecord>> work = new ArrayList<>();
      for (StripWorker worker : workers) {
        work.add(() -> worker.round(number));
      }
      for (StripRecord found : TwoAtATime.all(work, threads)) {
        found.copyTo(nest);
        shortest.offer(nest);
      }
      shortest.copyTo(nest);
      for (StripRecord own : records) {
        own.offer(nest);
      }
    }
  }

  /** By area, and by the longest part. */
  private static double boundMm(NestingStripProblem problem, OutlineShape[][] items) {
    double areaMm2 = 0;
    for (OutlinePart part : problem.parts()) {
      areaMm2 += part.areaMm2() * part.quantity();
    }
    double boundMm = areaMm2 / (problem.widthMm() - 2 * problem.marginMm());
    for (OutlineShape[] ways : items) {
      double shortestMm = Double.POSITIVE_INFINITY;
      for (OutlineShape way : ways) {
        shortestMm = Math.min(shortestMm, way.width());
      }
      boundMm = Math.max(boundMm, shortestMm);
    }
    return boundMm + 2 * problem.marginMm();
  }

  /** The items of one sheet as placed parts. */
  static List<PlacedOutline> placed(
      List<OutlinePart> parts, Nest nest, int sheet, double marginMm) {
    List<PlacedOutline> placed = new ArrayList<>();
    int item = 0;
    for (OutlinePart part : parts) {
      for (int i = 0; i < part.quantity(); i++, item++) {
        if (nest.sheet[item] == sheet) {
          placed.add(
              new PlacedOutline(
                  part.id(),
                  part.turnsDeg().get(nest.way[item]),
                  marginMm + nest.x[item],
                  marginMm + nest.y[item]));
        }
      }
    }
    return placed;
  }
}
