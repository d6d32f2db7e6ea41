package trammel.cutting.bars;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trammel.cutting.internal.Deadline;

/**
 * Lists every maximal pattern that a plan within a price can contain: no pattern whose reduced cost
 * alone is above the budget is in such a plan.
 */
final class PatternEnumeration {
  private static final int STEPS_BETWEEN_CLOCK = 1 << 14;

  private final BarModel model;
  private final PieceWorth pieceWorth;
  private final int most;
  private final Deadline deadline;
  private final List<Pattern> found = new ArrayList<>();
  private final int[] kind;
  private final long[] worth;
  private final long[] size;
  private final int[] demand;
  private final double[] density;
  private final int[] count;
  private final long[] smallestBehind;
  private long steps;
  private boolean gaveUp;

  PatternEnumeration(BarModel model, PieceWorth pieceWorth, int most, Deadline deadline) {
    this.model = model;
    this.pieceWorth = pieceWorth;
    this.most = most;
    this.deadline = deadline;
    int n = model.kinds();
    Integer[] order = new Integer[n];
    for (int i = 0; i < n; i++) {
      order[i] = i;
    }
    Arrays.sort(
        order,
        (a, b) ->
            Double.compare(
                (double) pieceWorth.of(b) / model.size[b],
                (double) pieceWorth.of(a) / model.size[a]));
    kind = new int[n];
    worth = new long[n];
    size = new long[n];
    demand = new int[n];
    density = new double[n + 1];
    count = new int[n];
    smallestBehind = new long[n + 1];
    for (int i = 0; i < n; i++) {
      kind[i] = order[i];
      worth[i] = pieceWorth.of(kind[i]);
      size[i] = model.size[kind[i]];
      demand[i] = model.demand[kind[i]];
      density[i] = (double) worth[i] / size[i];
    }
    smallestBehind[n] = Long.MAX_VALUE;
    for (int i = n - 1; i >= 0; i--) {
      smallestBehind[i] = Math.min(smallestBehind[i + 1], size[i]);
    }
  }

  /**
   * @param price of the dearest plan of interest, price steps
   * @return false when there are too many patterns or time ran out
   */
  boolean within(long price) {
    double budget = pieceWorth.budget(price);
    for (int s = 0; s < model.stocks() && !gaveUp; s++) {
      search(s, 0, model.capacity[s], Long.MAX_VALUE, pieceWorth.barCost(s) - budget);
    }
    return !gaveUp;
  }

  /** The patterns found, all there are unless the listing was given up. */
  List<Pattern> found() {
    return found;
  }

  /**
   * @param smallestRefused least size of a piece that could still have been added
   * @param lacking worth still needed to come within the budget
   */
  private void search(int stock, int at, long room, long smallestRefused, double lacking) {
    if (gaveUp || tooLong() || lacking > potential(at, room)) {
      return;
    }
    if (at == kind.length || room < smallestBehind[at]) {
      if (room < smallestRefused && room < model.capacity[stock]) {
        keep(stock, at);
      }
      return;
    }
    int fits = (int) Math.min(demand[at], room / size[at]);
    for (int c = fits; c >= 0; c--) {
      count[at] = c;
      long refused = c < demand[at] ? Math.min(smallestRefused, size[at]) : smallestRefused;
      search(stock, at + 1, room - c * size[at], refused, lacking - (double) worth[at] * c);
    }
    count[at] = 0;
  }

  private boolean tooLong() {
    if (++steps % STEPS_BETWEEN_CLOCK == 0 && deadline.isPast()) {
      gaveUp = true;
    }
    return gaveUp;
  }

  private double potential(int at, long room) {
    double total = 0;
    long rest = room;
    for (int i = at; i < kind.length; i++) {
      long whole = demand[i] * size[i];
      if (whole >= rest) {
        return total + rest * density[i];
      }
      rest -= whole;
      total += (double) worth[i] * demand[i];
    }
    return total;
  }

  private void keep(int stock, int depth) {
    if (found.size() >= most) {
      gaveUp = true;
      return;
    }
    int[] full = new int[kind.length];
    for (int i = 0; i < depth; i++) {
      full[kind[i]] = count[i];
    }
    found.add(Pattern.of(stock, full));
  }
}
