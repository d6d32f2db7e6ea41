package trammel.cutting.outlines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.cutting.sheets.SheetStock;
import trammel.testsupport.Draw;

/** Long lists of plates, as an order over many jobs has them. */
class RepeatedLayoutsTest {
  private static final List<Double> QUARTER_TURNS = List.of(0.0, 90.0, 180.0, 270.0);
  private static final double MARGIN_MM = 6.35;
  private static final double KERF_MM = 6.4;

  /** Sheets in feet; the larger, the cheaper for its area. Prices made up. */
  private static final List<SheetStock> SHEETS =
      List.of(
          SheetStock.bought("4 x 8", 2438.4, 1219.2, new BigDecimal("359.00")),
          SheetStock.bought("2 x 4", 1219.2, 609.6, new BigDecimal("143.00")),
          SheetStock.bought("2 x 2", 609.6, 609.6, new BigDecimal("90.00")),
          SheetStock.bought("1 x 2", 609.6, 304.8, new BigDecimal("53.00")));

  private static OutlinePart part(String id, int quantity, double... corners) {
    List<OutlinePoint> outline = new ArrayList<>();
    for (int i = 0; i < corners.length; i += 2) {
      outline.add(new OutlinePoint(corners[i], corners[i + 1]));
    }
    return new OutlinePart(id, outline, QUARTER_TURNS, quantity);
  }

  private static NestingProblem problem(List<SheetStock> stock, List<OutlinePart> parts) {
    return new NestingProblem(stock, parts, MARGIN_MM, KERF_MM);
  }

  /** Brackets, gussets and angles from the size of a hand to that of an arm. */
  private static double[] shape(Draw draw) {
    double a = draw.whole(400, 3000) / 10.0;
    double b = draw.whole(400, 2200) / 10.0;
    double third = Math.min(a, b) / 3;
    switch (draw.whole(0, 3)) {
      case 0:
        return new double[] {0, 0, a, 0, third, b};
      case 1:
        return new double[] {0, 0, a, 0, a, third, third, third, third, b, 0, b};
      case 2:
        return new double[] {0, 0, a, 0, a, b, 2 * a / 3, b, a / 2, b - third, a / 3, b, 0, b};
      default:
        return new double[] {third, 0, a - third, 0, a, third, a, b, 0, b, 0, third};
    }
  }

  private static List<OutlinePart> allDifferent(Draw draw, int plates) {
    List<OutlinePart> parts = new ArrayList<>();
    for (int i = 0; i < plates; i++) {
      parts.add(part("plate " + i, 1, shape(draw)));
    }
    return parts;
  }

  /** So many jobs that need the same eight brackets, each by a name of its own. */
  private static List<OutlinePart> allAlike(Draw draw, int jobs) {
    List<double[]> shapes = new ArrayList<>();
    for (int s = 0; s < 8; s++) {
      shapes.add(shape(draw));
    }
    List<OutlinePart> parts = new ArrayList<>();
    for (int job = 0; job < jobs; job++) {
      for (int s = 0; s < 8; s++) {
        parts.add(part("job " + job + " bracket " + s, 1 + s % 3, shapes.get(s)));
      }
    }
    return parts;
  }

  private static NestingPlan checked(NestingProblem problem) {
    NestingPlan plan = RepeatedLayouts.plan(problem);
    NestingChecker.check(problem, plan);
    return plan;
  }

  /** One sheet and what is left of a list are planned apart, which may cost a little. */
  @Tag("long")
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void costsHardlyMoreThanTheSearchOfTheWholeList(long seed) {
    Draw draw = new Draw(seed);
    int plates = draw.whole(650, 800);
    isHardlyDearer(problem(SHEETS, allAlike(draw, plates / 15)), seed);
    isHardlyDearer(problem(SHEETS, allDifferent(draw, plates)), seed);
  }

  private static void isHardlyDearer(NestingProblem problem, long seed) {
    double whole =
        NestingCutter.quick(Math.max(1, 1200 / problem.partCount()))
            .cut(problem)
            .price()
            .doubleValue();
    double price = checked(problem).price().doubleValue();
    assertTrue(price <= 1.05 * whole, "seed " + seed + ": " + price + ", whole list " + whole);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void everyLongPlanIsSoundAndTheSameEveryTime(long seed) {
    NestingProblem problem = problem(SHEETS, allAlike(new Draw(seed), 60));
    NestingPlan plan = checked(problem);
    assertEquals(plan.sheets(), RepeatedLayouts.plan(problem).sheets(), "seed " + seed);
  }

  /** Twice the plates laid out, at most a fifth more than twice the effort. */
  @Test
  void effortGrowsNoFasterThanAListOfDifferentPlates() {
    long once = RepeatedLayouts.effort(problem(SHEETS, allDifferent(new Draw(1), 800)));
    long twice = RepeatedLayouts.effort(problem(SHEETS, allDifferent(new Draw(1), 1280)));
    // 320 plates are left for the plan of the rest: 480 against 960 are laid out.
    assertTrue(twice <= 2.4 * once, once + " looks, then " + twice);
  }

  /** A layout found once is cut again and again. */
  @Test
  void tenTimesTheJobsThatAreAlikeTakeLessThanHalfOfTenTimesTheEffort() {
    long some = RepeatedLayouts.effort(problem(SHEETS, allAlike(new Draw(1), 50)));
    long many = RepeatedLayouts.effort(problem(SHEETS, allAlike(new Draw(1), 500)));
    assertTrue(many <= 5 * some, some + " looks, then " + many);
  }

  /** Two drops hold a strip each, which then need not be bought. */
  @Test
  void dropsAreFilledBeforeASheetIsBought() {
    List<SheetStock> stock = new ArrayList<>(SHEETS);
    stock.add(SheetStock.remnant("drop", 620, 320, 2));
    NestingPlan plan =
        checked(problem(stock, List.of(part("tab", 500, 0, 0, 100, 0, 100, 60, 0, 60))));
    long drops = plan.sheets().stream().filter(sheet -> sheet.stock().remnant()).count();
    assertEquals(2, drops);
  }

  /**
   * Squares of 15 mm with 6.4 mm between them: 28 x 28 of them lie on 596.9 mm each way, so that
   * 660 need no more than a sheet of 2 x 2 ft; 1 x 2 ft holds 28 x 13.
   */
  @Test
  void manySmallPlatesTakeNoLargerSheetThanTheyNeed() {
    NestingPlan plan =
        checked(problem(SHEETS, List.of(part("tab", 660, 0, 0, 15, 0, 15, 15, 0, 15))));
    assertEquals(List.of("2 x 2"), plan.sheets().stream().map(s -> s.stock().id()).toList());
  }

  /** One sheet of 4 x 8 ft, which holds some 400 of these, and then the next size. */
  @Test
  void noMoreSheetsAreTakenThanThereAre() {
    List<SheetStock> stock =
        List.of(
            new SheetStock(
                "4 x 8", 2438.4, 1219.2, new BigDecimal("359"), OptionalInt.of(1), false),
            SHEETS.get(1));
    NestingPlan plan =
        checked(problem(stock, List.of(part("tab", 900, 0, 0, 100, 0, 100, 60, 0, 60))));
    assertEquals(
        1, plan.sheets().stream().filter(sheet -> sheet.stock().id().equals("4 x 8")).count());
  }
}
