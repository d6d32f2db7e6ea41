package trammel.cutting.bars;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trammel.cutting.internal.Deadline;

/**
 * Solves the pattern relaxation by column generation: Gilmore and Gomory, Oper. Res. 9 (1961) and
 * 11 (1963), from memory.
 *
 * <p>Piece values are taken as whole numbers before a knapsack prices the patterns, so every bound
 * is a true Lagrangian bound, free of rounding. Patterns never hold more of a kind than is asked
 * for, which makes the bound tighter than the unbounded one.
 */
final class PatternGeneration {
  /** Price of leaving a piece out, as a multiple of the dearest bar. */
  private static final double SHORTAGE_FACTOR = 64;

  private static final double ENTERING_TOLERANCE = 1e-9;

  /** Tiny different amounts added to the demands against stalling; bounds do not see them. */
  private static final double SHAKE = 1e-6;

  private static final double TURN_STEP = 0.3819660112501051 + 0.1;

  private static final double GOLDEN = 0.6180339887498949;

  private final BarModel model;
  private final PatternPool pool;
  private final PieceKnapsack knapsack;
  private final Deadline deadline;
  private final long scale;
  private final double shortagePrice;

  PatternGeneration(BarModel model, PatternPool pool, Deadline deadline, long highestPrice) {
    this.model = model;
    this.pool = pool;
    this.deadline = deadline;
    this.knapsack = new PieceKnapsack(model.size, deadline);
    long dearest = 1;
    for (long price : model.price) {
      dearest = Math.max(dearest, price);
    }
    this.shortagePrice = SHORTAGE_FACTOR * dearest;
    this.scale =
        Math.max(1, Math.min((1L << 50) / dearest, (1L << 58) / Math.max(1, highestPrice)));
  }

  /** When the relaxation is good enough. */
  interface Sufficient {
    /**
     * @param bound proven so far, price steps
     * @param value of the relaxation over the patterns known so far
     */
    boolean test(double bound, double value);
  }

  /** Goes on until no pattern improves the relaxation. */
  static final Sufficient NEVER =
      new Sufficient() {
        @Override
        public boolean test(double bound, double value) {
          return false;
        }
      };

  /**
   * @param sufficient asked after every round of pricing
   */
  Relaxation solve(int[] demand, int[] available, Sufficient sufficient) {
    return run(demand, available, GOLDEN).solve(sufficient, true);
  }

  /**
   * The relaxation over patterns that a short search finds; its bound may be weak.
   *
   * @param variant different numbers lead to different solutions where there are several
   */
  Relaxation roughly(int[] demand, int[] available, int variant) {
    double turn = GOLDEN + variant * TURN_STEP;
    return run(demand, available, turn).solve(NEVER, false);
  }

  private Run run(int[] demand, int[] available, double turn) {
    return new Run(demand, available, asDoubles(demand), asDoubles(available), turn);
  }

  /**
   * The worths with the highest bound and reduced cost together, over the mean of some patterns:
   * those of the relaxation for what is left once that mean is taken.
   *
   * @param patterns at least one, none with more of a kind than is asked for
   */
  PieceWorth against(List<Pattern> patterns) {
    double[] asked = asDoubles(model.demand);
    double[] onHand = asDoubles(model.available);
    double share = 1.0 / patterns.size();
    for (Pattern pattern : patterns) {
      onHand[pattern.stock] -= share;
      for (int i = 0; i < pattern.kinds.length; i++) {
        asked[pattern.kinds[i]] -= share * pattern.counts[i];
      }
    }
    Run run = new Run(model.demand, model.available, asked, onHand, GOLDEN);
    return run.solve(NEVER, true).worth;
  }

  private static double[] asDoubles(int[] numbers) {
    double[] doubles = new double[numbers.length];
    for (int i = 0; i < doubles.length; i++) {
      doubles[i] = numbers[i];
    }
    return doubles;
  }

  /** One relaxation being solved. */
  private final class Run {
    private final int[] demand;
    private final int[] available;
    private final double[] asked;
    private final double[] onHand;
    private final int[] rowOfKind;
    private final int[] rowOfStock;
    private final List<Pattern> patternOfColumn = new ArrayList<>();
    private final int coverRows;
    private final CoveringLp lp;
    private final long[] worth;
    private final long[] charge;
    private double bestBound;
    private long[] bestWorth;
    private long[] bestCharge;

