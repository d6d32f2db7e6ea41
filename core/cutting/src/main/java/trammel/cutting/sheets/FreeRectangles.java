package trammel.cutting.sheets;

import java.util.ArrayList;
import java.util.List;

/** The empty rectangles that a layout leaves, as {x, y, width, height} in steps. */
final class FreeRectangles {
  /** Left-overs named per sheet; more would be scrap by any measure. */
  private static final int MOST = 4;

  private final int width;
  private final int height;
  private final List<int[]> taken = new ArrayList<>();
  private List<int[]> maximal = new ArrayList<>();

  FreeRectangles(int width, int height) {
    this.width = width;
    this.height = height;
    if (width > 0 && height > 0) {
      maximal.add(new int[] {0, 0, width, height});
    }
  }

  FreeRectangles(SheetModel model, int sheet, Layout layout) {
    this(model.sheetWidth[sheet], model.sheetHeight[sheet]);
    for (int i = 0; i < layout.parts; i++) {
      int type = layout.type[i];
      int w = layout.turned[i] ? model.height[type] : model.width[type];
      int h = layout.turned[i] ? model.width[type] : model.height[type];
      put(new int[] {layout.x[i], layout.y[i], w, h});
    }
  }

  /** Puts a part where it lies. */
  void put(int[] part) {
    taken.add(part);
    take(part);
  }

  /** Largest first and apart from each other; with a shear only what straight cuts free. */
  List<int[]> disjoint(CuttingMethod method) {
    List<int[]> result = new ArrayList<>();
    if (method == CuttingMethod.GUILLOTINE) {
      addStrips(result);
      return result;
    }
    return disjoint(0);
  }

  /** Largest first and so far apart from each other. */
  List<int[]> disjoint(int apart) {
    List<int[]> result = new ArrayList<>();
    while (result.size() < MOST && !maximal.isEmpty()) {
      int[] largest = maximal.get(0);
      for (int[] r : maximal) {
        if ((long) r[2] * r[3] > (long) largest[2] * largest[3]) {
          largest = r;
        }
      }
      result.add(largest);
      take(
          new int[] {
            largest[0] - apart, largest[1] - apart, largest[2] + 2 * apart, largest[3] + 2 * apart
          });
    }
    return result;
  }

  /** What is above all parts, and what is right of them: two cuts from edge to edge. */
  private void addStrips(List<int[]> result) {
    int top = 0;
    int right = 0;
    for (int[] part : taken) {
      top = Math.max(top, part[1] + part[3]);
      right = Math.max(right, part[0] + part[2]);
    }
    if (top < height) {
      result.add(new int[] {0, top, width, height - top});
    }
    if (right < width && top > 0) {
      result.add(new int[] {right, 0, width - right, top});
    }
  }

  /** Only what is new may lie in another: those that stay were maximal before. */
  private void take(int[] part) {
    List<int[]> rest = new ArrayList<>();
    List<int[]> fresh = new ArrayList<>();
    for (int[] r : maximal) {
      if (part[0] >= r[0] + r[2]
          || part[0] + part[2] <= r[0]
          || part[1] >= r[1] + r[3]
          || part[1] + part[3] <= r[1]) {
        rest.add(r);
      } else {
        int before = rest.size();
        addSides(rest, r, part);
        fresh.addAll(rest.subList(before, rest.size()));
      }
    }
    maximal = withoutCovered(rest, fresh);
  }

  private static void addSides(List<int[]> rest, int[] r, int[] part) {
    addIfAny(rest, r[0], r[1], part[0] - r[0], r[3]);
    int right = part[0] + part[2];
    addIfAny(rest, right, r[1], r[0] + r[2] - right, r[3]);
    addIfAny(rest, r[0], r[1], r[2], part[1] - r[1]);
    int top = part[1] + part[3];
    addIfAny(rest, r[0], top, r[2], r[1] + r[3] - top);
  }

  private static void addIfAny(List<int[]> rest, int x, int y, int w, int h) {
    if (w > 0 && h > 0) {
      rest.add(new int[] {x, y, w, h});
    }
  }

  private static List<int[]> withoutCovered(List<int[]> all, List<int[]> fresh) {
    List<int[]> kept = new ArrayList<>(all.size());
    int next = 0;
    for (int i = 0; i < all.size(); i++) {
      int[] inner = all.get(i);
      if (next == fresh.size() || inner != fresh.get(next)) {
        kept.add(inner);
        continue;
      }
      next++;
      boolean covered = false;
      for (int j = 0; j < all.size() && !covered; j++) {
        int[] outer = all.get(j);
        covered = i != j && covers(outer, inner) && (j < i || !covers(inner, outer));
      }
      if (!covered) {
        kept.add(inner);
      }
    }
    return kept;
  }

  private static boolean covers(int[] outer, int[] inner) {
    return outer[0] <= inner[0]
        && outer[1] <= inner[1]
        && outer[0] + outer[2] >= inner[0] + inner[2]
        && outer[1] + outer[3] >= inner[1] + inner[3];
  }
}
