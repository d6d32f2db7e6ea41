package trammel.planning.cutting.outlines;

/**
 * How deep two outlines lie in each other, for any shift of the second against the first; mm.
 *
 * <p>The shifts at which they overlap are the union of the no-fit polygons of their convex pieces.
 * A grid over that union holds, for each of its nodes, the distance to where the outlines come free
 * (their penetration depth). Well inside, the depth is read off between four nodes; near the
 * boundary the few pieces that reach into the cell are asked, so that what keeps its clearance and
 * what does not is told apart exactly.
 */
final class NoFitField {
  /** Cells along the longer side: more of them where many pieces would share each. */
  private static final int FEW_CELLS = 20;

  private static final int MANY_CELLS = 32;
  private static final int MANY_PIECES = 20;

  private final double lowX;
  private final double lowY;
  private final double cellsPerMm;
  private final int columns;
  private final int rows;
  private final double[] node;

  /** Per cell where its pieces start in {@link #listed}; none inside and outside. */
  private final int[] first;

  private final int[] listed;

  /** Per piece where its sides start in {@link #sides}. */
  private final int[] sidesFrom;

  private final double[] sides;

  NoFitField(ConvexPiece[] a, ConvexPiece[] b, double clearance) {
    NoFitPiece[] pieces = new NoFitPiece[a.length * b.length];
    double leastX = Double.POSITIVE_INFINITY;
    double mostX = Double.NEGATIVE_INFINITY;
    double leastY = Double.POSITIVE_INFINITY;
    double mostY = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < pieces.length; i++) {
      pieces[i] = new NoFitPiece(a[i / b.length], b[i % b.length], clearance);
      leastX = Math.min(leastX, pieces[i].lowX);
      mostX = Math.max(mostX, pieces[i].highX);
      leastY = Math.min(leastY, pieces[i].lowY);
      mostY = Math.max(mostY, pieces[i].highY);
    }
    int cells = pieces.length < MANY_PIECES ? FEW_CELLS : MANY_CELLS;
    double cell = Math.max(mostX - leastX, mostY - leastY) / cells;
    lowX = leastX;
    lowY = leastY;
    cellsPerMm = 1 / cell;
    columns = 1 + (int) ((mostX - leastX) * cellsPerMm);
    rows = 1 + (int) ((mostY - leastY) * cellsPerMm);
    node = nodes(pieces, cell);
    first = new int[columns * rows + 1];
    listed = list(pieces, cell);
    sidesFrom = new int[pieces.length + 1];
    for (int p = 0; p < pieces.length; p++) {
      sidesFrom[p + 1] = sidesFrom[p] + pieces[p].sides.length;
    }
    sides = new double[sidesFrom[pieces.length]];
    for (int p = 0; p < pieces.length; p++) {
      System.arraycopy(pieces[p].sides, 0, sides, sidesFrom[p], pieces[p].sides.length);
    }
  }

  /** Depth at every node, 0 outside. */
  private double[] nodes(NoFitPiece[] pieces, double cell) {
    NoFitBoundary boundary = new NoFitBoundary(pieces);
    double[] depth = new double[(columns + 1) * (rows + 1)];
    for (int j = 0; j <= rows; j++) {
      double y = lowY + j * cell;
      for (int i = 0; i <= columns; i++) {
        double x = lowX + i * cell;
        if (holds(pieces, x, y)) {
          depth[j * (columns + 1) + i] = boundary.distance(x, y);
        }
      }
    }
    return depth;
  }

  private static boolean holds(NoFitPiece[] pieces, double x, double y) {
    for (NoFitPiece p : pieces) {
      if (x > p.lowX && x < p.highX && y > p.lowY && y < p.highY && p.depth(x, y) > 0) {
        return true;
      }
    }
    return false;
  }

  /** Fills {@link #first}; returns the pieces of all cells that are not well inside. */
  private int[] list(NoFitPiece[] pieces, double cell) {
    double half = cell * Math.sqrt(0.5) * (1 + 1e-6);
    int[] found = new int[first.length * 2];
    int count = 0;
    for (int c = 0; c < columns * rows; c++) {
      first[c] = count;
      if (isDeep(c, half)) {
        continue;
      }
      double x = lowX + (c % columns + 0.5) * cell;
      double y = lowY + (c / columns + 0.5) * cell;
      for (int p = 0; p < pieces.length; p++) {
        if (pieces[p].depth(x, y) > -half) {
          if (count == found.length) {
            found = java.util.Arrays.copyOf(found, 2 * count);
          }
          found[count++] = p;
        }
      }
    }
    first[columns * rows] = count;
    return java.util.Arrays.copyOf(found, count);
  }

  /** Depth changes no faster than the shift, so that such a cell lies inside as a whole. */
  private boolean isDeep(int cell, double half) {
    int n = cell / columns * (columns + 1) + cell % columns;
    return node[n] > half
        && node[n + 1] > half
        && node[n + columns + 1] > half
        && node[n + columns + 2] > half;
  }

  /**
   * @param x x of the second outline's origin less that of the first
   * @param y the same in y
   * @return depth, mm; 0 when the outlines keep their clearance
   */
  double at(double x, double y) {
    double u = (x - lowX) * cellsPerMm;
    double v = (y - lowY) * cellsPerMm;
    if (!(u > 0 && v > 0 && u < columns && v < rows)) {
      return 0;
    }
    int i = (int) u;
    int j = (int) v;
    int cell = j * columns + i;
    int from = first[cell];
    int to = first[cell + 1];
    return from == to ? between(i, j, u - i, v - j) : nearBoundary(from, to, x, y);
  }

  private double between(int i, int j, double u, double v) {
    int n = j * (columns + 1) + i;
    double below = node[n] + u * (node[n + 1] - node[n]);
    int m = n + columns + 1;
    double above = node[m] + u * (node[m + 1] - node[m]);
    return below + v * (above - below);
  }

  private double nearBoundary(int from, int to, double x, double y) {
    double most = 0;
    for (int k = from; k < to; k++) {
      int p = listed[k];
      most = deeper(most, sidesFrom[p], sidesFrom[p + 1], x, y);
    }
    return most;
  }

  /** The depth in one piece, or what is known already if that is not less. */
  private double deeper(double known, int from, int to, double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = from; i < to; i += NoFitPiece.NUMBERS_PER_SIDE) {
      double inside = sides[i + 2] - sides[i] * x - sides[i + 1] * y;
      // Written out: Math.min also orders zeros and takes several times as long.
      if (inside < least) {
        if (inside <= known) {
          return known;
        }
        least = inside;
      }
    }
    return least;
  }
}
