package trammel.cutting.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import trammel.cutting.CuttingStatus;
import trammel.cutting.ReferenceFiles;

/** Benchmark strips and bins (sources inside each file), and invented shop plates. */
class SheetReferenceTest {
  /** Length of each of Hopper's strips, which are built without waste. */
  private static final double OPTIMUM = 200;

  /** Best prices known for the invented shop plates, from two independent solvers. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "P1-brackets-3-16",
        "P2-brackets-1-4",
        "P3-boxing-3-16",
        "P4-forty-1-4",
        "P5-forty-3-16"
      })
  void findsTheCheapestSheetsKnown(String name) {
    JsonNode file = ReferenceFiles.read("rect2d", name);
    SheetCuttingProblem problem = SheetInstances.problem(file);
    SheetCuttingPlan plan = new SheetCutter(Duration.ofSeconds(2)).cut(problem);
    SheetPlanChecker.check(problem, plan);
    BigDecimal best = new BigDecimal(file.get("best").get("objective").asString());
    assertTrue(plan.price().compareTo(best) <= 0, () -> plan.price() + ", known " + best);
  }

  @ParameterizedTest
  @ValueSource(strings = {"s-plate01", "s-plate02", "s-plate04", "s-plate07", "s-plate08"})
  void provesShopPlatesByTheirArea(String name) {
    SheetCuttingProblem problem = SheetInstances.problem(ReferenceFiles.read("rect2d", name));
    SheetCuttingPlan plan = new SheetCutter(Duration.ofSeconds(10)).cut(problem);
    SheetPlanChecker.check(problem, plan);
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status());
  }

  /** Hopper's strips: built without waste, so that 200 is the optimum of each. */
  @ParameterizedTest
  @ValueSource(strings = {"hopper-n1a", "hopper-t1a", "hopper-t3a"})
  void packsSmallStripsWithoutWaste(String name) {
    StripProblem problem = SheetInstances.strip(ReferenceFiles.read("rect2d", name));
    StripPlan plan = new StripCutter(Duration.ofSeconds(20)).cut(problem);
    SheetPlanChecker.check(problem, plan);
    assertEquals(200, plan.lengthMm(), 1e-9);
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status());
  }

  static Stream<Path> allSheets() {
    return ReferenceFiles.in("rect2d").stream().filter(file -> !file.toString().contains("hopper"));
  }

  static Stream<Path> allStrips() {
    return ReferenceFiles.in("rect2d").stream().filter(file -> file.toString().contains("hopper"));
  }

  @Tag("long")
  @ParameterizedTest
  @MethodSource("allSheets")
  void everySheetPlanIsSound(Path path) {
    JsonNode file = ReferenceFiles.read(path);
    SheetCuttingProblem problem = SheetInstances.problem(file);
    for (CuttingMethod method : CuttingMethod.values()) {
      SheetCuttingProblem by =
          new SheetCuttingProblem(
              problem.stock(),
              problem.parts(),
              problem.marginMm(),
              problem.kerfMm(),
              method,
              problem.usefulOffcutMm());
      SheetCuttingPlan plan = new SheetCutter(Duration.ofSeconds(3)).cut(by);
      SheetPlanChecker.check(by, plan);
      if (!file.get("best").isNull()) {
        BigDecimal bound = new BigDecimal(file.get("best").get("lowerBound").asString());
        assertTrue(plan.price().compareTo(bound) >= 0, "below a proven bound");
      }
    }
  }

  /** The best objectives stated in the files; provenance in each file. */
  @Tag("long")
  @ParameterizedTest
  @MethodSource("allSheets")
  void findsTheBestObjectiveStated(Path path) {
    JsonNode file = ReferenceFiles.read(path);
    assumeFalse(file.get("best").isNull(), "no best objective is known");
    SheetCuttingProblem problem = SheetInstances.problem(file);
    SheetCuttingPlan plan = new SheetCutter(Duration.ofSeconds(20)).cut(problem);
    SheetPlanChecker.check(problem, plan);
    BigDecimal best = new BigDecimal(file.get("best").get("objective").asString());
    assertTrue(plan.price().compareTo(best) <= 0, () -> plan.price() + ", known " + best);
  }

  @Tag("long")
  @ParameterizedTest
  @MethodSource("allStrips")
  void everyStripIsWithinThreePercentInTwoSeconds(Path path) {
    assertWithin(6, path, Duration.ofSeconds(2));
  }

  @Tag("long")
  @ParameterizedTest
  @MethodSource("allStrips")
  void everyStripIsWithinOneAndAHalfPercentInThirtySeconds(Path path) {
    assertWithin(3, path, Duration.ofSeconds(30));
  }

  /** 3 % and 1.5 % of 200 are 6 and 3. */
  private static void assertWithin(int above, Path path, Duration limit) {
    StripProblem problem = SheetInstances.strip(ReferenceFiles.read(path));
    StripPlan plan = new StripCutter(limit).cut(problem);
    SheetPlanChecker.check(problem, plan);
    double length = plan.lengthMm();
    assertTrue(
        length <= OPTIMUM + above + 1e-6,
        () -> path.getFileName() + ": " + length + " after " + limit.toSeconds() + " s");
  }
}
