package trammel.cutting.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.cutting.CuttingStatus;
import trammel.cutting.StockShortageException;

class SheetCutterTest {
  /**
   * Christofides and Whitlock, Oper. Res. 25 (1977), instance cgcut1 (OR-Library): width, height,
   * value, most.
   */
  private static final int[][] CGCUT_ONE = {
    {8, 4, 66, 2},
    {3, 7, 35, 1},
    {8, 2, 24, 3},
    {3, 4, 17, 5},
    {3, 3, 11, 2},
    {3, 2, 8, 2},
    {2, 1, 2, 1}
  };

  /** Moron 1925: the 33 x 32 rectangle of nine different squares. */
  private static final int[] MORON = {18, 15, 14, 10, 9, 8, 7, 4, 1};

  private static SheetCuttingProblem cgcut(boolean mayTurn) {
    List<SheetPart> parts = new ArrayList<>();
    for (int[] row : CGCUT_ONE) {
      parts.add(new SheetPart("part " + row[2], row[0], row[1], row[3], mayTurn));
    }
    return new SheetCuttingProblem(
        List.of(SheetStock.bought("15x10", 15, 10, BigDecimal.ONE)),
        parts,
        0,
        0,
        CuttingMethod.GUILLOTINE);
  }

  /**
   * Four drops that are paid for hold these parts in halves of fillings, but not whole ones: the
   * relaxation costs nothing, and so bounds nothing, while the plan needs a new sheet.
   */
  @Test
  void dropsThatNearlyHoldAllPartsAreCutAllTheSame() {
    int[][] drops = {{6, 8}, {8, 6}, {7, 8}, {6, 6}};
    int[][] plates = {{7, 3}, {7, 3}, {5, 6}, {2, 5}, {5, 7}, {7, 4}};
    List<SheetStock> stock = new ArrayList<>();
    for (int[] drop : drops) {
      stock.add(SheetStock.remnant("drop " + drop[0] + " x " + drop[1], drop[0], drop[1], 1));
    }
    stock.add(SheetStock.bought("new", 12, 12, BigDecimal.TEN));
    List<SheetPart> parts = new ArrayList<>();
    for (int[] plate : plates) {
      parts.add(new SheetPart("part " + parts.size(), plate[0], plate[1], 1, false));
    }
    SheetCuttingProblem problem =
        new SheetCuttingProblem(stock, parts, 0, 0, CuttingMethod.FREE, 1);

    SheetCuttingPlan plan = SheetCutter.counted(Duration.ofMillis(20)).cut(problem);

    SheetPlanChecker.check(problem, plan);
  }

  /** A part of a millionth on a sheet of a million: more steps a side than a table could hold. */
  @Test
  void aSheetTooFineForTheShearsTableIsCutAllTheSame() {
    SheetCuttingProblem fine =
        new SheetCuttingProblem(
            List.of(SheetStock.bought("vast", 1_000_000, 1_000_000, BigDecimal.ONE)),
            List.of(new SheetPart("grain", 0.000001, 0.000001, 1, true)),
            0,
            0,
            CuttingMethod.GUILLOTINE);

    assertEquals(1, new SheetCutter().cut(fine).sheets().size());
  }

  private static SheetCuttingProblem moron(CuttingMethod method) {
    List<SheetPart> parts = new ArrayList<>();
    for (int side : MORON) {
      parts.add(new SheetPart("square " + side, side, side, 1, true));
    }
    return new SheetCuttingProblem(
        List.of(SheetStock.bought("33x32", 33, 32, BigDecimal.ONE)), parts, 0, 0, method);
  }

  /** cgcut1: 244 as drawn (published), 260 when parts may turn (by full enumeration). */
  @ParameterizedTest
  @CsvSource({"false, 244", "true, 260"})
  void shearsTheMostValuableSelectionFromOneSheet(boolean mayTurn, long value) {
    long[] worth = new long[CGCUT_ONE.length];
    for (int t = 0; t < worth.length; t++) {
      worth[t] = CGCUT_ONE[t][2];
    }
    ShearSearch search = ShearSearch.of(SheetModel.of(cgcut(mayTurn)));
    assertEquals(value, search.mostValuable(0, worth));
  }

