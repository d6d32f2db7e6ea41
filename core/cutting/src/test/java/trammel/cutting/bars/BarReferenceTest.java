package trammel.cutting.bars;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import trammel.cutting.CuttingStatus;
import trammel.cutting.ReferenceFiles;

/**
 * Open benchmark instances (sources inside each file; optima from the tables of Delorme, Iori and
 * Martello 2018) and invented shop jobs (optima proven by two independent solvers).
 */
class BarReferenceTest {
  /** Generous, for a slow machine with other work; docs/performance.md has measured times. */
  private static final Duration LIMIT = Duration.ofSeconds(60);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "falkenauer-t120-02",
        "falkenauer-t60-00",
        "falkenauer-u250-05",
        "falkenauer-u1000-14",
        "scholl-n1w2b3r9",
        "scholl-n3c1w4-a",
        "scholl-n4w1b1r4",
        "schwerin1-bpp85",
        "schwerin2-bpp2",
        "waescher-test0014",
        "hard28-bpp781",
        "hard28-bpp175"
      })
  void provesBenchmarkOptima(String name) {
    assertProven(ReferenceFiles.read("cut1d", name));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "J1-fourlink",
        "J2-fourlink-remnants",
        "J3-frame-and-links",
        "J4-cage",
        "J5-sixty",
        "s-job01",
        "s-job04",
        "s-job08",
        "s-job11"
      })
  void provesShopJobs(String name) {
    for (JsonNode section : ReferenceFiles.read("jobs1d", name).get("sections")) {
      assertProven(section);
    }
  }

  static Stream<Path> allBenchmarks() {
    return ReferenceFiles.in("cut1d").stream();
  }

  static Stream<Path> allJobs() {
    return ReferenceFiles.in("jobs1d").stream().filter(file -> !file.toString().contains("batch"));
  }

  @Tag("long")
  @ParameterizedTest
  @MethodSource("allBenchmarks")
  void provesEveryBenchmark(Path file) {
    assertProven(ReferenceFiles.read(file));
  }

  @Tag("long")
  @ParameterizedTest
  @MethodSource("allJobs")
  void provesEveryJob(Path file) {
    for (JsonNode section : ReferenceFiles.read(file).get("sections")) {
      assertProven(section);
    }
  }

  private static void assertProven(JsonNode instance) {
    BarCuttingProblem problem = BarInstances.problem(instance);
    BarCuttingPlan plan = new BarCutter(LIMIT).cut(problem);
    BarPlanChecker.check(problem, plan);
    BigDecimal best = BarInstances.best(instance).get(0);
    assertEquals(0, best.compareTo(plan.price()), () -> plan.price() + ", optimum " + best);
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status(), () -> "bound " + plan.lowerBound());
    assertEquals(0, best.compareTo(plan.lowerBound()), () -> "bound " + plan.lowerBound());
  }

  /** Five hundred jobs in one order: within a tenth of a percent of the bound. */
  @Test
  void cutsAYearsOrderCloseToItsBound() {
    BigDecimal price = BigDecimal.ZERO;
    BigDecimal bound = BigDecimal.ZERO;
    for (JsonNode section : ReferenceFiles.read("jobs1d", "batch500-shared").get("sections")) {
      BarCuttingProblem problem = BarInstances.problem(section);
      BarCuttingPlan plan = new BarCutter().cut(problem);
      BarPlanChecker.check(problem, plan);
      price = price.add(plan.price());
      bound = bound.add(plan.lowerBound());
    }
    assertCloseTo(bound, price);
  }

  /** Invented: 20 000 pieces of 60 lengths. */
  @Test
  void cutsTwentyThousandPiecesCloseToTheBound() {
    List<BarPiece> pieces = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      pieces.add(new BarPiece("piece " + i, 160 + (i * 7919) % 2300, 300 + (i * 31) % 67));
    }
    BarCuttingProblem problem =
        new BarCuttingProblem(
            List.of(
                BarStock.bought("240 in", 6096, new BigDecimal("128.00")),
                BarStock.bought("144 in", 3657.6, new BigDecimal("88.00"))),
            pieces,
            1.5875,
            0,
            0);
    BarCuttingPlan plan = new BarCutter().cut(problem);
    BarPlanChecker.check(problem, plan);
    assertCloseTo(plan.lowerBound(), plan.price());
  }

  private static void assertCloseTo(BigDecimal bound, BigDecimal price) {
    double gap = price.subtract(bound).doubleValue() / price.doubleValue();
    assertTrue(gap <= 1e-3, () -> "gap " + gap);
  }
}
