package trammel.cutting.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trammel.cutting.CuttingStatus;

/** Verifies plans from the problem alone, with nothing of the solver. */
public final class SheetPlanChecker {
  private static final double TOLERANCE_MM = 1e-4;

  private SheetPlanChecker() {}

  public static void check(SheetCuttingProblem problem, SheetCuttingPlan plan) {
    Map<String, Integer> used = new HashMap<>();
    List<PlacedPart> all = new ArrayList<>();
    BigDecimal price = BigDecimal.ZERO;
    for (CutSheet sheet : plan.sheets()) {
      assertTrue(problem.stock().contains(sheet.stock()), () -> "unknown " + sheet.stock());
      assertTrue(!sheet.parts().isEmpty(), "an empty sheet is bought");
      used.merge(sheet.stock().id(), 1, Integer::sum);
      price = price.add(sheet.stock().price());
      all.addAll(sheet.parts());
      double widthMm = sheet.stock().widthMm();
      double heightMm = sheet.stock().heightMm();
      checkPlaces(sheet.parts(), widthMm, heightMm, problem.marginMm(), problem.kerfMm());
      if (problem.method() == CuttingMethod.GUILLOTINE) {
        assertTrue(canBeSheared(sheet.parts()), () -> "no shear takes this apart: " + sheet);
      }
    }
    checkParts(problem.parts(), all);
    Map<String, Long> available = new HashMap<>();
    for (SheetStock stock : problem.stock()) {
      available.merge(stock.id(), (long) stock.available().orElse(Integer.MAX_VALUE), Long::sum);
    }
    used.forEach((id, n) -> assertTrue(n <= available.get(id), () -> "too many of " + id));
    assertEquals(0, price.compareTo(plan.price()), "price of all sheets");
    assertTrue(plan.lowerBound().compareTo(plan.price()) <= 0, "bound above price");
    assertTrue(
        plan.status() == CuttingStatus.BOUNDED || plan.lowerBound().compareTo(plan.price()) == 0,
        "proven, yet the bound is below the price");
    checkOffcuts(problem, plan);
  }

  public static void check(StripProblem problem, StripPlan plan) {
    checkPlaces(
        plan.parts(), problem.widthMm(), plan.lengthMm(), problem.marginMm(), problem.kerfMm());
    checkParts(problem.parts(), plan.parts());
    assertTrue(plan.lowerBoundMm() <= plan.lengthMm() + TOLERANCE_MM, "bound above length");
  }

  private static void checkPlaces(
      List<PlacedPart> parts, double widthMm, double heightMm, double marginMm, double kerfMm) {
    for (int i = 0; i < parts.size(); i++) {
      PlacedPart a = parts.get(i);
      assertTrue(
          a.xMm() >= marginMm - TOLERANCE_MM
              && a.yMm() >= marginMm - TOLERANCE_MM
              && a.xMm() + a.widthMm() <= widthMm - marginMm + TOLERANCE_MM
              && a.yMm() + a.heightMm() <= heightMm - marginMm + TOLERANCE_MM,
          () -> "outside the sheet: " + a);
      for (int j = 0; j < i; j++) {
        PlacedPart b = parts.get(j);
        double apartMm =
            Math.max(
                Math.max(a.xMm() - b.xMm() - b.widthMm(), b.xMm() - a.xMm() - a.widthMm()),
                Math.max(a.yMm() - b.yMm() - b.heightMm(), b.yMm() - a.yMm() - a.heightMm()));
        assertTrue(apartMm >= kerfMm - TOLERANCE_MM, () -> "no kerf between " + a + " and " + b);
      }
    }
  }

  private static void checkParts(List<SheetPart> wanted, List<PlacedPart> placed) {
    Map<String, Integer> balance = new HashMap<>();
    for (SheetPart part : wanted) {
      balance.merge(key(part.id(), part.widthMm(), part.heightMm()), part.quantity(), Integer::sum);
    }
    Map<String, Boolean> mayTurn = new HashMap<>();
    for (SheetPart part : wanted) {
      mayTurn.put(part.id(), part.mayTurn());
    }
    for (PlacedPart part : placed) {
      double widthMm = part.turned() ? part.heightMm() : part.widthMm();
      double heightMm = part.turned() ? part.widthMm() : part.heightMm();
      balance.merge(key(part.partId(), widthMm, heightMm), -1, Integer::sum);
      assertTrue(
          !part.turned() || mayTurn.get(part.partId()), () -> "turned against the grain: " + part);
    }
    balance.forEach((key, left) -> assertEquals(0, left, () -> "missing or extra: " + key));
  }

  private static String key(String id, double widthMm, double heightMm) {
    return id + " " + widthMm + " x " + heightMm;
  }

  /** Splits the parts by a straight cut from edge to edge, and each side again. */
  static boolean canBeSheared(List<PlacedPart> parts) {
    if (parts.size() <= 1) {
      return true;
    }
    for (PlacedPart edge : parts) {
      if (splits(parts, edge.xMm(), true) || splits(parts, edge.yMm(), false)) {
        return true;
      }
    }
    return false;
  }

  private static boolean splits(List<PlacedPart> parts, double atMm, boolean upright) {
    List<PlacedPart> before = new ArrayList<>();
    List<PlacedPart> behind = new ArrayList<>();
    for (PlacedPart part : parts) {
      double fromMm = upright ? part.xMm() : part.yMm();
      double toMm = fromMm + (upright ? part.widthMm() : part.heightMm());
      if (toMm <= atMm + TOLERANCE_MM) {
        before.add(part);
      } else if (fromMm >= atMm - TOLERANCE_MM) {
        behind.add(part);
      } else {
        return false;
      }
    }
    return !before.isEmpty() && !behind.isEmpty() && canBeSheared(before) && canBeSheared(behind);
  }

  private static void checkOffcuts(SheetCuttingProblem problem, SheetCuttingPlan plan) {
    for (SheetOffcut offcut : plan.offcuts()) {
      assertTrue(
          Math.min(offcut.widthMm(), offcut.heightMm()) >= problem.usefulOffcutMm(),
          () -> "too small to keep: " + offcut);
      int number = Integer.parseInt(offcut.name().replaceAll(".* no\\. (\\d+) offcut.*", "$1"));
      List<CutSheet> same =
          plan.sheets().stream().filter(s -> s.stock().id().equals(offcut.stockId())).toList();
      List<PlacedPart> withOffcut = new ArrayList<>(same.get(number - 1).parts());
      withOffcut.add(
          new PlacedPart(
              offcut.name(), offcut.xMm(), offcut.yMm(), offcut.widthMm(), offcut.heightMm(), 0));
      SheetStock stock = same.get(number - 1).stock();
      checkPlaces(
          withOffcut, stock.widthMm(), stock.heightMm(), problem.marginMm(), problem.kerfMm());
      if (problem.method() == CuttingMethod.GUILLOTINE) {
        assertTrue(canBeSheared(withOffcut), () -> "no shear frees " + offcut);
      }
    }
  }
}
