package trammel.cutting.outlines;

import java.util.Arrays;

/**
 * Which items of a nest may reach into a stretch of one direction, found without looking at all of
 * them: the direction is cut into bands, and each band knows as bits the items that start, and
 * those that end, on either side of it; mm.
 */
final class NestBands {
  private static final int BANDS = 128;

  private final double bandsPerMm;
  private final int words;

  /** Bits of the items that start in a band or before it. */
  private final long[] started;

  /** Bits of the items that end in a band or behind it. */
  private final long[] unended;

  private final int[] startOf;
  private final int[] endOf;

  /**
   * @param lengthMm what lies further out is counted to the last band
   */
  NestBands(int items, double lengthMm) {
    bandsPerMm = BANDS / lengthMm;
    words = (items + Long.SIZE - 1) / Long.SIZE;
    started = new long[BANDS * words];
    unended = new long[BANDS * words];
    startOf = new int[items];
    endOf = new int[items];
    Arrays.fill(startOf, BANDS);
    Arrays.fill(endOf, -1);
  }

  /** Words of bits for all items, 64 in each. */
  int words() {
    return words;
  }

  /** Notes from where to where an item reaches. */
  void put(int item, double low, double high) {
    int start = band(low);
    int end = band(high);
    int word = item / Long.SIZE;
    long bit = 1L << item;
    for (int b = start; b < startOf[item]; b++) {
      started[b * words + word] |= bit;
    }
    for (int b = startOf[item]; b < start; b++) {
      started[b * words + word] &= ~bit;
    }
    for (int b = endOf[item] + 1; b <= end; b++) {
      unended[b * words + word] |= bit;
    }
    for (int b = end + 1; b <= endOf[item]; b++) {
      unended[b * words + word] &= ~bit;
    }
    startOf[item] = start;
    endOf[item] = end;
  }

  /** The place of the band that holds a coordinate. */
  int band(double at) {
    int band = (int) (at * bandsPerMm);
    return band < 0 ? 0 : Math.min(band, BANDS - 1);
  }

  /** One word of the items that may reach between two bands. */
  long between(int from, int to, int word) {
    return started[to * words + word] & unended[from * words + word];
  }
}
