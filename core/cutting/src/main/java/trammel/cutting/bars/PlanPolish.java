package trammel.cutting.bars;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import trammel.cutting.internal.Deadline;

/**
 * Improves a large plan by taking a few bars out and cutting their pieces anew (large neighbourhood
 * search; Shaw 1998, from memory).
 */
final class PlanPolish {
  private static final int FEWEST_BARS = 8;
  private static final int MOST_BARS = 24;
  private static final double SECONDS_PER_TRY = 0.4;

  /** What it costs to look at a bar, draw for it and write it down again, in steps. */
  private static final long STEPS_PER_BAR = 100;

  private static final long SEED = 20_260_101L;

  /** Solves a small problem that has a plan already; returns the best plan it finds. */
  interface Improver {
    CutList improve(BarModel part, CutList known, Deadline deadline);
  }

  private final BarModel model;
  private final Improver improver;
  private final Random random = new Random(SEED);

  PlanPolish(BarModel model, Improver improver) {
    this.model = model;
    this.improver = improver;
  }

  /** Works on the incumbent until it is proven, good enough, or time is up. */
  void run(Incumbent incumbent, double goodEnough, Deadline deadline) {
    List<Pattern> bars = new ArrayList<>();
    CutList best = incumbent.best();
    for (int i = 0; i < best.patterns.size(); i++) {
      for (int j = 0; j < best.times.get(i); j++) {
        bars.add(best.patterns.get(i));
      }
    }
    while (!incumbent.isClosed() && incumbent.gap() > goodEnough && !deadline.isPast()) {
      deadline.spend(STEPS_PER_BAR * bars.size() + model.kinds());
      bars = reworked(bars, deadline);
      incumbent.offer(listOf(bars));
    }
  }

  private CutList listOf(List<Pattern> bars) {
    CutList list = new CutList();
    for (Pattern bar : bars) {
      list.add(model, bar, 1);
    }
    return list;
  }

  /** The bars with some of them cut anew; never dearer than before. */
  private List<Pattern> reworked(List<Pattern> bars, Deadline deadline) {
    boolean[] out = choose(bars);
    int[] demand = new int[model.kinds()];
    int[] available = model.available.clone();
    List<Pattern> kept = new ArrayList<>();
    CutList known = new CutList();
    for (int b = 0; b < bars.size(); b++) {
      Pattern bar = bars.get(b);
      if (out[b]) {
        known.add(model, bar, 1);
        for (int i = 0; i < bar.kinds.length; i++) {
          demand[bar.kinds[i]] += bar.counts[i];
        }
      } else {
        kept.add(bar);
        if (available[bar.stock] != BarModel.UNLIMITED) {
          available[bar.stock]--;
        }
      }
    }
    BarModel part = model.forDemand(demand, available);
    Deadline end = deadline.within(SECONDS_PER_TRY);
    CutList better =
        part.inKindsOf(model, improver.improve(part, part.fromKindsOf(model, known), end));
    for (int i = 0; i < better.patterns.size(); i++) {
      for (int j = 0; j < better.times.get(i); j++) {
        kept.add(better.patterns.get(i));
      }
    }
    return kept;
  }

  /** Mostly the bars with the dearest waste, some at random. */
  private boolean[] choose(List<Pattern> bars) {
    int count = Math.min(bars.size(), FEWEST_BARS + random.nextInt(MOST_BARS - FEWEST_BARS + 1));
    double[] keys = new double[bars.size()];
    for (int b = 0; b < keys.length; b++) {
      Pattern bar = bars.get(b);
      double waste = 1 - (double) bar.used(model) / model.capacity[bar.stock];
      double dear = waste * model.price[bar.stock] / Math.max(1, model.capacity[bar.stock]);
      keys[b] =
          -dear * model.capacity[bar.stock] * random.nextDouble() - 1e-3 * random.nextDouble();
    }
    double[] sorted = keys.clone();
    Arrays.sort(sorted);
    double limit = sorted[count - 1];
    boolean[] out = new boolean[keys.length];
    for (int b = 0; b < keys.length; b++) {
      out[b] = keys[b] <= limit;
    }
    return out;
  }
}
