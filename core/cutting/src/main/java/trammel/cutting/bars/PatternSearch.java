package trammel.cutting.bars;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import trammel.cutting.internal.Deadline;

/**
 * Exact branch and bound over a complete list of patterns.
 *
 * <p>Branches on how many bars of a stock length are used, then on how many bars hold two kinds
 * together (after Ryan and Foster 1981 and Vanderbeck 1999, from memory), at last on one pattern.
 */
final class PatternSearch {
  private static final int DEEPEST = 160;
  private static final double WHOLE = 1e-6;
  private static final double CUTOFF_TOLERANCE = 1e-6;
  private static final double SHAKE = 1e-6;
  private static final double GOLDEN = 0.6180339887498949;

  private final BarModel model;
  private final List<Pattern> patterns;
  private final Incumbent incumbent;
  private final Deadline deadline;
  private final CoveringLp lp;
  private final ExactBound exact;
  private final double shortagePrice;
  private final int mostBars;
  private boolean incomplete;
  private int depth;

  /**
   * @param deadline asked at every branch
   * @param steps asked at every step of the linear programmes as well
   */
  PatternSearch(
      BarModel model,
      List<Pattern> patterns,
      Incumbent incumbent,
      Deadline deadline,
      Deadline steps) {
    this.model = model;
    this.patterns = patterns;
    this.incumbent = incumbent;
    this.deadline = deadline;
    this.shortagePrice = 4.0 * Math.max(1, incumbent.price());
    int pieces = 0;
    for (int d : model.demand) {
      pieces += d;
    }
    this.mostBars = pieces;
    int limited = 0;
    for (int a : model.available) {
      limited += a == BarModel.UNLIMITED ? 0 : 1;
    }
    int rows = model.kinds() + limited;
    double[] rhs = new double[rows];
    boolean[] atLeast = new boolean[rows];
    Arrays.fill(atLeast, 0, model.kinds(), true);
    int[] rowOfStock = new int[model.stocks()];
    for (int k = 0; k < model.kinds(); k++) {
      rhs[k] = model.demand[k];
    }
    int row = model.kinds();
    for (int s = 0; s < rowOfStock.length; s++) {
      rowOfStock[s] = model.available[s] == BarModel.UNLIMITED ? -1 : row;
      if (rowOfStock[s] >= 0) {
        rhs[row++] = model.available[s];
      }
    }
    lp = new CoveringLp(rhs, atLeast, DEEPEST + 1, steps);
    for (Pattern pattern : patterns) {
      addColumn(pattern, rowOfStock[pattern.stock]);
    }
    exact = new ExactBound(lp, model, patterns, mostBars);
  }

  /** Tiny different amounts on equal prices: the simplex method stalls on ties. */
  private double shake() {
    double fraction = (lp.columns() + 1) * GOLDEN;
    return SHAKE * (fraction - Math.floor(fraction));
  }

  private void addColumn(Pattern pattern, int stockRow) {
    int n = pattern.kinds.length;
    int extra = stockRow >= 0 ? 1 : 0;
    int[] rows = Arrays.copyOf(pattern.kinds, n + extra);
    double[] values = new double[n + extra];
    for (int i = 0; i < n; i++) {
      values[i] = pattern.counts[i];
    }
    if (extra == 1) {
      rows[n] = stockRow;
      values[n] = 1;
    }
    lp.addColumn(model.price[pattern.stock] + shake(), rows, values);
  }

  /**
   * @return true when the search went to the end, so that the incumbent is optimal
   */
  boolean run() {
    solveRelaxation();
    node();
    return !incomplete && !lp.stalled();
  }

  private void solveRelaxation() {
    int[] start = new int[lp.rows()];
    Arrays.fill(start, -1);
    for (int k = 0; k < model.kinds(); k++) {
      start[k] = lp.addColumn(shortagePrice, new int[] {k}, new double[] {1});
    }
    lp.start(start);
    lp.primal();
  }

  /** Worth of one piece of each kind in the relaxation over the patterns given. */
  double[] worth() {
    solveRelaxation();
    double[] worth = new double[model.kinds()];
    for (int k = 0; k < worth.length; k++) {
      worth[k] = lp.dual(k);
    }
    return worth;
  }

  private double cutoff() {
    return incumbent.target() + CUTOFF_TOLERANCE + SHAKE * mostBars;
  }

  private void node() {
    if (deadline.isPast()) {
      incomplete = true;
      return;
    }
    if (isClosed()) {
      return;
    }
    if (lp.objective() > cutoff()) {
      // Closed by the look of it, but not proven.
      incomplete = true;
      return;
    }
    List<Integer> banned = banHopeless();
    double[] x = lp.solution();
    Branch branch = choose(x);
    if (branch == null) {
      offer(x);
      incomplete |= !exact.isAbove(incumbent.target());
    } else if (depth == DEEPEST) {
      incomplete = true;
    } else {
      CoveringLp.Snapshot here = lp.snapshot();
      int below = (int) Math.floor(branch.sum);
      explore(here, branch.members, true, below + 1.0);
      if (!incomplete) {
        explore(here, branch.members, false, below);
      }
    }
    for (int column : banned) {
      lp.ban(column, false);
    }
  }

  private void explore(CoveringLp.Snapshot here, int[] members, boolean atLeast, double bound) {
    if (incumbent.isClosed()) {
      return;
    }
    lp.appendRow(members, atLeast, bound);
    depth++;
    if (lp.dualSimplex(cutoff())) {
      node();
    } else {
      incomplete |= !isClosed();
    }
    depth--;
    lp.dropRow(members);
    lp.restore(here);
  }

