package trammel.cutting.sheets;

/**
 * Lower bounds on the price from areas, also with sides rounded in ways that keep every packing
 * valid.
 *
 * <p>A dual feasible function f maps sides, as parts of the sheet's side, so that sides that fit
 * beside each other still do; areas of mapped sides then bound as plain areas do (Fekete and
 * Schepers, Math. Methods Oper. Res. 60 (2004), from memory).
 */
final class AreaBound {
  /** Thresholds of the function that widens large sides, as parts of the sheet's side. */
  private static final double[] THRESHOLDS = {0.5, 0.45, 0.4, 1.0 / 3, 0.3, 0.25, 0.2, 0.15, 0.1};

  private static final int[] ROUNDINGS = {1, 2, 3, 4};

  /** Rounding of a few hundred sums of values up to one. */
  private static final double NOISE = 1e-9;

  private static final int FUNCTIONS = 1 + THRESHOLDS.length + ROUNDINGS.length;

  private final SheetModel model;

  /** Mapped widths and heights by sheet, type and function, along each side; only what fits. */
  private final double[][][] widthAcross;

  private final double[][][] heightAcross;
  private final double[][][] widthUp;
  private final double[][][] heightUp;

  AreaBound(SheetModel model) {
    this.model = model;
    widthAcross = mapped(model.width, model.sheetWidth);
    heightAcross = mapped(model.height, model.sheetWidth);
    widthUp = mapped(model.width, model.sheetHeight);
    heightUp = mapped(model.height, model.sheetHeight);
  }

  private static double[][][] mapped(int[] sides, int[] wholes) {
    double[][][] mapped = new double[wholes.length][sides.length][FUNCTIONS];
    for (int s = 0; s < wholes.length; s++) {
      for (int t = 0; t < sides.length; t++) {
        for (int f = 0; f < FUNCTIONS && sides[t] <= wholes[s]; f++) {
          mapped[s][t][f] = mapped(sides[t], wholes[s], f);
        }
      }
    }
    return mapped;
  }

  /** The best of all bounds, price steps, not yet raised to a possible total. */
  double best(int[] count) {
    double best = 0;
    for (int across = 0; across < FUNCTIONS; across++) {
      for (int up = 0; up < FUNCTIONS; up++) {
        best = Math.max(best, bound(count, across, up));
      }
    }
    return best * (1 - NOISE) - NOISE;
  }

  /**
   * Worth of a part: the least share of a sheet's price that it takes up on any sheet open in
   * number. Limited sheets are charged for what they might save.
   */
  private double bound(int[] count, int across, int up) {
    double total = 0;
    double[] gain = new double[model.sheets()];
    for (int t = 0; t < count.length; t++) {
      if (count[t] == 0) {
        continue;
      }
      double worth = Double.POSITIVE_INFINITY;
      for (int s = 0; s < model.sheets(); s++) {
        if (model.available[s] == SheetModel.UNLIMITED) {
          worth = Math.min(worth, model.price[s] * share(t, s, across, up));
        }
      }
      if (worth == Double.POSITIVE_INFINITY) {
        worth = 0;
      }
      total += worth * count[t];
      for (int s = 0; s < gain.length; s++) {
        if (model.available[s] != SheetModel.UNLIMITED && worth > 0 && model.fits(t, s)) {
          double share = share(t, s, across, up);
          gain[s] = Math.max(gain[s], share == 0 ? Double.POSITIVE_INFINITY : worth / share);
        }
      }
    }
    for (int s = 0; s < gain.length; s++) {
      if (gain[s] > model.price[s]) {
        total -= (gain[s] - model.price[s]) * model.available[s];
      }
    }
    return total;
  }

  /** Whether no sheet of a size holds the parts together, by one of the functions. */
  boolean rulesOut(int[] count, int sheet) {
    for (int across = 0; across < FUNCTIONS; across++) {
      for (int up = 0; up < FUNCTIONS; up++) {
        double filled = 0;
        for (int t = 0; t < count.length; t++) {
          if (count[t] > 0) {
            filled += count[t] * share(t, sheet, across, up);
          }
        }
        if (filled > 1 + NOISE) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Least mapped area of a part on a sheet, as a part of the sheet; infinite when it cannot lie.
   */
  private double share(int type, int sheet, int across, int up) {
    int w = model.width[type];
    int h = model.height[type];
    int sheetWidth = model.sheetWidth[sheet];
    int sheetHeight = model.sheetHeight[sheet];
    double least = Double.POSITIVE_INFINITY;
    if (w <= sheetWidth && h <= sheetHeight) {
      least = widthAcross[sheet][type][across] * heightUp[sheet][type][up];
    }
    if (model.mayTurn[type] && h <= sheetWidth && w <= sheetHeight) {
      least = Math.min(least, heightAcross[sheet][type][across] * widthUp[sheet][type][up]);
    }
    return least;
  }

  private static double mapped(int side, int whole, int function) {
    if (function == 0) {
      return (double) side / whole;
    }
    if (function <= THRESHOLDS.length) {
      long threshold = (long) (THRESHOLDS[function - 1] * whole);
      if (side > whole - threshold) {
        return 1;
      }
      return side < threshold ? 0 : (double) side / whole;
    }
    int k = ROUNDINGS[function - 1 - THRESHOLDS.length];
    long scaled = (long) (k + 1) * side;
    return scaled % whole == 0 ? (double) side / whole : (double) (scaled / whole) / k;
  }
}
