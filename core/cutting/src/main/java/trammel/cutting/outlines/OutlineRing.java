package trammel.cutting.outlines;

/** The corners of a part, counter-clockwise, arcs of many corners made plainer. */
final class OutlineRing {
  private OutlineRing() {}

  /**
   * As it is drawn.
   *
   * @return {x, y}, mm
   */
  static double[][] of(OutlinePart part) {
    int n = part.outline().size();
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      OutlinePoint p = part.outline().get(i);
      x[i] = p.xMm();
      y[i] = p.yMm();
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

  /** A ring turned about the origin. */
  static double[][] turned(double[][] ring, OutlineTurn turn) {
    double[][] turned = new double[2][ring[0].length];
    for (int i = 0; i < ring[0].length; i++) {
      turned[0][i] = turn.x(ring[0][i], ring[1][i]);
      turned[1][i] = turn.y(ring[0][i], ring[1][i]);
    }
    return turned;
  }

  private static void reverse(double[] values) {
    for (int i = 0, j = values.length - 1; i < j; i++, j--) {
      double held = values[i];
      values[i] = values[j];
      values[j] = held;
    }
  }
}
