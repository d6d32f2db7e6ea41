package trammel.cutting.bars;

import java.util.Arrays;
import trammel.cutting.internal.Deadline;

/**
 * Quick plans: fill one bar after another, each time on the stock that promises the lowest total.
 *
 * <p>Two ways to fill a bar: largest piece first (first-fit decreasing), and the fullest bar that a
 * bounded search finds (minimum bin slack; Gupta and Ho 1999, from memory).
 */
final class GreedyFill {
  /** Steps of the search for the fullest bar; enough for bars of up to a dozen pieces. */
  private static final int SEARCH_STEPS = 3000;

  /** Steps between two looks at the deadline. */
  private static final int STEPS_BETWEEN_LOOKS = 256;

  private final BarModel model;
  private final Deadline deadline;

  /** The pieces on the bar being filled: kinds with counts, which may be 0, in rising order. */
  private int[] kindAt = new int[16];

  private int[] countAt = new int[16];
  private int depth;

  /** The fullest filling so far, likewise without zeros. */
  private int[] bestKind = new int[16];

  private int[] bestCount = new int[16];
  private int bestDepth;
  private long bestUsed;

  /**
   * @param deadline a plan that is not ready by then is given up
   */
  GreedyFill(BarModel model, Deadline deadline) {
    this.model = model;
    this.deadline = deadline;
  }

  /** Quick plans of a list that is short enough to wait for them. */
  GreedyFill(BarModel model) {
    this(model, Deadline.never());
  }

  /** The best of several quick plans for the given pieces, or null when the stock runs out. */
  CutList bestPlan(int[] demand, int[] available) {
    CutList bestPlan = null;
    double rate = openRate();
    for (int variant = 0; variant < 6; variant++) {
      boolean fullest = variant % 2 == 1;
      double weight = 1 + 0.15 * (variant / 2);
      CutList plan = plan(demand, available, rate * weight, fullest);
      if (plan != null && (bestPlan == null || plan.price < bestPlan.price)) {
        bestPlan = plan;
      }
      if (model.stocks() == 1 && variant == 1) {
        break;
      }
    }
    return bestPlan;
  }

  /** One quick plan, filling each bar as full as the bounded search can. */
  CutList fullestPlan(int[] demand, int[] available) {
    return plan(demand, available, openRate(), true);
  }

  /** Lowest price of one step of length on stock that can be had in any number. */
  private double openRate() {
    double rate = Double.POSITIVE_INFINITY;
    for (int s = 0; s < model.stocks(); s++) {
      if (model.available[s] == BarModel.UNLIMITED) {
        rate = Math.min(rate, (double) model.price[s] / model.capacity[s]);
      }
    }
    if (rate == Double.POSITIVE_INFINITY) {
      for (int s = 0; s < model.stocks(); s++) {
        rate = Math.min(rate, (double) model.price[s] / model.capacity[s]);
      }
    }
    return rate;
  }

  private CutList plan(int[] demand, int[] available, double rate, boolean fullest) {
    int[] rest = demand.clone();
    int[] left = available.clone();
    StillAsked asked = new StillAsked(model.size, rest);
    long restSize = model.totalSize(rest);
    CutList plan = new CutList();
    while (restSize > 0) {
      Pattern chosen = cheapestNext(rest, asked, left, restSize, rate, fullest);
      if (chosen == null) {
        return null;
      }
      int repeats = repeats(chosen, rest, left);
      plan.add(model, chosen, repeats);
      for (int i = 0; i < chosen.kinds.length; i++) {
        rest[chosen.kinds[i]] -= chosen.counts[i] * repeats;
      }
      restSize -= chosen.used(model) * repeats;
      if (left[chosen.stock] != BarModel.UNLIMITED) {
        left[chosen.stock] -= repeats;
      }
    }
    return plan;
  }

  private int repeats(Pattern pattern, int[] rest, int[] left) {
    // On open stock a filling stays as good while its pieces last; on limited stock look again.
    return left[pattern.stock] == BarModel.UNLIMITED ? Math.max(1, pattern.repeats(rest)) : 1;
  }

  private Pattern cheapestNext(
      int[] rest, StillAsked asked, int[] left, long restSize, double rate, boolean fullest) {
    double chosenScore = Double.POSITIVE_INFINITY;
    Pattern chosen = null;
    int before = -1;
    for (int s = 0; s < model.stocks(); s++) {
      if (left[s] == 0 || before >= 0 && isAlike(s, before)) {
        continue;
      }
      before = s;
      if (deadline.isPast()) {
        return null;
      }
      long used = fill(rest, asked, model.capacity[s], fullest);
      if (used == 0) {
        continue;
      }
      double waste = model.capacity[s] - used;
      double score = model.price[s] + rate * (restSize - used) + 1e-9 * waste;
      if (score < chosenScore) {
        chosenScore = score;
        chosen = filled(s);
      }
    }
    return chosen;
  }

  private boolean isAlike(int stock, int other) {
    return model.capacity[stock] == model.capacity[other]
        && model.price[stock] == model.price[other];
  }

  /** Fills a bar, see {@link #filled}; returns the length used. */
  long fill(int[] rest, long capacity, boolean fullest) {
    return fill(rest, new StillAsked(model.size, rest), capacity, fullest);
  }

  /**
   * Depth-first from the largest piece on; the first descent is first-fit decreasing.
   *
   * @param asked of what is left
   */
  private long fill(int[] rest, StillAsked asked, long capacity, boolean fullest) {
    bestUsed = 0;
    bestDepth = 0;
    depth = 0;
    int stepsLeft = fullest ? SEARCH_STEPS : 1;
    int from = 0;
    long room = capacity;
    while (true) {
      int kind = asked.fitting(from, room);
      while (kind < rest.length) {
        int most = (int) Math.min(rest[kind], room / model.size[kind]);
        push(kind, most);
        room -= most * model.size[kind];
        kind = asked.fitting(kind + 1, room);
      }
      deadline.spend(depth + 1L);
      if (capacity - room > bestUsed) {
        bestUsed = capacity - room;
        keep();
      }
      stepsLeft--;
      boolean late = stepsLeft % STEPS_BETWEEN_LOOKS == 0 && deadline.isPast();
      if (room == 0 || stepsLeft <= 0 || late) {
        return bestUsed;
      }
      while (depth > 0 && countAt[depth - 1] == 0) {
        depth--;
      }
      if (depth == 0) {
        return bestUsed;
      }
      countAt[depth - 1]--;
      room += model.size[kindAt[depth - 1]];
      from = kindAt[depth - 1] + 1;
    }
  }

  private void push(int kind, int count) {
    if (depth == kindAt.length) {
      kindAt = Arrays.copyOf(kindAt, 2 * depth);
      countAt = Arrays.copyOf(countAt, 2 * depth);
    }
    kindAt[depth] = kind;
    countAt[depth++] = count;
  }

  private void keep() {
    if (bestKind.length < depth) {
      bestKind = new int[kindAt.length];
      bestCount = new int[kindAt.length];
    }
    bestDepth = 0;
    for (int i = 0; i < depth; i++) {
      if (countAt[i] > 0) {
        bestKind[bestDepth] = kindAt[i];
        bestCount[bestDepth++] = countAt[i];
      }
    }
  }

  /** What the last bar was filled with, as a pattern of some stock. */
  Pattern filled(int stock) {
    return new Pattern(
        stock, Arrays.copyOf(bestKind, bestDepth), Arrays.copyOf(bestCount, bestDepth));
  }
}
