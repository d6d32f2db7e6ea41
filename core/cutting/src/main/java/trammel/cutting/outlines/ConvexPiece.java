package trammel.cutting.outlines;

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

  ConvexPiece turned(OutlineTurn turn) {
    double[] turnedX = new double[x.length];
    double[] turnedY = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      turnedX[i] = turn.x(x[i], y[i]);
      turnedY[i] = turn.y(x[i], y[i]);
    }
    return new ConvexPiece(turnedX, turnedY);
  }

  int sides() {
    return x.length;
  }

  double normalX(int side) {
    return normalX[side];
  }

  double normalY(int side) {
    return normalY[side];
  }

  double offset(int side) {
    return offset[side];
  }

  /** Least reach of any corner along a direction. */
  double nearest(double directionX, double directionY) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      nearest = Math.min(nearest, directionX * x[i] + directionY * y[i]);
    }
    return nearest;
  }
}
