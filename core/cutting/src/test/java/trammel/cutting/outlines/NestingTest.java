package trammel.cutting.outlines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import trammel.cutting.CuttingStatus;
import trammel.cutting.ReferenceFiles;
import trammel.cutting.StockShortageException;
import trammel.cutting.sheets.SheetStock;

class NestingTest {
  private static final List<Double> QUARTER_TURNS = List.of(0.0, 90.0, 180.0, 270.0);

  private static OutlinePart part(String id, int quantity, double... corners) {
    List<OutlinePoint> outline = new ArrayList<>();
    for (int i = 0; i < corners.length; i += 2) {
      outline.add(new OutlinePoint(corners[i], corners[i + 1]));
    }
    return new OutlinePart(id, outline, QUARTER_TURNS, quantity);
  }

  /** Two L brackets, legs 100, 40 wide: one lies in the other's hollow on 100 x 160 and less. */
  @Test
  void nestsOneBracketInTheHollowOfAnother() {
    OutlinePart bracket = part("L", 2, 0, 0, 100, 0, 100, 40, 40, 40, 40, 100, 0, 100);
    NestingProblem problem =
        new NestingProblem(
            List.of(
                SheetStock.bought("tight", 150, 108, new BigDecimal("10")),
                SheetStock.bought("wide", 210, 108, new BigDecimal("14"))),
            List.of(bracket),
            2,
            2);
    NestingPlan plan = new NestingCutter(Duration.ofSeconds(10)).cut(problem);
    NestingChecker.check(problem, plan);
    assertEquals(1, plan.sheets().size());
    assertEquals("tight", plan.sheets().get(0).stock().id());
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status());
  }

  /** Two right triangles make a square: the strip is as long as it is wide. */
  @Test
  void nestsTwoTrianglesIntoASquare() {
    NestingStripProblem problem =
        new NestingStripProblem(100, List.of(part("gusset", 2, 0, 0, 100, 0, 0, 100)), 0, 0);
    NestingStripPlan plan = new NestingStripCutter(Duration.ofSeconds(1)).cut(problem);
    NestingChecker.check(problem, plan);
    assertEquals(100, plan.lengthMm(), 0.01);
  }

  /** Plates of 60 and 40 fill a strip of 100 without a gap, if each finds the one place it has. */
  @Test
  void findsWhatFitsExactly() {
    List<OutlinePart> plates =
        List.of(
            part("wide", 4, 0, 0, 50, 0, 50, 60, 0, 60),
            part("narrow", 4, 0, 0, 50, 0, 50, 40, 0, 40));
    NestingStripProblem problem = new NestingStripProblem(100, plates, 0, 0);
    NestingStripPlan plan = new NestingStripCutter(Duration.ofSeconds(3)).cut(problem);
    NestingChecker.check(problem, plan);
    assertEquals(200, plan.lengthMm(), 0.1);
  }

  /** Corners of an arc are taken off outward only, so that nothing is cut into. */
  @Test
  void plainerOutlinesContainTheOutline() {
    int n = 200;
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      double radius = i % 40 < 20 ? 50 : 30;
      x[i] = radius * Math.cos(2 * Math.PI * i / n);
      y[i] = radius * Math.sin(2 * Math.PI * i / n);
    }
    double[][] plain = OutlineHull.of(x, y);
    assertTrue(plain[0].length <= 40, () -> plain[0].length + " corners");
    assertTrue(area(plain[0], plain[1]) <= 1.0101 * area(x, y));
    for (int i = 0; i < n; i++) {
      assertTrue(windsAround(plain, x[i] * (1 - 1e-9), y[i] * (1 - 1e-9)), "corner " + i);
    }
  }

  private static double area(double[] x, double[] y) {
    double twice = 0;
    for (int i = 0; i < x.length; i++) {
      int j = (i + 1) % x.length;
      twice += x[i] * y[j] - x[j] * y[i];
    }
    return twice / 2;
  }

  private static boolean windsAround(double[][] ring, double px, double py) {
    double angle = 0;
    for (int i = 0; i < ring[0].length; i++) {
      int j = (i + 1) % ring[0].length;
      double from = Math.atan2(ring[1][i] - py, ring[0][i] - px);
      double to = Math.atan2(ring[1][j] - py, ring[0][j] - px);
      angle += Math.IEEEremainder(to - from, 2 * Math.PI);
    }
    return angle > Math.PI;
  }

  /** The pieces of an outline cover its area once. */
  @ParameterizedTest
  @CsvSource({"0, 6400", "90, 6400", "33, 6400"})
  void convexPiecesCoverTheOutline(double turnDeg, double area) {
    OutlinePart bracket = part("L", 1, 0, 0, 100, 0, 100, 40, 40, 40, 40, 100, 0, 100);
    double covered = 0;
    for (ConvexPiece piece : new OutlineForm(bracket).turned(new OutlineTurn(turnDeg))) {
      covered += area(piece.x, piece.y);
    }
    assertEquals(area, covered, 1e-6);
    assertEquals(area, bracket.areaMm2(), 1e-9);
  }

  @Test
  void refusesImpossibleOutlinesByName() {
    assertRefused("plate", () -> part("plate", 1, 0, 0, 1, 0));
    assertRefused("crosses itself", () -> part("bow", 1, 0, 0, 10, 10, 10, 0, 0, 10));
    assertRefused("encloses nothing", () -> part("line", 1, 0, 0, 10, 0, 20, 0));
    assertRefused("corner", () -> new OutlinePoint(Double.NaN, 0));
    OutlinePart wide = part("gusset", 1, 0, 0, 300, 0, 0, 300);
    assertRefused("gusset", () -> new NestingStripProblem(100, List.of(wide), 0, 0));
    assertThrows(
        StockShortageException.class,
        () ->
            new NestingProblem(
                List.of(SheetStock.bought("small", 200, 200, BigDecimal.ONE)),
                List.of(wide),
                5,
                2));
  }

  private static void assertRefused(String named, Runnable build) {
    String message = assertThrows(IllegalArgumentException.class, build::run).getMessage();
    assertTrue(message.contains(named), message);
  }

  @ParameterizedTest
  @ValueSource(strings = {"s-poly01", "s-poly02"})
  void nestsShopBracketsSoundly(String name) {
    NestingProblem problem = NestingInstances.problem(ReferenceFiles.read("poly2d", name));
    NestingPlan plan = new NestingCutter(Duration.ofSeconds(5)).cut(problem);
    NestingChecker.check(problem, plan);
  }

  @Test
  void nestsAPublishedStripSoundly() {
    JsonNode file = ReferenceFiles.read("poly2d", "fu");
    NestingStripProblem problem = NestingInstances.strip(file);
    NestingStripPlan plan = new NestingStripCutter(Duration.ofSeconds(2)).cut(problem);
    NestingChecker.check(problem, plan);
    double best = file.get("best").get("objective").asDouble();
    assertTrue(plan.lengthMm() < 1.1 * best, () -> plan.lengthMm() + ", best known " + best);
  }

  static Stream<JsonNode> strips() {
    return files("strip");
  }

  static Stream<JsonNode> shopSets() {
    return files("bin");
  }

  private static Stream<JsonNode> files(String problem) {
    return ReferenceFiles.in("poly2d").stream()
        .map(ReferenceFiles::read)
        .filter(file -> file.get("problem").asString().equals(problem));
  }

  /** Best known lengths are from arXiv:2509.13329; their search ran far longer than this one. */
  @Tag("long")
  @ParameterizedTest
  @MethodSource("strips")
  void nestsPublishedStripsWithinATenthInTenSeconds(JsonNode file) {
    assertWithin(1.10, file, Duration.ofSeconds(10));
  }

  @Tag("long")
  @ParameterizedTest
  @MethodSource("strips")
  void nestsPublishedStripsWithinATwentiethInAMinute(JsonNode file) {
    assertWithin(1.05, file, Duration.ofSeconds(60));
  }

  private static void assertWithin(double ratio, JsonNode file, Duration limit) {
    NestingStripProblem problem = NestingInstances.strip(file);
    NestingStripPlan plan = new NestingStripCutter(limit).cut(problem);
    NestingChecker.check(problem, plan);
    String name = file.get("name").asString();
    double best = file.get("best").get("objective").asDouble();
    double overPercent = 100 * (plan.lengthMm() / best - 1);
    System.out.printf(
        "%s in %d s: %.3f, %.1f %% over the best known%n",
        name, limit.toSeconds(), plan.lengthMm(), overPercent);
    assertTrue(
        plan.lengthMm() <= ratio * best,
        () -> name + ": " + plan.lengthMm() + ", best known " + best);
  }

  /** 176 for the third set is one 24 x 12 sheet less than its rectangles take. */
  @Tag("long")
  @ParameterizedTest
  @MethodSource("shopSets")
  void nestsShopSetsOnLittleSheet(JsonNode file) {
    NestingProblem problem = NestingInstances.problem(file);
    NestingPlan plan = new NestingCutter(Duration.ofSeconds(10)).cut(problem);
    NestingChecker.check(problem, plan);
    String most = file.get("name").asString().equals("s-poly03") ? "176" : "88";
    assertTrue(plan.price().compareTo(new BigDecimal(most)) <= 0, () -> "price " + plan.price());
  }
}
