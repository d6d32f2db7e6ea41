package trammel.engine.motion;

import java.util.Arrays;

/**
 * The four equations of the free coordinates and their derivatives. Four links: each keeps its
 * length. More links: the gradient of their energy vanishes.
 */
final class MotionEquations {

  final double[] residual = new double[LengthExpansion.FREE];
  final double[][] byFree = new double[LengthExpansion.FREE][LengthExpansion.FREE];
  final double[] byHeave = new double[LengthExpansion.FREE];
  final double[] byRoll = new double[LengthExpansion.FREE];

  private final LinkTable table;
  private final LengthExpansion expansion;

  MotionEquations(LinkTable table) {
    this.table = table;
    expansion = new LengthExpansion(table.leverMm);
  }

  boolean exact() {
    return table.count == Linkage.FEWEST_LINKS;
  }

  LengthExpansion expansion() {
    return expansion;
  }

  /** Evaluates at free coordinates (mm), heave (mm) and roll times lever (mm). */
  void evaluate(double[] freeMm, double heaveMm, double rollMm) {
    double lever = table.leverMm;
    expansion.place(
        heaveMm, rollMm / lever, freeMm[0], freeMm[1], freeMm[2] / lever, freeMm[3] / lever);
    if (exact()) {
      evaluateClosing();
    } else {
      evaluateYielding();
    }
  }

  /** Works out link {@code i} at the placement of the last {@link #evaluate}. */
  double stretchOf(int i) {
    int at = i * LinkTable.WIDTH;
    double[] v = table.values;
    expansion.expand(
        v[at + LinkTable.FRAME_X],
        v[at + LinkTable.FRAME_Y],
        v[at + LinkTable.FRAME_Z],
        v[at + LinkTable.ARM_X],
        v[at + LinkTable.ARM_Y],
        v[at + LinkTable.ARM_Z]);
    return expansion.lengthMm - v[at + LinkTable.LENGTH];
  }

  double weightOf(int i) {
    return table.values[i * LinkTable.WIDTH + LinkTable.WEIGHT];
  }

  private void evaluateClosing() {
    for (int i = 0; i < LengthExpansion.FREE; i++) {
      residual[i] = stretchOf(i);
      System.arraycopy(expansion.gradient, 0, byFree[i], 0, LengthExpansion.FREE);
      byHeave[i] = expansion.gradient[LengthExpansion.HEAVE];
      byRoll[i] = expansion.gradient[LengthExpansion.ROLL];
    }
  }

  private void evaluateYielding() {
    for (int j = 0; j < LengthExpansion.FREE; j++) {
      residual[j] = 0;
      byHeave[j] = 0;
      byRoll[j] = 0;
      Arrays.fill(byFree[j], 0);
    }
    double[] g = expansion.gradient;
    double[][] h = expansion.hessian;
    for (int i = 0; i < table.count; i++) {
      double stretchMm = stretchOf(i);
      double weight = weightOf(i);
      for (int j = 0; j < LengthExpansion.FREE; j++) {
        residual[j] += weight * stretchMm * g[j];
        for (int k = 0; k < LengthExpansion.FREE; k++) {
          byFree[j][k] += weight * (g[j] * g[k] + stretchMm * h[j][k]);
        }
        byHeave[j] +=
            weight * (g[j] * g[LengthExpansion.HEAVE] + stretchMm * h[j][LengthExpansion.HEAVE]);
        byRoll[j] +=
            weight * (g[j] * g[LengthExpansion.ROLL] + stretchMm * h[j][LengthExpansion.ROLL]);
      }
    }
  }

  /**
   * How the free coordinates follow when heave and roll change by the given amounts (mm each), at
   * the place of the last {@link #evaluate}.
   */
  double[] follow(double heavePart, double rollPart) {
    double[] rate = new double[LengthExpansion.FREE];
    for (int j = 0; j < rate.length; j++) {
      rate[j] = -(heavePart * byHeave[j] + rollPart * byRoll[j]);
    }
    LinearSystem.solve(copyOfByFree(), rate);
    return rate;
  }

  /**
   * Determinant of the equations at the last {@link #evaluate}. Yielding links: negative wherever
   * their energy has no minimum, also where two directions have turned at once.
   */
  double signedDeterminant() {
    if (exact()) {
      return LinearSystem.solve(copyOfByFree(), new double[LengthExpansion.FREE]);
    }
    double[][] a = copyOfByFree();
    double product = 1;
    boolean minimum = true;
    for (int k = 0; k < a.length; k++) {
      product *= a[k][k];
      minimum &= a[k][k] > 0;
      for (int i = k + 1; i < a.length; i++) {
        double factor = a[i][k] / a[k][k];
        for (int j = k + 1; j < a.length; j++) {
          a[i][j] -= factor * a[k][j];
        }
      }
    }
    return minimum ? product : -Math.abs(product);
  }

  double[][] copyOfByFree() {
    double[][] copy = new double[LengthExpansion.FREE][];
    for (int j = 0; j < copy.length; j++) {
      copy[j] = byFree[j].clone();
    }
    return copy;
  }
}
