package trammel.planning.cutting.sheets;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import trammel.planning.cutting.CuttingStatus;
import trammel.planning.cutting.Deadline;
import trammel.planning.cutting.StockShortageException;

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
    private static final long FIRST_NODES = 1000;
    private static final int FIRST_BEAM = 20;
    private static final double BEAM_GROWTH = 1.12;

    /** Weights of waste and of a rough skyline; which is best differs from list to list. */
    private static final double[][] WEIGHTS = {{30, 0.1, 0}, {10, 0.1, 0}, {2, 0.05, 0}};

    private static final int[] BRANCHINGS = {4, 6, 10};

    private final SheetModel model;
    private final Deadline deadline;
    private final SheetFill fill;
    private final Random random = new Random(SEED);
    private final int width;
    private final int lowest;
    private Layout best;
    private int bestTop;

    Search(SheetModel model, Deadline deadline) {
      this.model = model;
      this.deadline = deadline;
      this.fill = new SkylineFill(model);
      this.width = model.sheetWidth[0];
      this.lowest = new StripBound(model).lowest();
    }

    void run() {
      sorted();
      double beam = FIRST_BEAM;
      double nodes = FIRST_NODES;
      while (bestTop > lowest && !deadline.isPast()) {
        tight((long) nodes);
        for (int i = 0; i < BRANCHINGS.length && bestTop > lowest && !deadline.isPast(); i++) {
          beam((int) beam, BRANCHINGS[i]);
        }
        beam *= BEAM_GROWTH;
        nodes *= BEAM_GROWTH;
      }
    }

    /** Plain fillings, largest part first by several measures; one of them always succeeds. */
    private void sorted() {
      bestTop = Integer.MAX_VALUE;
      Layout layout = new Layout();
      for (int measure = 0; measure < Arrangement.MEASURES; measure++) {
        int[] remaining = model.count.clone();
        Arrangement arrangement = Arrangement.sorted(model, measure);
        fill.fill(width, model.sheetHeight[0], arrangement, remaining, layout);
        if (model.area(remaining) == 0) {
          keep(layout);
        }
      }
      if (best == null) {
        throw new StockShortageException(
            "the parts need more than 1000 m of strip. Check the quantities and the unit.");
      }
    }

    private void keep(Layout layout) {
      if (layout != null && layout.top(model) < bestTop) {
        best = layout.copy();
        bestTop = best.top(model);
      }
    }

    private void tight(long nodes) {
      for (int above = 0; above < 3 && lowest + above < bestTop; above++) {
        keep(new TightSearch(model, width, lowest + above, random, deadline).find(nodes));
      }
    }

    /** Aims anywhere between the bound and the best: a tight aim prunes bad starts early. */
    private void beam(int size, int branching) {
      int aim = lowest + random.nextInt(bestTop - lowest);
      double[] weights = WEIGHTS[random.nextInt(WEIGHTS.length)];
      keep(new BeamSearch(model, width, aim, random, weights, deadline).find(size, branching));
    }
  }
}
