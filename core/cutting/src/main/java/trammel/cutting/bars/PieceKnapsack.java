package trammel.cutting.bars;

import java.util.Arrays;
import trammel.cutting.internal.Deadline;

/**
 * The most valuable filling of a bar, exactly, in whole numbers.
 *
 * <p>Depth-first search over the kinds by value per length with the bound of the fractional filling
 * (Martello and Toth 1990, ch. 3, from memory); a table over all lengths takes over when the search
 * grows too long and the table is small enough.
 */
final class PieceKnapsack {
  /** Search nodes for any gain, and before the table is tried when the best is asked for. */
  private static final int SEARCH_NODES = 30_000;

  /** Search nodes before the result is cut short when no table is possible. */
  private static final int LAST_RESORT_NODES = 3_000_000;

  /** Fillings kept of one search, the latest and so the best ones. */
  private static final int KEPT = 12;

  private static final int NODES_BETWEEN_LOOKS = 512;

  private static final long LARGEST_TABLE = 40_000_000L;

  private final long[] size;
  private final Deadline deadline;
  private final int[] kind;
  private final long[] weight;
  private final long[] value;
  private final int[] most;
  private final double[] density;
  private final long[] smallestFrom;
  private final int[] count;
  private final int[][] kept = new int[KEPT][];
  private final long[] keptValue = new long[KEPT];
  private final long[] sortKeys;
  private int used;
  private int keptCount;
  private long bestValue;
  private long upperBound;

  /**
   * @param deadline searches are cut short when it is past
   */
  PieceKnapsack(long[] size, Deadline deadline) {
    this.size = size;
    this.deadline = deadline;
    int n = size.length;
    kind = new int[n];
    weight = new long[n];
    value = new long[n];
    most = new int[n];
    density = new double[n + 1];
    smallestFrom = new long[n + 1];
    count = new int[n];
    sortKeys = new long[n];
  }

  /** Sets the worth of each kind and how many of it a bar may hold at most. */
  void prepare(long[] valueOfKind, int[] bound) {
    int n = 0;
    for (int k = 0; k < size.length; k++) {
      if (valueOfKind[k] > 0 && bound[k] > 0) {
        // Densities as sortable bits, the kind in the low bits: sorts without boxing.
        double d = (double) valueOfKind[k] / size[k];
        sortKeys[n++] = (Double.doubleToLongBits(d) & ~0xFFFFFL) | (0xFFFFF - k);
      }
    }
    Arrays.sort(sortKeys, 0, n);
    used = n;
    for (int i = 0; i < n; i++) {
      int k = (int) (0xFFFFF - (sortKeys[n - 1 - i] & 0xFFFFFL));
      kind[i] = k;
      weight[i] = size[k];
      value[i] = valueOfKind[k];
      most[i] = bound[k];
    }
    double highest = 0;
    smallestFrom[n] = Long.MAX_VALUE;
    density[n] = 0;
    for (int i = n - 1; i >= 0; i--) {
      smallestFrom[i] = Math.min(smallestFrom[i + 1], weight[i]);
      // The keys drop low bits, so neighbours may be out of order by a hair: keep bounds valid.
      highest = Math.max(highest, (double) value[i] / weight[i]);
      density[i] = highest;
    }
  }

  /**
   * Searches for a filling worth more than the threshold, not always the best one.
   *
   * @return true when there is one, see {@link #counts()}; false when there is none or the search
   *     was cut short, which {@link #upperBound()} tells apart
   */
  boolean improve(long capacity, long threshold) {
    bestValue = threshold;
    keptCount = 0;
    boolean complete = search(capacity, SEARCH_NODES);
    upperBound = complete ? bestValue : Math.max(bestValue, fractional(0, capacity));
    return keptCount > 0;
  }

  /**
   * Searches for the best filling worth more than the threshold.
   *
   * @return true when there is one
   */
  boolean best(long capacity, long threshold) {
    improve(capacity, threshold);
    if (upperBound == bestValue || deadline.isPast()) {
      return keptCount > 0;
    }
    if (used * (capacity + 1) <= LARGEST_TABLE) {
      keptCount = 0;
      bestValue = threshold;
      deadline.spend(used * (capacity + 1));
      table((int) capacity, threshold);
      upperBound = bestValue;
    } else {
      bestValue = threshold;
      keptCount = 0;
      if (search(capacity, LAST_RESORT_NODES)) {
        upperBound = bestValue;
      }
    }
    return keptCount > 0;
  }

  /** No filling is worth more than this; at least the threshold that was given. */
  long upperBound() {
    return upperBound;
  }

  /** How many fillings worth more than the threshold are at hand. */
  int fillings() {
    return Math.min(keptCount, KEPT);
  }

