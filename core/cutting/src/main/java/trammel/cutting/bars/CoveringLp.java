package trammel.cutting.bars;

import java.util.Arrays;
import trammel.cutting.internal.Deadline;

/**
 * A small linear programme, minimise cost over columns x ≥ 0, by the revised simplex method with an
 * explicit inverse.
 *
 * <p>Rows are "at least" (pieces to cover) or "at most" (stock on hand). Columns are sparse and may
 * be added at any time; rows may be appended to a solved programme and taken off again.
 */
final class CoveringLp {
  private static final double TOLERANCE = 1e-9;
  private static final double PIVOT_TOLERANCE = 1e-7;
  private static final int PIVOTS_BETWEEN_CHECKS = 60;
  private static final double DRIFT_ALLOWED = 1e-7;

  /** Steps that the reduced cost of a column counts for. */
  private static final int COLUMN_STEPS = 6;

  private final Deadline deadline;
  private int rows;
  private double[] rhs;
  private boolean[] atLeast;

  private int columns;
  private double[] cost = new double[64];
  private int[][] rowOf = new int[64][];
  private double[][] coefficient = new double[64][];
  private int[] length = new int[64];
  private boolean[] banned = new boolean[64];

  /** Basic variable per row: a column, or −1 − row for the slack of a row. */
  private int[] basic;

  private boolean[] isBasic = new boolean[64];
  private double[][] inverse;
  private double[] level;
  private double[] dual;
  private final double[] work;
  private int sinceCheck;
  private long pivots;
  private boolean stalled;

  /** A row that cannot be brought to a level of 0 or more, or −1. */
  private int infeasibleRow = -1;

  /**
   * @param rhs right-hand sides
   * @param atLeast per row: true for ≥, false for ≤
   * @param roomForRows rows that may be appended later
   * @param deadline asked before every step towards the optimum; what is feasible by then stays
   */
  CoveringLp(double[] rhs, boolean[] atLeast, int roomForRows, Deadline deadline) {
    this.deadline = deadline;
    rows = rhs.length;
    int most = rows + roomForRows;
    this.rhs = Arrays.copyOf(rhs, most);
    this.atLeast = Arrays.copyOf(atLeast, most);
    basic = new int[most];
    inverse = new double[most][];
    for (int r = 0; r < most; r++) {
      inverse[r] = new double[most];
    }
    level = new double[most];
    dual = new double[most];
    work = new double[most];
  }

  int addColumn(double columnCost, int[] columnRows, double[] values) {
    if (columns == cost.length) {
      int larger = columns * 2;
      cost = Arrays.copyOf(cost, larger);
      rowOf = Arrays.copyOf(rowOf, larger);
      coefficient = Arrays.copyOf(coefficient, larger);
      length = Arrays.copyOf(length, larger);
      banned = Arrays.copyOf(banned, larger);
      isBasic = Arrays.copyOf(isBasic, larger);
    }
    cost[columns] = columnCost;
    rowOf[columns] = columnRows;
    coefficient[columns] = values;
    length[columns] = columnRows.length;
    return columns++;
  }

  int columns() {
    return columns;
  }

  int rows() {
    return rows;
  }

  double dual(int row) {
    return dual[row];
  }

  double rightSide(int row) {
    return rhs[row];
  }

  boolean isAtLeast(int row) {
    return atLeast[row];
  }

  void ban(int column, boolean out) {
    banned[column] = out;
  }

  boolean isBanned(int column) {
    return banned[column];
  }

  boolean isBasic(int column) {
    return isBasic[column];
  }

  double reducedCost(int column) {
    double reduced = cost[column];
    int[] index = rowOf[column];
    double[] value = coefficient[column];
    for (int i = 0; i < length[column]; i++) {
      reduced -= dual[index[i]] * value[i];
    }
    return reduced;
  }

  /** The reduced cost in whole numbers, for a cost and values of the rows in the same parts. */
  long reducedCost(int column, long wholeCost, long[] wholeDual) {
    long reduced = wholeCost;
    int[] index = rowOf[column];
    double[] value = coefficient[column];
    for (int i = 0; i < length[column]; i++) {
      reduced -= wholeDual[index[i]] * (long) value[i];
    }
    return reduced;
  }

  /**
   * Values of the rows that prove the most: those of the basis, and where a row has shown the
   * programme to be infeasible, so much of that row too that they prove more than the given value
   * (Farkas).
   */
  double[] provingDuals(double value) {
    double[] proving = Arrays.copyOf(dual, rows);
    if (infeasibleRow >= 0) {
      double step = Math.max(0, value + 1 - objective()) / -level[infeasibleRow];
      for (int r = 0; r < rows; r++) {
        proving[r] -= step * inverse[infeasibleRow][r];
      }
    }
    return proving;
  }

