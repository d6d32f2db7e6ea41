package trammel.cutting.sheets;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import trammel.cutting.CuttingStatus;
import trammel.cutting.StockShortageException;
import trammel.cutting.background.TwoAtATime;
import trammel.cutting.internal.Deadline;

/**
 * Finds a short length of strip for rectangular parts, and a bound on how short it can be.
 *
 * <p>Two searches that draw other numbers go side by side. By the clock they share what they find
 * at once. By counted effort each goes its own way for a round, and the shorter of the two is where
 * both go on: the plan is the same on one processor and on two.
 */
public final class StripCutter {
  /** Time a problem is given unless the caller says otherwise. */
  public static final Duration USUAL_LIMIT = Duration.ofSeconds(2);

  private static final long SEED = 20_260_104L;
  private static final int SEARCHES = 2;
  private static final int ROUNDS = 8;

  /**
   * Beams judged by quick ends to a round of plain ones: some lists fall to these, some to those.
   */
  private static final int[] AHEAD = {2, 8};

  private final Supplier<Deadline> deadline;
  private final int threads;

  /** A cutter with the effort of the usual time, counted: its plan is the same on any machine. */
  public StripCutter() {
    this(Deadline.eachCounted(USUAL_LIMIT), TwoAtATime.workers());
  }

  /**
   * @param limit longest time for one problem; what is best by then is handed over
   */
  public StripCutter(Duration limit) {
    this(Deadline.eachIn(limit), TwoAtATime.workers());
  }

  /**
   * @param deadline where it counts effort, that of each of the two searches
   * @param threads 1 or 2
   */
  StripCutter(Supplier<Deadline> deadline, int threads) {
    this.deadline = deadline;
    this.threads = threads;
  }

  /**
   * A cutter whose plan is the same on any machine.
   *
   * @param limit the effort counted is about what that time takes on a quiet processor
   */
  public static StripCutter counted(Duration limit) {
    return new StripCutter(Deadline.eachCounted(limit), TwoAtATime.workers());
  }

  /** Places all parts of the problem. */
  public StripPlan cut(StripProblem problem) {
    Deadline end = deadline.get();
    SheetModel model = SheetModel.of(problem);
    if (model.types() == 0) {
      return new StripPlan(List.of(), 0, 0, CuttingStatus.PROVEN_OPTIMAL, end.elapsedSeconds());
    }
    StripBest best = new StripBest(model, new StripBound(model).lowest());
    sorted(model, best);
    if (end.isCounted()) {
      searchInRounds(model, best);
    } else {
      searchSideBySide(model, best, end);
    }
    int top = best.top();
    return new StripPlan(
        SheetPlanWriter.placed(
            best.layout(), model, SheetPlanWriter.waiting(model), problem.marginMm()),
        lengthMm(top, model, problem),
        lengthMm(Math.min(best.lowest(), top), model, problem),
        best.isOptimal() ? CuttingStatus.PROVEN_OPTIMAL : CuttingStatus.BOUNDED,
        end.elapsedSeconds());
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

  /** One search on each thread; this thread takes part. */
  private void searchSideBySide(SheetModel model, StripBest best, Deadline end) {
    List<Callable<StripBest>> work = new ArrayList<>();
    for (int i = 0; i < threads; i++) {
      StripSearch search = new StripSearch(model, best, new Random(SEED + i), AHEAD[i]);
      work.add(() -> search.run(end));
    }
    TwoAtATime.all(work, threads);
  }

  /** After each round every search goes on from the shortest strip. */
  private void searchInRounds(SheetModel model, StripBest best) {
    StripSearch[] searches = new StripSearch[SEARCHES];
    StripBest[] own = new StripBest[SEARCHES];
    Deadline[] efforts = new Deadline[SEARCHES];
    for (int i = 0; i < SEARCHES; i++) {
      own[i] = new StripBest(model, best.lowest());
      searches[i] = new StripSearch(model, own[i], new Random(SEED + i), AHEAD[i]);
      efforts[i] = deadline.get();
    }
    for (int round = ROUNDS; round > 0 && !best.isOptimal(); round--) {
      List<Callable<StripBest>> work = new ArrayList<>();
      for (int i = 0; i < SEARCHES; i++) {
        own[i].offer(best.layout());
        StripSearch search = searches[i];
        Deadline end = efforts[i].part(1.0 / round);
        work.add(() -> search.run(end));
      }
      for (StripBest found : TwoAtATime.all(work, threads)) {
        best.offer(found.layout());
      }
    }
  }
}
