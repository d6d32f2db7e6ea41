package trammel.planning.estimate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trammel.brackets.work.PlateNeed;
import trammel.cutting.outlines.NestedSheet;
import trammel.cutting.outlines.NestingCutter;
import trammel.cutting.outlines.NestingPlan;
import trammel.cutting.outlines.NestingProblem;
import trammel.cutting.outlines.OutlinePart;
import trammel.cutting.outlines.OutlinePoint;
import trammel.cutting.outlines.PlacedOutline;
import trammel.cutting.sheets.CutSheet;
import trammel.cutting.sheets.PlacedPart;
import trammel.cutting.sheets.SheetCuttingPlan;
import trammel.cutting.sheets.SheetCuttingProblem;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Placement;
import trammel.trade.plates.Point2;

/**
 * Nests plates by their outlines where that takes less sheet than the rectangles round them, and
 * says what no plan of the outlines can cost less than.
 */
final class OutlineNesting {
  /** How far the corners that stand for an arc may lie inside it (mm). */
  private static final double CHORD_MM = 0.01;

  /** Plates placed on one set of sheets after another; some tenths of a second. */
  private static final int EFFORT = 1200;

  private static final List<Double> QUARTER_TURNS = List.of(0.0, 90.0, 180.0, 270.0);

  private final SheetCuttingProblem problem;
  private final Map<String, Outline> outlines = new HashMap<>();
  private final NestingProblem nesting;

  /**
   * @param problem the rectangles round the plates
   */
  OutlineNesting(SheetCuttingProblem problem, List<PlateNeed> needs) {
    this.problem = problem;
    List<OutlinePart> parts = new ArrayList<>(needs.size());
    for (PlateNeed need : needs) {
      Outline outline = need.plate().outline();
      outlines.put(need.plate().name(), outline);
      parts.add(
          new OutlinePart(need.plate().name(), corners(outline), QUARTER_TURNS, need.quantity()));
    }
    nesting =
        new NestingProblem(
            problem.stock(), parts, problem.marginMm(), problem.kerfMm() + 2 * CHORD_MM);
  }

  private static List<OutlinePoint> corners(Outline outline) {
    List<OutlinePoint> corners = new ArrayList<>();
    for (Point2 point : outline.polygon(CHORD_MM)) {
      corners.add(new OutlinePoint(point.xMm(), point.yMm()));
    }
    return corners;
  }

  /** A plan of a list too long to be planned as a whole, its outlines nested sheet by sheet. */
  SheetCuttingPlan ofLongList() {
    NestingPlan plan = NestingCutter.cutLong(nesting);
    List<CutSheet> sheets = sheets(plan);
    return new SheetCuttingPlan(
        sheets,
        plan.price(),
        plan.lowerBound(),
        plan.status(),
        plan.seconds(),
        problem.offcuts(sheets));
  }

  boolean isLong() {
    return NestingCutter.isLong(nesting);
  }

  /** The better of a plan of the rectangles and what the outlines can be nested on. */
  SheetCuttingPlan improved(SheetCuttingPlan rectangles) {
    int sets = Math.max(1, EFFORT / nesting.partCount());
    NestingPlan plan = NestingCutter.quick(sets).cut(nesting, rectangles);
    boolean cheaper = plan.price().compareTo(rectangles.price()) < 0;
    List<CutSheet> sheets = cheaper ? sheets(plan) : rectangles.sheets();
    return new SheetCuttingPlan(
        sheets,
        plan.price(),
        plan.lowerBound(),
        plan.status(),
        rectangles.seconds() + plan.seconds(),
        cheaper ? problem.offcuts(sheets) : rectangles.offcuts());
  }

  private List<CutSheet> sheets(NestingPlan plan) {
    List<CutSheet> sheets = new ArrayList<>(plan.sheets().size());
    for (NestedSheet sheet : plan.sheets()) {
      List<PlacedPart> placed = new ArrayList<>(sheet.parts().size());
      for (PlacedOutline part : sheet.parts()) {
        placed.add(placed(part));
      }
      sheets.add(new CutSheet(sheet.stock(), placed));
    }
    return sheets;
  }

  private PlacedPart placed(PlacedOutline part) {
    Bounds bounds =
        outlines.get(part.partId()).placed(Placement.turn(Math.toRadians(part.turnDeg()))).bounds();
    return new PlacedPart(
        part.partId(),
        part.xMm() + bounds.minXMm(),
        part.yMm() + bounds.minYMm(),
        bounds.widthMm(),
        bounds.heightMm(),
        (int) Math.round(part.turnDeg()));
  }
}
