package trammel.cutting.bars;

import java.util.Arrays;

/**
 * Quick plans: fill one bar after another, each time on the stock that promises the lowest total.
 *
 * <p>Two ways to fill a bar: largest piece first (first-fit decreasing), and the fullest bar that a
 * bounded search finds (minimum bin slack; Gupta and Ho 1999, from memory).
 */
final class GreedyFill {
  /** Steps of the search for the fullest bar; enough for bars of up to a dozen pieces. */
  private static final int SEARCH_STEPS = 3000;

  private final BarModel model;
  private final int[] trial;
  private final int[] best;
  private long bestUsed;
  private int stepsLeft;

  GreedyFill(BarModel model) {
    this.model = model;
    this.trial = new int[model.kinds()];
    this.best = new int[model.kinds()];
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
    long restSize = model.totalSize(rest);
    CutList plan = new CutList();
    while (restSize > 0) {
      Pattern chosen = cheapestNext(rest, left, restSize, rate, fullest);
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
      int[] rest, int[] left, long restSize, double rate, boolean fullest) {
    int chosenStock = -1;
    double chosenScore = Double.POSITIVE_INFINITY;
    int[] chosenCounts = null;
    for (int s = 0; s < model.stocks(); s++) {
      if (left[s] == 0) {
        continue;
      }
      long used = fill(rest, model.capacity[s], fullest);
      if (used == 0) {
        continue;
      }
      double waste = model.capacity[s] - used;
      double score = model.price[s] + rate * (restSize - used) + 1e-9 * waste;
      if (score < chosenScore) {
        chosenScore = score;
        chosenStock = s;
        chosenCounts = best.clone();
      }
    }
    return chosenStock < 0 ? null : Pattern.of(chosenStock, chosenCounts);
  }

  /** Fills a bar into {@link #best}; returns the length used. */
  long fill(int[] rest, long capacity, boolean fullest) {
    bestUsed = 0;
    Arrays.fill(best, 0);
    Arrays.fill(trial, 0);
    stepsLeft = fullest ? SEARCH_STEPS : 1;
    search(rest, 0, capacity, capacity);
    return bestUsed;
  }

  int[] filling() {
    return best;
  }

  /** Depth-first from the largest piece on; the first descent is first-fit decreasing. */
  private boolean search(int[] rest, int from, long room, long capacity) {
    int kind = from;
    while (kind < rest.length && (rest[kind] == 0 || model.size[kind] > room)) {
      kind++;
    }
    if (kind == rest.length) {
      stepsLeft--;
      if (capacity - room > bestUsed) {
        bestUsed = capacity - room;
        System.arraycopy(trial, 0, best, 0, trial.length);
      }
      return room == 0 || stepsLeft <= 0;
    }
    int most = (int) Math.min(rest[kind], room / model.size[kind]);
    for (int count = most; count >= 0; count--) {
      trial[kind] = count;
      if (search(rest, kind + 1, room - count * model.size[kind], capacity)) {
        trial[kind] = 0;
        return true;
      }
    }
    trial[kind] = 0;
    return false;
  }
}
