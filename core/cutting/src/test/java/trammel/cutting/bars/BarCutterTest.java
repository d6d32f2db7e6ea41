package trammel.cutting.bars;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import trammel.cutting.CuttingStatus;
import trammel.cutting.StockShortageException;
import trammel.cutting.internal.Deadline;

class BarCutterTest {
  private static final double INCH_MM = 25.4;

  static Stream<Arguments> publishedOptima() {
    return Stream.of(
        Arguments.of(
            "Wikipedia, Cutting stock problem",
            5600,
            73,
            new double[][] {
              {1380, 22},
              {1520, 25},
              {1560, 12},
              {1710, 14},
              {1820, 18},
              {1880, 18},
              {1930, 20},
              {2000, 10},
              {2050, 12},
              {2100, 14},
              {2140, 16},
              {2150, 18},
              {2200, 20}
            }),
        Arguments.of(
            "Chvatal, Linear Programming (1983) ch. 13; optimum by full pattern enumeration",
            100,
            453,
            new double[][] {{45, 97}, {36, 610}, {31, 395}, {14, 211}}),
        Arguments.of(
            "Fourer, Gay, Kernighan, AMPL 2nd ed., cut.dat; optimum by full pattern enumeration",
            110,
            47,
            new double[][] {{20, 48}, {45, 35}, {50, 24}, {55, 10}, {75, 8}}),
        Arguments.of(
            "Burkardt BIN_PACKING P01 after Martello and Toth 1990",
            100,
            4,
            new double[][] {{70, 1}, {60, 1}, {50, 1}, {33, 3}, {11, 1}, {7, 1}, {3, 1}}));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("publishedOptima")
  void provesPublishedOptima(String source, double lengthMm, int bars, double[][] pieces) {
    BarCuttingProblem problem = BarInstances.oneStock(lengthMm, 0, pieces);
    BarCuttingPlan plan = new BarCutter().cut(problem);
    BarPlanChecker.check(problem, plan);
    assertEquals(bars, plan.bars().size(), source);
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status(), source);
  }

  /** Values of the relaxation over all patterns of the first three, by full enumeration. */
  static Stream<Arguments> publishedRelaxations() {
    List<Arguments> optima = publishedOptima().toList();
    return Stream.of(
        Arguments.of(72.917, optima.get(0)),
        Arguments.of(452.25, optima.get(1)),
        Arguments.of(46.25, optima.get(2)));
  }

  @ParameterizedTest
  @MethodSource("publishedRelaxations")
  void relaxationsHaveThePublishedValues(double value, Arguments instance) {
    double lengthMm = ((Number) instance.get()[1]).doubleValue();
    BarModel model =
        BarModel.of(BarInstances.oneStock(lengthMm, 0, (double[][]) instance.get()[3]));
    Deadline deadline = Deadline.in(Duration.ofMinutes(1));
    Relaxation solved =
        new PatternGeneration(model, new PatternPool(), deadline, 1000)
            .solve(model.demand, model.available, PatternGeneration.NEVER);
    assertEquals(value, solved.lowerBound, 1e-3);
  }

  /** Counts by hand: floor((L + k) / (l + k)) pieces fit a stick. */
  @ParameterizedTest
  @CsvSource({
    "240, 24, 0.0625, 9, 1",
    "240, 24, 0.0625, 10, 2",
    "240, 12, 0.1, 19, 1",
    "240, 12, 0.1, 20, 2",
    "240, 24, 0, 10, 1",
    "240, 24, 0, 11, 2"
  })
  void kerfCountsBetweenPiecesOnly(
      double stickIn, double pieceIn, double kerfIn, int pieces, int bars) {
    BarCuttingProblem problem =
        BarInstances.oneStock(
            stickIn * INCH_MM, kerfIn * INCH_MM, new double[][] {{pieceIn * INCH_MM, pieces}});
    BarCuttingPlan plan = new BarCutter().cut(problem);
    BarPlanChecker.check(problem, plan);
    assertEquals(bars, plan.bars().size());
  }

