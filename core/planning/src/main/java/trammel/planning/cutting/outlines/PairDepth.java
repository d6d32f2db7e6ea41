package trammel.planning.cutting.outlines;

/**
 * How deep two outlines lie in each other, for any shift of one against the other.
 *
 * <p>For each pair of convex pieces the distance along every side normal is linear in the shift, so
 * that only its coefficients are kept; the pieces are as far apart as the largest of them says
 * (separating axis theorem), which is never more than the true distance.
 */
final class PairDepth {
  private static final int NUMBERS_PER_PLANE = 3;

  private final double clearance;
  private final double[][] planes;

  /** Per pair of pieces the shifts outside which they are clear: low and high x, low and high y. */
  private final double[][] reach;

  private double lowX = Double.POSITIVE_INFINITY;
  private double highX = Double.NEGATIVE_INFINITY;
  private double lowY = Double.POSITIVE_INFINITY;
  private double highY = Double.NEGATIVE_INFINITY;

  PairDepth(OutlineShape a, OutlineShape b, double clearance) {
    this.clearance = clearance;
    this.planes = new double[a.pieces.length * b.pieces.length][];
    this.reach = new double[planes.length][];
    int pair = 0;
    for (ConvexPiece p : a.pieces) {
      for (ConvexPiece q : b.pieces) {
        planes[pair] = planes(p, q);
        double[] box = {
          p.minX - clearance - q.maxX,
          p.maxX + clearance - q.minX,
          p.minY - clearance - q.maxY,
          p.maxY + clearance - q.minY
        };
        reach[pair++] = box;
        lowX = Math.min(lowX, box[0]);
        highX = Math.max(highX, box[1]);
        lowY = Math.min(lowY, box[2]);
        highY = Math.max(highY, box[3]);
      }
    }
  }

  private static double[] planes(ConvexPiece p, ConvexPiece q) {
    double[] result = new double[NUMBERS_PER_PLANE * (p.sides() + q.sides())];
    int at = 0;
    for (int i = 0; i < p.sides(); i++) {
      result[at++] = p.normalX(i);
      result[at++] = p.normalY(i);
      result[at++] = q.nearest(p.normalX(i), p.normalY(i)) - p.offset(i);
    }
    for (int i = 0; i < q.sides(); i++) {
      result[at++] = -q.normalX(i);
      result[at++] = -q.normalY(i);
      result[at++] = p.nearest(q.normalX(i), q.normalY(i)) - q.offset(i);
    }
    return result;
  }

  /**
   * @param dx x of the second outline's origin less that of the first
   * @param dy the same in y
   * @return depth summed over all pairs of pieces, mm; 0 when the outlines keep their clearance
   */
  double at(double dx, double dy) {
    if (dx <= lowX || dx >= highX || dy <= lowY || dy >= highY) {
      return 0;
    }
    double depth = 0;
    for (int pair = 0; pair < planes.length; pair++) {
      double[] box = reach[pair];
      if (dx > box[0] && dx < box[1] && dy > box[2] && dy < box[3]) {
        depth += depth(planes[pair], dx, dy);
      }
    }
    return depth;
  }

  private double depth(double[] pair, double dx, double dy) {
    double apart = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < pair.length; i += NUMBERS_PER_PLANE) {
      double along = pair[i] * dx + pair[i + 1] * dy + pair[i + 2];
      if (along > apart) {
        apart = along;
        if (apart >= clearance) {
          return 0;
        }
      }
    }
    return clearance - apart;
  }
}
