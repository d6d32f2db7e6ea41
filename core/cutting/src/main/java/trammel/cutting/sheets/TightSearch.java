package trammel.cutting.sheets;

import java.util.Arrays;
import java.util.Random;
import trammel.cutting.internal.Deadline;

/**
 * Depth-first search for a packing that wastes almost nothing.
 *
 * <p>The lowest gap of the skyline is filled from its left end; a way down ends as soon as the area
 * that can no longer be filled exceeds what the sheet can spare. A gap whose width is no sum of
 * widths that are left is known to waste at once.
 */
final class TightSearch {
  private static final int STEPS_BETWEEN_CLOCK = 256;

  private static final long STEPS_PER_NODE = 640;

  /** Widest sheet, in steps, for which sums of widths are tabled. */
  private static final int WIDEST_TABLE = 1 << 13;

  private final SheetModel model;
  private final int width;
  private final int height;
  private final Random random;
  private final Deadline deadline;
  private final int[] remaining;
  private final int[] gapX;
  private final int[] gapY;
  private final int[] gapWidth;
  private final int[] order;
  private final long[] sums;
  private final Layout layout = new Layout();
  private long nodesLeft;
  private int partsLeft;

  TightSearch(SheetModel model, int width, int height, Random random, Deadline deadline) {
    this.model = model;
    this.width = width;
    this.height = height;
    this.random = random;
    this.deadline = deadline;
    this.remaining = new int[model.types()];
    int parts = 0;
    for (int c : model.count) {
      parts += c;
    }
    int most = 2 * parts + 4;
    gapX = new int[most];
    gapY = new int[most];
    gapWidth = new int[most];
    order = Arrangement.sorted(model, 0).order;
    sums = new long[width <= WIDEST_TABLE ? width / 64 + 1 : 0];
  }

  /**
   * @param nodes steps of one way through the search
   * @return the layout, or null when none was found
   */
  Layout find(long nodes) {
    System.arraycopy(model.count, 0, remaining, 0, remaining.length);
    partsLeft = 0;
    for (int c : model.count) {
      partsLeft += c;
    }
    long spare = (long) width * height - model.area(model.count);
    if (spare < 0) {
      return null;
    }
    deadline.spend(STEPS_BETWEEN_CLOCK * STEPS_PER_NODE / 2);
    disturb();
    nodesLeft = nodes;
    layout.clear();
    gapX[0] = 0;
    gapY[0] = 0;
    gapWidth[0] = width;
    return search(1, spare) ? layout.copy() : null;
  }

  /** A slightly different order of parts for every way through. */
  private void disturb() {
    for (int i = 0; i + 1 < order.length; i++) {
      int j = Math.min(order.length - 1, i + random.nextInt(4));
      int held = order[i];
      order[i] = order[j];
      order[j] = held;
    }
  }

  private boolean search(int gaps, long spare) {
    if (partsLeft == 0) {
      return true;
    }
    if (--nodesLeft <= 0 || (nodesLeft % STEPS_BETWEEN_CLOCK == 0 && isPast())) {
      nodesLeft = 0;
      return false;
    }
    int gap = 0;
    for (int g = 1; g < gaps; g++) {
      if (gapY[g] < gapY[gap]) {
        gap = g;
      }
    }
    int left = gap == 0 ? height : gapY[gap - 1];
    int right = gap == gaps - 1 ? height : gapY[gap + 1];
    int lift = Math.min(left, right) - gapY[gap];
    int room = gapWidth[gap];
    int lost = room - longestSum(room, height - gapY[gap]);
    if (lost > 0 && (long) lost * leastLift(lift, gap) > spare) {
      return false;
    }
    int[] savedX = gapX.clone();
    int[] savedY = gapY.clone();
    int[] savedWidth = gapWidth.clone();
    for (int pass = 0; pass < 3; pass++) {
      for (int type : order) {
        if (remaining[type] == 0) {
          continue;
        }
        for (int turn = 0; turn < (model.mayTurn[type] ? 2 : 1); turn++) {
          if (rank(type, turn == 1, room, left - gapY[gap], gap) == pass
              && tryPart(type, turn == 1, gap, gaps, spare)) {
            return true;
          }
          if (nodesLeft <= 0) {
            return false;
          }
          System.arraycopy(savedX, 0, gapX, 0, savedX.length);
          System.arraycopy(savedY, 0, gapY, 0, savedY.length);
          System.arraycopy(savedWidth, 0, gapWidth, 0, savedWidth.length);
        }
      }
    }
    long waste = (long) lift * room;
    if (gaps == 1 || waste > spare) {
      return false;
    }
    gapY[gap] += lift;
    boolean found = search(merged(gaps, Math.max(0, gap - 1)), spare - waste);
    System.arraycopy(savedX, 0, gapX, 0, savedX.length);
    System.arraycopy(savedY, 0, gapY, 0, savedY.length);
    System.arraycopy(savedWidth, 0, gapWidth, 0, savedWidth.length);
    return found;
  }

