package trammel.cutting.outlines;

import java.util.SplittableRandom;

/**
 * Finds a place for one item where it overlaps the others least: places at random all over the
 * sheets and near the present one, the best few of them improved by shorter and shorter steps.
 */
final class PlaceSearch {
  private static final int ANYWHERE = 50;
  private static final int NEARBY = 20;
  private static final int REFINED = 3;
  private static final double NEAR = 0.15;
  private static final double FIRST_STEP = 0.12;
  private static final double MIDDLE_STEP = 0.02;
  private static final double LAST_STEP = 2e-4;
  private static final double SHORTER = 0.6;
  private static final double SAME_PLACE = 0.1;
  private static final double DIAGONAL = Math.sqrt(0.5);
  private static final double[] STEP_X = {1, DIAGONAL, 0, -DIAGONAL};
  private static final double[] STEP_Y = {0, DIAGONAL, 1, DIAGONAL};

  private final Nest nest;
  private final NestOverlap overlap;
  private final SplittableRandom random;
  private final double[] keptCost = new double[REFINED];
  private final int[] keptWay = new int[REFINED];
  private final int[] keptSheet = new int[REFINED];
  private final double[] keptX = new double[REFINED];
  private final double[] keptY = new double[REFINED];
  private int kept;
  private double finestMm = Double.POSITIVE_INFINITY;

  PlaceSearch(Nest nest, NestOverlap overlap, SplittableRandom random) {
    this.nest = nest;
    this.overlap = overlap;
    this.random = random;
  }

  /**
   * From now on the last steps are at least as short as this.
   *
   * <p>What fits exactly, between two edges or two others, has one place only; with steps that do
   * not get shorter while what overlaps gets less it is never found.
   */
  void lookDownTo(double stepMm) {
    finestMm = stepMm;
  }

  /** Moves an item to the best place found, which may be where it lies. */
  void move(int item, double cost) {
    kept = 0;
    keep(cost, nest.way[item], nest.sheet[item], nest.x[item], nest.y[item]);
    for (int i = 0; i < ANYWHERE; i++) {
      tryAnywhere(item);
    }
    for (int i = 0; i < NEARBY; i++) {
      tryNearby(item);
    }
    refineKept(item);
  }

  private void tryAnywhere(int item) {
    int way = random.nextInt(nest.shapes[item].length);
    int sheet = nest.sheetWidth.length == 1 ? 0 : random.nextInt(nest.sheetWidth.length);
    OutlineShape shape = nest.shapes[item][way];
    if (nest.fits(shape, sheet)) {
      double x = -shape.minX + random.nextDouble() * (nest.sheetWidth[sheet] - shape.width());
      double y = -shape.minY + random.nextDouble() * (nest.sheetHeight[sheet] - shape.height());
      consider(item, way, sheet, nest.clampX(shape, sheet, x), nest.clampY(shape, sheet, y));
    }
  }

  private void tryNearby(int item) {
    int ways = nest.shapes[item].length;
    int way = random.nextInt(3) == 0 ? random.nextInt(ways) : nest.way[item];
    int sheet = nest.sheet[item];
    OutlineShape shape = nest.shapes[item][way];
    if (nest.fits(shape, sheet)) {
      double spread = NEAR * Math.max(shape.width(), shape.height());
      double x = nest.clampX(shape, sheet, nest.x[item] + spread * bell());
      double y = nest.clampY(shape, sheet, nest.y[item] + spread * bell());
      consider(item, way, sheet, x, y);
    }
  }

  /** Roughly normal, spread 1. */
  private double bell() {
    return 2 * (random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5);
  }

  private void consider(int item, int way, int sheet, double x, double y) {
    double limit = kept < REFINED ? Double.POSITIVE_INFINITY : keptCost[kept - 1];
    OutlineShape shape = nest.shapes[item][way];
    double cost = overlap.weighted(item, shape, sheet, x, y, limit);
    if (cost < limit) {
      keepApart(shape, cost, way, sheet, x, y);
    }
  }

  /** Keeps a place, or of two close together the better one. */
  private void keepApart(OutlineShape shape, double cost, int way, int sheet, double x, double y) {
    double near = SAME_PLACE * Math.min(shape.width(), shape.height());
    for (int k = 0; k < kept; k++) {
      if (keptWay[k] == way
          && keptSheet[k] == sheet
          && Math.abs(keptX[k] - x) < near
          && Math.abs(keptY[k] - y) < near) {
        if (keptCost[k] <= cost) {
          return;
        }
        drop(k);
        break;
      }
    }
    keep(cost, way, sheet, x, y);
  }

  private void drop(int place) {
    kept--;
    for (int k = place; k < kept; k++) {
      set(k, keptCost[k + 1], keptWay[k + 1], keptSheet[k + 1], keptX[k + 1], keptY[k + 1]);
    }
  }

  private void set(int k, double cost, int way, int sheet, double x, double y) {
    keptCost[k] = cost;
    keptWay[k] = way;
    keptSheet[k] = sheet;
    keptX[k] = x;
    keptY[k] = y;
  }

  /** Inserts a place into the few best ones, cheapest first. */
  private void keep(double cost, int way, int sheet, double x, double y) {
    int at = kept < REFINED ? kept++ : REFINED - 1;
    while (at > 0 && keptCost[at - 1] > cost) {
      set(at, keptCost[at - 1], keptWay[at - 1], keptSheet[at - 1], keptX[at - 1], keptY[at - 1]);
      at--;
    }
    set(at, cost, way, sheet, x, y);
  }

  private void refineKept(int item) {
    int best = 0;
    for (int k = 0; k < kept; k++) {
      double size = size(item, k);
      refine(item, k, FIRST_STEP * size, MIDDLE_STEP * size);
      if (keptCost[k] < keptCost[best]) {
        best = k;
      }
    }
    double size = size(item, best);
    refine(item, best, MIDDLE_STEP * size, Math.min(LAST_STEP * size, finestMm));
    nest.put(item, keptWay[best], keptSheet[best], keptX[best], keptY[best]);
  }

  private double size(int item, int k) {
    OutlineShape shape = nest.shapes[item][keptWay[k]];
    return Math.min(shape.width(), shape.height());
  }

  /** Steps along x, y and the diagonals, shorter and shorter, from one length to another. */
  private void refine(int item, int k, double firstMm, double lastMm) {
    OutlineShape shape = nest.shapes[item][keptWay[k]];
    double step = firstMm;
    while (step > lastMm && keptCost[k] > 0) {
      int direction = random.nextInt(STEP_X.length);
      double dx = step * STEP_X[direction];
      double dy = step * STEP_Y[direction];
      if (tryStep(item, k, shape, dx, dy) || tryStep(item, k, shape, -dx, -dy)) {
        step *= 1.1;
      } else {
        step *= SHORTER;
      }
    }
  }

  private boolean tryStep(int item, int k, OutlineShape shape, double dx, double dy) {
    int sheet = keptSheet[k];
    double x = nest.clampX(shape, sheet, keptX[k] + dx);
    double y = nest.clampY(shape, sheet, keptY[k] + dy);
    double cost = overlap.weighted(item, shape, sheet, x, y, keptCost[k]);
    if (cost >= keptCost[k]) {
      return false;
    }
    keptCost[k] = cost;
    keptX[k] = x;
    keptY[k] = y;
    return true;
  }
}
