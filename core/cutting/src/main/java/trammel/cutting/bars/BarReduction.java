package trammel.cutting.bars;

/**
 * Bars that some optimal plan contains for certain, where there is one stock length, open in
 * number.
 *
 * <p>A piece whose best possible company is a single other piece takes it: two pieces that fill a
 * bar exactly, or a large piece with room for one more at most. Any plan can be changed to contain
 * such a bar without more bars (dominance; Martello and Toth 1990, ch. 8, from memory).
 */
final class BarReduction {
  private final BarModel model;
  private final int[] demand;
  private final StillAsked asked;
  private final CutList fixed = new CutList();

  /** No kind behind this one is still asked for. */
  private int lastAsked;

  private BarReduction(BarModel model) {
    this.model = model;
    this.demand = model.demand.clone();
    this.asked = new StillAsked(model.size, demand);
    this.lastAsked = model.kinds() - 1;
  }

  static BarReduction of(BarModel model) {
    BarReduction reduction = new BarReduction(model);
    if (model.stocks() == 1 && model.available[0] == BarModel.UNLIMITED) {
      reduction.takeExactPairs();
      reduction.takeLargest();
    }
    return reduction;
  }

  /** The bars that are settled, in kinds of the whole model. */
  CutList fixed() {
    return fixed;
  }

  /** What is still to be cut, by kinds of the whole model. */
  int[] demand() {
    return demand;
  }

  private void takeExactPairs() {
    int small = model.kinds() - 1;
    for (int large = 0; large <= small; large++) {
      long room = model.capacity[0] - model.size[large];
      while (small > large && model.size[small] < room) {
        small--;
      }
      if (small >= large && model.size[small] == room) {
        pair(large, small);
      }
    }
  }

  private void takeLargest() {
    int large = 0;
    while (large < model.kinds()) {
      if (demand[large] == 0) {
        large++;
        continue;
      }
      long room = model.capacity[0] - model.size[large];
      if (smallestOther(large) > room) {
        add(new Pattern(0, new int[] {large}, new int[] {1}), demand[large]);
      } else if (twoSmallestOthers(large) > room) {
        pair(large, largestFitting(large, room));
      } else {
        return;
      }
    }
  }

  private long smallestOther(int large) {
    while (lastAsked >= 0 && demand[lastAsked] == 0) {
      lastAsked--;
    }
    for (int k = lastAsked; k >= large; k--) {
      if (demand[k] - (k == large ? 1 : 0) > 0) {
        return model.size[k];
      }
    }
    return Long.MAX_VALUE;
  }

  private long twoSmallestOthers(int large) {
    long sum = 0;
    int missing = 2;
    for (int k = lastAsked; k >= large; k--) {
      int take = Math.min(missing, demand[k] - (k == large ? 1 : 0));
      sum += take * model.size[k];
      missing -= take;
      if (missing == 0) {
        return sum;
      }
    }
    return Long.MAX_VALUE;
  }

  private int largestFitting(int large, long room) {
    int kind = asked.fitting(large, room);
    if (kind == large && demand[large] == 1) {
      kind = asked.fitting(large + 1, room);
    }
    if (kind < model.kinds()) {
      return kind;
    }
    throw new IllegalStateException("no piece fits beside " + large);
  }

  private void pair(int large, int other) {
    if (large == other) {
      if (demand[large] >= 2) {
        add(new Pattern(0, new int[] {large}, new int[] {2}), demand[large] / 2);
      }
    } else if (demand[large] > 0 && demand[other] > 0) {
      int times = Math.min(demand[large], demand[other]);
      add(new Pattern(0, new int[] {large, other}, new int[] {1, 1}), times);
    }
  }

  private void add(Pattern pattern, int times) {
    fixed.add(model, pattern, times);
    for (int i = 0; i < pattern.kinds.length; i++) {
      demand[pattern.kinds[i]] -= pattern.counts[i] * times;
    }
  }
}
