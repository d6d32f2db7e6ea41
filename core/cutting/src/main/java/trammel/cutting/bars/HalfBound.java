package trammel.cutting.bars;

/**
 * A lower bound on the number of bars of one length that also sees pieces longer than half a bar,
 * of which no two share one (bound L2 of Martello and Toth, Knapsack Problems, 1990, section 8.3,
 * from memory).
 */
final class HalfBound {
  private final long[] size;
  private final int[] demand;
  private final long capacity;

  /**
   * @param size of each kind, the largest first
   */
  HalfBound(long[] size, int[] demand, long capacity) {
    this.size = size;
    this.demand = demand;
    this.capacity = capacity;
  }

  /** No plan has fewer bars; in time that grows as the list does. */
  long bars() {
    long half = 0;
    long halfSize = 0;
    int firstSmall = 0;
    while (firstSmall < size.length && 2 * size[firstSmall] > capacity) {
      half += demand[firstSmall];
      halfSize += size[firstSmall] * demand[firstSmall];
      firstSmall++;
    }
    long best = half;
    // Pieces too long to share a bar with one of the small ones looked at, from the longest on.
    int alone = firstSmall;
    long aloneCount = half;
    long aloneSize = halfSize;
    long smallSize = 0;
    for (int k = firstSmall; k < size.length; k++) {
      smallSize += size[k] * demand[k];
      while (alone > 0 && size[alone - 1] <= capacity - size[k]) {
        alone--;
        aloneCount -= demand[alone];
        aloneSize -= size[alone] * demand[alone];
      }
      long sharing = half - aloneCount;
      long room = sharing * capacity - (halfSize - aloneSize);
      long more = Math.max(0, smallSize - room);
      best = Math.max(best, half + (more + capacity - 1) / capacity);
    }
    return best;
  }
}
