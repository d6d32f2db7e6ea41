package trammel.cutting.bars;

import java.util.Arrays;
import trammel.cutting.internal.Deadline;
import trammel.cutting.internal.StockSets;

/**
 * Plans of a few bars: every set of them that is cheaper than a plan and has the room is filled,
 * the cheapest first, one bar after another as full as it gets, from the shortest and from the
 * longest on.
 *
 * <p>A relaxation says little about so few bars, as most of it is fractions of a bar.
 */
final class FewBars implements StockSets.Taker {
  /** More bars than this are left to the relaxation. */
  private static final int MOST_BARS = 10;

  private static final int MOST_TOTALS = 200;
  private static final int MOST_SETS = 400;

  private final BarModel model;
  private final Deadline deadline;
  private final GreedyFill greedy;
  private final long needed;
  private int setsLeft = MOST_SETS;
  private CutList found;

  FewBars(BarModel model, Deadline deadline) {
    this.model = model;
    this.deadline = deadline;
    this.greedy = new GreedyFill(model, deadline);
    this.needed = model.totalSize();
  }

  /** Offers the cheapest plan that comes out, if one does. */
  void run(Incumbent incumbent) {
    if (model.stocks() == 1 || needed > MOST_BARS * longest()) {
      return;
    }
    StockSets sets = new StockSets(model.price, model.available);
    long total = incumbent.lowerBound();
    for (int i = 0; i < MOST_TOTALS && total < incumbent.price() && !deadline.isPast(); i++) {
      sets.at(total, this);
      if (found != null || setsLeft <= 0) {
        break;
      }
      total = incumbent.nextPrice(total);
    }
    incumbent.offer(found);
  }

  private long longest() {
    long longest = 0;
    for (long capacity : model.capacity) {
      longest = Math.max(longest, capacity);
    }
    return longest;
  }

  @Override
  public boolean take(int[] set) {
    setsLeft--;
    long[] bars = byLength(set);
    long room = 0;
    for (long bar : bars) {
      room += model.capacity[stock(bar)];
    }
    if (room >= needed) {
      found = filled(bars);
      if (found == null) {
        found = filled(backward(bars));
      }
    }
    return found == null && setsLeft > 0 && !deadline.isPast();
  }

  /** The bars of a set and all that cost nothing, the shortest first, see {@link #bar}. */
  private long[] byLength(int[] set) {
    long[] bars = new long[set.length + MOST_BARS * model.stocks()];
    int count = 0;
    for (int s : set) {
      bars[count++] = bar(s);
    }
    for (int s = 0; s < model.stocks(); s++) {
      for (int i = 0; model.price[s] == 0 && i < Math.min(model.available[s], MOST_BARS); i++) {
        bars[count++] = bar(s);
      }
    }
    Arrays.sort(bars, 0, count);
    return Arrays.copyOf(bars, count);
  }

  /** A bar as one number that sorts by length; what is left over the stocks is its stock. */
  private long bar(int stock) {
    return model.capacity[stock] * model.stocks() + stock;
  }

  private int stock(long bar) {
    return (int) (bar % model.stocks());
  }

  private static long[] backward(long[] bars) {
    long[] backward = new long[bars.length];
    for (int b = 0; b < bars.length; b++) {
      backward[b] = bars[bars.length - 1 - b];
    }
    return backward;
  }

  private CutList filled(long[] bars) {
    int[] rest = model.demand.clone();
    CutList plan = new CutList();
    for (long bar : bars) {
      int stock = stock(bar);
      if (greedy.fill(rest, model.capacity[stock], true) > 0) {
        Pattern filling = greedy.filled(stock);
        plan.add(model, filling, 1);
        for (int i = 0; i < filling.kinds.length; i++) {
          rest[filling.kinds[i]] -= filling.counts[i];
        }
      }
    }
    return model.totalSize(rest) == 0 ? plan : null;
  }
}