  /** All sixteen parts of cgcut1 need two sheets (by full enumeration). */
  @Test
  void provesThatAllPartsOfCgcutNeedTwoSheets() {
    SheetCuttingProblem problem = cgcut(false);
    SheetCuttingPlan plan = new SheetCutter().cut(problem);
    SheetPlanChecker.check(problem, plan);
    assertEquals(2, plan.sheets().size());
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status());
  }

  @Test
  void fitsTheSquaredRectangleFreely() {
    SheetCuttingProblem problem = moron(CuttingMethod.FREE);
    SheetCuttingPlan plan = new SheetCutter().cut(problem);
    SheetPlanChecker.check(problem, plan);
    assertEquals(1, plan.sheets().size());
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status());
  }

  /** No shear takes the squared rectangle apart: at best 956 of 1056 (by full enumeration). */
  @Test
  void provesThatNoShearCutsTheSquaredRectangle() {
    SheetCuttingProblem problem = moron(CuttingMethod.GUILLOTINE);
    SheetCuttingPlan plan = new SheetCutter().cut(problem);
    SheetPlanChecker.check(problem, plan);
    assertEquals(2, plan.sheets().size());
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status());
    long[] area = new long[MORON.length];
    for (int i = 0; i < area.length; i++) {
      area[i] = (long) MORON[i] * MORON[i];
    }
    assertEquals(956, ShearSearch.of(SheetModel.of(problem)).mostValuable(0, area));
  }

  /**
   * Herz, IBM J. Res. Dev. 16 (1972): copies without limit on 127 x 98, value is area. 12 348 as
   * drawn (published), 12 387 when parts may turn (by dynamic programming).
   */
  @ParameterizedTest
  @CsvSource({"false, 12348", "true, 12387"})
  void fillsTheHerzSheetAsFullAsAShearCan(boolean mayTurn, long area) {
    int[][] sizes = {{21, 13}, {36, 17}, {54, 20}, {24, 27}, {18, 65}};
    List<SheetPart> parts = new ArrayList<>();
    for (int[] size : sizes) {
      parts.add(new SheetPart("part " + size[0], size[0], size[1], 1, mayTurn));
    }
    SheetModel model =
        SheetModel.of(
            new SheetCuttingProblem(
                List.of(SheetStock.bought("127x98", 127, 98, BigDecimal.ONE)),
                parts,
                0,
                0,
                CuttingMethod.GUILLOTINE));
    assertEquals(area, new ShearFullness(model).mostArea(0));
  }

  @Test
  void turnsPartsOnlyWhereTheGrainAllows() {
    SheetStock sheet = SheetStock.bought("sheet", 100, 50, BigDecimal.ONE);
    SheetCuttingProblem problem =
        new SheetCuttingProblem(
            List.of(sheet),
            List.of(new SheetPart("gusset", 50, 100, 1, true)),
            0,
            0,
            CuttingMethod.FREE);
    SheetCuttingPlan plan = new SheetCutter().cut(problem);
    SheetPlanChecker.check(problem, plan);
    assertTrue(plan.sheets().get(0).parts().get(0).turned());
    assertThrows(
        StockShortageException.class,
        () ->
            new SheetCuttingProblem(
                List.of(sheet),
                List.of(new SheetPart("gusset", 50, 100, 1, false)),
                0,
                0,
                CuttingMethod.FREE));
  }

  /** Two 49s and a kerf of 2 fill 100 exactly; with 2.1 they do not. */
  @ParameterizedTest
  @CsvSource({"2, 1", "2.1, 2"})
  void kerfLiesBetweenPartsOnly(double kerfMm, int sheets) {
    SheetCuttingProblem problem =
        new SheetCuttingProblem(
            List.of(SheetStock.bought("sheet", 110, 60, BigDecimal.ONE)),
            List.of(new SheetPart("plate", 49, 50, 2, false)),
            5,
            kerfMm,
            CuttingMethod.FREE);
    SheetCuttingPlan plan = new SheetCutter().cut(problem);
    SheetPlanChecker.check(problem, plan);
    assertEquals(sheets, plan.sheets().size());
  }

  @Test
  void dropsFromTheRackAreUsedBeforeASheetIsBought() {
    SheetCuttingProblem problem =
        new SheetCuttingProblem(
            List.of(
                SheetStock.bought("4x8", 2438.4, 1219.2, new BigDecimal("340.00")),
                SheetStock.remnant("drop A", 300, 200, 1)),
            List.of(new SheetPart("bracket", 90, 120, 3, true)),
            5,
            2,
            CuttingMethod.FREE);
    SheetCuttingPlan plan = new SheetCutter().cut(problem);
    SheetPlanChecker.check(problem, plan);
    assertEquals(0, plan.price().signum());
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status());
  }

  @Test
  void whatIsLeftOfASheetIsNamedForTheRack() {
    for (CuttingMethod method : CuttingMethod.values()) {
      SheetCuttingProblem problem =
          new SheetCuttingProblem(
              List.of(SheetStock.bought("2x4", 1219.2, 609.6, BigDecimal.TEN)),
              List.of(new SheetPart("bracket", 100, 150, 6, true)),
              10,
              2,
              method,
              150);
      SheetCuttingPlan plan = new SheetCutter().cut(problem);
      SheetPlanChecker.check(problem, plan);
      assertFalse(plan.offcuts().isEmpty());
      assertEquals("2x4 no. 1 offcut", plan.offcuts().get(0).name());
      // Six brackets in one row leave more than half the sheet in one piece.
      assertTrue(plan.offcuts().get(0).heightMm() > 400, () -> "" + plan.offcuts());
    }
  }

  @Test
  void nothingToCutCostsNothing() {
    SheetCuttingPlan plan =
        new SheetCutter()
            .cut(new SheetCuttingProblem(List.of(), List.of(), 5, 2, CuttingMethod.FREE));
    assertTrue(plan.sheets().isEmpty());
    assertEquals(0, plan.price().signum());
  }

  @Test
  void refusesAPartWiderThanAnySheetAndNamesBoth() {
    List<SheetStock> stock = List.of(SheetStock.bought("2x4", 1219.2, 609.6, BigDecimal.TEN));
    List<SheetPart> parts = List.of(new SheetPart("boxing plate", 1210, 100, 1, true));
    String message =
        assertThrows(
                StockShortageException.class,
                () -> new SheetCuttingProblem(stock, parts, 10, 2, CuttingMethod.FREE))
            .getMessage();
    assertTrue(message.contains("boxing plate") && message.contains("1210 mm"), message);
    assertTrue(message.contains("2x4") && message.contains("1199.2 mm"), message);
    assertTrue(message.contains("Add a larger sheet"), message);
  }

  @Test
  void refusesAJobThatTheRackCannotHold() {
    SheetCuttingProblem problem =
        new SheetCuttingProblem(
            List.of(SheetStock.remnant("drop", 300, 200, 1)),
            List.of(new SheetPart("plate", 200, 160, 2, true)),
            0,
            0,
            CuttingMethod.FREE);
    String message =
        assertThrows(StockShortageException.class, () -> new SheetCutter().cut(problem))
            .getMessage();
    assertTrue(message.contains("2 parts") && message.contains("Raise the number"), message);
  }

  @Test
  void refusesImpossibleNumbersByName() {
    List<SheetStock> stock = List.of(SheetStock.bought("2x4", 1219.2, 609.6, BigDecimal.TEN));
    List<SheetPart> parts = List.of(new SheetPart("plate", 100, 100, 1, true));
    assertRefused(
        "the margin", () -> new SheetCuttingProblem(stock, parts, -1, 2, CuttingMethod.FREE));
    assertRefused(
        "the kerf", () -> new SheetCuttingProblem(stock, parts, 5, -2, CuttingMethod.FREE));
    assertRefused("plate", () -> new SheetPart("plate", Double.NaN, 100, 1, true));
    assertRefused("plate", () -> new SheetPart("plate", 100, 100, -3, true));
    assertRefused("2x4", () -> SheetStock.bought("2x4", 0, 609.6, BigDecimal.TEN));
    assertRefused("strip", () -> new StripProblem(-1, parts, 0, 0));
    assertRefused("plate", () -> new StripProblem(50, parts, 0, 0));
  }

  private static void assertRefused(String named, Runnable build) {
    String message = assertThrows(IllegalArgumentException.class, build::run).getMessage();
    assertTrue(message.contains(named), message);
  }

  /** A sheet of 1000 x 500 less 10 all round; the part ends at 410, a kerf further is 413. */
  @Test
  void whatIsLeftBesideAPartGoesBackUnderTheNumberOfItsSheet() {
    SheetStock sheet = SheetStock.bought("plate", 1000, 500, BigDecimal.TEN);
    SheetCuttingProblem problem =
        new SheetCuttingProblem(
            List.of(sheet),
            List.of(new SheetPart("web", 400, 480, 2, false)),
            10,
            3,
            CuttingMethod.FREE,
            100);
    CutSheet cut = new CutSheet(sheet, List.of(new PlacedPart("web", 10, 10, 400, 480, 0)));

    List<SheetOffcut> offcuts = problem.offcuts(List.of(cut, cut));

    assertEquals(2, offcuts.size());
    assertEquals("plate no. 1 offcut", offcuts.get(0).name());
    assertEquals("plate no. 2 offcut", offcuts.get(1).name());
    for (SheetOffcut offcut : offcuts) {
      assertEquals("plate", offcut.stockId());
      assertEquals(413, offcut.xMm(), 0.02);
      assertEquals(10, offcut.yMm(), 0.02);
      assertEquals(577, offcut.widthMm(), 0.02);
      assertEquals(480, offcut.heightMm(), 0.02);
    }
  }
}