  double objective() {
    double total = 0;
    for (int r = 0; r < rows; r++) {
      if (basic[r] >= 0) {
        total += cost[basic[r]] * level[r];
      }
    }
    return total;
  }

  /** Levels of all columns. */
  double[] solution() {
    double[] x = new double[columns];
    for (int r = 0; r < rows; r++) {
      if (basic[r] >= 0) {
        x[basic[r]] = Math.max(0, level[r]);
      }
    }
    return x;
  }

  /**
   * Starts from the given basis, one column per row, or −1 for the row's slack. The caller sees to
   * it that the basis is feasible.
   */
  void start(int[] columnPerRow) {
    Arrays.fill(isBasic, false);
    for (int r = 0; r < rows; r++) {
      basic[r] = columnPerRow[r] >= 0 ? columnPerRow[r] : -1 - r;
      if (columnPerRow[r] >= 0) {
        isBasic[columnPerRow[r]] = true;
      }
    }
    refactor();
  }

  /** Brings a feasible basis to optimality over the columns present. */
  void primal() {
    long limit = pivots + 50L * (rows + 100);
    while (pivots < limit && !deadline.isPast()) {
      deadline.spend((long) columns * COLUMN_STEPS + (long) rows * rows);
      int entering = -1;
      boolean slack = false;
      double most = -TOLERANCE;
      for (int c = 0; c < columns; c++) {
        if (!isBasic[c] && !banned[c]) {
          double reduced = reducedCost(c);
          if (reduced < most) {
            most = reduced;
            entering = c;
          }
        }
      }
      for (int r = 0; r < rows; r++) {
        double reduced = atLeast[r] ? dual[r] : -dual[r];
        if (reduced < most) {
          most = reduced;
          entering = r;
          slack = true;
        }
      }
      if (entering < 0 || !enter(slack ? -1 - entering : entering, most)) {
        return;
      }
    }
  }

  private boolean enter(int variable, double reduced) {
    direction(variable);
    int leaving = -1;
    double ratio = Double.POSITIVE_INFINITY;
    for (int r = 0; r < rows; r++) {
      if (work[r] > PIVOT_TOLERANCE) {
        double step = Math.max(0, level[r]) / work[r];
        if (step < ratio - 1e-12
            || (step < ratio + 1e-12 && (leaving < 0 || work[r] > work[leaving]))) {
          ratio = Math.min(step, ratio);
          leaving = r;
        }
      }
    }
    if (leaving < 0) {
      return false;
    }
    pivot(leaving, variable, reduced);
    return true;
  }

  /** work = inverse × column. */
  private void direction(int variable) {
    if (variable < 0) {
      int row = -1 - variable;
      double sign = atLeast[row] ? -1 : 1;
      for (int r = 0; r < rows; r++) {
        work[r] = sign * inverse[r][row];
      }
      return;
    }
    int[] index = rowOf[variable];
    double[] value = coefficient[variable];
    int n = length[variable];
    for (int r = 0; r < rows; r++) {
      double[] line = inverse[r];
      double sum = 0;
      for (int i = 0; i < n; i++) {
        sum += line[index[i]] * value[i];
      }
      work[r] = sum;
    }
  }

  private void pivot(int leaving, int variable, double reduced) {
    double[] pivotLine = inverse[leaving];
    double scale = 1 / work[leaving];
    for (int i = 0; i < rows; i++) {
      pivotLine[i] *= scale;
    }
    level[leaving] *= scale;
    double newLevel = level[leaving];
    for (int r = 0; r < rows; r++) {
      double factor = work[r];
      if (r != leaving && factor != 0) {
        double[] line = inverse[r];
        for (int i = 0; i < rows; i++) {
          line[i] -= factor * pivotLine[i];
        }
        level[r] -= factor * newLevel;
      }
    }
    for (int i = 0; i < rows; i++) {
      dual[i] += reduced * pivotLine[i];
    }
    if (basic[leaving] >= 0) {
      isBasic[basic[leaving]] = false;
    }
    basic[leaving] = variable;
    if (variable >= 0) {
      isBasic[variable] = true;
    }
    pivots++;
    if (++sinceCheck >= PIVOTS_BETWEEN_CHECKS) {
      check();
    }
  }

