package trammel.cutting.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trammel.cutting.CuttingStatus;
import trammel.cutting.internal.Deadline;

class AllFillingsTest {
  private static final int TRIALS = 400;

  private static SheetModel model(int width, int height, int[][] sides, boolean mayTurn) {
    return SheetModel.of(problem(width, height, sides, mayTurn));
  }

  private static SheetCuttingProblem problem(
      int width, int height, int[][] sides, boolean mayTurn) {
    List<SheetPart> parts = new ArrayList<>();
    for (int[] side : sides) {
      parts.add(new SheetPart("part " + (parts.size() + 1), side[0], side[1], 1, mayTurn));
    }
    SheetStock sheet = SheetStock.bought("sheet", width, height, BigDecimal.ONE);
    return new SheetCuttingProblem(List.of(sheet), parts, 0, 0, CuttingMethod.FREE, 1);
  }

  /** Four 2 by 3 plates round a hole of 1 by 1, a pinwheel: by hand. */
  @Test
  void findsThePinwheel() {
    int[][] plates = {{2, 3}, {3, 2}, {2, 3}, {3, 2}};
    SheetModel model = model(5, 5, plates, false);
    assertTrue(new ExactPlacement(model).fits(model.count, 0));
    SheetModel tooLow = model(6, 4, plates, false);
    ExactPlacement placement = new ExactPlacement(tooLow);
    assertFalse(placement.fits(tooLow.count, 0));
    assertFalse(placement.isOpen());
  }

  /** Every answer against a plain search over all whole positions. */
  @Test
  void answersAsAllPositionsDo() {
    Random random = new Random(7);
    int fitting = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      int[][] sides = new int[3 + random.nextInt(3)][];
      for (int i = 0; i < sides.length; i++) {
        sides[i] = new int[] {1 + random.nextInt(4), 1 + random.nextInt(4)};
      }
      boolean mayTurn = random.nextBoolean();
      int height = 4 + random.nextInt(2);
      SheetModel model = model(5, height, sides, mayTurn);
      ExactPlacement placement = new ExactPlacement(model);
      boolean expected = fitsAnywhere(sides, 0, new boolean[5][height], mayTurn);
      assertEquals(expected, placement.fits(model.count, 0));
      assertFalse(placement.isOpen());
      fitting += expected ? 1 : 0;
    }
    assertTrue(fitting > TRIALS / 10 && fitting < TRIALS * 9 / 10, "both answers must be met");
  }

  private static boolean fitsAnywhere(int[][] sides, int part, boolean[][] taken, boolean mayTurn) {
    if (part == sides.length) {
      return true;
    }
    int[] side = sides[part];
    return place(sides, part, side[0], side[1], taken, mayTurn)
        || (mayTurn && place(sides, part, side[1], side[0], taken, mayTurn));
  }

  private static boolean place(
      int[][] sides, int part, int w, int h, boolean[][] taken, boolean mayTurn) {
    for (int x = 0; x + w <= taken.length; x++) {
      for (int y = 0; y + h <= taken[0].length; y++) {
        if (isOpen(taken, x, y, w, h)) {
          mark(taken, x, y, w, h, true);
          if (fitsAnywhere(sides, part + 1, taken, mayTurn)) {
            return true;
          }
          mark(taken, x, y, w, h, false);
        }
      }
    }
    return false;
  }

  private static boolean isOpen(boolean[][] taken, int x, int y, int w, int h) {
    for (int i = x; i < x + w; i++) {
      for (int j = y; j < y + h; j++) {
        if (taken[i][j]) {
          return false;
        }
      }
    }
    return true;
  }

  private static void mark(boolean[][] taken, int x, int y, int w, int h, boolean value) {
    for (int i = x; i < x + w; i++) {
      for (int j = y; j < y + h; j++) {
        taken[i][j] = value;
      }
    }
  }

  /** Only 6 by 4 and 6 by 6 fill one sheet of 10 by 10 together, so three, not the two of area. */
  @Test
  void provesWhatAreaCannot() {
    SheetCuttingProblem problem =
        problem(10, 10, new int[][] {{6, 4}, {6, 6}, {5, 6}, {6, 7}}, false);
    AllFillings all = new AllFillings(SheetModel.of(problem), Deadline.in(Duration.ofSeconds(20)));
    assertEquals(3, all.cheaperThan(5).orElseThrow().price);
    assertTrue(all.isProven());
    SheetCuttingPlan plan = new SheetCutter(Duration.ofSeconds(20)).cut(problem);
    SheetPlanChecker.check(problem, plan);
    assertEquals(new BigDecimal(3), plan.price());
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status());
  }
}
