package trammel.planning.cutting.outlines;

/** The corners of a part turned one way, counter-clockwise, arcs of many corners made plainer. */
final class OutlineRing {
  private OutlineRing() {}

  /**
   * @return {x, y}, mm
   */
  static double[][] of(OutlinePart part, double turnDeg) {
    int n = part.outline().size();
    double[] x = new double[n];
    double[] y = new double[n];
    OutlineTurn turn = new OutlineTurn(turnDeg);
    for (int i = 0; i < n; i++) {
      OutlinePoint p = part.outline().get(i);
      x[i] = turn.x(p.xMm(), p.yMm());
      y[i] = turn.y(p.xMm(), p.yMm());
    }
    double twiceArea = 0;
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      twiceArea += x[i] * y[j] - x[j] * y[i];
    }
    if (twiceArea < 0) {
      reverse(x);
      reverse(y);
    }
    return OutlineHull.of(x, y);
  }

  private static void reverse(double[] values) {
    for (int i = 0, j = values.length - 1; i < j; i++, j--) {
      double held = values[i];
      values[i] = values[j];
      values[j] = held;
    }
  }
}
