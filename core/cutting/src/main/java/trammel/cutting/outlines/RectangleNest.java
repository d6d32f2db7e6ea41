package trammel.cutting.outlines;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trammel.cutting.sheets.CutSheet;
import trammel.cutting.sheets.CuttingMethod;
import trammel.cutting.sheets.PlacedPart;
import trammel.cutting.sheets.SheetCutter;
import trammel.cutting.sheets.SheetCuttingPlan;
import trammel.cutting.sheets.SheetCuttingProblem;
import trammel.cutting.sheets.SheetPart;

/** Outlines nested as the rectangles around them. */
final class RectangleNest {
  private static final double SAME_TURN_DEG = 1e-9;

  private RectangleNest() {}

  /** A plan for the rectangles around the outlines of a problem. */
  static SheetCuttingPlan plan(NestingProblem problem, SheetCutter cutter) {
    List<SheetPart> parts = new ArrayList<>();
    for (OutlinePart part : problem.parts()) {
      OutlineBox shape = OutlineBox.of(part, new OutlineTurn(part.turnsDeg().get(0)));
      parts.add(
          new SheetPart(
              part.id(), shape.width(), shape.height(), part.quantity(), quarterTurn(part) >= 0));
    }
    return cutter.cut(
        new SheetCuttingProblem(
            problem.stock(), parts, problem.marginMm(), problem.kerfMm(), CuttingMethod.FREE));
  }

  /** A way round that is a quarter turn from the first one, or −1. */
  private static int quarterTurn(OutlinePart part) {
    for (int w = 1; w < part.turnsDeg().size(); w++) {
      double turnDeg = part.turnsDeg().get(w) - part.turnsDeg().get(0);
      if (Math.abs(Math.abs(turnDeg) % 180 - 90) < SAME_TURN_DEG) {
        return w;
      }
    }
    return -1;
  }

  /** The outlines as they lie in the rectangles of a plan. */
  static List<NestedSheet> of(NestingProblem problem, SheetCuttingPlan plan) {
    Map<String, OutlinePart> byName = new HashMap<>();
    for (OutlinePart part : problem.parts()) {
      byName.put(part.id(), part);
    }
    List<NestedSheet> sheets = new ArrayList<>();
    for (CutSheet sheet : plan.sheets()) {
      List<PlacedOutline> placed = new ArrayList<>();
      for (PlacedPart rectangle : sheet.parts()) {
        placed.add(inside(rectangle, byName.get(rectangle.partId())));
      }
      sheets.add(new NestedSheet(sheet.stock(), placed));
    }
    return sheets;
  }

  private static PlacedOutline inside(PlacedPart rectangle, OutlinePart part) {
    int way = rectangle.turned() ? quarterTurn(part) : 0;
    double turnDeg = part.turnsDeg().get(way);
    OutlineBox shape = OutlineBox.of(part, new OutlineTurn(turnDeg));
    return new PlacedOutline(
        part.id(), turnDeg, rectangle.xMm() - shape.minX, rectangle.yMm() - shape.minY);
  }
}