  private boolean isPast() {
    deadline.spend(STEPS_BETWEEN_CLOCK * STEPS_PER_NODE);
    return deadline.isPast();
  }

  /** The rest of a gap that no part fills stays open at least up to the lowest part or wall. */
  private int leastLift(int lift, int gap) {
    int least = Math.min(lift, height - gapY[gap]);
    for (int type = 0; type < remaining.length; type++) {
      if (remaining[type] > 0) {
        least = Math.min(least, model.height[type]);
        if (model.mayTurn[type]) {
          least = Math.min(least, model.width[type]);
        }
      }
    }
    return least;
  }

  /** 0 for a part exact in width, 1 for one level with the left neighbour, 2 for the others. */
  private int rank(int type, boolean turned, int room, int leftStep, int gap) {
    int w = turned ? model.height[type] : model.width[type];
    int h = turned ? model.width[type] : model.height[type];
    if (w > room || h > height - gapY[gap]) {
      return -1;
    }
    if (w == room) {
      return 0;
    }
    return h == leftStep ? 1 : 2;
  }

  private boolean tryPart(int type, boolean turned, int gap, int gaps, long spare) {
    int w = turned ? model.height[type] : model.width[type];
    int h = turned ? model.width[type] : model.height[type];
    remaining[type]--;
    partsLeft--;
    layout.add(type, gapX[gap], gapY[gap], turned);
    int count = gaps;
    if (w == gapWidth[gap]) {
      gapY[gap] += h;
    } else {
      System.arraycopy(gapX, gap, gapX, gap + 1, gaps - gap);
      System.arraycopy(gapY, gap, gapY, gap + 1, gaps - gap);
      System.arraycopy(gapWidth, gap, gapWidth, gap + 1, gaps - gap);
      gapY[gap] += h;
      gapWidth[gap] = w;
      gapX[gap + 1] += w;
      gapWidth[gap + 1] -= w;
      count++;
    }
    if (search(merged(count, Math.max(0, gap - 1)), spare)) {
      return true;
    }
    layout.parts--;
    remaining[type]++;
    partsLeft++;
    return false;
  }

  private int merged(int gaps, int from) {
    int count = gaps;
    int g = from;
    while (g + 1 < count && g <= from + 3) {
      if (gapY[g] == gapY[g + 1]) {
        gapWidth[g] += gapWidth[g + 1];
        int rest = count - g - 2;
        System.arraycopy(gapX, g + 2, gapX, g + 1, rest);
        System.arraycopy(gapY, g + 2, gapY, g + 1, rest);
        System.arraycopy(gapWidth, g + 2, gapWidth, g + 1, rest);
        count--;
      } else {
        g++;
      }
    }
    return count;
  }

  /** The longest sum of widths of parts that are left which is not above the room. */
  private int longestSum(int room, int head) {
    if (sums.length == 0) {
      return room;
    }
    Arrays.fill(sums, 0);
    sums[0] = 1;
    for (int type = 0; type < remaining.length; type++) {
      for (int i = 0; i < remaining[type]; i++) {
        addWidths(type, head, room);
      }
      if ((sums[room >> 6] >>> room & 1) != 0) {
        return room;
      }
    }
    int longest = room;
    while ((sums[longest >> 6] >>> longest & 1) == 0) {
      longest--;
    }
    return longest;
  }

  private void addWidths(int type, int head, int room) {
    int w = model.width[type];
    int h = model.height[type];
    boolean straight = h <= head && w <= room;
    boolean turned = model.mayTurn[type] && w <= head && h <= room;
    for (int word = room >> 6; word >= 0; word--) {
      long add = 0;
      if (straight) {
        add |= shifted(word, w);
      }
      if (turned) {
        add |= shifted(word, h);
      }
      sums[word] |= add;
    }
  }

  private long shifted(int word, int by) {
    int from = word - (by >> 6);
    int bits = by & 63;
    if (from < 0) {
      return 0;
    }
    long value = sums[from] << bits;
    if (bits > 0 && from > 0) {
      value |= sums[from - 1] >>> (64 - bits);
    }
    return value;
  }
}
