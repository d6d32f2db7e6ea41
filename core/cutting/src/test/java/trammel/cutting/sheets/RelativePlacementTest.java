package trammel.cutting.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RelativePlacementTest {
  private static final int TRIALS = 300;

  private static SheetModel model(int width, int height, int[][] sides, boolean mayTurn) {
    List<SheetPart> parts = new ArrayList<>();
    for (int[] side : sides) {
      parts.add(new SheetPart("part " + parts.size(), side[0], side[1], 1, mayTurn));
    }
    SheetStock sheet = SheetStock.bought("sheet", width, height, BigDecimal.ONE);
    return SheetModel.of(
        new SheetCuttingProblem(List.of(sheet), parts, 0, 0, CuttingMethod.FREE, 1));
  }

  /** Four 2 by 3 plates round a hole of 1 by 1, a pinwheel: by hand. */
  @Test
  void findsThePinwheel() {
    int[][] plates = {{2, 3}, {3, 2}, {2, 3}, {3, 2}};
    SheetModel model = model(5, 5, plates, false);
    RelativePlacement placement = new RelativePlacement(model, 1000);
    assertTrue(placement.fits(model.count, 0));
    assertEquals(4, placement.layout().parts);
  }

  /** Two plates of 6 by 6 lie neither beside nor above each other on 11 by 11: by hand. */
  @Test
  void provesThatTwoLargePartsDoNotFit() {
    SheetModel model = model(11, 11, new int[][] {{6, 6}, {6, 6}}, true);
    RelativePlacement placement = new RelativePlacement(model, 1000);
    assertFalse(placement.fits(model.count, 0));
    assertFalse(placement.isOpen());
  }

  /** Both searches are exact, and share nothing: their answers must be the same. */
  @Test
  void answersAsTheSearchFromCornerToCornerDoes() {
    Random random = new Random(11);
    int fitting = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      int[][] sides = new int[3 + random.nextInt(4)][];
      for (int i = 0; i < sides.length; i++) {
        sides[i] = new int[] {2 + random.nextInt(7), 2 + random.nextInt(7)};
      }
      SheetModel model = model(10, 9 + random.nextInt(3), sides, random.nextInt(3) == 0);
      ExactPlacement corners = new ExactPlacement(model, 1_000_000);
      RelativePlacement relative = new RelativePlacement(model, 1_000_000);
      boolean fits = relative.fits(model.count, 0);
      assertEquals(corners.fits(model.count, 0), fits, "seed 11, trial " + trial);
      assertFalse(corners.isOpen() || relative.isOpen());
      fitting += fits ? 1 : 0;
    }
    assertTrue(fitting > TRIALS / 10 && fitting < TRIALS * 9 / 10, "both answers must be met");
  }
}
