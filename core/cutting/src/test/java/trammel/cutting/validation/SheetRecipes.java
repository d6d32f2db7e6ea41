package trammel.cutting.validation;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import trammel.cutting.sheets.CuttingMethod;
import trammel.cutting.sheets.SheetCuttingProblem;
import trammel.cutting.sheets.SheetPart;
import trammel.cutting.sheets.SheetStock;

/**
 * Sheet lists by the recipes of the ten published classes.
 *
 * <p>Sources: J. O. Berkey, P. Y. Wang, Journal of the Operational Research Society 38 (1987)
 * 423-429 (classes 1 to 6); S. Martello, D. Vigo, Management Science 44 (1998) 388-399 (classes 7
 * to 10); five sizes of sheet after D. Pisinger, M. Sigurd, Discrete Optimization 2 (2005) 154-167.
 * The ranges are from memory; the price of a size, 1.2 of its area less 0.2 of the largest, is read
 * off the members of that collection beside the tests.
 */
final class SheetRecipes {
  private static final int SIZES = 5;

  /** The longest side of a part of classes 1 to 6. */
  private static final int[] LONGEST = {10, 10, 35, 35, 100, 100};

  /** The side of the sheet of classes 1 to 10. */
  private static final int[] SHEET = {10, 30, 40, 100, 100, 300, 100, 100, 100, 100};

  private SheetRecipes() {}

  /** Parts that may not turn on one size of sheet, as few sheets as possible. */
  static Instance oneSize(int ofClass, int parts, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int side = SHEET[ofClass - 1];
    return instance(
        "one size",
        "class " + ofClass,
        seed,
        List.of(SheetStock.bought("sheet", side, side, BigDecimal.ONE)),
        parts(random, ofClass, parts),
        0);
  }

  /** Parts that may not turn on five sizes of sheet at the least price. */
  static Instance fiveSizes(int ofClass, int parts, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int side = SHEET[ofClass - 1];
    List<SheetStock> stock = new ArrayList<>();
    for (int s = 0; s < SIZES; s++) {
      int width = s == 0 ? side : random.nextInt((side + 1) / 2, side + 1);
      int height = s == 0 ? side : random.nextInt((side + 1) / 2, side + 1);
      int price = (int) Math.floor(1.2 * width * height - 0.2 * side * side);
      stock.add(
          SheetStock.bought(
              "size " + s + ", " + width + " x " + height,
              width,
              height,
              BigDecimal.valueOf(Math.max(1, price))));
    }
    return instance(
        "five sizes", "class " + ofClass, seed, stock, parts(random, ofClass, parts), 0);
  }

  /**
   * A shop's blanks, which may turn, with a kerf between them, on sizes as a steel yard sells them;
   * a recipe of our own.
   */
  static Instance shop(int parts, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int[][] sizes = {
      {2438, 1219, 340}, {1219, 1219, 198}, {1219, 610, 112}, {610, 610, 67}, {610, 305, 39}
    };
    List<SheetStock> stock = new ArrayList<>();
    for (int[] size : sizes) {
      stock.add(
          SheetStock.bought(
              size[0] + " x " + size[1], size[0], size[1], BigDecimal.valueOf(size[2])));
    }
    List<SheetPart> blanks = new ArrayList<>();
    for (int i = 0; i < parts; i++) {
      double longMm = random.nextInt(60, 300);
      double shortMm = Math.min(longMm, random.nextInt(50, 200));
      blanks.add(new SheetPart("part " + i, longMm, shortMm, 1, true));
    }
    return instance("shop", "blanks", seed, stock, blanks, 3);
  }

  private static List<SheetPart> parts(SplittableRandom random, int ofClass, int parts) {
    List<SheetPart> list = new ArrayList<>();
    for (int i = 0; i < parts; i++) {
      int[] sides = ofClass <= 6 ? plain(random, ofClass) : shaped(random, ofClass - 7);
      list.add(new SheetPart("part " + i, sides[0], sides[1], 1, false));
    }
    return list;
  }

  private static int[] plain(SplittableRandom random, int ofClass) {
    int longest = LONGEST[ofClass - 1];
    return new int[] {random.nextInt(1, longest + 1), random.nextInt(1, longest + 1)};
  }

  /** Seven parts in ten are wide, tall, large or small as the class says, the others any other. */
  private static int[] shaped(SplittableRandom random, int mostly) {
    int shape = mostly;
    if (random.nextInt(10) >= 7) {
      shape = (mostly + 1 + random.nextInt(3)) % 4;
    }
    return switch (shape) {
      case 0 -> new int[] {random.nextInt(67, 101), random.nextInt(1, 51)};
      case 1 -> new int[] {random.nextInt(1, 51), random.nextInt(67, 101)};
      case 2 -> new int[] {random.nextInt(50, 101), random.nextInt(50, 101)};
      default -> new int[] {random.nextInt(1, 51), random.nextInt(1, 51)};
    };
  }

  private static Instance instance(
      String family,
      String kind,
      long seed,
      List<SheetStock> stock,
      List<SheetPart> parts,
      double kerfMm) {
    String name = family + " " + kind + " n" + parts.size() + " seed " + seed;
    return new Instance.Sheets(
        family, name, new SheetCuttingProblem(stock, parts, 0, kerfMm, CuttingMethod.FREE));
  }
}
