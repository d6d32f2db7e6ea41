package trammel.engine.motion;

/**
 * The motion around ride height to second order in heave and roll. It is where the search for a
 * pose starts: the nearer the start, the fewer the steps, and the surer the branch.
 */
final class RideExpansion {

  private static final double[] RIDE = new double[LengthExpansion.FREE];

  private final double leverMm;
  private final double[] byHeave;
  private final double[] byRoll;
  private final double[] byHeaveHeave;
  private final double[] byHeaveRoll;
  private final double[] byRollRoll;

  RideExpansion(LinkTable table) {
    leverMm = table.leverMm;
    MotionEquations equations = new MotionEquations(table);
    equations.evaluate(RIDE, 0, 0);
    byHeave = equations.follow(1, 0);
    byRoll = equations.follow(0, 1);
    double[] heave = direction(byHeave, 1, 0);
    double[] roll = direction(byRoll, 0, 1);
    byHeaveHeave = secondOrder(equations, table.count, heave, heave);
    byHeaveRoll = secondOrder(equations, table.count, heave, roll);
    byRollRoll = secondOrder(equations, table.count, roll, roll);
  }

  /** Puts the position where the expansion expects it. */
  void start(FreePosition at, double heaveMm, double rollRad) {
    double h = heaveMm;
    double r = rollRad * leverMm;
    at.set(value(0, h, r), value(1, h, r), value(2, h, r), value(3, h, r));
  }

  /** Adds what the expansion expects between two poses. */
  void shift(
      FreePosition at, double fromHeaveMm, double fromRollRad, double heaveMm, double rollRad) {
    double h0 = fromHeaveMm;
    double r0 = fromRollRad * leverMm;
    double h = heaveMm;
    double r = rollRad * leverMm;
    at.advance(
        value(0, h, r) - value(0, h0, r0),
        value(1, h, r) - value(1, h0, r0),
        value(2, h, r) - value(2, h0, r0),
        value(3, h, r) - value(3, h0, r0));
  }

  private double value(int i, double h, double r) {
    return h * (byHeave[i] + 0.5 * h * byHeaveHeave[i] + r * byHeaveRoll[i])
        + r * (byRoll[i] + 0.5 * r * byRollRoll[i]);
  }

  private static double[] direction(double[] free, double heave, double roll) {
    return new double[] {free[0], free[1], free[2], free[3], heave, roll};
  }

  /**
   * Second derivative of the free coordinates along two directions of first-order motion. Links
   * that close exactly: the second change of every length vanishes. Yielding links: the second
   * change of the energy's gradient vanishes; at ride the stretches themselves are zero.
   */
  private static double[] secondOrder(
      MotionEquations equations, int links, double[] first, double[] other) {
    double[] sum = new double[LengthExpansion.FREE];
    LengthExpansion link = equations.expansion();
    for (int i = 0; i < links; i++) {
      equations.stretchOf(i);
      double bend = bilinear(link.hessian, first, other);
      if (equations.exact()) {
        sum[i] = -bend;
        continue;
      }
      double firstStretch = dot(link.gradient, first);
      double otherStretch = dot(link.gradient, other);
      for (int j = 0; j < sum.length; j++) {
        sum[j] -=
            equations.weightOf(i)
                * (bend * link.gradient[j]
                    + firstStretch * dot(link.hessian[j], other)
                    + otherStretch * dot(link.hessian[j], first));
      }
    }
    LinearSystem.solve(equations.copyOfByFree(), sum);
    return sum;
  }

  private static double bilinear(double[][] matrix, double[] left, double[] right) {
    double sum = 0;
    for (int i = 0; i < left.length; i++) {
      sum += left[i] * dot(matrix[i], right);
    }
    return sum;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
