package trammel.cutting.sheets;

import java.util.Arrays;

/**
 * Which lengths the sides of the parts that are left can add up to in one direction.
 *
 * <p>A room whose length is no such sum must waste the difference to the longest sum below it (cuts
 * by dynamic programming for perfect packings: Kenmochi, Imamichi, Nonobe, Yagiura and Nagamochi,
 * European Journal of Operational Research 198 (2009), from memory).
 */
final class SideSums {
  /** Longest room, in steps, for which sums are tabled; above it nothing is known to be wasted. */
  private static final int LONGEST_TABLE = 1 << 13;

  private final SheetModel model;
  private final boolean across;
  private final int longest;
  private final long[] bits;

  /**
   * @param across true for sums of widths, false for sums of heights
   * @param longest longest room that will be asked for, in steps
   */
  SideSums(SheetModel model, boolean across, int longest) {
    this.model = model;
    this.across = across;
    this.longest = longest;
    this.bits = new long[longest <= LONGEST_TABLE ? longest / 64 + 1 : 0];
  }

  /** Tables the sums of the parts that are left. */
  void of(int[] remaining) {
    if (bits.length == 0) {
      return;
    }
    Arrays.fill(bits, 0);
    bits[0] = 1;
    for (int type = 0; type < remaining.length; type++) {
      int side = across ? model.width[type] : model.height[type];
      int other = across ? model.height[type] : model.width[type];
      for (int i = 0; i < remaining[type]; i++) {
        add(side, model.mayTurn[type] ? other : side);
      }
    }
  }

  private void add(int one, int other) {
    for (int word = bits.length - 1; word >= 0; word--) {
      long sums = bits[word] | shifted(word, one);
      bits[word] = other == one ? sums : sums | shifted(word, other);
    }
  }

  private long shifted(int word, int by) {
    int from = word - (by >> 6);
    int low = by & 63;
    if (from < 0) {
      return 0;
    }
    long value = bits[from] << low;
    return low > 0 && from > 0 ? value | bits[from - 1] >>> (64 - low) : value;
  }

  /** Part of a room that no parts side by side can fill, in steps. */
  int lost(int room) {
    if (bits.length == 0 || room > longest) {
      return 0;
    }
    int sum = room;
    while ((bits[sum >> 6] >>> sum & 1) == 0) {
      sum--;
    }
    return room - sum;
  }
}
