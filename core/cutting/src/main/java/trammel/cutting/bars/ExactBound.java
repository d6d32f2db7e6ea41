package trammel.cutting.bars;

import java.util.List;

/**
 * A lower bound on the price of whole bars that no rounding in the linear programme can falsify.
 *
 * <p>Any numbers of the right sign on the rows give a bound: the programme's duals are rounded to
 * parts of a price step, and from there on all is in whole numbers; what a pattern still gains
 * counts once for every bar a plan can have (Neumaier and Shcherbina, Math. Program. 99 (2004),
 * from memory).
 */
final class ExactBound {
  /** Finest parts of a price step; what follows stays below this many, so that no sum overflows. */
  private static final double FINEST = 1L << 40;

  private static final double LARGEST = 1L << 60;

  private final CoveringLp lp;
  private final long[] price;
  private final long mostBars;
  private final long[] reduced;
  private final int mostOfAKind;
  private long scale;
  private long bound;
  private boolean valid;

  /**
   * @param lp whose first columns are the patterns
   * @param mostBars no plan has more bars than this
   */
  ExactBound(CoveringLp lp, BarModel model, List<Pattern> patterns, int mostBars) {
    this.lp = lp;
    this.mostBars = mostBars;
    this.price = new long[patterns.size()];
    for (int c = 0; c < price.length; c++) {
      price[c] = model.price[patterns.get(c).stock];
    }
    this.reduced = new long[price.length];
    int most = 1;
    for (Pattern pattern : patterns) {
      for (int count : pattern.counts) {
        most = Math.max(most, count);
      }
    }
    this.mostOfAKind = most;
  }

  /** Takes the bound that the given values of the rows prove, without the columns banned. */
  void take(double[] dual) {
    scale = scaleFor(dual);
    valid = scale > 0;
    if (!valid) {
      return;
    }
    long[] worth = new long[lp.rows()];
    bound = 0;
    for (int r = 0; r < worth.length; r++) {
      long rounded = Math.round(dual[r] * scale);
      worth[r] = lp.isAtLeast(r) ? Math.max(0, rounded) : Math.min(0, rounded);
      bound += worth[r] * Math.round(lp.rightSide(r));
    }
    long gain = 0;
    for (int c = 0; c < price.length; c++) {
      if (!lp.isBanned(c)) {
        reduced[c] = lp.reducedCost(c, price[c] * scale, worth);
        gain = Math.max(gain, -reduced[c]);
      }
    }
    valid = gain <= (long) LARGEST / mostBars;
    bound -= valid ? gain * mostBars : 0;
  }

  /** The largest power of two that keeps the worth of patterns and demand small enough, or 0. */
  private long scaleFor(double[] dual) {
    double largest = 1;
    for (long p : price) {
      largest = Math.max(largest, p);
    }
    for (int r = 0; r < lp.rows(); r++) {
      largest += Math.abs(dual[r]) * Math.max(mostOfAKind, lp.rightSide(r));
    }
    double fits = Math.min(FINEST, LARGEST / largest);
    return fits >= 1 ? Long.highestOneBit((long) fits) : 0;
  }

  /** True when no plan is as cheap as the given price. */
  boolean isAbove(long target) {
    return valid && bound > scaled(target);
  }

  /** True when no plan as cheap as the given price has a bar of a pattern that is not banned. */
  boolean rulesOut(int column, long target) {
    return valid && bound + Math.min(reduced[column], (long) LARGEST) > scaled(target);
  }

  private long scaled(long target) {
    return target > (long) LARGEST / scale ? Long.MAX_VALUE : target * scale;
  }
}
