package trammel.cutting.outlines;

import java.util.Arrays;

/**
 * The shifts of one convex piece against another at which they come closer than their clearance: a
 * convex polygon, the Minkowski sum of one and the mirrored other, grown by the clearance; mm.
 */
final class NoFitPiece {
  /** Numbers kept for each side: normal x and y, and its distance from the origin. */
  static final int NUMBERS_PER_SIDE = 3;

  private static final double SAME_DIRECTION = 1e-9;

  /** Corners are cut off, a clearance away from their tip, until they turn by less than this. */
  private static final double SHARPEST = Math.PI / 4;

  /** Clearances below this part of the size are not worth cutting corners off for. */
  private static final double LITTLE = 1e-4;

  final double[] sides;
  final double[] cornerX;
  final double[] cornerY;
  final double lowX;
  final double highX;
  final double lowY;
  final double highY;

  NoFitPiece(ConvexPiece a, ConvexPiece b, double clearance) {
    double[][] around = merged(sorted(a, b));
    double size = Math.max(a.maxX - a.minX, a.maxY - a.minY);
    this.sides = grown(around, clearance, clearance > LITTLE * size);
    int n = sides.length / NUMBERS_PER_SIDE;
    this.cornerX = new double[n];
    this.cornerY = new double[n];
    double leastX = Double.POSITIVE_INFINITY;
    double mostX = Double.NEGATIVE_INFINITY;
    double leastY = Double.POSITIVE_INFINITY;
    double mostY = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      int s = NUMBERS_PER_SIDE * i;
      int t = NUMBERS_PER_SIDE * ((i + 1) % n);
      double cross = sides[s] * sides[t + 1] - sides[s + 1] * sides[t];
      cornerX[i] = (sides[s + 2] * sides[t + 1] - sides[t + 2] * sides[s + 1]) / cross;
      cornerY[i] = (sides[s] * sides[t + 2] - sides[t] * sides[s + 2]) / cross;
      leastX = Math.min(leastX, cornerX[i]);
      mostX = Math.max(mostX, cornerX[i]);
      leastY = Math.min(leastY, cornerY[i]);
      mostY = Math.max(mostY, cornerY[i]);
    }
    this.lowX = leastX;
    this.highX = mostX;
    this.lowY = leastY;
    this.highY = mostY;
  }

  /** Sides of the sum without clearance by direction: {angle, normal x, normal y, distance}. */
  private static double[][] sorted(ConvexPiece a, ConvexPiece b) {
    double[][] around = new double[a.sides() + b.sides()][];
    int n = 0;
    for (int i = 0; i < a.sides(); i++) {
      double x = a.normalX(i);
      double y = a.normalY(i);
      around[n++] = new double[] {Math.atan2(y, x), x, y, a.offset(i) - b.nearest(x, y)};
    }
    for (int i = 0; i < b.sides(); i++) {
      double x = -b.normalX(i);
      double y = -b.normalY(i);
      around[n++] = new double[] {Math.atan2(y, x), x, y, b.offset(i) - a.nearest(-x, -y)};
    }
    Arrays.sort(around, NoFitPiece::byAngle);
    return around;
  }

  private static int byAngle(double[] one, double[] other) {
    return Double.compare(one[0], other[0]);
  }

  /** Of sides in one direction the nearest. */
  private static double[][] merged(double[][] around) {
    double[][] merged = new double[around.length][];
    int n = 0;
    for (double[] side : around) {
      if (n > 0 && side[0] - merged[n - 1][0] < SAME_DIRECTION) {
        merged[n - 1] = nearer(merged[n - 1], side);
      } else {
        merged[n++] = side;
      }
    }
    if (n > 1 && merged[0][0] + 2 * Math.PI - merged[n - 1][0] < SAME_DIRECTION) {
      double[] last = merged[--n];
      double[] sameTurnAgo = {last[0] - 2 * Math.PI, last[1], last[2], last[3]};
      merged[0] = nearer(merged[0], sameTurnAgo);
    }
    return Arrays.copyOf(merged, n);
  }

  private static double[] nearer(double[] one, double[] other) {
    return one[3] <= other[3] ? one : other;
  }

  private static double[] grown(double[][] around, double clearance, boolean blunt) {
    int room = around.length + (blunt ? (int) Math.ceil(2 * Math.PI / SHARPEST) : 0);
    double[] sides = new double[NUMBERS_PER_SIDE * room];
    int at = 0;
    for (int i = 0; i < around.length; i++) {
      double[] side = around[i];
      at = put(sides, at, side[1], side[2], side[3] + clearance);
      double[] next = around[(i + 1) % around.length];
      double turn = next[0] - side[0] + (i + 1 == around.length ? 2 * Math.PI : 0);
      int cuts = blunt ? (int) Math.ceil(turn / SHARPEST) - 1 : 0;
      double cross = side[1] * next[2] - side[2] * next[1];
      double x = (side[3] * next[2] - next[3] * side[2]) / cross;
      double y = (side[1] * next[3] - next[1] * side[3]) / cross;
      for (int cut = 1; cut <= cuts; cut++) {
        double angle = side[0] + turn * cut / (cuts + 1);
        double normalX = Math.cos(angle);
        double normalY = Math.sin(angle);
        at = put(sides, at, normalX, normalY, normalX * x + normalY * y + clearance);
      }
    }
    return Arrays.copyOf(sides, at);
  }

  private static int put(double[] sides, int at, double x, double y, double distance) {
    sides[at] = x;
    sides[at + 1] = y;
    sides[at + 2] = distance;
    return at + NUMBERS_PER_SIDE;
  }

  /** How deep a shift lies inside; for shifts outside no more than minus the distance, mm. */
  double depth(double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < sides.length; i += NUMBERS_PER_SIDE) {
      least = Math.min(least, sides[i + 2] - sides[i] * x - sides[i + 1] * y);
    }
    return least;
  }
}
