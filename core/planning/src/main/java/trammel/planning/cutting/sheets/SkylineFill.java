package trammel.planning.cutting.sheets;

/**
 * Fills a sheet from the bottom up along its skyline.
 *
 * <p>The lowest gap of the skyline takes the part that suits it best: exact in width, level with a
 * neighbour, else the first in order that fits (after Leung, Zhang and Sim 2011, from memory).
 */
final class SkylineFill implements SheetFill {
  private static final int EXACT_WIDTH = 4;

  /** The rest of the gap beside the part can still take another one. */
  private static final int OPEN_REST = 1;

  private static final int LEVEL = 2;
  private static final int UNKNOWN = -1;
  private static final int BEST_POSSIBLE = EXACT_WIDTH + 2 * LEVEL;

  private final SheetModel model;
  private final int[] gapX;
  private final int[] gapY;
  private final int[] gapWidth;
  private int gaps;

  private int chosenType;
  private boolean chosenTurned;
  private int chosenScore;

  /** Least width of a part that could still stand in the gap; looked up when it first matters. */
  private int narrowest;

  SkylineFill(SheetModel model) {
    this.model = model;
    int parts = 2;
    for (int c : model.count) {
      parts += c;
    }
    gapX = new int[parts];
    gapY = new int[parts];
    gapWidth = new int[parts];
  }

  @Override
  public long fill(
      int sheetWidth, int sheetHeight, Arrangement arrangement, int[] remaining, Layout layout) {
    gaps = 1;
    gapX[0] = 0;
    gapY[0] = 0;
    gapWidth[0] = sheetWidth;
    return fillAbove(sheetHeight, arrangement, remaining, layout, Long.MAX_VALUE);
  }

  /**
   * Goes on filling above a skyline.
   *
   * @param skyline for each gap its left end, its height and its width
   * @param layout receives the places of the parts added
   * @param mostWaste area that may be left below the skyline; above it filling breaks off
   * @return area added
   */
  long fillOn(
      int[][] skyline,
      int sheetHeight,
      Arrangement arrangement,
      int[] remaining,
      Layout layout,
      long mostWaste) {
    gaps = skyline[0].length;
    System.arraycopy(skyline[0], 0, gapX, 0, gaps);
    System.arraycopy(skyline[1], 0, gapY, 0, gaps);
    System.arraycopy(skyline[2], 0, gapWidth, 0, gaps);
    return fillAbove(sheetHeight, arrangement, remaining, layout, mostWaste);
  }

  private long fillAbove(
      int sheetHeight, Arrangement arrangement, int[] remaining, Layout layout, long mostWaste) {
    layout.clear();
    long area = 0;
    long wasteLeft = mostWaste;
    while (true) {
      int gap = lowest();
      int left = gap == 0 ? sheetHeight : gapY[gap - 1];
      int right = gap == gaps - 1 ? sheetHeight : gapY[gap + 1];
      choose(gap, sheetHeight, left, right, arrangement, remaining);
      if (chosenType < 0) {
        if (gaps == 1) {
          return area;
        }
        wasteLeft -= (long) (Math.min(left, right) - gapY[gap]) * gapWidth[gap];
        if (wasteLeft < 0) {
          return area;
        }
        lift(gap, Math.min(left, right));
        continue;
      }
      remaining[chosenType]--;
      area += model.area(chosenType);
      place(gap, left, right, layout);
    }
  }

  private int lowest() {
    int lowest = 0;
    for (int g = 1; g < gaps; g++) {
      if (gapY[g] < gapY[lowest]) {
        lowest = g;
      }
    }
    return lowest;
  }