  /** Pieces that add up to three sticks exactly need a fourth as soon as the saw takes anything. */
  @ParameterizedTest
  @CsvSource({"0, 3", "0.0625, 4"})
  void kerfTrapNeedsOneMoreStick(double kerfIn, int bars) {
    BarCuttingProblem problem =
        BarInstances.oneStock(
            240 * INCH_MM,
            kerfIn * INCH_MM,
            new double[][] {{60 * INCH_MM, 4}, {40 * INCH_MM, 6}, {30 * INCH_MM, 8}});
    BarCuttingPlan plan = new BarCutter().cut(problem);
    BarPlanChecker.check(problem, plan);
    assertEquals(bars, plan.bars().size());
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status());
  }

  /** Sum 375.125 in: two sticks of 240 in by arithmetic. */
  @Test
  void mixedListFitsTwoSticks() {
    BarCuttingProblem problem =
        BarInstances.oneStock(
            240 * INCH_MM,
            INCH_MM / 16,
            new double[][] {
              {28.5 * INCH_MM, 4},
              {34.25 * INCH_MM, 2},
              {41 * INCH_MM, 2},
              {9.75 * INCH_MM, 6},
              {52.125 * INCH_MM, 1}
            });
    BarCuttingPlan plan = new BarCutter().cut(problem);
    BarPlanChecker.check(problem, plan);
    assertEquals(2, plan.bars().size());
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status());
  }

  @Test
  void piecesThatFillTheBarExactlyFitDespiteBinaryFractions() {
    // 0.1 has no exact binary form: ten of them must still fill 1.
    BarCuttingProblem problem = BarInstances.oneStock(1.0, 0, new double[][] {{0.1, 7}, {0.3, 1}});
    assertEquals(1, new BarCutter().cut(problem).bars().size());
  }

  @Test
  void remnantsAreUsedBeforeAnythingIsBought() {
    BarCuttingProblem problem =
        new BarCuttingProblem(
            List.of(
                BarStock.bought("240 in", 6096, new BigDecimal("128.00")),
                BarStock.remnant("rack A", 900, 1)),
            List.of(new BarPiece("upper bar", 400, 2)),
            2,
            0,
            0);
    BarCuttingPlan plan = new BarCutter().cut(problem);
    BarPlanChecker.check(problem, plan);
    assertEquals(0, plan.price().signum());
    assertEquals("rack A", plan.bars().get(0).stock().id());
  }

  /**
   * With a stub in the clamp the last piece needs a cut of its own: 2 x 498 + 2 x 2 + 50 = 1050.
   */
  @ParameterizedTest
  @CsvSource({"1050, 1", "1049.9, 2"})
  void clampStubStaysOnTheBar(double lengthMm, int bars) {
    BarCuttingProblem problem =
        new BarCuttingProblem(
            List.of(BarStock.bought("bar", lengthMm, BigDecimal.ONE)),
            List.of(new BarPiece("link", 498, 2)),
            2,
            50,
            0);
    BarCuttingPlan plan = new BarCutter().cut(problem);
    BarPlanChecker.check(problem, plan);
    assertEquals(bars, plan.bars().size());
  }

  @Test
  void firstPieceStartsBehindTheTrim() {
    BarCuttingProblem problem =
        new BarCuttingProblem(
            List.of(BarStock.bought("bar", 1000, BigDecimal.ONE)),
            List.of(new BarPiece("link", 300, 1)),
            2,
            0,
            5,
            600);
    BarCuttingPlan plan = new BarCutter().cut(problem);
    BarPlanChecker.check(problem, plan);
    assertEquals(5, plan.bars().get(0).pieces().get(0).atMm());
    assertEquals(1000 - 5 - 300 - 2, plan.offcuts().get(0).lengthMm(), 1e-9);
    assertEquals("bar no. 1 offcut", plan.offcuts().get(0).name());
  }

  /** By hand: 700 + 300 and 600 + 400 leave nothing on two bars and 800 on the third. */
  @Test
  void leftOversAreGatheredIntoOneOffcut() {
    BarCuttingProblem problem =
        BarInstances.oneStock(
            1000, 0, new double[][] {{700, 1}, {600, 1}, {400, 1}, {300, 1}, {200, 1}});
    BarCuttingPlan plan = new BarCutter().cut(problem);
    BarPlanChecker.check(problem, plan);
    assertEquals(3, plan.bars().size());
    assertEquals(1, plan.offcuts().size());
    assertEquals(800, plan.offcuts().get(0).lengthMm(), 1e-9);
  }

  @Test
  void longerRemnantsStayOnTheRack() {
    BarCuttingProblem problem =
        new BarCuttingProblem(
            List.of(BarStock.remnant("long", 1500, 1), BarStock.remnant("short", 700, 1)),
            List.of(new BarPiece("link", 600, 1)),
            2,
            0,
            0);
    assertEquals("short", new BarCutter().cut(problem).bars().get(0).stock().id());
  }

  @Test
  void uniformPricesOfNothingCountBars() {
    BarCuttingProblem problem =
        new BarCuttingProblem(
            List.of(
                BarStock.bought("long", 1000, BigDecimal.ZERO),
                BarStock.bought("short", 400, BigDecimal.ZERO)),
            List.of(new BarPiece("link", 300, 3)),
            0,
            0,
            0);
    assertEquals(1, new BarCutter().cut(problem).bars().size());
  }

  @Test
  void boundsAreNotRoundedToWholePricesThatNoPlanCosts() {
    // Two 60s never share a 100 bar: 2 x 10.50, while length alone asks for 1.2 bars = 12.60.
    BarCuttingProblem problem =
        new BarCuttingProblem(
            List.of(BarStock.bought("bar", 100, new BigDecimal("10.50"))),
            List.of(new BarPiece("p", 60, 2)),
            0,
            0,
            0);
    BarCuttingPlan plan = new BarCutter().cut(problem);
    assertEquals(new BigDecimal("21.00"), plan.price());
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status());
  }

  @Test
  void nothingToCutCostsNothing() {
    BarCuttingPlan plan = new BarCutter().cut(new BarCuttingProblem(List.of(), List.of(), 2, 0, 0));
    assertEquals(0, plan.price().signum());
    assertTrue(plan.bars().isEmpty());
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status());
  }

  @Test
  void refusesAPieceLongerThanAnyStockAndNamesBoth() {
    List<BarStock> stock = List.of(BarStock.bought("96 in", 2438.4, BigDecimal.TEN));
    List<BarPiece> pieces = List.of(new BarPiece("crossmember", 2500, 1));
    String message =
        assertThrows(
                StockShortageException.class, () -> new BarCuttingProblem(stock, pieces, 2, 0, 0))
            .getMessage();
    assertTrue(message.contains("crossmember") && message.contains("2500 mm"), message);
    assertTrue(message.contains("96 in") && message.contains("2438.4 mm"), message);
    assertTrue(message.contains("Add a longer stock"), message);
  }

  @Test
  void refusesAJobThatTheRackCannotHold() {
    BarCuttingProblem problem =
        new BarCuttingProblem(
            List.of(BarStock.remnant("rack", 1000, 2)),
            List.of(new BarPiece("link", 600, 3)),
            2,
            0,
            0);
    String message =
        assertThrows(StockShortageException.class, () -> new BarCutter().cut(problem)).getMessage();
    assertTrue(message.contains("1800 mm") && message.contains("2000 mm"), message);
    assertTrue(message.contains("do not fit"), message);
  }

  @Test
  void refusesImpossibleNumbersByName() {
    List<BarStock> stock = List.of(BarStock.bought("bar", 1000, BigDecimal.ONE));
    List<BarPiece> pieces = List.of(new BarPiece("link", 300, 1));
    assertRefused("the kerf", () -> new BarCuttingProblem(stock, pieces, -1, 0, 0));
    assertRefused("the kerf", () -> new BarCuttingProblem(stock, pieces, Double.NaN, 0, 0));
    assertRefused("the clamp loss", () -> new BarCuttingProblem(stock, pieces, 1, -2, 0));
    assertRefused("link", () -> new BarPiece("link", 0, 1));
    assertRefused("link", () -> new BarPiece("link", 300, 0));
    assertRefused("bar", () -> BarStock.bought("bar", 1000, new BigDecimal("-1")));
    assertRefused(
        "bar", () -> new BarStock("bar", 1000, BigDecimal.ONE, OptionalInt.of(-1), false));
    assertRefused(
        "listed twice",
        () ->
            new BarCuttingProblem(
                List.of(stock.get(0), BarStock.bought("bar", 900, BigDecimal.ONE)),
                pieces,
                1,
                0,
                0));
    assertRefused("at most 6 decimals", () -> BarStock.bought("bar", 1000, new BigDecimal("1e-7")));
    assertRefused("at most 500000", () -> lotsOf(600_000));
    assertRefused("time limit", () -> new BarCutter(Duration.ZERO));
  }

  private static BarCuttingProblem lotsOf(int quantity) {
    return BarInstances.oneStock(1000, 0, new double[][] {{10, quantity}});
  }

  private static void assertRefused(String named, Runnable build) {
    String message = assertThrows(IllegalArgumentException.class, build::run).getMessage();
    assertTrue(message.contains(named), message);
  }

  /**
   * An invented list. Two drops from the rack, one 240 in and one 144 in bar hold the list with 1.2
   * m to spare, and no set of bars between 190.25 (too short by 18 mm) and 216.50 exists: 240 and
   * 96 in, 2 x 144 in and 3 x 96 in cost less and are too short.
   */
  @Test
  void findsTheCheapestSetOfAFewBars() {
    double[][] list = {
      {61.5, 2}, {120, 4}, {420, 4}, {96, 2}, {292.5, 6}, {192, 5}, {427.5, 6}, {199.5, 5}, {171, 5}
    };
    List<BarPiece> pieces = new ArrayList<>();
    for (double[] row : list) {
      pieces.add(new BarPiece("piece " + row[0], row[0], (int) row[1]));
    }
    BarCuttingProblem problem =
        new BarCuttingProblem(
            List.of(
                BarStock.bought("240 in", 6096, new BigDecimal("128.00")),
                BarStock.bought("144 in", 3657.6, new BigDecimal("88.50")),
                BarStock.bought("96 in", 2438.4, new BigDecimal("62.25")),
                BarStock.remnant("short drop", 243, 1),
                BarStock.remnant("long drop", 865, 1)),
            pieces,
            1.5,
            0,
            0);
    BarCuttingPlan plan = new BarCutter().cut(problem);
    BarPlanChecker.check(problem, plan);
    assertEquals(new BigDecimal("216.50"), plan.price());
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status());
  }
}
