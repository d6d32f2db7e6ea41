package trammel.cutting.outlines;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import trammel.cutting.CuttingStatus;
import trammel.cutting.Deadline;

/**
 * Nests outlines on a short length of strip.
 *
 * <p>From loose columns of parts the strip is shortened again and again, and what then overlaps is
 * pulled apart. Given a time, two threads work side by side from one record.
 */
public final class NestingStripCutter {
  /** Time a problem is given unless the caller says otherwise. */
  public static final Duration USUAL_LIMIT = Duration.ofSeconds(10);

  private static final long SEED = 20_260_105L;
  private static final double NOISE = 1e-9;
  private static final int MOST_THREADS = 2;

  private final Supplier<Deadline> deadline;
  private final int threads;

  public NestingStripCutter() {
    this(USUAL_LIMIT);
  }

  /**
   * @param limit longest time for one problem; what is best by then is handed over
   */
  public NestingStripCutter(Duration limit) {
    this(
        Deadline.eachIn(limit), Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()));
  }

  private NestingStripCutter(Supplier<Deadline> deadline, int threads) {
    this.deadline = deadline;
    this.threads = threads;
  }

  /**
   * A cutter whose answer does not depend on how fast the machine is.
   *
   * @param looks how often the search asks whether to stop, which it does for each part it moves
   */
  public static NestingStripCutter withEffort(long looks) {
    return new NestingStripCutter(Deadline.eachAfterLooks(looks), 1);
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
    StripWorker[] workers = new StripWorker[threads];
    SplittableRandom random = new SplittableRandom(SEED);
    for (int w = 0; w < threads; w++) {
      workers[w] = new StripWorker(record, nest, shortestMm, table, random.split(), end);
    }
    SideBySide.run(workers);
    record.copyTo(nest);
    return nest;
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
