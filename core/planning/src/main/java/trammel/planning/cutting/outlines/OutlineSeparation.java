package trammel.planning.cutting.outlines;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import trammel.planning.cutting.Deadline;

/**
 * Pulls overlapping outlines apart by moving one at a time to where it overlaps least, while pairs
 * that stay entangled weigh more and more (guided local search after Egeblad, Nielsen and Odgaard
 * 2007, from memory).
 */
final class OutlineSeparation {
  private static final int ANYWHERE = 40;
  private static final int NEARBY = 20;
  private static final int REFINED = 3;
  private static final double NEAR = 0.15;
  private static final double FIRST_STEP = 0.12;
  private static final double LAST_STEP = 2e-4;
  private static final double HEAVIER_LEAST = 1.2;
  private static final double HEAVIER_MOST = 2;
  private static final double LIGHTER = 0.95;

  private final Nest nest;
  private final double clearance;
  private final Random random;
  private final double[][] weight;
  private final int[] order;

  /** All different shapes, and per item and way the number of its shape. */
  private final List<OutlineShape> shapes = new ArrayList<>();

  private final int[][] shapeOf;
  private final PairDepth[][] pairs;
  private final double[] keptCost = new double[REFINED];
  private final int[] keptWay = new int[REFINED];
  private final int[] keptSheet = new int[REFINED];
  private final double[] keptX = new double[REFINED];
  private final double[] keptY = new double[REFINED];
  private int kept;

  /**
   * @param clearance least distance between items, mm
   */
  OutlineSeparation(Nest nest, double clearance, Random random) {
    this.nest = nest;
    this.clearance = clearance;
    this.random = random;
    this.weight = new double[nest.items()][nest.items()];
    this.order = new int[nest.items()];
    for (int i = 0; i < order.length; i++) {
      order[i] = i;
    }
    this.shapeOf = new int[nest.items()][];
    for (int i = 0; i < shapeOf.length; i++) {
      shapeOf[i] = i > 0 && nest.shapes[i] == nest.shapes[i - 1] ? shapeOf[i - 1] : number(i);
    }
    this.pairs = new PairDepth[shapes.size()][shapes.size()];
    forget();
  }

  private int[] number(int item) {
    int[] numbers = new int[nest.shapes[item].length];
    for (int w = 0; w < numbers.length; w++) {
      numbers[w] = shapes.size();
      shapes.add(nest.shapes[item][w]);
    }
    return numbers;
  }

  /** All pairs weigh the same again. */
  void forget() {
    for (double[] row : weight) {
      Arrays.fill(row, 1);
    }
  }

  /**
   * Works until nothing overlaps or a number of rounds has brought no gain.
   *
   * @return true when nothing overlaps
   */
  boolean run(int patience, Deadline deadline) {
    double best = total();
    int since = 0;
    while (best > 0 && since < patience && !deadline.isPast()) {
      round(deadline);
      double now = reweigh();
      since++;
      if (now < best) {
        since = now < 0.98 * best ? 0 : since;
        best = now;
      }
    }
    return best == 0;
  }

  private void round(Deadline deadline) {
    for (int i = order.length - 1; i > 0; i--) {
      int j = random.nextInt(i + 1);
      int held = order[i];
      order[i] = order[j];
      order[j] = held;
    }
    for (int item : order) {
      if (deadline.isPast()) {
        return;
      }
      if (cost(
              item,
              shapeOf[item][nest.way[item]],
              nest.sheet[item],
              nest.x[item],
              nest.y[item],
              LIMITLESS)
          > 0) {
        move(item);
      }
    }
  }

  private static final double LIMITLESS = Double.POSITIVE_INFINITY;

  private void move(int item) {
    kept = 0;
    keep(
        cost(
            item,
            shapeOf[item][nest.way[item]],
            nest.sheet[item],
            nest.x[item],
            nest.y[item],
            LIMITLESS),
        nest.way[item],
        nest.sheet[item],
        nest.x[item],
        nest.y[item]);
    OutlineShape[] ways = nest.shapes[item];
    for (int i = 0; i < ANYWHERE; i++) {
      int way = random.nextInt(ways.length);
      int sheet = nest.sheetWidth.length == 1 ? 0 : random.nextInt(nest.sheetWidth.length);
      OutlineShape shape = ways[way];
      if (nest.fits(shape, sheet)) {
        double x = -shape.minX + random.nextDouble() * (nest.sheetWidth[sheet] - shape.width());
        double y = -shape.minY + random.nextDouble() * (nest.sheetHeight[sheet] - shape.height());
        consider(item, way, sheet, x, y);
      }
    }
    for (int i = 0; i < NEARBY; i++) {
      int way = random.nextInt(3) == 0 ? random.nextInt(ways.length) : nest.way[item];
      int sheet = nest.sheet[item];
      OutlineShape shape = ways[way];
      if (nest.fits(shape, sheet)) {
        double spread = NEAR * Math.max(shape.width(), shape.height());
        double x = nest.clampX(shape, sheet, nest.x[item] + spread * random.nextGaussian());
        double y = nest.clampY(shape, sheet, nest.y[item] + spread * random.nextGaussian());
        consider(item, way, sheet, x, y);
      }
    }
    refineKept(item);
  }

