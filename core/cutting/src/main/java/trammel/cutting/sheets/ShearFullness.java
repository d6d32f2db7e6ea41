package trammel.cutting.sheets;

/**
 * How full a shear can cut a sheet at best, with as many copies of each part as one likes.
 *
 * <p>Dynamic programming over all sizes of rectangle; exact for a shear (Gilmore and Gomory, Oper.
 * Res. 13 (1965), from memory). No plan fills a sheet further, which tightens the bound by area.
 */
final class ShearFullness {
  /** Steps of work above which the table is not made. */
  private static final long MOST_WORK = 40_000_000L;

  private final SheetModel model;

  ShearFullness(SheetModel model) {
    this.model = model;
  }

  /** The most area of parts on one sheet; the whole sheet when the table would take too long. */
  long mostArea(int sheet) {
    int width = model.sheetWidth[sheet];
    int height = model.sheetHeight[sheet];
    // In double: sides of some millions of steps take the product past a long.
    if ((double) width * height * ((double) width + height) / 2 > MOST_WORK) {
      return model.sheetArea(sheet);
    }
    long[][] most = new long[width + 1][height + 1];
    for (int t = 0; t < model.types(); t++) {
      place(most, model.width[t], model.height[t], model.area(t));
      if (model.mayTurn[t]) {
        place(most, model.height[t], model.width[t], model.area(t));
      }
    }
    for (int w = 1; w <= width; w++) {
      for (int h = 1; h <= height; h++) {
        most[w][h] = best(most, w, h);
      }
    }
    return most[width][height];
  }

  private static void place(long[][] most, int w, int h, long area) {
    if (w < most.length && h < most[0].length) {
      most[w][h] = Math.max(most[w][h], area);
    }
  }

  private static long best(long[][] most, int w, int h) {
    long best = Math.max(most[w][h], Math.max(most[w - 1][h], most[w][h - 1]));
    for (int cut = 1; 2 * cut <= w; cut++) {
      best = Math.max(best, most[cut][h] + most[w - cut][h]);
    }
    for (int cut = 1; 2 * cut <= h; cut++) {
      best = Math.max(best, most[w][cut] + most[w][h - cut]);
    }
    return best;
  }
}