    /**
     * @param demand most of each kind in one pattern; kinds at 0 are left out
     * @param available bars of each stock length; those at 0 are left out
     * @param asked what is to be covered, at most the demand
     * @param onHand bars that may be used, at most those available
     */
    Run(int[] demand, int[] available, double[] asked, double[] onHand, double turn) {
      this.demand = demand;
      this.available = available;
      this.asked = asked;
      this.onHand = onHand;
      this.rowOfKind = new int[model.kinds()];
      this.rowOfStock = new int[model.stocks()];
      this.worth = new long[model.kinds()];
      this.charge = new long[model.stocks()];
      int rows = 0;
      for (int k = 0; k < rowOfKind.length; k++) {
        rowOfKind[k] = demand[k] > 0 ? rows++ : -1;
      }
      coverRows = rows;
      for (int s = 0; s < rowOfStock.length; s++) {
        boolean limited = available[s] != BarModel.UNLIMITED && available[s] > 0;
        rowOfStock[s] = limited ? rows++ : -1;
      }
      lp = new CoveringLp(rightSides(rows, turn), senses(rows), 0, deadline);
      bestWorth = worth.clone();
      bestCharge = charge.clone();
    }

    private double[] rightSides(int rows, double turn) {
      double[] rhs = new double[rows];
      for (int k = 0; k < rowOfKind.length; k++) {
        if (rowOfKind[k] >= 0) {
          double fraction = (k + 1) * turn;
          rhs[rowOfKind[k]] =
              Math.max(0, asked[k]) + SHAKE * (0.1 + fraction - Math.floor(fraction));
        }
      }
      for (int s = 0; s < rowOfStock.length; s++) {
        if (rowOfStock[s] >= 0) {
          rhs[rowOfStock[s]] = Math.max(0, onHand[s]);
        }
      }
      return rhs;
    }

    private boolean[] senses(int rows) {
      boolean[] atLeast = new boolean[rows];
      Arrays.fill(atLeast, 0, coverRows, true);
      return atLeast;
    }

    Relaxation solve(Sufficient sufficient, boolean exactly) {
      startBasis();
      for (int i = 0; i < pool.size(); i++) {
        Pattern pattern = pool.get(i);
        if (available[pattern.stock] > 0 && pattern.isWithin(demand)) {
          addColumn(pattern);
        }
      }
      bestBound = 0;
      lp.primal();
      while (priced(exactly) && !sufficient.test(bestBound, lp.objective()) && !deadline.isPast()) {
        lp.primal();
      }
      return result();
    }

    /** Bars full of one kind where stock is open in number, else leaving pieces out. */
    private void startBasis() {
      int[] start = new int[lp.rows()];
      Arrays.fill(start, -1);
      for (int k = 0; k < rowOfKind.length; k++) {
        if (rowOfKind[k] < 0) {
          continue;
        }
        Pattern uniform = cheapestUniform(k);
        if (uniform == null) {
          start[rowOfKind[k]] = shortageColumn(k);
        } else {
          start[rowOfKind[k]] = addColumn(uniform);
          pool.add(uniform);
        }
      }
      lp.start(start);
    }

    private Pattern cheapestUniform(int kind) {
      Pattern cheapest = null;
      double rate = Double.POSITIVE_INFINITY;
      for (int s = 0; s < model.stocks(); s++) {
        if (available[s] == BarModel.UNLIMITED && model.capacity[s] >= model.size[kind]) {
          int count = (int) Math.min(demand[kind], model.capacity[s] / model.size[kind]);
          if ((double) model.price[s] / count < rate) {
            rate = (double) model.price[s] / count;
            cheapest = new Pattern(s, new int[] {kind}, new int[] {count});
          }
        }
      }
      return cheapest;
    }

    private int shortageColumn(int kind) {
      patternOfColumn.add(null);
      return lp.addColumn(shortagePrice, new int[] {rowOfKind[kind]}, new double[] {1});
    }

    private int addColumn(Pattern pattern) {
      int limited = rowOfStock[pattern.stock] >= 0 ? 1 : 0;
      int n = pattern.kinds.length;
      int[] rows = new int[n + limited];
      double[] values = new double[n + limited];
      for (int i = 0; i < n; i++) {
        rows[i] = rowOfKind[pattern.kinds[i]];
        values[i] = pattern.counts[i];
      }
      if (limited == 1) {
        rows[n] = rowOfStock[pattern.stock];
        values[n] = 1;
      }
      patternOfColumn.add(pattern);
      return lp.addColumn(model.price[pattern.stock], rows, values);
    }

