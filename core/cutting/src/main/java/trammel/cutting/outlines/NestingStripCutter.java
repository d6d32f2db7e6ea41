package trammel.cutting.outlines;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
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
  private final int threads;

  /** A cutter with the effort of the usual time, counted: its plan is the same on any machine. */
  public NestingStripCutter() {
    this(Deadline.eachCounted(USUAL_LIMIT), TwoAtATime.workers());
  }

  /**
   * @param limit longest time for one problem; what is best by then is handed over
   */
  public NestingStripCutter(Duration limit) {
    this(Deadline.eachIn(limit), TwoAtATime.workers());
  }

  /**
   * @param deadline where it counts effort, that of each of the two workers
   * @param threads 1 or 2, which changes nothing but the time where effort is counted
   */
  NestingStripCutter(Supplier<Deadline> deadline, int threads) {
    this.deadline = deadline;
    this.threads = threads;
  }

  /**
   * A cutter whose plan is the same on any machine.
   *
   * @param limit the effort counted is about what that time takes on a quiet processor
   */
  public static NestingStripCutter counted(Duration limit) {
    return new NestingStripCutter(Deadline.eachCounted(limit), TwoAtATime.workers());
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
    Start start = new Start(nest, shortestMm, table, new SplittableRandom(SEED));
    if (end.isCounted()) {
      workInRounds(start, record);
    } else {
      workSideBySide(start, record, end);
    }
    record.copyTo(nest);
    return nest;
  }

  /** What all workers start from. */
  private record Start(Nest nest, double shortestMm, NoFitTable table, SplittableRandom random) {
    StripWorker worker(StripRecord record, Deadline end) {
      return new StripWorker(record, nest, shortestMm, table, random.split(), end);
    }
  }

  /** One worker on each thread; this thread takes part. */
  private void workSideBySide(Start start, StripRecord record, Deadline end) {
    List<Callable<StripRecord>> work = new ArrayList<>();
    for (int w = 0; w < threads; w++) {
      work.add(start.worker(record, end)::run);
    }
    TwoAtATime.all(work, threads);
  }

  /** After each round every worker goes on from the shortest strip. */
  private void workInRounds(Start start, StripRecord shortest) {
    List<StripWorker> workers = new ArrayList<>();
    List<StripRecord> records = new ArrayList<>();
    for (int w = 0; w < WORKERS; w++) {
      StripRecord own = new StripRecord(start.nest);
      records.add(own);
      workers.add(start.worker(own, deadline.get()));
    }
    for (int round = 0; round < StripWorker.ROUNDS; round++) {
      int number = round;
      List<Callable<StripRecord>> work = new ArrayList<>();
      for (StripWorker worker : workers) {
        work.add(() -> worker.round(number));
      }
      for (StripRecord found : TwoAtATime.all(work, threads)) {
        shortest.offer(found);
      }
      for (StripRecord own : records) {
        own.offer(shortest);
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
