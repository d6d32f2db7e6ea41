package trammel.cutting.sheets;

import java.util.Arrays;

/**
 * Decides whether a few parts fit on one sheet together.
 *
 * <p>Parts of any packing can be pushed left and down until each starts at a sum of widths and a
 * sum of heights (Herz, IBM Journal of Research and Development 16 (1972), from memory). The
 * lowest, then leftmost, open corner is given to each part in turn, or else left empty as far as
 * the next such sums; so every pushed packing is met.
 */
final class ExactPlacement {
  /** Corners looked at before a question is left open. */
  private static final int MOST_STEPS = 20_000;

  private static final long STEPS_PER_CORNER = 200;

  /** Parts and empty corners one on the other. */
  private static final int DEEPEST = 400;

  /** Sums of sides in one direction. */
  private static final int MOST_SUMS = 2000;

  private final SheetModel model;
  private final int mostSteps;
  private final Layout layout = new Layout();
  private int[] starts = {0};
  private int[] levels = {0};
  private int[] remaining;
  private int partsLeft;
  private int sheetHeight;
  private int stepsLeft;
  private int depth;

  ExactPlacement(SheetModel model) {
    this(model, MOST_STEPS);
  }

  /**
   * @param mostSteps corners looked at before a question is left open
   */
  ExactPlacement(SheetModel model, int mostSteps) {
    this.model = model;
    this.mostSteps = mostSteps;
  }

  /**
   * @param counts parts of each type that are to lie on the sheet
   * @return true when they fit; false when they do not, or when the search grew too long: see
   *     {@link #isOpen()}
   */
  boolean fits(int[] counts, int sheet) {
    layout.clear();
    stepsLeft = mostSteps;
    long spare = model.sheetArea(sheet) - model.area(counts);
    if (spare < 0) {
      return false;
    }
    remaining = counts.clone();
    partsLeft = Arrays.stream(counts).sum();
    sheetHeight = model.sheetHeight[sheet];
    starts = sums(counts, true, model.sheetWidth[sheet]);
    levels = sums(counts, false, sheetHeight);
    depth = 0;
    return !isOpen()
        && search(new int[] {0}, new int[] {0}, new int[] {model.sheetWidth[sheet]}, spare);
  }

  /** True when the last answer is no more than that no way was found. */
  boolean isOpen() {
    return stepsLeft <= 0;
  }

  /** What the last question took, in steps of a counted effort. */
  long effort() {
    return STEPS_PER_CORNER * (1 + mostSteps - Math.max(0, stepsLeft));
  }

  /** Where the parts lie after a question answered with yes. */
  Layout layout() {
    return layout.copy();
  }

  /** All sums of sides up to a length, rising; nothing beyond 0 when there are too many. */
  private int[] sums(int[] counts, boolean across, int longest) {
    int[] sums = {0};
    for (int type = 0; type < counts.length; type++) {
      int side = across ? model.width[type] : model.height[type];
      int other = across ? model.height[type] : model.width[type];
      for (int i = 0; i < counts[type]; i++) {
        sums = with(sums, side, model.mayTurn[type] ? other : side, longest);
        if (sums.length > MOST_SUMS) {
          stepsLeft = 0;
          return new int[] {0};
        }
      }
    }
    return sums;
  }

  private static int[] with(int[] sums, int side, int other, int longest) {
    int[] all = new int[3 * sums.length];
    int n = 0;
    for (int sum : sums) {
      all[n++] = sum;
      all[n++] = Math.min(longest, sum + side);
      all[n++] = Math.min(longest, sum + other);
    }
    Arrays.sort(all);
    int kept = 0;
    for (int i = 0; i < n; i++) {
      if (i == 0 || all[i] != all[i - 1]) {
        all[kept++] = all[i];
      }
    }
    return Arrays.copyOf(all, kept);
  }

  /** The next sum above a length, or the end when there is none. */
  private static int next(int[] sums, int length, int end) {
    int at = Arrays.binarySearch(sums, length + 1);
    int index = at < 0 ? -at - 1 : at;
    return index < sums.length ? Math.min(sums[index], end) : end;
  }

  private boolean search(int[] x, int[] y, int[] width, long spare) {
    if (partsLeft == 0) {
      return true;
    }
    if (--stepsLeft <= 0 || depth == DEEPEST) {
      stepsLeft = 0;
      return false;
    }
    int gap = 0;
    for (int g = 1; g < y.length; g++) {
      if (y[g] < y[gap]) {
        gap = g;
      }
    }
    for (int type = 0; type < remaining.length; type++) {
      if (remaining[type] > 0
          && (place(type, false, gap, x, y, width, spare)
              || (model.mayTurn[type] && place(type, true, gap, x, y, width, spare)))) {
        return true;
      }
    }
    return leaveEmpty(gap, x, y, width, spare);
  }

  private boolean place(
      int type, boolean turned, int gap, int[] x, int[] y, int[] width, long spare) {
    int w = turned ? model.height[type] : model.width[type];
    int h = turned ? model.width[type] : model.height[type];
    if (w > width[gap] || y[gap] + h > sheetHeight) {
      return false;
    }
    remaining[type]--;
    partsLeft--;
    layout.add(type, x[gap], y[gap], turned);
    if (raised(gap, w, y[gap] + h, x, y, width, spare)) {
      return true;
    }
    layout.parts--;
    partsLeft++;
    remaining[type]++;
    return false;
  }

  /** No part starts in this corner: none reaches it before the next sums of sides. */
  private boolean leaveEmpty(int gap, int[] x, int[] y, int[] width, long spare) {
    int w = next(starts, x[gap], x[gap] + width[gap]) - x[gap];
    int top = next(levels, y[gap], sheetHeight);
    long lost = (long) w * (top - y[gap]);
    return lost > 0 && lost <= spare && raised(gap, w, top, x, y, width, spare - lost);
  }

  /** Goes on with the left end of a gap raised to a new height. */
  private boolean raised(int gap, int w, int top, int[] x, int[] y, int[] width, long spare) {
    int parts = y.length + (w < width[gap] ? 1 : 0);
    int[] newX = new int[parts];
    int[] newY = new int[parts];
    int[] newWidth = new int[parts];
    int n = 0;
    for (int g = 0; g < y.length; g++) {
      if (g == gap) {
        n = append(newX, newY, newWidth, n, x[g], top, w);
        if (w < width[g]) {
          n = append(newX, newY, newWidth, n, x[g] + w, y[g], width[g] - w);
        }
      } else {
        n = append(newX, newY, newWidth, n, x[g], y[g], width[g]);
      }
    }
    depth++;
    boolean found =
        search(Arrays.copyOf(newX, n), Arrays.copyOf(newY, n), Arrays.copyOf(newWidth, n), spare);
    depth--;
    return found;
  }

  private static int append(int[] x, int[] y, int[] width, int n, int atX, int atY, int w) {
    if (n > 0 && y[n - 1] == atY) {
      width[n - 1] += w;
      return n;
    }
    x[n] = atX;
    y[n] = atY;
    width[n] = w;
    return n + 1;
  }
}