  private void choose(
      int gap, int sheetHeight, int left, int right, Arrangement arrangement, int[] remaining) {
    int room = gapWidth[gap];
    int head = sheetHeight - gapY[gap];
    int leftStep = left - gapY[gap];
    int rightStep = right - gapY[gap];
    chosenType = -1;
    chosenScore = -1;
    narrowest = UNKNOWN;
    for (int type : arrangement.order) {
      if (remaining[type] == 0) {
        continue;
      }
      boolean first = arrangement.turnFirst[type] && model.mayTurn[type];
      if (fits(type, first, room, head)) {
        narrowest = narrowest == UNKNOWN ? narrowest(arrangement, remaining, head) : narrowest;
        consider(type, first, room, leftStep, rightStep);
      }
      if (model.mayTurn[type] && fits(type, !first, room, head)) {
        narrowest = narrowest == UNKNOWN ? narrowest(arrangement, remaining, head) : narrowest;
        consider(type, !first, room, leftStep, rightStep);
      }
      if (chosenScore == BEST_POSSIBLE) {
        return;
      }
    }
  }

  /** Least width of a part that could still stand in a gap of the given head room. */
  private int narrowest(Arrangement arrangement, int[] remaining, int head) {
    int least = Integer.MAX_VALUE;
    for (int type : arrangement.order) {
      if (remaining[type] > 0) {
        if (model.height[type] <= head) {
          least = Math.min(least, model.width[type]);
        }
        if (model.mayTurn[type] && model.width[type] <= head) {
          least = Math.min(least, model.height[type]);
        }
      }
    }
    return least;
  }

  private boolean fits(int type, boolean turned, int room, int head) {
    return turned
        ? model.height[type] <= room && model.width[type] <= head
        : model.width[type] <= room && model.height[type] <= head;
  }

  private void consider(int type, boolean turned, int room, int leftStep, int rightStep) {
    int w = turned ? model.height[type] : model.width[type];
    int h = turned ? model.width[type] : model.height[type];
    int score = OPEN_REST;
    if (w == room) {
      score = EXACT_WIDTH + (h == leftStep ? LEVEL : 0) + (h == rightStep ? LEVEL : 0);
    } else {
      score += h == leftStep || h == rightStep ? LEVEL : 0;
      score -= room - w < narrowest ? OPEN_REST : 0;
    }
    if (score > chosenScore) {
      chosenScore = score;
      chosenType = type;
      chosenTurned = turned;
    }
  }

  private void place(int gap, int left, int right, Layout layout) {
    int w = chosenTurned ? model.height[chosenType] : model.width[chosenType];
    int h = chosenTurned ? model.width[chosenType] : model.height[chosenType];
    int base = gapY[gap];
    boolean atRight = base + h == right || (base + h != left && right > left);
    int x = atRight ? gapX[gap] + gapWidth[gap] - w : gapX[gap];
    layout.add(chosenType, x, base, chosenTurned);
    if (w == gapWidth[gap]) {
      gapY[gap] = base + h;
    } else if (atRight) {
      insert(gap + 1, x, base + h, w);
      gapWidth[gap] -= w;
    } else {
      insert(gap, x, base + h, w);
      gapX[gap + 1] += w;
      gapWidth[gap + 1] -= w;
    }
    mergeLevel(Math.max(0, gap - 1));
  }

  private void insert(int at, int x, int y, int w) {
    System.arraycopy(gapX, at, gapX, at + 1, gaps - at);
    System.arraycopy(gapY, at, gapY, at + 1, gaps - at);
    System.arraycopy(gapWidth, at, gapWidth, at + 1, gaps - at);
    gapX[at] = x;
    gapY[at] = y;
    gapWidth[at] = w;
    gaps++;
  }

  private void lift(int gap, int y) {
    gapY[gap] = y;
    mergeLevel(Math.max(0, gap - 1));
  }

  /** Joins neighbours of one height around a place. */
  private void mergeLevel(int from) {
    int g = from;
    while (g + 1 < gaps && g <= from + 3) {
      if (gapY[g] == gapY[g + 1]) {
        gapWidth[g] += gapWidth[g + 1];
        int rest = gaps - g - 2;
        System.arraycopy(gapX, g + 2, gapX, g + 1, rest);
        System.arraycopy(gapY, g + 2, gapY, g + 1, rest);
        System.arraycopy(gapWidth, g + 2, gapWidth, g + 1, rest);
        gaps--;
      } else {
        g++;
      }
    }
  }
}
