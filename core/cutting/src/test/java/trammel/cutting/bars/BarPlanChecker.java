package trammel.cutting.bars;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import trammel.cutting.CuttingStatus;

/** Verifies a plan from the problem alone, with nothing of the solver. */
public final class BarPlanChecker {
  private static final double TOLERANCE_MM = 1e-4;

  private BarPlanChecker() {}

  public static void check(BarCuttingProblem problem, BarCuttingPlan plan) {
    Map<String, Integer> cut = new HashMap<>();
    Map<String, Integer> used = new HashMap<>();
    BigDecimal price = BigDecimal.ZERO;
    for (CutBar bar : plan.bars()) {
      assertTrue(problem.stock().contains(bar.stock()), () -> "unknown stock " + bar.stock());
      assertTrue(!bar.pieces().isEmpty(), "an empty bar is bought");
      used.merge(bar.stock().id(), 1, Integer::sum);
      price = price.add(bar.stock().price());
      checkBar(problem, bar);
      for (PlacedPiece piece : bar.pieces()) {
        cut.merge(piece.pieceId() + " of " + piece.lengthMm(), 1, Integer::sum);
      }
    }
    checkCounts(problem, cut, used);
    assertEquals(0, price.compareTo(plan.price()), "price of all bars");
    assertTrue(plan.lowerBound().compareTo(plan.price()) <= 0, "bound above price");
    assertTrue(
        plan.status() == CuttingStatus.BOUNDED || plan.lowerBound().compareTo(plan.price()) == 0,
        "proven, yet the bound is below the price");
    for (BarOffcut offcut : plan.offcuts()) {
      assertTrue(offcut.lengthMm() >= problem.usefulOffcutMm(), "offcut too short to keep");
    }
  }

  private static void checkBar(BarCuttingProblem problem, CutBar bar) {
    double endMm = problem.trimMm() - problem.kerfMm();
    for (PlacedPiece piece : bar.pieces()) {
      assertTrue(
          piece.atMm() >= endMm + problem.kerfMm() - TOLERANCE_MM,
          () -> "no room for the saw cut before " + piece);
      endMm = piece.atMm() + piece.lengthMm();
    }
    double stubMm = problem.clampLossMm() > 0 ? problem.clampLossMm() + problem.kerfMm() : 0;
    assertTrue(
        endMm + stubMm <= bar.stock().lengthMm() + TOLERANCE_MM, () -> "bar too short: " + bar);
    double leftMm = Math.max(0, bar.stock().lengthMm() - endMm - problem.kerfMm());
    assertEquals(leftMm, bar.offcutMm(), TOLERANCE_MM, "offcut");
  }

  private static void checkCounts(
      BarCuttingProblem problem, Map<String, Integer> cut, Map<String, Integer> used) {
    Map<String, Integer> wanted = new HashMap<>();
    for (BarPiece piece : problem.pieces()) {
      wanted.merge(piece.id() + " of " + piece.lengthMm(), piece.quantity(), Integer::sum);
    }
    assertEquals(wanted, cut, "pieces cut");
    Map<String, Long> available = new HashMap<>();
    for (BarStock stock : problem.stock()) {
      available.merge(stock.id(), (long) stock.available().orElse(Integer.MAX_VALUE), Long::sum);
    }
    used.forEach((id, count) -> assertTrue(count <= available.get(id), () -> "too many of " + id));
  }
}
