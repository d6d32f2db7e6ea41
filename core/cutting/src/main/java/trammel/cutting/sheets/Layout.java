package trammel.cutting.sheets;

import java.util.Arrays;

/** Where parts lie on one sheet, in steps. */
final class Layout {
  int[] type = new int[16];
  int[] x = new int[16];
  int[] y = new int[16];
  boolean[] turned = new boolean[16];
  int parts;

  void clear() {
    parts = 0;
  }

  void add(int partType, int partX, int partY, boolean isTurned) {
    if (parts == type.length) {
      type = Arrays.copyOf(type, 2 * parts);
      x = Arrays.copyOf(x, 2 * parts);
      y = Arrays.copyOf(y, 2 * parts);
      turned = Arrays.copyOf(turned, 2 * parts);
    }
    type[parts] = partType;
    x[parts] = partX;
    y[parts] = partY;
    turned[parts++] = isTurned;
  }

  void addAll(Layout other) {
    for (int i = 0; i < other.parts; i++) {
      add(other.type[i], other.x[i], other.y[i], other.turned[i]);
    }
  }

  /** The layout with across and along exchanged. */
  Layout transposed() {
    Layout other = copy();
    int[] across = other.x;
    other.x = other.y;
    other.y = across;
    return other;
  }

  /** The layout without parts that are not needed; lowers the numbers needed by what it holds. */
  Layout without(int[] needed) {
    Layout kept = new Layout();
    for (int i = 0; i < parts; i++) {
      if (needed[type[i]] > 0) {
        needed[type[i]]--;
        kept.add(type[i], x[i], y[i], turned[i]);
      }
    }
    return kept;
  }

  Layout copy() {
    Layout copy = new Layout();
    copy.type = Arrays.copyOf(type, Math.max(1, parts));
    copy.x = Arrays.copyOf(x, Math.max(1, parts));
    copy.y = Arrays.copyOf(y, Math.max(1, parts));
    copy.turned = Arrays.copyOf(turned, Math.max(1, parts));
    copy.parts = parts;
    return copy;
  }

  void takeFrom(Layout other) {
    type = Arrays.copyOf(other.type, other.type.length);
    x = Arrays.copyOf(other.x, other.x.length);
    y = Arrays.copyOf(other.y, other.y.length);
    turned = Arrays.copyOf(other.turned, other.turned.length);
    parts = other.parts;
  }

  /** Upper edge of the highest part. */
  int top(SheetModel model) {
    int top = 0;
    for (int i = 0; i < parts; i++) {
      top = Math.max(top, y[i] + (turned[i] ? model.width[type[i]] : model.height[type[i]]));
    }
    return top;
  }
}
