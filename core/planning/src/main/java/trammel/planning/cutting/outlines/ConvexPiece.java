package trammel.planning.cutting.outlines;

/** A convex polygon, corners counter-clockwise, with the outward normals of its sides; mm. */
final class ConvexPiece {
  final double[] x;
  final double[] y;
  final double minX;
  final double minY;
  final double maxX;
  final double maxY;
  private final double[] normalX;
  private final double[] normalY;

  /** Distance of each side from the origin along its normal. */
  private final double[] offset;

  ConvexPiece(double[] x, double[] y) {
    this.x = x;
    this.y = y;
    int n = x.length;
    normalX = new double[n];
    normalY = new double[n];
    offset = new double[n];
    double lowX = x[0];
    double lowY = y[0];
    double highX = x[0];
    double highY = y[0];
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      double length = Math.hypot(x[j] - x[i], y[j] - y[i]);
      normalX[i] = (y[j] - y[i]) / length;
      normalY[i] = (x[i] - x[j]) / length;
      offset[i] = normalX[i] * x[i] + normalY[i] * y[i];
      lowX = Math.min(lowX, x[i]);
      lowY = Math.min(lowY, y[i]);
      highX = Math.max(highX, x[i]);
      highY = Math.max(highY, y[i]);
    }
    minX = lowX;
    minY = lowY;
    maxX = highX;
    maxY = highY;
  }

  /**
   * How far two pieces are apart along the best of their side normals; negative when they overlap,
   * by how far one must move. Never more than the true distance (separating axis theorem).
   *
   * @param dx x of the other piece's origin less that of this one
   * @param dy the same in y
   * @param enough stops looking once they are known to be this far apart
   */
  double apart(ConvexPiece other, double dx, double dy, double enough) {
    double best = side(other, dx, dy, enough, Double.NEGATIVE_INFINITY);
    return best >= enough ? best : other.side(this, -dx, -dy, enough, best);
  }

  private double side(ConvexPiece other, double dx, double dy, double enough, double known) {
    double best = known;
    for (int i = 0; i < normalX.length; i++) {
      double nx = normalX[i];
      double ny = normalY[i];
      double shift = nx * dx + ny * dy - offset[i];
      double nearest = Double.POSITIVE_INFINITY;
      for (int j = 0; j < other.x.length; j++) {
        double reach = nx * other.x[j] + ny * other.y[j];
        if (reach < nearest) {
          nearest = reach;
        }
      }
      if (nearest + shift > best) {
        best = nearest + shift;
        if (best >= enough) {
          return best;
        }
      }
    }
    return best;
  }
}
