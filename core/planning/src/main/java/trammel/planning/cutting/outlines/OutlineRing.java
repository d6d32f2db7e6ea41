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
    double cos = cosine(turnDeg);
    double sin = cosine(turnDeg - 90);
    for (int i = 0; i < n; i++) {
      OutlinePoint p = part.outline().get(i);
      x[i] = p.xMm() * cos - p.yMm() * sin;
      y[i] = p.xMm() * sin + p.yMm() * cos;
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

  /** Exact at quarter turns, so that right angles stay right. */
  private static double cosine(double deg) {
    double turn = ((deg % 360) + 360) % 360;
    if (turn == 90 || turn == 270) {
      return 0;
    }
    if (turn == 0 || turn == 180) {
      return turn == 0 ? 1 : -1;
    }
    return Math.cos(Math.toRadians(turn));
  }

  private static void reverse(double[] values) {
    for (int i = 0, j = values.length - 1; i < j; i++, j--) {
      double held = values[i];
      values[i] = values[j];
      values[j] = held;
    }
  }
}