  private void consider(int item, int way, int sheet, double x, double y) {
    double limit = kept < REFINED ? LIMITLESS : keptCost[kept - 1];
    double cost = cost(item, shapeOf[item][way], sheet, x, y, limit);
    if (cost < limit) {
      keep(cost, way, sheet, x, y);
    }
  }

  /** Inserts a place into the few best ones, cheapest first. */
  private void keep(double cost, int way, int sheet, double x, double y) {
    int at = kept < REFINED ? kept++ : REFINED - 1;
    while (at > 0 && keptCost[at - 1] > cost) {
      keptCost[at] = keptCost[at - 1];
      keptWay[at] = keptWay[at - 1];
      keptSheet[at] = keptSheet[at - 1];
      keptX[at] = keptX[at - 1];
      keptY[at] = keptY[at - 1];
      at--;
    }
    keptCost[at] = cost;
    keptWay[at] = way;
    keptSheet[at] = sheet;
    keptX[at] = x;
    keptY[at] = y;
  }

  private void refineKept(int item) {
    int best = 0;
    for (int k = 0; k < kept; k++) {
      refine(item, k);
      if (keptCost[k] < keptCost[best]) {
        best = k;
      }
    }
    nest.put(item, keptWay[best], keptSheet[best], keptX[best], keptY[best]);
  }

  /** Steps along x, y and the diagonals, shorter and shorter. */
  private void refine(int item, int k) {
    OutlineShape shape = nest.shapes[item][keptWay[k]];
    int sheet = keptSheet[k];
    double size = Math.min(shape.width(), shape.height());
    double step = FIRST_STEP * size;
    while (step > LAST_STEP * size && keptCost[k] > 0) {
      double angle = random.nextInt(4) * Math.PI / 4;
      double dx = step * Math.cos(angle);
      double dy = step * Math.sin(angle);
      if (tryStep(item, k, shape, sheet, dx, dy) || tryStep(item, k, shape, sheet, -dx, -dy)) {
        step *= 1.1;
      } else {
        step *= 0.7;
      }
    }
  }

  private boolean tryStep(int item, int k, OutlineShape shape, int sheet, double dx, double dy) {
    double x = nest.clampX(shape, sheet, keptX[k] + dx);
    double y = nest.clampY(shape, sheet, keptY[k] + dy);
    double cost = cost(item, shapeOf[item][keptWay[k]], sheet, x, y, keptCost[k]);
    if (cost >= keptCost[k]) {
      return false;
    }
    keptCost[k] = cost;
    keptX[k] = x;
    keptY[k] = y;
    return true;
  }

  /** Weighted overlap of an item in some place with all others; stops above the limit. */
  private double cost(int item, int shape, int sheet, double x, double y, double limit) {
    double cost = 0;
    double[] weights = weight[item];
    for (int other = 0; other < weights.length; other++) {
      if (other == item || nest.sheet[other] != sheet) {
        continue;
      }
      PairDepth pair = pair(shape, shapeOf[other][nest.way[other]]);
      double depth = pair.at(nest.x[other] - x, nest.y[other] - y);
      if (depth > 0) {
        cost += weights[other] * depth;
        if (cost >= limit) {
          return cost;
        }
      }
    }
    return cost;
  }

  private PairDepth pair(int shape, int other) {
    PairDepth pair = pairs[shape][other];
    if (pair == null) {
      pair = new PairDepth(shapes.get(shape), shapes.get(other), clearance);
      pairs[shape][other] = pair;
    }
    return pair;
  }

  /** Total overlap, unweighted. */
  double total() {
    double total = 0;
    for (int i = 0; i < nest.items(); i++) {
      for (int j = i + 1; j < nest.items(); j++) {
        total += pairDepth(i, j);
      }
    }
    return total;
  }

  private double pairDepth(int i, int j) {
    if (nest.sheet[i] != nest.sheet[j]) {
      return 0;
    }
    int shape = shapeOf[i][nest.way[i]];
    int other = shapeOf[j][nest.way[j]];
    return pair(shape, other).at(nest.x[j] - nest.x[i], nest.y[j] - nest.y[i]);
  }

  /** Makes overlapping pairs heavier, the worst most, and the others lighter; returns the total. */
  private double reweigh() {
    double total = 0;
    double deepest = 0;
    for (int i = 0; i < nest.items(); i++) {
      for (int j = i + 1; j < nest.items(); j++) {
        double depth = pairDepth(i, j);
        total += depth;
        deepest = Math.max(deepest, depth);
        weight[j][i] = depth;
      }
    }
    for (int i = 0; i < nest.items(); i++) {
      for (int j = i + 1; j < nest.items(); j++) {
        double depth = weight[j][i];
        double factor =
            depth > 0 ? HEAVIER_LEAST + (HEAVIER_MOST - HEAVIER_LEAST) * depth / deepest : LIGHTER;
        weight[i][j] = Math.max(1, weight[i][j] * factor);
        weight[j][i] = weight[i][j];
      }
    }
    return total;
  }
}
