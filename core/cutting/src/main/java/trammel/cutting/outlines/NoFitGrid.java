package trammel.cutting.outlines;

import java.util.Arrays;

/**
 * The grid of a {@link NoFitField}, made by halving it again and again: each half only looks at the
 * pieces and the boundary that can matter in it; mm.
 */
final class NoFitGrid {
  /** Cells along the longer side: more of them where many pieces would share each. */
  private static final int FEW_CELLS = 24;

  private static final int MANY_CELLS = 48;
  private static final int MANY_PIECES = 20;
  private static final double NOISE = 1e-6;

  final double lowX;
  final double lowY;
  final double cellMm;
  final int columns;
  final int rows;

  /** Depth at every node, 0 outside. */
  final double[] node;

  /** Per cell where its list starts; {@link NoFitLists#NONE} well inside and outside. */
  final int[] first;

  final NoFitLists lists = new NoFitLists();
  private final NoFitPiece[] pieces;
  private final NoFitBoundary boundary;

  NoFitGrid(NoFitPiece[] pieces) {
    this.pieces = pieces;
    this.boundary = new NoFitBoundary(pieces);
    double leastX = Double.POSITIVE_INFINITY;
    double mostX = Double.NEGATIVE_INFINITY;
    double leastY = Double.POSITIVE_INFINITY;
    double mostY = Double.NEGATIVE_INFINITY;
    for (NoFitPiece piece : pieces) {
      leastX = Math.min(leastX, piece.lowX);
      mostX = Math.max(mostX, piece.highX);
      leastY = Math.min(leastY, piece.lowY);
      mostY = Math.max(mostY, piece.highY);
    }
    int cells = pieces.length < MANY_PIECES ? FEW_CELLS : MANY_CELLS;
    lowX = leastX;
    lowY = leastY;
    cellMm = Math.max(mostX - leastX, mostY - leastY) / cells;
    columns = 1 + (int) ((mostX - leastX) / cellMm);
    rows = 1 + (int) ((mostY - leastY) / cellMm);
    node = new double[(columns + 1) * (rows + 1)];
    Arrays.fill(node, Double.NaN);
    first = new int[columns * rows];
    divide(0, columns, 0, rows, upTo(pieces.length), upTo(boundary.segments()));
  }

  private static int[] upTo(int count) {
    int[] numbers = new int[count];
    for (int i = 0; i < count; i++) {
      numbers[i] = i;
    }
    return numbers;
  }

  private void divide(int fromI, int toI, int fromJ, int toJ, int[] among, int[] segments) {
    double x = lowX + (fromI + toI) * cellMm / 2;
    double y = lowY + (fromJ + toJ) * cellMm / 2;
    double half = Math.hypot(toI - fromI, toJ - fromJ) * cellMm / 2 * (1 + NOISE);
    int[] near = near(among, x, y, half);
    if (near.length == 0) {
      outside(fromI, toI, fromJ, toJ);
      return;
    }
    int[] close = boundary.nearest(segments, x, y, 2 * half);
    int wide = toI - fromI;
    int high = toJ - fromJ;
    if (wide == 1 && high == 1) {
      finish(fromI, fromJ, near, close);
    } else if (wide >= high) {
      int middle = (fromI + toI) / 2;
      divide(fromI, middle, fromJ, toJ, near, close);
      divide(middle, toI, fromJ, toJ, near, close);
    } else {
      int middle = (fromJ + toJ) / 2;
      divide(fromI, toI, fromJ, middle, near, close);
      divide(fromI, toI, middle, toJ, near, close);
    }
  }

  /** The pieces that reach within a distance of a shift. */
  private int[] near(int[] among, double x, double y, double distance) {
    int[] near = new int[among.length];
    int count = 0;
    for (int p : among) {
      if (pieces[p].depth(x, y) > -distance) {
        near[count++] = p;
      }
    }
    return Arrays.copyOf(near, count);
  }

  private void outside(int fromI, int toI, int fromJ, int toJ) {
    for (int j = fromJ; j <= toJ; j++) {
      Arrays.fill(node, j * (columns + 1) + fromI, j * (columns + 1) + toI + 1, 0);
    }
  }

  private void finish(int i, int j, int[] near, int[] segments) {
    double least = Double.POSITIVE_INFINITY;
    for (int corner = 0; corner < 4; corner++) {
      least = Math.min(least, depth(i + corner % 2, j + corner / 2, near, segments));
    }
    // Depth changes no faster than the shift, so that such a cell lies inside as a whole.
    if (least <= cellMm * Math.sqrt(0.5) * (1 + NOISE)) {
      first[j * columns + i] = list(i, j, near);
    }
  }

  private double depth(int i, int j, int[] near, int[] segments) {
    int n = j * (columns + 1) + i;
    if (Double.isNaN(node[n])) {
      double x = lowX + i * cellMm;
      double y = lowY + j * cellMm;
      node[n] = near(near, x, y, 0).length > 0 ? boundary.distance(segments, x, y) : 0;
    }
    return node[n];
  }

  private int list(int i, int j, int[] near) {
    NoFitCell cell =
        new NoFitCell(lowX + (i + 0.5) * cellMm, lowY + (j + 0.5) * cellMm, cellMm / 2);
    for (int p : near) {
      cell.add(pieces[p].sides);
    }
    return lists.add(cell);
  }
}
