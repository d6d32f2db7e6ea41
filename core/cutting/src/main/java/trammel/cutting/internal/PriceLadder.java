package trammel.cutting.internal;

import java.util.Arrays;
import java.util.Comparator;

/**
 * The totals that a set of bars or sheets can cost at all while having the room that is needed.
 *
 * <p>A lower bound may be raised to the next such total: no plan costs anything in between. This
 * replaces rounding up to whole numbers, which would be wrong when prices are not whole.
 */
public final class PriceLadder {
  /** Totals above this many price steps are not tabled; bounds then rise to whole steps only. */
  private static final int LARGEST_TABLE = 1 << 20;

  /** Steps of filling the table; more are only needed for hundreds of different drops. */
  private static final long MOST_STEPS = 1L << 28;

  private static final long OUT_OF_REACH = -1;

  /** Number of pieces of one stock above which it is taken as open: the table stays small. */
  private static final int MANY = 64;

  private final long[] roomAtPrice;
  private final long needed;

  /** Where the totals are not tabled: no plan costs less, by price for room alone. */
  private final long least;

  /**
   * @param room length or area that one piece of each stock holds
   * @param price its price, whole price steps
   * @param available how many there are of each; {@code Integer.MAX_VALUE} for any number
   * @param needed length or area needed
   * @param highest the price of a known plan, in price steps
   */
  public PriceLadder(long[] room, long[] price, int[] available, long needed, long highest) {
    if (highest >= LARGEST_TABLE || steps(available, price, highest) > MOST_STEPS) {
      this.roomAtPrice = new long[0];
      this.needed = 0;
      this.least = Math.min(highest, leastByRate(room, price, available, needed));
      return;
    }
    this.needed = needed;
    this.least = 0;
    this.roomAtPrice = new long[(int) highest + 1];
    Arrays.fill(roomAtPrice, OUT_OF_REACH);
    roomAtPrice[0] = freeRoom(room, price, available);
    for (int s = 0; s < room.length; s++) {
      if (price[s] > 0 && price[s] <= highest) {
        addStock(room[s], (int) price[s], available[s]);
      }
    }
  }

  private static long steps(int[] available, long[] price, long highest) {
    long rounds = 0;
    for (int s = 0; s < price.length; s++) {
      if (price[s] > 0) {
        rounds += available[s] > MANY ? 1 : available[s];
      }
    }
    return rounds * (highest + 1);
  }

  /** What the room costs if stock could be bought by the part, the least for its room first. */
  private static long leastByRate(long[] room, long[] price, int[] available, long needed) {
    Integer[] byRate = new Integer[room.length];
    for (int s = 0; s < byRate.length; s++) {
      byRate[s] = s;
    }
    Arrays.sort(byRate, Comparator.comparingDouble(s -> (double) price[s] / room[s]));
    double missing = needed;
    double cost = 0;
    for (int i = 0; i < byRate.length && missing > 0; i++) {
      int s = byRate[i];
      double all = available[s] == Integer.MAX_VALUE ? missing : (double) room[s] * available[s];
      double taken = Math.min(missing, all);
      cost += taken * price[s] / room[s];
      missing -= taken;
    }
    // A hair less, for the rounding of the sums.
    return (long) Math.ceil(cost * (1 - 1e-9) - 1e-6);
  }

  private static long freeRoom(long[] room, long[] price, int[] available) {
    long most = Long.MAX_VALUE / 4;
    long free = 0;
    for (int s = 0; s < room.length; s++) {
      if (price[s] == 0) {
        free = available[s] == Integer.MAX_VALUE ? most : free + room[s] * available[s];
        free = Math.min(most, free);
      }
    }
    return free;
  }

  private void addStock(long room, int price, int available) {
    if (available > MANY) {
      for (int p = price; p < roomAtPrice.length; p++) {
        extend(p, price, room);
      }
      return;
    }
    for (int i = 0; i < available; i++) {
      for (int p = roomAtPrice.length - 1; p >= price; p--) {
        extend(p, price, room);
      }
    }
  }

  private void extend(int p, int price, long room) {
    long before = roomAtPrice[p - price];
    if (before != OUT_OF_REACH && before + room > roomAtPrice[p]) {
      roomAtPrice[p] = before + room;
    }
  }

  /** The least possible total that is not below the given one. */
  public long atLeast(long bound) {
    long p = Math.max(least, bound);
    while (p < roomAtPrice.length && roomAtPrice[(int) p] < needed) {
      p++;
    }
    return p;
  }

  /** The largest possible total below the given one, or −1 when there is none. */
  public long below(long price) {
    long p = price - 1;
    if (price - 1 >= roomAtPrice.length) {
      return p;
    }
    while (p >= 0 && roomAtPrice[(int) p] < needed) {
      p--;
    }
    return p;
  }
}
