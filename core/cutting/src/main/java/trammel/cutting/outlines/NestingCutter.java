package trammel.cutting.outlines;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import trammel.cutting.CuttingStatus;
import trammel.cutting.StockShortageException;
import trammel.cutting.internal.Deadline;
import trammel.cutting.internal.PriceLadder;
import trammel.cutting.sheets.SheetCutter;
import trammel.cutting.sheets.SheetCuttingPlan;

/**
 * Nests outlines on the cheapest sheets it can.
 *
 * <p>It starts from the plan for the rectangles around the outlines, so that it is never dearer,
 * and then tries every cheaper set of sheets that has enough area.
 */
public final class NestingCutter {
  /** Time a problem is given unless the caller says otherwise. */
  public static final Duration USUAL_LIMIT = Duration.ofSeconds(5);

  private static final double RECTANGLE_PART = 0.15;
  private static final double LEAST_MILLIS = 50;

  /** Effort for the rectangles of a quick plan. */
  private static final long QUICK_LOOKS = 30;

  private final Supplier<Deadline> deadline;
  private final SheetCutter rectangles;
  private final boolean thorough;

  /** A cutter with the effort of the usual time, counted: its plan is the same on any machine. */
  public NestingCutter() {
    this(Deadline.eachCounted(USUAL_LIMIT), new SheetCutter(), true);
  }

  /**
   * @param limit longest time for one problem; what is best by then is handed over
   */
  public NestingCutter(Duration limit) {
    this(
        Deadline.eachIn(limit),
        new SheetCutter(
            Duration.ofMillis((long) Math.max(LEAST_MILLIS, RECTANGLE_PART * limit.toMillis()))),
        true);
  }

  private NestingCutter(Supplier<Deadline> deadline, SheetCutter rectangles, boolean thorough) {
    this.deadline = deadline;
    this.rectangles = rectangles;
    this.thorough = thorough;
  }

  /**
   * A cutter whose answer does not depend on how fast the machine is.
   *
   * @param looks how often the search asks whether to stop, which it does for each part it moves
   */
  public static NestingCutter withEffort(long looks) {
    return new NestingCutter(Deadline.eachAfterLooks(looks), SheetCutter.withEffort(looks), true);
  }

  /**
   * A cutter that places one part after another and searches no further: quick, and its answer does
   * not depend on how fast the machine is.
   *
   * @param sets how many sets of sheets it looks at
   */
  public static NestingCutter quick(int sets) {
    return new NestingCutter(
        Deadline.eachAfterLooks(sets), SheetCutter.withEffort(QUICK_LOOKS), false);
  }

  /**
   * Nests the parts of the problem.
   *
   * @throws StockShortageException when the sheets do not hold all parts
   */
  public NestingPlan cut(NestingProblem problem) {
    Deadline deadline = this.deadline.get();
    if (problem.parts().isEmpty()) {
      return new NestingPlan(
          List.of(),
          BigDecimal.ZERO,
          BigDecimal.ZERO,
          CuttingStatus.PROVEN_OPTIMAL,
          deadline.elapsedSeconds());
    }
    return new Search(problem, deadline, RectangleNest.plan(problem, rectangles), thorough).run();
  }

  /** Whether a list is so long that it is better cut sheet by sheet: see {@link #cutLong}. */
  public static boolean isLong(NestingProblem problem) {
    return problem.partCount() > RepeatedLayouts.LONG_LIST;
  }

  /**
   * Nests a long list sheet by sheet, at a cost that grows with the list and no faster; the plan is
   * the same on every machine.
   *
   * @throws StockShortageException when the sheets do not hold all parts
   */
  public static NestingPlan cutLong(NestingProblem problem) {
    return RepeatedLayouts.plan(problem);
  }

  /**
   * Nests the parts of the problem on less than a plan for the rectangles round them takes, if it
   * can.
   *
   * @param plan the plan to start from; its parts go by the problem's names
   */
  public NestingPlan cut(NestingProblem problem, SheetCuttingPlan plan) {
    return new Search(problem, deadline.get(), plan, thorough).run();
  }

  /** One problem being solved. */
  private static final class Search {
    private static final int MOST_SETS = 40;

    private final NestingProblem problem;
    private final Deadline deadline;
    private final boolean thorough;
    private final CellNest cells;
    private final NestingStock stock;
    private final PriceLadder ladder;
    private final long lowerBound;
    private ScatteredNest scattered;
    private List<NestedSheet> best;
    private long bestPrice;

    Search(
        NestingProblem problem, Deadline deadline, SheetCuttingPlan rectangles, boolean thorough) {
      this.problem = problem;
      this.deadline = deadline;
      this.thorough = thorough;
      this.cells = new CellNest(problem);
      this.stock = new NestingStock(problem);
      offer(RectangleNest.of(problem, rectangles));
      this.ladder = stock.ladder(bestPrice);
      this.lowerBound = Math.min(bestPrice, ladder.atLeast(0));
    }

    NestingPlan run() {
      boolean found = true;
      while (found && bestPrice > lowerBound && !deadline.isPast()) {
        found = tryCheaperSets();
      }
      boolean proven = lowerBound >= bestPrice;
      return new NestingPlan(
          best,
          stock.money(bestPrice),
          stock.money(lowerBound),
          proven ? CuttingStatus.PROVEN_OPTIMAL : CuttingStatus.BOUNDED,
          deadline.elapsedSeconds());
    }

    private boolean tryCheaperSets() {
      List<int[]> sets = stock.cheaperSets(ladder, bestPrice, lowerBound, MOST_SETS);
      boolean found = false;
      for (int i = 0; i < sets.size() && !found && !deadline.isPast(); i++) {
        found = oneByOne(sets.get(i));
        if (!found && thorough) {
          found = scattered(sets.get(i), deadline.part(1.0 / (sets.size() - i)));
        }
      }
      return found;
    }

    private boolean oneByOne(int[] set) {
      boolean found = false;
      CellNest.Measure[] measures = CellNest.Measure.values();
      for (int m = 0; m < measures.length && !found; m++) {
        found = offer(cells.fill(set, cells.largestFirst(measures[m])));
      }
      return found;
    }

    private boolean scattered(int[] set, Deadline end) {
      if (scattered == null) {
        scattered = new ScatteredNest(problem);
      }
      return offer(scattered.fill(set, end));
    }

    private boolean offer(Optional<List<NestedSheet>> nested) {
      if (nested.isPresent()) {
        offer(nested.get());
      }
      return nested.isPresent();
    }

    private void offer(List<NestedSheet> sheets) {
      best = sheets;
      bestPrice = stock.price(sheets);
    }
  }
}
