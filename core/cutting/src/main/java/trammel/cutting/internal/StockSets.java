package trammel.cutting.internal;

import java.util.Arrays;

/** The sets of bars or sheets that cost one total together; stock without a price is in none. */
public final class StockSets {
  /** Steps of the search for the sets of one total; so many are only needed for very long lists. */
  private static final int MOST_STEPS = 20_000;

  private final long[] price;
  private final int[] available;
  private int stepsLeft;

  /** Is handed one set after another. */
  public interface Taker {
    /**
     * @param set places of the stock, each as often as it is in the set, in rising order
     * @return false when no more sets are wanted
     */
    boolean take(int[] set);
  }

  /**
   * @param price of each stock, whole price steps
   * @param available how many there are of each; {@code Integer.MAX_VALUE} for any number
   */
  public StockSets(long[] price, int[] available) {
    this.price = price;
    this.available = available;
  }

  /** Hands over the sets of one total. */
  public void at(long total, Taker taker) {
    stepsLeft = MOST_STEPS;
    extend(0, total, new int[0], taker);
  }

  private boolean extend(int from, long money, int[] chosen, Taker taker) {
    if (money == 0) {
      return taker.take(chosen);
    }
    boolean more = --stepsLeft > 0;
    for (int s = from; s < price.length && more; s++) {
      if (price[s] > 0 && price[s] <= money && count(chosen, s) < available[s]) {
        int[] longer = Arrays.copyOf(chosen, chosen.length + 1);
        longer[chosen.length] = s;
        more = extend(s, money - price[s], longer, taker);
      }
    }
    return more;
  }

  private static int count(int[] set, int stock) {
    int count = 0;
    for (int s : set) {
      count += s == stock ? 1 : 0;
    }
    return count;
  }
}
