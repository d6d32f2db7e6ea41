package trammel.planning.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import trammel.assembly.Assembly;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.brackets.work.PlateNeed;
import trammel.cutting.sheets.CutSheet;
import trammel.cutting.sheets.CuttingMethod;
import trammel.cutting.sheets.PlacedPart;
import trammel.cutting.sheets.SheetCutter;
import trammel.cutting.sheets.SheetCuttingPlan;
import trammel.cutting.sheets.SheetCuttingProblem;
import trammel.cutting.sheets.SheetOffcut;
import trammel.cutting.sheets.SheetPart;
import trammel.cutting.sheets.SheetStock;
import trammel.engine.quantity.Phrase;
import trammel.planning.drawings.NestDrawing;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.Loop;
import trammel.trade.plates.MockUpStrut;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Plate;
import trammel.trade.plates.PlateShape;
import trammel.trade.plates.RailBracket;
import trammel.trade.plates.TubeBracket;

/** Real bracket outlines, arcs and all, judged by their own exact distances. */
class OutlineNestingTest {
  private static final double THICKNESS_MM = 6.35;
  private static final double MARGIN_MM = 6.35;
  private static final double GAP_MM = 6.4;
  private static final double USEFUL_MM = 100;
  private static final double ROUNDING_MM = 1e-6;

  /** Corners that stand for an arc may lie so far inside it, which nobody can cut or measure. */
  private static final double ARC_MM = 0.01 + ROUNDING_MM;

  private static int runs;
  private static int cheaper;

  @Seeds(600)
  void everyPlateIsWholeOnItsSheetAndOffTheOthers(Draw draw) {
    List<PlateNeed> needs = needs(draw);
    SheetCuttingProblem problem = problem(needs);
    SheetCuttingPlan rectangles = SheetCutter.withEffort(30).cut(problem);
    SheetCuttingPlan plan = new OutlineNesting(problem, needs).improved(rectangles);
    assertTrue(plan.price().compareTo(rectangles.price()) <= 0);
    assertTrue(plan.lowerBound().compareTo(plan.price()) <= 0);
    Map<String, Plate> plates = new HashMap<>();
    int wanted = 0;
    for (PlateNeed need : needs) {
      plates.put(need.plate().name(), need.plate());
      wanted += need.quantity();
    }
    int placed = 0;
    for (CutSheet sheet : plan.sheets()) {
      placed += sheet.parts().size();
      check(sheet, plates, plan.offcuts());
    }
    assertEquals(wanted, placed);
    runs++;
    if (plan.price().compareTo(rectangles.price()) < 0) {
      cheaper++;
    }
  }

  /** Sound plans are shown only where outlines were placed at all. */
  @AfterAll
  static void outlinesWereNestedInMoreThanThreeOfAHundred() {
    if (runs >= 100) {
      assertTrue(cheaper > 0.03 * runs, cheaper + " of " + runs + " cheaper than the rectangles");
    }
  }

  private static SheetCuttingProblem problem(List<PlateNeed> needs) {
    List<SheetPart> parts = new ArrayList<>();
    for (PlateNeed need : needs) {
      Bounds bounds = need.plate().outline().bounds();
      parts.add(
          new SheetPart(
              need.plate().name(), bounds.widthMm(), bounds.heightMm(), need.quantity(), true));
    }
    return new SheetCuttingProblem(
        List.of(
            SheetStock.bought("24 x 48", 1219.2, 609.6, new BigDecimal("143.00")),
            SheetStock.bought("24 x 24", 609.6, 609.6, new BigDecimal("90.00")),
            SheetStock.bought("12 x 24", 609.6, 304.8, new BigDecimal("53.00")),
            SheetStock.bought("12 x 12", 304.8, 304.8, new BigDecimal("30.50"))),
        parts,
        MARGIN_MM,
        GAP_MM,
        CuttingMethod.FREE,
        USEFUL_MM);
  }

  private static void check(CutSheet sheet, Map<String, Plate> plates, List<SheetOffcut> offcuts) {
    List<Outline> placed = new NestDrawing(sheet, plates, "test").placed();
    for (int i = 0; i < placed.size(); i++) {
      PlacedPart part = sheet.parts().get(i);
      Bounds bounds = placed.get(i).bounds();
      assertTrue(
          bounds.minXMm() >= MARGIN_MM - ARC_MM
              && bounds.minYMm() >= MARGIN_MM - ARC_MM
              && bounds.maxXMm() <= sheet.stock().widthMm() - MARGIN_MM + ARC_MM
              && bounds.maxYMm() <= sheet.stock().heightMm() - MARGIN_MM + ARC_MM,
          () -> part + " in the margin");
      for (int j = 0; j < i; j++) {
        Loop one = placed.get(i).outer();
        Loop other = placed.get(j).outer();
        assertTrue(one.distanceMm(other) >= GAP_MM - ROUNDING_MM, () -> part + " too close");
        assertTrue(
            !one.contains(other.edges().get(0).from())
                && !other.contains(one.edges().get(0).from()),
            () -> part + " on another");
      }
    }
    for (SheetOffcut offcut : offcuts) {
      assertTrue(Math.min(offcut.widthMm(), offcut.heightMm()) >= USEFUL_MM);
    }
  }

  private static List<PlateNeed> needs(Draw draw) {
    return named(draw.listOf(2, 7, OutlineNestingTest::need));
  }

  private static PlateNeed need(Draw draw) {
    PlateShape shape = shape(draw.whole(0, 2), draw.whole(60, 220), draw.whole(40, 160));
    return need(shape, draw.whole(1, 6));
  }

  private static PlateShape shape(int kind, int one, int other) {
    if (kind == 0) {
      return TubeBracket.at("bracket", THICKNESS_MM, 76.2, 38.1 + other, Math.toRadians(one), 14.7);
    }
    if (kind == 1) {
      return RailBracket.below("bracket", THICKNESS_MM, one, 0, 14.7, other);
    }
    return new MockUpStrut("strut", THICKNESS_MM, 2.0 * one, 13, 20, HoleRules.SHOP);
  }

  private static PlateNeed need(PlateShape shape, int quantity) {
    return new PlateNeed(
        shape.plate("steel"),
        "plate",
        Collections.nCopies(quantity, new Held(Assembly.FRAME, Place.RIDE)),
        Phrase.of("test"));
  }

  private static List<PlateNeed> named(List<PlateNeed> needs) {
    List<PlateNeed> named = new ArrayList<>();
    for (PlateNeed need : needs) {
      named.add(need.named("plate " + named.size()));
    }
    return named;
  }
}
