package trammel.planning.cutting.bars;

import java.util.Arrays;

/**
 * The totals that a set of bars can cost at all while holding the length that is needed.
 *
 * <p>A lower bound may be raised to the next such total: no plan costs anything in between. This
 * replaces rounding up to whole numbers, which would be wrong when prices are not whole.
 */
final class PriceLadder {
  /** Totals above this many price steps are not tabled; bounds then rise to whole steps only. */
  private static final int LARGEST_TABLE = 1 << 20;

  private static final long OUT_OF_REACH = -1;

  private final long[] longestAtPrice;
  private final long needed;

  /**
   * @param highest the price of a known plan, in price steps
   */
  PriceLadder(BarModel model, long highest) {
    if (highest >= LARGEST_TABLE) {
      longestAtPrice = new long[0];
      needed = 0;
      return;
    }
    needed = model.totalSize();
    longestAtPrice = new long[(int) highest + 1];
    Arrays.fill(longestAtPrice, OUT_OF_REACH);
    longestAtPrice[0] = freeLength(model);
    for (int s = 0; s < model.stocks(); s++) {
      if (model.price[s] > 0 && model.price[s] <= highest) {
        addStock(model, s);
      }
    }
  }

  private static long freeLength(BarModel model) {
    long free = 0;
    for (int s = 0; s < model.stocks(); s++) {
      if (model.price[s] == 0) {
        free =
            model.available[s] == BarModel.UNLIMITED
                ? Long.MAX_VALUE / 4
                : Math.min(Long.MAX_VALUE / 4, free + model.capacity[s] * model.available[s]);
      }
    }
    return free;
  }

  private void addStock(BarModel model, int s) {
    int price = (int) model.price[s];
    if (model.available[s] == BarModel.UNLIMITED || model.available[s] > 64) {
      for (int p = price; p < longestAtPrice.length; p++) {
        extend(p, price, model.capacity[s]);
      }
      return;
    }
    for (int i = 0; i < model.available[s]; i++) {
      for (int p = longestAtPrice.length - 1; p >= price; p--) {
        extend(p, price, model.capacity[s]);
      }
    }
  }

  private void extend(int p, int price, long capacity) {
    long before = longestAtPrice[p - price];
    if (before != OUT_OF_REACH && before + capacity > longestAtPrice[p]) {
      longestAtPrice[p] = before + capacity;
    }
  }

  /** The least possible total that is not below the given one. */
  long atLeast(long bound) {
    long p = Math.max(0, bound);
    while (p < longestAtPrice.length && longestAtPrice[(int) p] < needed) {
      p++;
    }
    return p;
  }

  /** The largest possible total below the given one, or −1 when there is none. */
  long below(long price) {
    long p = price - 1;
    if (price - 1 >= longestAtPrice.length) {
      return p;
    }
    while (p >= 0 && longestAtPrice[(int) p] < needed) {
      p--;
    }
    return p;
  }
}
