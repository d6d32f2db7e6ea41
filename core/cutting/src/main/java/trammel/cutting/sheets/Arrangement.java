package trammel.cutting.sheets;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Random;

/** What a search varies: the order in which parts are tried, and small choices for each. */
final class Arrangement {
  final int[] order;

  /** Per type: which of two equally good ways round is tried first. */
  final boolean[] turnFirst;

  /** Per type: which way the sheet is split beside it. */
  final boolean[] splitUp;

  private Arrangement(int[] order, boolean[] turnFirst, boolean[] splitUp) {
    this.order = order;
    this.turnFirst = turnFirst;
    this.splitUp = splitUp;
  }

  /** Largest first, by one of several measures of size. */
  static Arrangement sorted(SheetModel model, int measure) {
    int n = model.types();
    long[] sizes = new long[n];
    for (int i = 0; i < n; i++) {
      sizes[i] = size(model, i, measure);
    }
    int[] plain = largestFirst(sizes);
    return new Arrangement(plain, new boolean[n], new boolean[n]);
  }

  /** Insertion sort, stable: lists are short, and the first lambda of a run costs time. */
  private static int[] largestFirst(long[] sizes) {
    int[] order = new int[sizes.length];
    for (int i = 0; i < order.length; i++) {
      int at = i;
      while (at > 0 && sizes[order[at - 1]] < sizes[i]) {
        order[at] = order[at - 1];
        at--;
      }
      order[at] = i;
    }
    return order;
  }

  /** Parts of most worth for their area first, with some chance in it. */
  static Arrangement byWorth(SheetModel model, double[] worth, Random random) {
    int n = model.types();
    double[] key = new double[n];
    Integer[] order = new Integer[n];
    double power = random.nextDouble();
    for (int t = 0; t < n; t++) {
      double chance = 0.6 + 0.8 * random.nextDouble();
      key[t] = Math.max(0, worth[t]) / Math.pow(model.area(t), power) * chance;
      order[t] = t;
    }
    Arrays.sort(
        order,
        new Comparator<Integer>() {
          @Override
          public int compare(Integer a, Integer b) {
            return Double.compare(key[b], key[a]);
          }
        });
    Arrangement arrangement = new Arrangement(new int[n], new boolean[n], new boolean[n]);
    for (int i = 0; i < n; i++) {
      arrangement.order[i] = order[i];
      arrangement.turnFirst[i] = random.nextBoolean();
      arrangement.splitUp[i] = random.nextBoolean();
    }
    return arrangement;
  }

  /** Number of measures of size. */
  static final int MEASURES = 5;

  private static long size(SheetModel model, int type, int measure) {
    long w = model.width[type];
    long h = model.height[type];
    return switch (measure) {
      case 0 -> w * h;
      case 1 -> w;
      case 2 -> h;
      case 3 -> Math.max(w, h);
      default -> w + h;
    };
  }

  Arrangement copy() {
    return new Arrangement(order.clone(), turnFirst.clone(), splitUp.clone());
  }

  void takeFrom(Arrangement other) {
    System.arraycopy(other.order, 0, order, 0, order.length);
    System.arraycopy(other.turnFirst, 0, turnFirst, 0, order.length);
    System.arraycopy(other.splitUp, 0, splitUp, 0, order.length);
  }

  /** One small random change. */
  void change(Random random, boolean withSplits) {
    int n = order.length;
    int what = random.nextInt(withSplits ? 4 : 3);
    int at = random.nextInt(n);
    switch (what) {
      case 0 -> {
        int other = random.nextInt(n);
        int held = order[at];
        order[at] = order[other];
        order[other] = held;
      }
      case 1 -> move(at, random.nextInt(n));
      case 2 -> turnFirst[at] = !turnFirst[at];
      default -> splitUp[at] = !splitUp[at];
    }
  }

  private void move(int from, int to) {
    int held = order[from];
    if (from < to) {
      System.arraycopy(order, from + 1, order, from, to - from);
    } else {
      System.arraycopy(order, to, order, to + 1, from - to);
    }
    order[to] = held;
  }

  void shuffle(Random random) {
    for (int i = order.length - 1; i > 0; i--) {
      int j = random.nextInt(i + 1);
      int held = order[i];
      order[i] = order[j];
      order[j] = held;
    }
  }
}
