package trammel.cutting.validation;

import java.time.Duration;
import java.util.OptionalDouble;
import trammel.cutting.CuttingStatus;
import trammel.cutting.bars.BarCutter;
import trammel.cutting.bars.BarCuttingPlan;
import trammel.cutting.bars.BarCuttingProblem;
import trammel.cutting.bars.BarPlanChecker;
import trammel.cutting.outlines.NestingChecker;
import trammel.cutting.outlines.NestingStripCutter;
import trammel.cutting.outlines.NestingStripPlan;
import trammel.cutting.outlines.NestingStripProblem;
import trammel.cutting.sheets.SheetCutter;
import trammel.cutting.sheets.SheetCuttingPlan;
import trammel.cutting.sheets.SheetCuttingProblem;
import trammel.cutting.sheets.SheetPlanChecker;
import trammel.cutting.sheets.StripCutter;
import trammel.cutting.sheets.StripPlan;
import trammel.cutting.sheets.StripProblem;

/** One list to be cut. */
sealed interface Instance {
  /** The recipe or the collection that it comes from. */
  String family();

  /** Unlike that of any other instance. */
  String name();

  /** The optimum or the best that is published, where there is one. */
  default OptionalDouble mark() {
    return OptionalDouble.empty();
  }

  /**
   * Cuts it, and has the plan checked.
   *
   * @param limit whose effort, counted, the search is given
   */
  Result cut(Duration limit);

  /**
   * What came out.
   *
   * @param value price, number or length
   * @param bound no plan has less
   * @param proven whether that says that none is better
   */
  record Result(double value, double bound, boolean proven) {
    private static Result of(double value, double bound, CuttingStatus status) {
      return new Result(value, bound, status == CuttingStatus.PROVEN_OPTIMAL);
    }
  }

  /** Pieces to be cut from bars. */
  record Bars(String family, String name, BarCuttingProblem problem) implements Instance {
    @Override
    public Result cut(Duration limit) {
      BarCuttingPlan plan = BarCutter.counted(limit).cut(problem);
      BarPlanChecker.check(problem, plan);
      return Result.of(plan.price().doubleValue(), plan.lowerBound().doubleValue(), plan.status());
    }
  }

  /** Rectangles to be cut from sheets. */
  record Sheets(String family, String name, SheetCuttingProblem problem) implements Instance {
    @Override
    public Result cut(Duration limit) {
      SheetCuttingPlan plan = SheetCutter.counted(limit).cut(problem);
      SheetPlanChecker.check(problem, plan);
      return Result.of(plan.price().doubleValue(), plan.lowerBound().doubleValue(), plan.status());
    }
  }

  /** Rectangles to be cut from a strip. */
  record Strip(String family, String name, OptionalDouble mark, StripProblem problem)
      implements Instance {
    @Override
    public Result cut(Duration limit) {
      StripPlan plan = StripCutter.counted(limit).cut(problem);
      SheetPlanChecker.check(problem, plan);
      return Result.of(plan.lengthMm(), plan.lowerBoundMm(), plan.status());
    }
  }

  /** Outlines to be cut from a strip. */
  record OutlineStrip(String family, String name, OptionalDouble mark, NestingStripProblem problem)
      implements Instance {
    @Override
    public Result cut(Duration limit) {
      NestingStripPlan plan = NestingStripCutter.counted(limit).cut(problem);
      NestingChecker.check(problem, plan);
      return Result.of(plan.lengthMm(), plan.lowerBoundMm(), plan.status());
    }
  }
}