  long value(int filling) {
    return keptValue[filling];
  }

  /** Counts per kind of one filling, full width. */
  int[] counts(int filling) {
    return kept[filling];
  }

  /** Keeps a filling given by counts per position; the oldest makes room. */
  private void keep(int[] countAtPosition, int positions, long worth) {
    int[] full = new int[size.length];
    for (int i = 0; i < positions; i++) {
      full[kind[i]] = countAtPosition[i];
    }
    kept[keptCount % KEPT] = full;
    keptValue[keptCount % KEPT] = worth;
    keptCount++;
  }

  /** Depth-first search; false when it ran out of nodes. */
  private boolean search(long capacity, int nodes) {
    int nodesLeft = nodes;
    long room = capacity;
    long worth = 0;
    int at = 0;
    Arrays.fill(count, 0, used, 0);
    while (true) {
      while (at < used && room >= smallestFrom[at]) {
        if (--nodesLeft < 0 || nodesLeft % NODES_BETWEEN_LOOKS == 0 && deadline.isPast()) {
          return false;
        }
        if (worth + ceil(room * density[at]) <= bestValue
            || worth + fractional(at, room) <= bestValue) {
          break;
        }
        int take = (int) Math.min(most[at], room / weight[at]);
        count[at] = take;
        room -= take * weight[at];
        worth += take * value[at];
        at++;
      }
      if (worth > bestValue) {
        bestValue = worth;
        keep(count, at, worth);
      }
      do {
        at--;
      } while (at >= 0 && count[at] == 0);
      if (at < 0) {
        return true;
      }
      count[at]--;
      room += weight[at];
      worth -= value[at];
      at++;
    }
  }

  private static long ceil(double x) {
    return (long) (x * (1 + 1e-15)) + 1;
  }

  /** An upper bound on what the kinds from an index on add in the given room. */
  private long fractional(int from, long room) {
    long rest = room;
    long worth = 0;
    for (int i = from; i < used; i++) {
      long whole = most[i] * weight[i];
      if (whole > rest) {
        deadline.spend(i - from + 1L);
        return worth + ceil(rest * density[i]);
      }
      rest -= whole;
      worth += most[i] * value[i];
    }
    return worth;
  }

  /** Dynamic programming over every length up to the capacity. */
  private void table(int capacity, long threshold) {
    long[] worth = new long[capacity + 1];
    short[][] taken = new short[used][];
    for (int i = 0; i < used; i++) {
      taken[i] = new short[capacity + 1];
      fillRow(worth, taken[i], i, capacity);
    }
    for (int picks = 0; picks < KEPT; picks++) {
      int top = -1;
      for (int c = capacity; c > 0; c--) {
        // A length whose worth a shorter one has too holds the same filling.
        if (worth[c] > threshold && worth[c] > worth[c - 1] && (top < 0 || worth[c] > worth[top])) {
          top = c;
        }
      }
      if (top < 0) {
        return;
      }
      bestValue = Math.max(bestValue, worth[top]);
      keepFromTable(taken, top, worth[top]);
      worth[top] = Long.MIN_VALUE;
    }
  }

  private void keepFromTable(short[][] taken, int length, long worth) {
    int c = length;
    for (int i = used - 1; i >= 0; i--) {
      count[i] = taken[i][c];
      c -= taken[i][c] * (int) weight[i];
    }
    keep(count, used, worth);
  }

  private void fillRow(long[] worth, short[] taken, int i, int capacity) {
    if (weight[i] > capacity) {
      return;
    }
    int w = (int) weight[i];
    int bound = Math.min(Math.min(most[i], capacity / w), Short.MAX_VALUE);
    if (bound == 1) {
      for (int c = capacity; c >= w; c--) {
        long with = worth[c - w] + value[i];
        if (with > worth[c]) {
          worth[c] = with;
          taken[c] = 1;
        }
      }
      return;
    }
    // Per remainder class a sliding window over the last bound + 1 entries.
    long[] queueWorth = new long[capacity / w + 1];
    int[] queueAt = new int[capacity / w + 1];
    for (int rest = 0; rest < w; rest++) {
      int head = 0;
      int tail = 0;
      for (int j = 0, c = rest; c <= capacity; j++, c += w) {
        long relative = worth[c] - j * value[i];
        while (tail > head && queueWorth[tail - 1] <= relative) {
          tail--;
        }
        queueWorth[tail] = relative;
        queueAt[tail++] = j;
        while (queueAt[head] < j - bound) {
          head++;
        }
        worth[c] = queueWorth[head] + j * value[i];
        taken[c] = (short) (j - queueAt[head]);
      }
    }
  }
}
