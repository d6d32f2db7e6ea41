package trammel.planning.cutting.sheets;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import trammel.planning.cutting.CuttingStatus;
import trammel.planning.cutting.Deadline;

/** Finds a short length of strip for rectangular parts, and a bound on how short it can be. */
public final class StripCutter {
  /** Time a problem is given unless the caller says otherwise. */
  public static final Duration USUAL_LIMIT = Duration.ofSeconds(2);

  private static final long SEED = 20_260_104L;

  private final Duration limit;

  public StripCutter() {
    this(USUAL_LIMIT);
  }

  /**
   * @param limit longest time for one problem; what is best by then is handed over
   */
  public StripCutter(Duration limit) {
    this.limit = limit;
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
    Search search = new Search(model, deadline);
    search.run();
    boolean proven = search.bestTop <= search.lowest;
    return new StripPlan(
        SheetPlanWriter.placed(
            search.best, model, SheetPlanWriter.waiting(model), problem.marginMm()),
        lengthMm(search.bestTop, model, problem),
        lengthMm(Math.min(search.lowest, search.bestTop), model, problem),
        proven ? CuttingStatus.PROVEN_OPTIMAL : CuttingStatus.BOUNDED,
        deadline.elapsedSeconds());
  }

  private static double lengthMm(int top, SheetModel model, StripProblem problem) {
    return top * model.stepMm - problem.kerfMm() + 2 * problem.marginMm();
  }

  /** One strip being filled. */
  private static final class Search {
    private static final int PATIENCE = 3000;

    private final SheetModel model;
    private final Deadline deadline;
    private final SheetFill fill;
    private final Random random = new Random(SEED);
    private final int width;
    private final int[] remaining;
    private final int lowest;
    private final Layout trialLayout = new Layout();
    private Layout best;
    private int bestTop;

    Search(SheetModel model, Deadline deadline) {
      this.model = model;
      this.deadline = deadline;
      this.fill = new SkylineFill(model);
      this.width = model.sheetWidth[0];
      this.remaining = new int[model.types()];
      this.lowest = new StripBound(model).lowest();
    }

    void run() {
      bestTop = Integer.MAX_VALUE;
      Arrangement start = null;
      for (int measure = 0; measure < Arrangement.MEASURES; measure++) {
        Arrangement sorted = Arrangement.sorted(model, measure);
        long left = place(sorted, model.sheetHeight[0]);
        if (left == 0 && trialLayout.top(model) < bestTop) {
          keep();
          start = sorted;
        }
      }
      Arrangement current = start == null ? Arrangement.sorted(model, 0) : start;
      while (bestTop > lowest && !deadline.isPast()) {
        current = improve(current);
      }
    }

    private void keep() {
      best = trialLayout.copy();
      bestTop = best.top(model);
    }

    private long place(Arrangement arrangement, int height) {
      System.arraycopy(model.count, 0, remaining, 0, remaining.length);
      return model.area(model.count)
          - fill.fill(width, height, arrangement, remaining, trialLayout);
    }

    /** Tries to get all parts below a height that is less than the best by a part of the gap. */
    private Arrangement improve(Arrangement from) {
      int target = Math.max(lowest, bestTop - 1 - (bestTop - lowest) / 4);
      Arrangement current = from.copy();
      Arrangement trial = from.copy();
      long currentLeft = place(current, target);
      int since = 0;
      while (!deadline.isPast()) {
        trial.takeFrom(current);
        int changes = 1 + random.nextInt(2);
        for (int i = 0; i < changes; i++) {
          trial.change(random, false);
        }
        long left = place(trial, target);
        if (left == 0) {
          keep();
          return trial;
        }
        since++;
        if (left < currentLeft) {
          since = 0;
        }
        if (left <= currentLeft) {
          currentLeft = left;
          current.takeFrom(trial);
        }
        if (since > PATIENCE) {
          since = 0;
          if (target < bestTop - 1) {
            target = bestTop - 1;
          } else {
            restart(current);
          }
          currentLeft = place(current, target);
        }
      }
      return current;
    }

    private void restart(Arrangement current) {
      current.takeFrom(Arrangement.sorted(model, random.nextInt(Arrangement.MEASURES)));
      int changes = random.nextInt(model.types() + 1);
      for (int i = 0; i < changes; i++) {
        current.change(random, false);
      }
    }
  }
}
