package trammel.cutting.sheets;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import trammel.cutting.CuttingStatus;
import trammel.cutting.Deadline;
import trammel.cutting.StockShortageException;
import trammel.cutting.background.Background;

/** Finds a short length of strip for rectangular parts, and a bound on how short it can be. */
public final class StripCutter {
  /** Time a problem is given unless the caller says otherwise. */
  public static final Duration USUAL_LIMIT = Duration.ofSeconds(2);

  private static final long SEED = 20_260_104L;

  private static final int MOST_SEARCHES = 4;

  /**
   * Beams judged by quick ends to a round of plain ones: some lists fall to these, some to those.
   */
  private static final int FEW_AHEAD = 2;

  private static final int MANY_AHEAD = 8;

  private final Duration limit;
  private final long seed;

  public StripCutter() {
    this(USUAL_LIMIT);
  }

  /**
   * @param limit longest time for one problem; what is best by then is handed over
   */
  public StripCutter(Duration limit) {
    this(limit, SEED);
  }

  /**
   * @param seed start of the numbers drawn at random
   */
  StripCutter(Duration limit, long seed) {
    this.limit = limit;
    this.seed = seed;
    Deadline.in(limit);
  }

  /** Places all parts of the problem. */
  public StripPlan cut(StripProblem problem) {
    Deadline deadline = Deadline.in(limit);
    SheetModel model = SheetModel.of(problem);
    if (model.types() == 0) {
      return new StripPlan(
          List.of(), 0, 0, CuttingStatus.PROVEN_OPTIMAL, deadline.elapsedSeconds());
    }
    StripBest best = new StripBest(model, new StripBound(model).lowest());
    sorted(model, best);
    searchSideBySide(model, best, deadline);
    int top = best.top();
    return new StripPlan(
        SheetPlanWriter.placed(
            best.layout(), model, SheetPlanWriter.waiting(model), problem.marginMm()),
        lengthMm(top, model, problem),
        lengthMm(Math.min(best.lowest(), top), model, problem),
        best.isOptimal() ? CuttingStatus.PROVEN_OPTIMAL : CuttingStatus.BOUNDED,
        deadline.elapsedSeconds());
  }

  private static double lengthMm(int top, SheetModel model, StripProblem problem) {
    return top * model.stepMm - problem.kerfMm() + 2 * problem.marginMm();
  }

  /** Plain fillings, largest part first by several measures; one of them always succeeds. */
  private static void sorted(SheetModel model, StripBest best) {
    SheetFill fill = new SkylineFill(model);
    Layout layout = new Layout();
    for (int measure = 0; measure < Arrangement.MEASURES; measure++) {
      int[] remaining = model.count.clone();
      Arrangement arrangement = Arrangement.sorted(model, measure);
      fill.fill(model.sheetWidth[0], model.sheetHeight[0], arrangement, remaining, layout);
      if (model.area(remaining) == 0) {
        best.offer(layout);
      }
    }
    if (best.layout() == null) {
      throw new StockShortageException(
          "the parts need more than 1000 m of strip. Check the quantities and the unit.");
    }
  }

  /** One search on each processor, each drawing other numbers; this thread takes part. */
  private void searchSideBySide(SheetModel model, StripBest best, Deadline deadline) {
    int others = Math.min(MOST_SEARCHES, Runtime.getRuntime().availableProcessors()) - 1;
    List<Background<StripBest>> running = new ArrayList<>();
    for (int i = 0; i < others && !best.isOptimal(); i++) {
      StripSearch beside =
          new StripSearch(model, best, new Random(seed + 1 + i), MANY_AHEAD, deadline);
      running.add(Background.start(beside::run));
    }
    new StripSearch(model, best, new Random(seed), FEW_AHEAD, deadline).run();
    for (Background<StripBest> beside : running) {
      beside.get();
    }
  }
}
