package trammel.cutting.sheets;

import java.util.Arrays;

/**
 * Fills a sheet by cuts from edge to edge: every part goes into the corner of a free rectangle, and
 * the rest of it is split in two.
 */
final class ShearFill implements SheetFill {
  private static final int EXACT_SIDE = 2;

  private final SheetModel model;
  private int[] freeX = new int[32];
  private int[] freeY = new int[32];
  private int[] freeWidth = new int[32];
  private int[] freeHeight = new int[32];
  private int free;
  private int chosenType;
  private boolean chosenTurned;
  private int chosenScore;

  ShearFill(SheetModel model) {
    this.model = model;
  }

  @Override
  public long fill(
      int sheetWidth, int sheetHeight, Arrangement arrangement, int[] remaining, Layout layout) {
    layout.clear();
    free = 0;
    push(0, 0, sheetWidth, sheetHeight);
    long area = 0;
    while (free > 0) {
      int smallest = smallest();
      int x = freeX[smallest];
      int y = freeY[smallest];
      int w = freeWidth[smallest];
      int h = freeHeight[smallest];
      choose(w, h, arrangement, remaining);
      remove(smallest);
      if (chosenType >= 0) {
        remaining[chosenType]--;
        area += model.area(chosenType);
        layout.add(chosenType, x, y, chosenTurned);
        split(x, y, w, h, arrangement.splitUp[chosenType]);
      }
    }
    return area;
  }

  private int smallest() {
    int smallest = 0;
    for (int f = 1; f < free; f++) {
      if ((long) freeWidth[f] * freeHeight[f] < (long) freeWidth[smallest] * freeHeight[smallest]) {
        smallest = f;
      }
    }
    return smallest;
  }

  private void choose(int w, int h, Arrangement arrangement, int[] remaining) {
    chosenType = -1;
    chosenScore = -1;
    for (int type : arrangement.order) {
      if (remaining[type] == 0) {
        continue;
      }
      boolean first = arrangement.turnFirst[type] && model.mayTurn[type];
      consider(type, first, w, h);
      if (model.mayTurn[type]) {
        consider(type, !first, w, h);
      }
    }
  }

  private void consider(int type, boolean turned, int w, int h) {
    int partWidth = turned ? model.height[type] : model.width[type];
    int partHeight = turned ? model.width[type] : model.height[type];
    if (partWidth <= w && partHeight <= h) {
      int score = (partWidth == w ? EXACT_SIDE : 0) + (partHeight == h ? EXACT_SIDE : 0);
      if (score > chosenScore) {
        chosenScore = score;
        chosenType = type;
        chosenTurned = turned;
      }
    }
  }

  private void split(int x, int y, int w, int h, boolean otherWay) {
    int partWidth = chosenTurned ? model.height[chosenType] : model.width[chosenType];
    int partHeight = chosenTurned ? model.width[chosenType] : model.height[chosenType];
    int beside = w - partWidth;
    int above = h - partHeight;
    // Keeping the larger rest whole is the rule; the arrangement may say otherwise.
    boolean upright = (beside > above) != otherWay;
    if (upright) {
      push(x + partWidth, y, beside, h);
      push(x, y + partHeight, partWidth, above);
    } else {
      push(x + partWidth, y, beside, partHeight);
      push(x, y + partHeight, w, above);
    }
  }

  private void push(int x, int y, int w, int h) {
    if (w <= 0 || h <= 0) {
      return;
    }
    if (free == freeX.length) {
      freeX = Arrays.copyOf(freeX, 2 * free);
      freeY = Arrays.copyOf(freeY, 2 * free);
      freeWidth = Arrays.copyOf(freeWidth, 2 * free);
      freeHeight = Arrays.copyOf(freeHeight, 2 * free);
    }
    freeX[free] = x;
    freeY[free] = y;
    freeWidth[free] = w;
    freeHeight[free++] = h;
  }

  private void remove(int at) {
    free--;
    freeX[at] = freeX[free];
    freeY[at] = freeY[free];
    freeWidth[at] = freeWidth[free];
    freeHeight[at] = freeHeight[free];
  }
}
