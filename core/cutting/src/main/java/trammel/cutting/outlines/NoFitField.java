package trammel.cutting.outlines;

/**
 * How deep two outlines lie in each other, for any shift of the second against the first; mm.
 *
 * <p>The shifts at which they overlap are the union of the no-fit polygons of their convex pieces.
 * A grid over that union holds, for each of its nodes, the distance to where the outlines come free
 * (their penetration depth). Well inside, the depth is read off between four nodes; near the
 * boundary the few sides of pieces that decide in the cell are asked, so that what keeps its
 * clearance and what does not is told apart exactly.
 */
final class NoFitField {
  private final double lowX;
  private final double lowY;
  private final double cellsPerMm;
  private final int columns;
  private final int rows;
  private final double[] node;

  /** Per cell where its list starts, the lists, and the sides of the pieces in them. */
  private final int[] first;

  private final int[] listed;
  private final double[] sides;

  NoFitField(ConvexPiece[] a, ConvexPiece[] b, double clearance) {
    NoFitPiece[] pieces = new NoFitPiece[a.length * b.length];
    for (int i = 0; i < pieces.length; i++) {
      pieces[i] = new NoFitPiece(a[i / b.length], b[i % b.length], clearance);
    }
    NoFitGrid grid = new NoFitGrid(pieces);
    lowX = grid.lowX;
    lowY = grid.lowY;
    cellsPerMm = 1 / grid.cellMm;
    columns = grid.columns;
    rows = grid.rows;
    node = grid.node;
    first = grid.first;
    listed = grid.lists.listed();
    sides = grid.lists.sides();
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
    int list = first[j * columns + i];
    return list == NoFitLists.NONE ? between(i, j, u - i, v - j) : nearBoundary(list, x, y);
  }

  private double between(int i, int j, double u, double v) {
    int n = j * (columns + 1) + i;
    double below = node[n] + u * (node[n + 1] - node[n]);
    int m = n + columns + 1;
    double above = node[m] + u * (node[m + 1] - node[m]);
    return below + v * (above - below);
  }

  private double nearBoundary(int list, double x, double y) {
    double most = 0;
    int end = list + listed[list];
    for (int k = list + 1; k <= end; k++) {
      most = deeper(most, listed[k], listed[k + 1], x, y);
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
