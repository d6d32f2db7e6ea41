package trammel.cutting.outlines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.cutting.ReferenceFiles;
import trammel.cutting.sheets.CuttingMethod;
import trammel.cutting.sheets.SheetCutter;
import trammel.cutting.sheets.SheetCuttingPlan;
import trammel.cutting.sheets.SheetCuttingProblem;
import trammel.cutting.sheets.SheetPart;
import trammel.cutting.sheets.SheetStock;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** Outlines placed one by one, as a job's cutting plan does it. */
class QuickNestingTest {
  private static int runs;
  private static int cheaper;
  private static final List<Double> QUARTER_TURNS = List.of(0.0, 90.0, 180.0, 270.0);

  private static OutlinePart part(String id, int quantity, double... corners) {
    List<OutlinePoint> outline = new ArrayList<>();
    for (int i = 0; i < corners.length; i += 2) {
      outline.add(new OutlinePoint(corners[i], corners[i + 1]));
    }
    return new OutlinePart(id, outline, QUARTER_TURNS, quantity);
  }

  private static SheetCuttingPlan rectangles(NestingProblem problem) {
    List<SheetPart> parts = new ArrayList<>();
    for (OutlinePart part : problem.parts()) {
      double[] size = size(part);
      parts.add(new SheetPart(part.id(), size[0], size[1], part.quantity(), true));
    }
    return SheetCutter.withEffort(30)
        .cut(
            new SheetCuttingProblem(
                problem.stock(), parts, problem.marginMm(), problem.kerfMm(), CuttingMethod.FREE));
  }

  private static double[] size(OutlinePart part) {
    double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (OutlinePoint point : part.outline()) {
      low[0] = Math.min(low[0], point.xMm());
      low[1] = Math.min(low[1], point.yMm());
      high[0] = Math.max(high[0], point.xMm());
      high[1] = Math.max(high[1], point.yMm());
    }
    return new double[] {high[0] - low[0], high[1] - low[1]};
  }

  private static NestingPlan checked(NestingProblem problem) {
    SheetCuttingPlan rectangles = rectangles(problem);
    NestingPlan plan = NestingCutter.quick(40).cut(problem, rectangles);
    NestingChecker.check(problem, plan);
    assertTrue(plan.price().compareTo(rectangles.price()) <= 0, "dearer than the rectangles");
    return plan;
  }

  /**
   * Two right triangles of 100 mm lie back to back on 115 x 115 mm with 2 mm between them; their
   * squares need two such sheets.
   */
  @Test
  void twoTrianglesShareTheSheetOfOneSquare() {
    NestingProblem problem =
        new NestingProblem(
            List.of(SheetStock.bought("small", 115, 115, new BigDecimal("10"))),
            List.of(part("gusset", 2, 0, 0, 100, 0, 0, 100)),
            1,
            2);
    assertEquals(1, checked(problem).sheets().size());
  }

  /** A drop that costs nothing is used before a sheet is bought. */
  @Test
  void dropIsFilledFirst() {
    NestingProblem problem =
        new NestingProblem(
            List.of(
                SheetStock.bought("sheet", 300, 300, new BigDecimal("40")),
                SheetStock.remnant("drop", 130, 130, 1)),
            List.of(part("gusset", 2, 0, 0, 100, 0, 0, 100)),
            2,
            2);
    NestingPlan plan = checked(problem);
    assertEquals(0, plan.price().signum());
    assertEquals("drop", plan.sheets().get(0).stock().id());
  }

  @Test
  void samePlanEveryTime() {
    NestingProblem problem = NestingInstances.problem(ReferenceFiles.read("poly2d", "s-poly02"));
    assertEquals(checked(problem).sheets(), checked(problem).sheets());
  }

  /** Invented shop brackets; never more than their rectangles take. */
  @ParameterizedTest
  @ValueSource(strings = {"s-poly01", "s-poly02", "s-poly03", "s-poly04"})
  void shopBracketsTakeNoMoreThanTheirRectangles(String name) {
    assertFalse(
        checked(NestingInstances.problem(ReferenceFiles.read("poly2d", name))).sheets().isEmpty());
  }

  @Seeds(500)
  void everyPlanIsSound(Draw draw) {
    NestingProblem problem = problem(draw);
    runs++;
    if (checked(problem).price().compareTo(rectangles(problem).price()) < 0) {
      cheaper++;
    }
  }

  /** Sound plans are shown only where outlines were placed at all. */
  @AfterAll
  static void outlinesWerePlacedInMoreThanThreeOfAHundred() {
    if (runs >= 100) {
      assertTrue(cheaper > 0.03 * runs, cheaper + " of " + runs + " cheaper than the rectangles");
    }
  }

  private static NestingProblem problem(Draw draw) {
    List<double[]> shapes = draw.listOf(1, 6, d -> shape(d.whole(0, 2), side(d), side(d), side(d)));
    return new NestingProblem(
        List.of(
            SheetStock.bought("large", 400, 300, new BigDecimal("61.50")),
            SheetStock.bought("small", 220, 220, new BigDecimal("27.25")),
            SheetStock.remnant("drop", 150, 130, 1)),
        named(shapes),
        draw.whole(0, 6),
        draw.whole(1, 80) / 10.0);
  }

  private static double side(Draw draw) {
    return draw.whole(100, 1200) / 10.0;
  }

  /** A triangle, an L or a plate with a notch. */
  private static double[] shape(int kind, double a, double b, double c) {
    if (kind == 0) {
      return new double[] {0, 0, a, 0, c, b};
    }
    double third = Math.min(a, b) / 3;
    if (kind == 1) {
      return new double[] {0, 0, a, 0, a, third, third, third, third, b, 0, b};
    }
    return new double[] {0, 0, a, 0, a, b, 2 * a / 3, b, a / 2, b - third, a / 3, b, 0, b};
  }

  private static List<OutlinePart> named(List<double[]> shapes) {
    List<OutlinePart> parts = new ArrayList<>();
    for (double[] shape : shapes) {
      parts.add(part("part " + parts.size(), 1 + parts.size() % 3, shape));
    }
    return parts;
  }
}
