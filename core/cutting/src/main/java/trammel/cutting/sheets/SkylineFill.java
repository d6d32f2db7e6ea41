package trammel.cutting.sheets;

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

  private final SheetModel model;
  private final int[] gapX;
  private final int[] gapY;
  private final int[] gapWidth;
  private int gaps;

  /** Every way round of the parts that are left, in order: its part and its sides. */
  private final int[] wayType;

  private final boolean[] wayTurned;
  private final int[] wayWidth;
  private final int[] wayHeight;
  private int ways;

  /** The ways round that fit the gap looked at. */
  private final int[] fitting;

  private int chosenType;
  private boolean chosenTurned;

  SkylineFill(SheetModel model) {
    this.model = model;
    int parts = 2;
    for (int c : model.count) {
      parts += c;
    }
    gapX = new int[parts];
    gapY = new int[parts];
    gapWidth = new int[parts];
    wayType = new int[2 * model.types()];
    wayTurned = new boolean[2 * model.types()];
    wayWidth = new int[2 * model.types()];
    wayHeight = new int[2 * model.types()];
    fitting = new int[2 * model.types()];
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
    listWays(arrangement, remaining);
    long area = 0;
    long wasteLeft = mostWaste;
    while (true) {
      int gap = lowest();
      int left = gap == 0 ? sheetHeight : gapY[gap - 1];
      int right = gap == gaps - 1 ? sheetHeight : gapY[gap + 1];
      choose(gapWidth[gap], sheetHeight - gapY[gap], left - gapY[gap], right - gapY[gap]);
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
      if (remaining[chosenType] == 0) {
        unlist(chosenType);
      }
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

  private void listWays(Arrangement arrangement, int[] remaining) {
    ways = 0;
    for (int type : arrangement.order) {
      if (remaining[type] > 0) {
        boolean first = arrangement.turnFirst[type] && model.mayTurn[type];
        listWay(type, first);
        if (model.mayTurn[type]) {
          listWay(type, !first);
        }
      }
    }
  }

  private void listWay(int type, boolean turned) {
    wayType[ways] = type;
    wayTurned[ways] = turned;
    wayWidth[ways] = turned ? model.height[type] : model.width[type];
    wayHeight[ways] = turned ? model.width[type] : model.height[type];
    ways++;
  }

  /** Takes a part off the list; its ways round stand side by side. */
  private void unlist(int type) {
    int at = 0;
    while (wayType[at] != type) {
      at++;
    }
    int next = at + (model.mayTurn[type] ? 2 : 1);
    System.arraycopy(wayType, next, wayType, at, ways - next);
    System.arraycopy(wayTurned, next, wayTurned, at, ways - next);
    System.arraycopy(wayWidth, next, wayWidth, at, ways - next);
    System.arraycopy(wayHeight, next, wayHeight, at, ways - next);
    ways -= next - at;
  }

  /** Chooses the part for a gap of some width and head room, its neighbours so much higher. */
  private void choose(int room, int head, int leftStep, int rightStep) {
    int narrowest = Integer.MAX_VALUE;
    int count = 0;
    for (int way = 0; way < ways; way++) {
      if (wayHeight[way] <= head) {
        int w = wayWidth[way];
        narrowest = w < narrowest ? w : narrowest;
        if (w <= room) {
          fitting[count++] = way;
        }
      }
    }
    chosenType = -1;
    int best = -1;
    for (int i = 0; i < count; i++) {
      int way = fitting[i];
      int score = score(wayHeight[way], room - wayWidth[way], leftStep, rightStep, narrowest);
      if (score > best) {
        best = score;
        chosenType = wayType[way];
        chosenTurned = wayTurned[way];
      }
    }
  }

  /**
   * @param rest width of the gap that a part leaves
   * @param narrowest least width of a part that could still stand in the gap
   */
  private static int score(int height, int rest, int leftStep, int rightStep, int narrowest) {
    boolean left = height == leftStep;
    boolean right = height == rightStep;
    if (rest == 0) {
      return EXACT_WIDTH + (left ? LEVEL : 0) + (right ? LEVEL : 0);
    }
    return (rest < narrowest ? 0 : OPEN_REST) + (left || right ? LEVEL : 0);
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
