package trammel.cutting.outlines;

import java.util.SplittableRandom;

/** The items of a nest by size. */
final class LargeParts {
  /** The part of all items that counts as large. */
  private static final double LARGE = 0.6;

  private static final int ATTEMPTS = 20;

  /** Area of all items together, mm². */
  final double areaMm2;

  private final int[] largest;

  LargeParts(Nest nest) {
    int n = nest.items();
    largest = new int[n];
    double area = 0;
    for (int i = 0; i < n; i++) {
      area += nest.shape(i).form.part.areaMm2();
      int at = i;
      while (at > 0 && size(nest, largest[at - 1]) < size(nest, i)) {
        largest[at] = largest[at - 1];
        at--;
      }
      largest[at] = i;
    }
    areaMm2 = area;
  }

  private static double size(Nest nest, int item) {
    OutlineShape shape = nest.shapes[item][0];
    return shape.form.part.areaMm2() * Math.hypot(shape.width(), shape.height());
  }

  /** Changes the places of two large parts that differ. */
  void swapTwo(Nest nest, SplittableRandom random) {
    int among = Math.max(1, (int) Math.ceil(largest.length * LARGE));
    int a = largest[random.nextInt(among)];
    int b = a;
    for (int i = 0; i < ATTEMPTS && nest.shapes[b] == nest.shapes[a]; i++) {
      b = largest[random.nextInt(among)];
    }
    double byX = nest.middleX(b) - nest.middleX(a);
    double byY = nest.middleY(b) - nest.middleY(a);
    nest.put(a, nest.way[a], nest.sheet[a], nest.x[a] + byX, nest.y[a] + byY);
    nest.put(b, nest.way[b], nest.sheet[b], nest.x[b] - byX, nest.y[b] - byY);
    nest.clamp(a);
    nest.clamp(b);
  }
}
