package trammel.cutting.bars;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A plain plan of a very long list in hardly more time than it takes to read it: the largest piece
 * first, each on the first bar with room (first-fit decreasing), which a tree over the rooms of all
 * bars finds at once (Johnson 1974, from memory).
 */
final class FirstFit {
  private final BarModel model;
  private final int[] left;
  private final Integer[] byRate;
  private final List<Integer> stockOfBar = new ArrayList<>();
  private final List<int[]> piecesOfBar = new ArrayList<>();
  private int[] countOfBar = new int[64];
  private long[] tree = new long[128];
  private int leaves = 64;

  FirstFit(BarModel model) {
    this.model = model;
    this.left = model.available.clone();
    this.byRate = new Integer[model.stocks()];
    for (int s = 0; s < byRate.length; s++) {
      byRate[s] = s;
    }
    Arrays.sort(
        byRate,
        Comparator.comparingDouble((Integer s) -> (double) model.price[s] / model.capacity[s])
            .thenComparingLong(s -> -model.capacity[s]));
  }

  /** The plan, or null when the stock runs out on this way. */
  CutList plan() {
    Arrays.fill(tree, -1);
    for (int k = 0; k < model.kinds(); k++) {
      for (int i = 0; i < model.demand[k]; i++) {
        int bar = firstWithRoom(model.size[k]);
        if (bar < 0) {
          bar = open(model.size[k]);
        }
        if (bar < 0) {
          return null;
        }
        put(bar, k);
      }
    }
    CutList plan = new CutList();
    for (int b = 0; b < piecesOfBar.size(); b++) {
      plan.add(model, pattern(b), 1);
    }
    return plan;
  }

  private int firstWithRoom(long size) {
    if (tree[1] < size) {
      return -1;
    }
    int at = 1;
    while (at < leaves) {
      at = tree[2 * at] >= size ? 2 * at : 2 * at + 1;
    }
    return at - leaves;
  }

  /** Opens the bar with the lowest price for its length that takes the piece. */
  private int open(long size) {
    for (int s : byRate) {
      if (left[s] > 0 && model.capacity[s] >= size) {
        left[s] -= left[s] == BarModel.UNLIMITED ? 0 : 1;
        stockOfBar.add(s);
        piecesOfBar.add(new int[4]);
        int bar = piecesOfBar.size() - 1;
        if (bar == leaves) {
          grow();
        }
        setRoom(bar, model.capacity[s]);
        return bar;
      }
    }
    return -1;
  }

  private void grow() {
    long[] rooms = Arrays.copyOfRange(tree, leaves, 2 * leaves);
    leaves *= 2;
    tree = new long[2 * leaves];
    Arrays.fill(tree, -1);
    System.arraycopy(rooms, 0, tree, leaves, rooms.length);
    for (int at = leaves - 1; at >= 1; at--) {
      tree[at] = Math.max(tree[2 * at], tree[2 * at + 1]);
    }
    countOfBar = Arrays.copyOf(countOfBar, leaves);
  }

  private void setRoom(int bar, long room) {
    int at = bar + leaves;
    tree[at] = room;
    for (at /= 2; at >= 1; at /= 2) {
      tree[at] = Math.max(tree[2 * at], tree[2 * at + 1]);
    }
  }

  private void put(int bar, int kind) {
    int[] pieces = piecesOfBar.get(bar);
    if (countOfBar[bar] == pieces.length) {
      pieces = Arrays.copyOf(pieces, 2 * pieces.length);
      piecesOfBar.set(bar, pieces);
    }
    pieces[countOfBar[bar]++] = kind;
    setRoom(bar, tree[bar + leaves] - model.size[kind]);
  }

  private Pattern pattern(int bar) {
    int[] pieces = piecesOfBar.get(bar);
    int[] kinds = new int[countOfBar[bar]];
    int[] counts = new int[kinds.length];
    int distinct = 0;
    for (int i = 0; i < countOfBar[bar]; i++) {
      if (distinct == 0 || kinds[distinct - 1] != pieces[i]) {
        kinds[distinct++] = pieces[i];
      }
      counts[distinct - 1]++;
    }
    return new Pattern(
        stockOfBar.get(bar), Arrays.copyOf(kinds, distinct), Arrays.copyOf(counts, distinct));
  }
}
