package trammel.cutting.bars;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.cutting.internal.Deadline;

/** Picks, from ready-made fillings of bars or sheets, the cheapest that together hold all parts. */
public final class FillingCover {
  private final int[] demand;
  private final long[] price;
  private final int[] available;
  private final List<Pattern> fillings = new ArrayList<>();
  private final Map<Pattern, Integer> known = new HashMap<>();

  /**
   * @param demand parts of each kind that are needed
   * @param price price of each stock, whole price steps
   * @param available how many there are of each; {@code Integer.MAX_VALUE} for any number
   */
  public FillingCover(int[] demand, long[] price, int[] available) {
    this.demand = demand.clone();
    this.price = price.clone();
    this.available = available.clone();
  }

  /**
   * Adds a filling.
   *
   * @param counts parts of each kind that it holds
   * @return its number, or −1 when it is known already
   */
  public int add(int stock, int[] counts) {
    Pattern pattern = Pattern.of(stock, counts);
    if (known.putIfAbsent(pattern, fillings.size()) != null) {
      return -1;
    }
    fillings.add(pattern);
    return fillings.size() - 1;
  }

  /** The stock of a filling. */
  public int stock(int number) {
    return fillings.get(number).stock;
  }

  /** How many different fillings there are. */
  public int size() {
    return fillings.size();
  }

  /**
   * Worth of one part of each kind, in price steps: a filling that costs less than its parts are
   * worth would make the plan cheaper (column generation).
   *
   * @param highest price of a known plan
   */
  public double[] worth(long highest, Deadline deadline) {
    BarModel model = BarModel.ofFillings(demand, price, available);
    Incumbent incumbent = new Incumbent(model, null, highest);
    return search(model, incumbent, deadline).worth();
  }

  /**
   * What a search found.
   *
   * @param fillings numbers of fillings, each as often as it is used; together they may hold more
   *     than is needed; empty when no cheaper choice was found
   * @param isComplete true when no other choice of the fillings given is cheaper
   */
  public record Choice(Optional<int[]> fillings, boolean isComplete) {}

  /**
   * The cheapest choice that costs less than a given price.
   *
   * @return numbers of fillings, as in {@link Choice#fillings()}
   */
  public Optional<int[]> cheaperThan(long highest, Deadline deadline) {
    return choose(highest, deadline).fillings();
  }

  /** The cheapest choice that costs less than a given price, and whether all were looked at. */
  public Choice choose(long highest, Deadline deadline) {
    BarModel model = BarModel.ofFillings(demand, price, available);
    Incumbent incumbent = new Incumbent(model, null, highest - 1);
    boolean complete = search(model, incumbent, deadline).run();
    Optional<int[]> found =
        incumbent.exists() ? Optional.of(numbers(incumbent.best())) : Optional.empty();
    return new Choice(found, complete);
  }

  private PatternSearch search(BarModel model, Incumbent incumbent, Deadline deadline) {
    return new PatternSearch(model, fillings, incumbent, deadline, deadline.forSteps());
  }

  /** The search trims fillings to what is needed; any filling that holds as much will do. */
  private int[] numbers(CutList list) {
    int[] numbers = new int[list.patterns.size()];
    int n = 0;
    for (int i = 0; i < list.patterns.size(); i++) {
      for (int j = 0; j < list.times.get(i); j++) {
        if (n == numbers.length) {
          numbers = Arrays.copyOf(numbers, 2 * n + 1);
        }
        numbers[n++] = holding(list.patterns.get(i));
      }
    }
    return Arrays.copyOf(numbers, n);
  }

  private int holding(Pattern wanted) {
    Integer same = known.get(wanted);
    if (same != null) {
      return same;
    }
    for (int f = 0; f < fillings.size(); f++) {
      if (fillings.get(f).stock == wanted.stock && holds(fillings.get(f), wanted)) {
        return f;
      }
    }
    throw new IllegalStateException("no filling holds " + Arrays.toString(wanted.kinds));
  }

  private static boolean holds(Pattern filling, Pattern wanted) {
    for (int i = 0; i < wanted.kinds.length; i++) {
      int at = Arrays.binarySearch(filling.kinds, wanted.kinds[i]);
      if (at < 0 || filling.counts[at] < wanted.counts[i]) {
        return false;
      }
    }
    return true;
  }
}
