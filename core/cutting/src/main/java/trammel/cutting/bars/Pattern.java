package trammel.cutting.bars;

import java.util.Arrays;

/**
 * One way to cut one bar: which kinds of piece, and how many of each.
 *
 * <p>Kinds are indices into {@link BarModel}, in rising order; counts are at least 1.
 */
final class Pattern {
  final int stock;
  final int[] kinds;
  final int[] counts;

  Pattern(int stock, int[] kinds, int[] counts) {
    this.stock = stock;
    this.kinds = kinds;
    this.counts = counts;
  }

  /** The pattern of a full-width array of counts. */
  static Pattern of(int stock, int[] countPerKind) {
    int distinct = 0;
    for (int count : countPerKind) {
      if (count > 0) {
        distinct++;
      }
    }
    int[] kinds = new int[distinct];
    int[] counts = new int[distinct];
    int at = 0;
    for (int kind = 0; kind < countPerKind.length; kind++) {
      if (countPerKind[kind] > 0) {
        kinds[at] = kind;
        counts[at++] = countPerKind[kind];
      }
    }
    return new Pattern(stock, kinds, counts);
  }

  Pattern onStock(int otherStock) {
    return new Pattern(otherStock, kinds, counts);
  }

  long used(BarModel model) {
    long used = 0;
    for (int i = 0; i < kinds.length; i++) {
      used += model.size[kinds[i]] * counts[i];
    }
    return used;
  }

  /** True when no kind is cut more often than is still asked for. */
  boolean isWithin(int[] demand) {
    for (int i = 0; i < kinds.length; i++) {
      if (counts[i] > demand[kinds[i]]) {
        return false;
      }
    }
    return true;
  }

  /** The pattern without the pieces that exceed the demand. */
  Pattern trimmedTo(int[] demand) {
    int kept = 0;
    for (int kind : kinds) {
      if (demand[kind] > 0) {
        kept++;
      }
    }
    int[] keptKinds = new int[kept];
    int[] keptCounts = new int[kept];
    int at = 0;
    for (int i = 0; i < kinds.length; i++) {
      if (demand[kinds[i]] > 0) {
        keptKinds[at] = kinds[i];
        keptCounts[at++] = Math.min(counts[i], demand[kinds[i]]);
      }
    }
    return new Pattern(stock, keptKinds, keptCounts);
  }

  /** How often the whole pattern can be cut before some kind is no longer asked for. */
  int repeats(int[] demand) {
    int repeats = Integer.MAX_VALUE;
    for (int i = 0; i < kinds.length; i++) {
      repeats = Math.min(repeats, demand[kinds[i]] / counts[i]);
    }
    return kinds.length == 0 ? 0 : repeats;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Pattern that
        && stock == that.stock
        && Arrays.equals(kinds, that.kinds)
        && Arrays.equals(counts, that.counts);
  }

  @Override
  public int hashCode() {
    return (31 * Arrays.hashCode(kinds) + Arrays.hashCode(counts)) * 31 + stock;
  }
}
