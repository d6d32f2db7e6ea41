package trammel.cutting.outlines;

/**
 * Overlaps of the items of a nest, and how much each pair weighs: pairs that stay entangled get
 * heavier (guided local search, Voudouris and Tsang 1999, from memory).
 */
final class NestOverlap {
  private static final double HEAVIER_LEAST = 1.2;
  private static final double HEAVIER_MOST = 2;
  private static final double LIGHTER = 0.95;

  private static final long STEPS_PER_LOOK = 60;
  private static final long STEPS_PER_PAIR = 40;

  /** Large parts are the harder to place: their overlaps count for more, by this power of area. */
  private static final double SIZE_POWER = 0.18;

  private final Nest nest;
  private final NoFitTable table;

  /** Per item what it brings to the weight of its pairs from the start. */
  private final double[] size;

  private final double[][] weight;
  private long work;

  NestOverlap(Nest nest, NoFitTable table) {
    this.nest = nest;
    this.table = table;
    this.size = new double[nest.items()];
    for (int i = 0; i < size.length; i++) {
      size[i] = StrictMath.pow(nest.shape(i).form.part.areaMm2(), SIZE_POWER);
    }
    this.weight = new double[nest.items()][nest.items()];
    forget();
  }

  /** All pairs weigh what their sizes say again. */
  void forget() {
    for (int i = 0; i < size.length; i++) {
      for (int j = 0; j < size.length; j++) {
        weight[i][j] = size[i] * size[j];
      }
    }
  }

  /** Weighted overlap of an item where it lies with all others. */
  double weighted(int item) {
    return weighted(
        item,
        nest.shape(item),
        nest.sheet[item],
        nest.x[item],
        nest.y[item],
        Double.POSITIVE_INFINITY);
  }

  /** Weighted overlap of an item in some place with all others; stops above the limit. */
  double weighted(int item, OutlineShape shape, int sheet, double x, double y, double limit) {
    double low = x + shape.minX - table.clearance;
    double high = x + shape.maxX + table.clearance;
    double bottom = y + shape.minY - table.clearance;
    double top = y + shape.maxY + table.clearance;
    int left = nest.along.band(low);
    int right = nest.along.band(high);
    int lower = nest.across.band(bottom);
    int upper = nest.across.band(top);
    double[] weights = weight[item];
    work += STEPS_PER_LOOK;
    double cost = 0;
    for (int word = 0; word < nest.along.words() && cost < limit; word++) {
      long near = nest.along.between(left, right, word) & nest.across.between(lower, upper, word);
      while (near != 0 && cost < limit) {
        int o = word * Long.SIZE + Long.numberOfTrailingZeros(near);
        near &= near - 1;
        work += STEPS_PER_PAIR;
        if (o != item && nest.sheet[o] == sheet && nest.meets(o, low, high, bottom, top)) {
          double shiftX = nest.x[o] - x;
          double shiftY = nest.y[o] - y;
          cost += weights[o] * table.depth(shape.number, nest.shapeNumber[o], shiftX, shiftY);
        }
      }
    }
    return cost;
  }

  /** Steps taken since this was last asked. */
  long workDone() {
    long done = work;
    work = 0;
    return done;
  }

  private double depth(int i, int j) {
    double gap = table.clearance;
    if (nest.sheet[i] != nest.sheet[j]
        || nest.lowX[i] - nest.highX[j] >= gap
        || nest.lowX[j] - nest.highX[i] >= gap
        || nest.lowY[i] - nest.highY[j] >= gap
        || nest.lowY[j] - nest.highY[i] >= gap) {
      return 0;
    }
    return table.depth(
        nest.shapeNumber[i], nest.shapeNumber[j], nest.x[j] - nest.x[i], nest.y[j] - nest.y[i]);
  }

  /** Total overlap, unweighted. */
  double total() {
    double total = 0;
    for (int i = 0; i < nest.items(); i++) {
      for (int j = i + 1; j < nest.items(); j++) {
        total += depth(i, j);
      }
    }
    return total;
  }

  /** Makes overlapping pairs heavier, the worst most, and the others lighter; returns the total. */
  double reweigh() {
    // The half of the table below its diagonal holds the depths meanwhile.
    double total = 0;
    double deepest = 0;
    work += (long) nest.items() * nest.items() * 2;
    for (int i = 0; i < nest.items(); i++) {
      for (int j = i + 1; j < nest.items(); j++) {
        double depth = depth(i, j);
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
        weight[i][j] = Math.max(size[i] * size[j], weight[i][j] * factor);
        weight[j][i] = weight[i][j];
      }
    }
    return total;
  }
}
