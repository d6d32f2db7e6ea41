package trammel.cutting.bars;

import java.util.ArrayList;
import java.util.List;
import trammel.cutting.internal.Deadline;

/**
 * Gathers what is left over into one long piece, at no change of price.
 *
 * <p>Each bar in turn gives its pieces to fill up the others; the bar with the longest rest wins.
 * Bars from the rack are changed for the shortest that will do.
 */
final class OffcutKeeper {
  /** Plans with more bars only have their emptiest bars worked on. */
  private static final int MOST_TRIED = 24;

  private static final int MOST_BARS = 120;

  private final BarModel model;
  private final Deadline deadline;
  private final GreedyFill fill;

  /**
   * @param deadline what is gathered by then is handed over
   */
  OffcutKeeper(BarModel model, Deadline deadline) {
    this.model = model;
    this.deadline = deadline;
    this.fill = new GreedyFill(model, deadline);
  }

  CutList gathered(CutList plan) {
    List<Pattern> bars = new ArrayList<>();
    for (int i = 0; i < plan.patterns.size(); i++) {
      for (int j = 0; j < plan.times.get(i); j++) {
        bars.add(plan.patterns.get(i));
      }
    }
    if (bars.size() <= MOST_BARS) {
      bars = onShortestStock(bars);
      bars = bestEmptied(bars);
      bars = onShortestStock(bars);
    }
    CutList list = new CutList();
    for (Pattern bar : bars) {
      list.add(model, bar, 1);
    }
    return list;
  }

  private List<Pattern> bestEmptied(List<Pattern> bars) {
    List<Pattern> best = bars;
    long bestRest = longestRest(bars);
    long[] rests = new long[bars.size()];
    for (int b = 0; b < rests.length; b++) {
      rests[b] = rest(bars.get(b));
    }
    for (int tried = 0; tried < Math.min(MOST_TRIED, rests.length) && !deadline.isPast(); tried++) {
      int emptiest = 0;
      for (int b = 1; b < rests.length; b++) {
        emptiest = rests[b] > rests[emptiest] ? b : emptiest;
      }
      rests[emptiest] = -1;
      List<Pattern> emptied = emptied(bars, emptiest);
      long rest = longestRest(emptied);
      if (emptied.size() < best.size() || rest > bestRest) {
        best = emptied;
        bestRest = rest;
      }
    }
    return best;
  }

  /** The bars after every other one has taken what it can from the given one. */
  private List<Pattern> emptied(List<Pattern> bars, int giver) {
    List<Pattern> result = new ArrayList<>(bars);
    boolean changed = true;
    while (changed && result.get(giver).kinds.length > 0 && !deadline.isPast()) {
      changed = false;
      for (int taker = 0; taker < result.size(); taker++) {
        changed |= taker != giver && give(result, giver, taker);
      }
    }
    List<Pattern> used = new ArrayList<>();
    for (Pattern bar : result) {
      if (bar.kinds.length > 0) {
        used.add(bar);
      }
    }
    return used;
  }

  private boolean give(List<Pattern> bars, int giver, int taker) {
    Pattern from = bars.get(giver);
    Pattern to = bars.get(taker);
    if (rest(to) == 0) {
      return false;
    }
    int[] pool = new int[model.kinds()];
    addCounts(pool, from);
    addCounts(pool, to);
    long used = fill.fill(pool, model.capacity[to.stock], true);
    if (used <= to.used(model)) {
      return false;
    }
    Pattern taken = fill.filled(to.stock);
    for (int i = 0; i < taken.kinds.length; i++) {
      pool[taken.kinds[i]] -= taken.counts[i];
    }
    bars.set(taker, taken);
    bars.set(giver, Pattern.of(from.stock, pool));
    return true;
  }

  private static void addCounts(int[] pool, Pattern pattern) {
    for (int i = 0; i < pattern.kinds.length; i++) {
      pool[pattern.kinds[i]] += pattern.counts[i];
    }
  }

  private long rest(Pattern bar) {
    return model.capacity[bar.stock] - bar.used(model);
  }

  private long longestRest(List<Pattern> bars) {
    long longest = 0;
    for (Pattern bar : bars) {
      longest = Math.max(longest, rest(bar));
    }
    return longest;
  }

  /** Changes bars for shorter ones of the same price while there are any left. */
  private List<Pattern> onShortestStock(List<Pattern> bars) {
    int[] left = model.available.clone();
    for (Pattern bar : bars) {
      if (left[bar.stock] != BarModel.UNLIMITED) {
        left[bar.stock]--;
      }
    }
    List<Pattern> result = new ArrayList<>(bars);
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int b = 0; b < result.size(); b++) {
        Pattern bar = result.get(b);
        int shorter = shortest(bar, left);
        if (shorter != bar.stock) {
          left[shorter] -= left[shorter] == BarModel.UNLIMITED ? 0 : 1;
          left[bar.stock] += left[bar.stock] == BarModel.UNLIMITED ? 0 : 1;
          result.set(b, bar.onStock(shorter));
          changed = true;
        }
      }
    }
    return result;
  }

  private int shortest(Pattern bar, int[] left) {
    int shortest = bar.stock;
    long used = bar.used(model);
    for (int s = 0; s < model.stocks(); s++) {
      if (left[s] > 0
          && model.price[s] == model.price[bar.stock]
          && model.stock(s).remnant() == model.stock(bar.stock).remnant()
          && model.capacity[s] >= used
          && model.capacity[s] < model.capacity[shortest]) {
        shortest = s;
      }
    }
    return shortest;
  }
}