    /** Prices all stock lengths; true when some pattern improves the relaxation. */
    private boolean priced(boolean exactly) {
      takeDuals();
      knapsack.prepare(worth, demand);
      return price(false) || (exactly && price(true));
    }

    private boolean price(boolean exactly) {
      boolean improved = false;
      double shrink = 1;
      double[] most = new double[model.stocks()];
      for (int s = 0; s < model.stocks(); s++) {
        if (available[s] == 0) {
          continue;
        }
        long priceScaled = model.price[s] * scale;
        long threshold = priceScaled + charge[s];
        boolean gains =
            exactly
                ? knapsack.best(model.capacity[s], threshold)
                : knapsack.improve(model.capacity[s], threshold);
        if (gains) {
          for (int i = 0; i < knapsack.fillings(); i++) {
            improved |= take(s, threshold, i);
          }
        }
        most[s] = knapsack.upperBound();
        if (available[s] == BarModel.UNLIMITED && knapsack.upperBound() > priceScaled) {
          shrink = Math.min(shrink, (double) priceScaled / knapsack.upperBound());
        }
      }
      keepBound(shrink, most);
      return improved;
    }

    private boolean take(int stock, long threshold, int filling) {
      double gain = (double) (knapsack.value(filling) - threshold) / scale;
      if (gain <= ENTERING_TOLERANCE * Math.max(1, model.price[stock])) {
        return false;
      }
      Pattern pattern = Pattern.of(stock, knapsack.counts(filling));
      if (!pool.add(pattern)) {
        return false;
      }
      addColumn(pattern);
      return true;
    }

    private void takeDuals() {
      for (int k = 0; k < worth.length; k++) {
        int row = rowOfKind[k];
        worth[k] = row < 0 ? 0 : Math.max(0, (long) Math.floor(lp.dual(row) * scale));
      }
      for (int s = 0; s < charge.length; s++) {
        int row = rowOfStock[s];
        charge[s] = row < 0 ? 0 : Math.max(0, (long) Math.floor(-lp.dual(row) * scale));
      }
    }

    /**
     * The Lagrangian bound of the current piece values, shrunk until no open stock length gains,
     * with each limited bar charged what it gains (Farley, Oper. Res. 38 (1990), from memory).
     */
    private void keepBound(double shrink, double[] most) {
      double total = 0;
      for (int k = 0; k < worth.length; k++) {
        total += (double) worth[k] * asked[k];
      }
      double bound = total * shrink;
      for (int s = 0; s < most.length; s++) {
        if (rowOfStock[s] >= 0) {
          double gain = most[s] * shrink - (double) model.price[s] * scale;
          bound -= Math.max(0, gain) * onHand[s];
        }
      }
      // Rounding of a few thousand sums and products; far below any price step.
      bound = bound * (1 - 1e-12) / scale - total * 1e-12 / scale;
      if (bound > bestBound) {
        bestBound = bound;
        for (int k = 0; k < worth.length; k++) {
          bestWorth[k] = (long) Math.floor(worth[k] * shrink * (1 - 1e-15));
        }
        for (int s = 0; s < charge.length; s++) {
          double gain = most[s] * shrink - (double) model.price[s] * scale;
          bestCharge[s] = rowOfStock[s] < 0 ? 0 : (long) Math.ceil(Math.max(0, gain));
        }
      }
    }

    private Relaxation result() {
      double[] x = lp.solution();
      List<Pattern> positive = new ArrayList<>();
      double[] levels = new double[lp.rows()];
      boolean coversAll = true;
      for (int c = 0; c < x.length; c++) {
        if (x[c] > 10 * SHAKE) {
          Pattern pattern = patternOfColumn.get(c);
          if (pattern == null) {
            coversAll = false;
          } else {
            levels[positive.size()] = x[c];
            positive.add(pattern);
          }
        }
      }
      return new Relaxation(
          positive,
          levels,
          lp.objective(),
          bestBound,
          new PieceWorth(model, bestWorth, bestCharge, scale),
          coversAll);
    }
  }
}
