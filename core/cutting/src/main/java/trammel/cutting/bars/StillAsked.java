package trammel.cutting.bars;

/**
 * Finds the next kind that is still asked for without looking at those that are not, however many
 * there are: what ran out is skipped at once from then on (path compression; Tarjan 1975, from
 * memory). Counts may only go down.
 */
final class StillAsked {
  private final long[] size;
  private final int[] left;
  private final int[] next;

  /**
   * @param size of each kind, the largest first
   * @param left how many of each are asked for; read, not copied
   */
  StillAsked(long[] size, int[] left) {
    this.size = size;
    this.left = left;
    this.next = new int[left.length + 1];
    for (int k = 0; k < next.length; k++) {
      next[k] = k;
    }
  }

  /** The first kind from one on that is asked for and no larger than the room, or their number. */
  int fitting(int from, long room) {
    int kind = from;
    if (kind < size.length && size[kind] > room) {
      kind = firstWithin(kind, room);
    }
    return askedFrom(kind);
  }

  private int firstWithin(int from, long room) {
    int low = from + 1;
    int high = size.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (size[middle] > room) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private int askedFrom(int from) {
    int kind = from;
    while (kind < left.length && (next[kind] != kind || left[kind] == 0)) {
      if (next[kind] == kind) {
        next[kind] = kind + 1;
      }
      next[kind] = next[next[kind]];
      kind = next[kind];
    }
    return kind;
  }
}
