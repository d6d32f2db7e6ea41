package trammel.cutting.validation;

import trammel.cutting.bars.BarCuttingProblem;
import trammel.cutting.outlines.NestingStripProblem;
import trammel.cutting.sheets.SheetCuttingProblem;
import trammel.cutting.sheets.StripProblem;

/** One list to be cut. */
sealed interface Instance {
  /** The recipe or the collection that it comes from. */
  String family();

  /** Unlike that of any other instance. */
  String name();

  /** Pieces to be cut from bars. */
  record Bars(String family, String name, BarCuttingProblem problem) implements Instance {}

  /** Rectangles to be cut from sheets. */
  record Sheets(String family, String name, SheetCuttingProblem problem) implements Instance {}

  /** Rectangles to be cut from a strip. */
  record Strip(String family, String name, StripProblem problem) implements Instance {}

  /** Outlines to be cut from a strip. */
  record OutlineStrip(String family, String name, NestingStripProblem problem)
      implements Instance {}
}