  /** True when it is proven that the bars of this node make no better plan. */
  private boolean isClosed() {
    exact.take(lp.provingDuals(cutoff()));
    return exact.isAbove(incumbent.target());
  }

  /** Bans columns that no improving plan below this node can use. */
  private List<Integer> banHopeless() {
    List<Integer> banned = new ArrayList<>();
    for (int c = 0; c < patterns.size(); c++) {
      if (!lp.isBasic(c) && !lp.isBanned(c) && exact.rulesOut(c, incumbent.target())) {
        lp.ban(c, true);
        banned.add(c);
      }
    }
    return banned;
  }

  private void offer(double[] x) {
    int[] rest = model.demand.clone();
    CutList plan = new CutList();
    for (int c = 0; c < patterns.size(); c++) {
      int times = (int) Math.round(x[c]);
      for (int i = 0; i < times; i++) {
        Pattern trimmed = patterns.get(c).trimmedTo(rest);
        if (trimmed.kinds.length > 0) {
          plan.add(model, trimmed, 1);
          for (int j = 0; j < trimmed.kinds.length; j++) {
            rest[trimmed.kinds[j]] -= trimmed.counts[j];
          }
        }
      }
    }
    for (int r : rest) {
      if (r > 0) {
        incomplete = true;
        return;
      }
    }
    incumbent.offer(plan);
  }

  private static final class Branch {
    final int[] members;
    final double sum;

    Branch(int[] members, double sum) {
      this.members = members;
      this.sum = sum;
    }
  }

  private Branch choose(double[] x) {
    List<Integer> positive = new ArrayList<>();
    List<Integer> fractional = new ArrayList<>();
    for (int c = 0; c < patterns.size(); c++) {
      if (x[c] > WHOLE) {
        positive.add(c);
        if (distanceToWhole(x[c]) > WHOLE) {
          fractional.add(c);
        }
      }
    }
    if (fractional.isEmpty()) {
      return null;
    }
    Branch branch = onStock(x, positive);
    if (branch == null) {
      branch = onPair(x, positive, fractional);
    }
    return branch != null ? branch : onPattern(x, fractional);
  }

  private static double distanceToWhole(double x) {
    return Math.abs(x - Math.rint(x));
  }

  private Branch onStock(double[] x, List<Integer> positive) {
    double[] bars = new double[model.stocks()];
    for (int c : positive) {
      bars[patterns.get(c).stock] += x[c];
    }
    int most = -1;
    for (int s = 0; s < bars.length; s++) {
      if (distanceToWhole(bars[s]) > WHOLE
          && (most < 0 || distanceToWhole(bars[s]) > distanceToWhole(bars[most]))) {
        most = s;
      }
    }
    if (most < 0) {
      return null;
    }
    int[] members = new int[patterns.size()];
    int n = 0;
    for (int c = 0; c < patterns.size(); c++) {
      if (patterns.get(c).stock == most) {
        members[n++] = c;
      }
    }
    return new Branch(Arrays.copyOf(members, n), bars[most]);
  }

  /** Two kinds with least counts; the same kind twice stands for that kind alone. */
  private record Pair(int kind, int least, int other, int otherLeast) {
    boolean holds(Pattern pattern) {
      return count(pattern, kind) >= least && count(pattern, other) >= otherLeast;
    }

    private static int count(Pattern pattern, int kind) {
      int at = Arrays.binarySearch(pattern.kinds, kind);
      return at < 0 ? 0 : pattern.counts[at];
    }
  }

  private Branch onPair(double[] x, List<Integer> positive, List<Integer> fractional) {
    Set<Pair> seen = new HashSet<>();
    Pair best = null;
    double bestScore = 0;
    double bestSum = 0;
    for (int c : fractional) {
      Pattern p = patterns.get(c);
      for (int i = 0; i < p.kinds.length; i++) {
        for (int j = i; j < p.kinds.length; j++) {
          Pair pair = new Pair(p.kinds[i], p.counts[i], p.kinds[j], p.counts[j]);
          if (!seen.add(pair)) {
            continue;
          }
          double sum = 0;
          for (int d : positive) {
            sum += pair.holds(patterns.get(d)) ? x[d] : 0;
          }
          double distance = distanceToWhole(sum);
          double size = model.size[pair.kind] + (i == j ? 0 : model.size[pair.other]);
          double score = (sum - Math.floor(sum)) * (1 + 1e-3 * size / model.capacity[p.stock]);
          if (distance > WHOLE && score > bestScore) {
            bestScore = score;
            best = pair;
            bestSum = sum;
          }
        }
      }
    }
    if (best == null) {
      return null;
    }
    int[] members = new int[patterns.size()];
    int n = 0;
    for (int c = 0; c < patterns.size(); c++) {
      if (best.holds(patterns.get(c))) {
        members[n++] = c;
      }
    }
    return new Branch(Arrays.copyOf(members, n), bestSum);
  }

  private static Branch onPattern(double[] x, List<Integer> fractional) {
    int most = fractional.get(0);
    for (int c : fractional) {
      if (distanceToWhole(x[c]) > distanceToWhole(x[most])) {
        most = c;
      }
    }
    return new Branch(new int[] {most}, x[most]);
  }
}
