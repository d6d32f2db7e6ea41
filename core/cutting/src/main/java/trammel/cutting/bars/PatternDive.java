package trammel.cutting.bars;

import java.util.Arrays;
import trammel.cutting.internal.Deadline;

/**
 * Finds plans by rounding the relaxation step by step and solving it again for what is left.
 *
 * <p>A limited number of times it takes the second choice instead of the first (limited discrepancy
 * search; Harvey and Ginsberg 1995, from memory).
 */
final class PatternDive {
  private static final double ALMOST_WHOLE = 1e-3;
  private static final double TAKE_AS_WHOLE = 0.95;

  /** Rests that need at most this many patterns are always tried greedily, others now and then. */
  private static final int GREEDY_UP_TO = 25;

  private static final int GREEDY_EVERY = 6;
  private static final double VALUE_TOLERANCE = 1e-4;

  private final BarModel model;
  private final PatternGeneration generation;
  private final Incumbent incumbent;
  private final GreedyFill greedy;
  private final Deadline deadline;
  private int variant;
  private int steps;

  PatternDive(
      BarModel model, PatternGeneration generation, Incumbent incumbent, Deadline deadline) {
    this.model = model;
    this.generation = generation;
    this.incumbent = incumbent;
    this.greedy = new GreedyFill(model, deadline);
    this.deadline = deadline;
  }

  /**
   * @param root the relaxation of the whole problem, or null to solve it again
   * @param discrepancies how often a second choice may be taken on one way down
   * @param newVariant different numbers lead to different plans
   */
  void run(Relaxation root, int discrepancies, int newVariant) {
    variant = newVariant;
    descend(model.demand.clone(), model.available.clone(), new CutList(), root, discrepancies);
  }

  private void descend(
      int[] demand, int[] available, CutList fixed, Relaxation known, int discrepancies) {
    Relaxation relaxation = known;
    while (!incumbent.isClosed() && !deadline.isPast()) {
      if (relaxation == null) {
        if (nothingLeft(demand)) {
          incumbent.offer(fixed);
          return;
        }
        relaxation = generation.roughly(demand, available, variant);
      }
      if (!relaxation.coversAll
          || fixed.price + relaxation.value > incumbent.target() + VALUE_TOLERANCE + SHAKEN) {
        return;
      }
      if (relaxation.patterns.size() <= GREEDY_UP_TO || ++steps % GREEDY_EVERY == 0) {
        offerGreedy(demand, available, fixed);
      }
      if (!takeWhole(relaxation, demand, available, fixed)) {
        int[] order = byFraction(relaxation);
        int choices = Math.min(discrepancies, order.length - 1);
        for (int other = choices; other >= 1; other--) {
          // Later choices first would waste the relaxation at hand; recurse on copies.
          branch(relaxation, order[other], demand, available, fixed, discrepancies - other);
        }
        if (order.length == 0) {
          return;
        }
        take(relaxation.patterns.get(order[0]), 1, demand, available, fixed);
      }
      relaxation = null;
    }
  }

  /** The relaxation is solved for very slightly raised demands; its value may be this much high. */
  private static final double SHAKEN = 1e-2;

  private void branch(
      Relaxation relaxation,
      int choice,
      int[] demand,
      int[] available,
      CutList fixed,
      int discrepancies) {
    int[] branchDemand = demand.clone();
    int[] branchAvailable = available.clone();
    CutList branchFixed = fixed.copy();
    take(relaxation.patterns.get(choice), 1, branchDemand, branchAvailable, branchFixed);
    descend(branchDemand, branchAvailable, branchFixed, null, discrepancies);
  }

  private static boolean nothingLeft(int[] demand) {
    for (int d : demand) {
      if (d > 0) {
        return false;
      }
    }
    return true;
  }

  private void offerGreedy(int[] demand, int[] available, CutList fixed) {
    CutList rest = greedy.bestPlan(demand, available);
    if (rest != null && fixed.price + rest.price < incumbent.price()) {
      CutList whole = fixed.copy();
      whole.addAll(model, rest);
      incumbent.offer(whole);
    }
  }

  /** Fixes all whole parts of the levels, and levels that are almost whole. */
  private boolean takeWhole(Relaxation relaxation, int[] demand, int[] available, CutList fixed) {
    boolean any = false;
    for (int i = 0; i < relaxation.patterns.size(); i++) {
      double levelNow = relaxation.levels[i];
      int whole = (int) Math.floor(levelNow + ALMOST_WHOLE);
      if (whole == 0 && levelNow >= TAKE_AS_WHOLE) {
        whole = 1;
      }
      if (whole > 0) {
        any |= take(relaxation.patterns.get(i), whole, demand, available, fixed);
      }
    }
    return any;
  }

  private int[] byFraction(Relaxation relaxation) {
    int n = relaxation.patterns.size();
    long[] keys = new long[n];
    for (int i = 0; i < n; i++) {
      Pattern pattern = relaxation.patterns.get(i);
      double fullness = (double) pattern.used(model) / model.capacity[pattern.stock];
      double score = relaxation.levels[i] + 0.2 * fullness;
      keys[i] = ((long) (score * 1e6) << 24) | (0xFFFFFF - i);
    }
    Arrays.sort(keys);
    int[] order = new int[n];
    for (int i = 0; i < n; i++) {
      order[i] = (int) (0xFFFFFF - (keys[n - 1 - i] & 0xFFFFFF));
    }
    return order;
  }

  private boolean take(Pattern pattern, int times, int[] demand, int[] available, CutList fixed) {
    int stock = pattern.stock;
    int count = Math.min(times, available[stock]);
    int whole = Math.min(count, pattern.repeats(demand));
    if (whole > 0) {
      use(pattern, whole, demand, available, fixed);
      return true;
    }
    Pattern trimmed = pattern.trimmedTo(demand);
    if (count > 0 && trimmed.kinds.length == pattern.kinds.length) {
      use(trimmed, 1, demand, available, fixed);
      return true;
    }
    return false;
  }

  private void use(Pattern pattern, int times, int[] demand, int[] available, CutList fixed) {
    fixed.add(model, pattern, times);
    for (int i = 0; i < pattern.kinds.length; i++) {
      demand[pattern.kinds[i]] -= pattern.counts[i] * times;
    }
    if (available[pattern.stock] != BarModel.UNLIMITED) {
      available[pattern.stock] -= times;
    }
  }
}