  /** Recomputes the inverse when it has drifted from the basis. */
  private void check() {
    sinceCheck = 0;
    double[] residual = Arrays.copyOf(rhs, rows);
    for (int r = 0; r < rows; r++) {
      int variable = basic[r];
      if (variable < 0) {
        int row = -1 - variable;
        residual[row] -= (atLeast[row] ? -1 : 1) * level[r];
      } else {
        for (int i = 0; i < length[variable]; i++) {
          residual[rowOf[variable][i]] -= coefficient[variable][i] * level[r];
        }
      }
    }
    for (double d : residual) {
      if (Math.abs(d) > DRIFT_ALLOWED) {
        refactor();
        return;
      }
    }
    recomputeDuals();
  }

  private void recomputeDuals() {
    Arrays.fill(dual, 0, rows, 0);
    for (int r = 0; r < rows; r++) {
      if (basic[r] >= 0 && cost[basic[r]] != 0) {
        double c = cost[basic[r]];
        double[] line = inverse[r];
        for (int i = 0; i < rows; i++) {
          dual[i] += c * line[i];
        }
      }
    }
  }

  /** Inverts the basis matrix afresh (Gauss-Jordan with row exchange). */
  private void refactor() {
    double[][] matrix = new double[rows][rows];
    for (int r = 0; r < rows; r++) {
      int variable = basic[r];
      if (variable < 0) {
        int row = -1 - variable;
        matrix[row][r] = atLeast[row] ? -1 : 1;
      } else {
        for (int i = 0; i < length[variable]; i++) {
          matrix[rowOf[variable][i]][r] = coefficient[variable][i];
        }
      }
      Arrays.fill(inverse[r], 0, rows, 0);
      inverse[r][r] = 1;
    }
    for (int p = 0; p < rows; p++) {
      eliminate(matrix, p);
    }
    for (int r = 0; r < rows; r++) {
      double sum = 0;
      for (int i = 0; i < rows; i++) {
        sum += inverse[r][i] * rhs[i];
      }
      level[r] = sum;
    }
    recomputeDuals();
  }

  private void eliminate(double[][] matrix, int p) {
    int best = p;
    for (int r = p + 1; r < rows; r++) {
      if (Math.abs(matrix[r][p]) > Math.abs(matrix[best][p])) {
        best = r;
      }
    }
    swap(matrix, p, best);
    swap(inverse, p, best);
    double scale = 1 / matrix[p][p];
    for (int i = p; i < rows; i++) {
      matrix[p][i] *= scale;
    }
    for (int i = 0; i < rows; i++) {
      inverse[p][i] *= scale;
    }
    for (int r = 0; r < rows; r++) {
      double factor = matrix[r][p];
      if (r != p && factor != 0) {
        for (int i = p; i < rows; i++) {
          matrix[r][i] -= factor * matrix[p][i];
        }
        for (int i = 0; i < rows; i++) {
          inverse[r][i] -= factor * inverse[p][i];
        }
      }
    }
  }

  private static void swap(double[][] matrix, int a, int b) {
    double[] line = matrix[a];
    matrix[a] = matrix[b];
    matrix[b] = line;
  }

  /**
   * Appends a row over some columns, each with coefficient 1, to a solved programme. Call {@link
   * #dualSimplex} next.
   */
  void appendRow(int[] members, boolean least, double bound) {
    int row = rows;
    for (int c : members) {
      rowOf[c] = grown(rowOf[c], length[c]);
      coefficient[c] = grown(coefficient[c], length[c]);
      rowOf[c][length[c]] = row;
      coefficient[c][length[c]++] = 1;
    }
    double sign = least ? -1 : 1;
    Arrays.fill(work, 0, rows, 0);
    double activity = 0;
    boolean[] member = new boolean[columns];
    for (int c : members) {
      member[c] = true;
    }
    for (int r = 0; r < rows; r++) {
      if (basic[r] >= 0 && member[basic[r]]) {
        activity += level[r];
        for (int i = 0; i < rows; i++) {
          work[i] += inverse[r][i];
        }
      }
    }
    for (int i = 0; i < rows; i++) {
      inverse[row][i] = -sign * work[i];
      inverse[i][row] = 0;
    }
    inverse[row][row] = sign;
    level[row] = sign * (bound - activity);
    rhs[row] = bound;
    atLeast[row] = least;
    basic[row] = -1 - row;
    dual[row] = 0;
    rows++;
  }

  /**
   * Takes off the last row, which must have been appended over the given columns. Call {@link
   * #restore} next.
   */
  void dropRow(int[] members) {
    rows--;
    if (basic[rows] >= 0) {
      isBasic[basic[rows]] = false;
    }
    for (int c : members) {
      length[c]--;
    }
  }

