package trammel.cutting.outlines;

import java.util.Arrays;

/**
 * The cells of a square grid that an outline touches, turned one way: column by column along x, a
 * bit for each cell along y. The grid starts at the outline's lower left corner, some cells off it.
 */
final class OutlineCells {
  private static final double SLACK = 1e-7;

  final double cellMm;

  /** Columns and cells of a column. */
  final int columns;

  final int cells;

  /** Cells between the outline's lower left corner and the grid's. */
  final int off;

  /** Words of a column, each of 64 cells. */
  final int words;

  private final long[] bits;
  private final double[] x;
  private final double[] y;
  private int[][] runs;

  /**
   * @param x corners, counter-clockwise, mm
   * @param y corners, mm
   * @param nearMm cells nearer to the outline than this are touched too, mm
   */
  OutlineCells(double[] x, double[] y, double cellMm, double nearMm) {
    this.cellMm = cellMm;
    off = nearMm > 0 ? (int) Math.ceil(nearMm / cellMm) : 0;
    double lowX = least(x);
    double lowY = least(y);
    this.x = moved(x, off * cellMm - lowX);
    this.y = moved(y, off * cellMm - lowY);
    columns = count(greatest(this.x)) + off;
    cells = count(greatest(this.y)) + off;
    words = (cells + 63) / 64;
    bits = new long[columns * words];
    for (int i = 0; i < x.length; i++) {
      edge(i, (i + 1) % x.length, nearMm);
    }
    inside();
  }

  private int count(double mm) {
    return (int) Math.ceil(mm / cellMm - SLACK);
  }

  private static double least(double[] values) {
    double least = Double.POSITIVE_INFINITY;
    for (double value : values) {
      least = Math.min(least, value);
    }
    return least;
  }

  private static double greatest(double[] values) {
    double greatest = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      greatest = Math.max(greatest, value);
    }
    return greatest;
  }

  private static double[] moved(double[] values, double byMm) {
    double[] moved = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      moved[i] = values[i] + byMm;
    }
    return moved;
  }

  long word(int column, int word) {
    return bits[column * words + word];
  }

  boolean touches(int column, int cell) {
    return (word(column, cell >> 6) >>> (cell & 63) & 1) != 0;
  }

  /** The touched cells of a column in runs: where each begins, and how long it is. */
  int[] runs(int column) {
    if (runs == null) {
      runs = new int[columns][];
      for (int each = 0; each < columns; each++) {
        runs[each] = runsOf(each);
      }
    }
    return runs[column];
  }

  private int[] runsOf(int column) {
    int[] found = new int[cells + 1];
    int count = 0;
    int cell = 0;
    while (cell < cells) {
      int from = cell;
      while (cell < cells && touches(column, cell)) {
        cell++;
      }
      if (cell > from) {
        found[count++] = from;
        found[count++] = cell - from;
      }
      cell++;
    }
    return Arrays.copyOf(found, count);
  }

  private void touch(int column, int cell) {
    bits[column * words + (cell >> 6)] |= 1L << (cell & 63);
  }

  private void edge(int from, int to, double nearMm) {
    int first = clamp(Math.floor((Math.min(x[from], x[to]) - nearMm) / cellMm), columns);
    int last = clamp(Math.floor((Math.max(x[from], x[to]) + nearMm) / cellMm), columns);
    int low = clamp(Math.floor((Math.min(y[from], y[to]) - nearMm) / cellMm), cells);
    int high = clamp(Math.floor((Math.max(y[from], y[to]) + nearMm) / cellMm), cells);
    for (int column = first; column <= last; column++) {
      for (int cell = low; cell <= high; cell++) {
        if (!touches(column, cell) && isNear(column * cellMm, cell * cellMm, from, to, nearMm)) {
          touch(column, cell);
        }
      }
    }
  }

  private static int clamp(double index, int count) {
    return (int) Math.max(0, Math.min(count - 1, index));
  }

  /** Two convex figures that do not meet are nearest at a corner of one of them. */
  private boolean isNear(double left, double low, int from, int to, double nearMm) {
    double slack = SLACK * cellMm;
    double right = left + cellMm - slack;
    double high = low + cellMm - slack;
    double lefter = left + slack;
    double lower = low + slack;
    if (crosses(lefter, lower, right, high, from, to)) {
      return true;
    }
    double limit = nearMm * nearMm * (1 - SLACK);
    return limit > 0
        && (toEdge(lefter, lower, from, to) < limit
            || toEdge(right, lower, from, to) < limit
            || toEdge(right, high, from, to) < limit
            || toEdge(lefter, high, from, to) < limit
            || toCell(x[from], y[from], lefter, lower, right, high) < limit
            || toCell(x[to], y[to], lefter, lower, right, high) < limit);
  }

  /** Clips the edge to the cell, side by side (Liang and Barsky 1984, from memory). */
  private boolean crosses(double left, double low, double right, double high, int from, int to) {
    double enter = 0;
    double leave = 1;
    double dx = x[to] - x[from];
    double dy = y[to] - y[from];
    double[] p = {-dx, dx, -dy, dy};
    double[] q = {x[from] - left, right - x[from], y[from] - low, high - y[from]};
    for (int side = 0; side < 4; side++) {
      if (p[side] == 0) {
        if (q[side] < 0) {
          return false;
        }
      } else if (p[side] < 0) {
        enter = Math.max(enter, q[side] / p[side]);
      } else {
        leave = Math.min(leave, q[side] / p[side]);
      }
    }
    return enter <= leave;
  }

  private double toEdge(double px, double py, int from, int to) {
    double dx = x[to] - x[from];
    double dy = y[to] - y[from];
    double length = dx * dx + dy * dy;
    double share = length == 0 ? 0 : ((px - x[from]) * dx + (py - y[from]) * dy) / length;
    double at = Math.max(0, Math.min(1, share));
    double offX = px - x[from] - at * dx;
    double offY = py - y[from] - at * dy;
    return offX * offX + offY * offY;
  }

  private static double toCell(
      double px, double py, double left, double low, double right, double high) {
    double offX = Math.max(0, Math.max(left - px, px - right));
    double offY = Math.max(0, Math.max(low - py, py - high));
    return offX * offX + offY * offY;
  }

  /** Cells whose middle lies within; those on the edge are touched already. */
  private void inside() {
    for (int column = 0; column < columns; column++) {
      double middleX = (column + 0.5) * cellMm;
      for (int cell = 0; cell < cells; cell++) {
        if (!touches(column, cell) && holds(middleX, (cell + 0.5) * cellMm)) {
          touch(column, cell);
        }
      }
    }
  }

  private boolean holds(double px, double py) {
    boolean within = false;
    for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
      if (x[i] <= px != x[j] <= px && py < y[i] + (px - x[i]) / (x[j] - x[i]) * (y[j] - y[i])) {
        within = !within;
      }
    }
    return within;
  }
}