  private static int[] grown(int[] a, int used) {
    return used < a.length ? a : Arrays.copyOf(a, used + 8);
  }

  private static double[] grown(double[] a, int used) {
    return used < a.length ? a : Arrays.copyOf(a, used + 8);
  }

  /**
   * Restores feasibility of a basis whose reduced costs are all right.
   *
   * @param cutoff stops as soon as the objective is above this
   * @return false when the programme is infeasible or above the cutoff
   */
  boolean dualSimplex(double cutoff) {
    long limit = pivots + 20L * (rows + 100);
    infeasibleRow = -1;
    while (pivots < limit) {
      int leaving = -1;
      double lowest = -1e-8;
      for (int r = 0; r < rows; r++) {
        if (level[r] < lowest) {
          lowest = level[r];
          leaving = r;
        }
      }
      if (leaving < 0) {
        primal();
        return objective() <= cutoff;
      }
      if (!leave(leaving)) {
        infeasibleRow = leaving;
        return false;
      }
      if (objective() > cutoff) {
        return false;
      }
    }
    stalled = true;
    return true;
  }

  /** True when a solve gave up for too many steps; its result then proves nothing. */
  boolean stalled() {
    return stalled;
  }

  private boolean leave(int leaving) {
    double[] line = inverse[leaving];
    boolean[] slackBasic = new boolean[rows];
    for (int r = 0; r < rows; r++) {
      if (basic[r] < 0) {
        slackBasic[-1 - basic[r]] = true;
      }
    }
    int entering = Integer.MIN_VALUE;
    double ratio = Double.POSITIVE_INFINITY;
    double pivotSize = 0;
    double enteringReduced = 0;
    for (int c = 0; c < columns; c++) {
      if (isBasic[c] || banned[c]) {
        continue;
      }
      double alpha = 0;
      int[] index = rowOf[c];
      double[] value = coefficient[c];
      for (int i = 0; i < length[c]; i++) {
        alpha += line[index[i]] * value[i];
      }
      if (alpha < -PIVOT_TOLERANCE) {
        double reduced = Math.max(0, reducedCost(c));
        double r = reduced / -alpha;
        if (r < ratio - 1e-10 || (r < ratio + 1e-10 && -alpha > pivotSize)) {
          ratio = Math.min(r, ratio);
          pivotSize = -alpha;
          entering = c;
          enteringReduced = reduced;
        }
      }
    }
    for (int r = 0; r < rows; r++) {
      double alpha = atLeast[r] ? -line[r] : line[r];
      if (alpha < -PIVOT_TOLERANCE && !slackBasic[r]) {
        double reduced = Math.max(0, atLeast[r] ? dual[r] : -dual[r]);
        double q = reduced / -alpha;
        if (q < ratio - 1e-10 || (q < ratio + 1e-10 && -alpha > pivotSize)) {
          ratio = Math.min(q, ratio);
          pivotSize = -alpha;
          entering = -1 - r;
          enteringReduced = reduced;
        }
      }
    }
    if (entering == Integer.MIN_VALUE) {
      return false;
    }
    direction(entering);
    pivot(leaving, entering, enteringReduced);
    return true;
  }

  /** A copy of the basis to come back to. */
  Snapshot snapshot() {
    return new Snapshot(this);
  }

  void restore(Snapshot saved) {
    for (int r = 0; r < rows; r++) {
      if (basic[r] >= 0) {
        isBasic[basic[r]] = false;
      }
    }
    rows = saved.basic.length;
    infeasibleRow = -1;
    for (int r = 0; r < rows; r++) {
      basic[r] = saved.basic[r];
      System.arraycopy(saved.inverse[r], 0, inverse[r], 0, rows);
      level[r] = saved.level[r];
      dual[r] = saved.dual[r];
      if (basic[r] >= 0) {
        isBasic[basic[r]] = true;
      }
    }
  }

  /** A saved basis. */
  static final class Snapshot {
    private final int[] basic;
    private final double[][] inverse;
    private final double[] level;
    private final double[] dual;

    private Snapshot(CoveringLp lp) {
      basic = Arrays.copyOf(lp.basic, lp.rows);
      inverse = new double[lp.rows][];
      for (int r = 0; r < lp.rows; r++) {
        inverse[r] = Arrays.copyOf(lp.inverse[r], lp.rows);
      }
      level = Arrays.copyOf(lp.level, lp.rows);
      dual = Arrays.copyOf(lp.dual, lp.rows);
    }
  }
}
