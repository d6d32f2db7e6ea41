package trammel.cutting.outlines;

import java.util.Arrays;

/** Which cells of a sheet are taken, and where an outline first finds room among them. */
final class CellSheet {
  private final double cellMm;
  final double widthMm;
  final double heightMm;
  private final int columns;
  private final int words;
  private final long[] taken;

  /** Columns of which something is taken. */
  private final boolean[] begun;

  private final long[] blocked;
  private final long[] run;

  CellSheet(double widthMm, double heightMm, double cellMm) {
    this.widthMm = widthMm;
    this.heightMm = heightMm;
    this.cellMm = cellMm;
    columns = (int) Math.ceil(widthMm / cellMm) + 1;
    words = ((int) Math.ceil(heightMm / cellMm) + 1 + 63) / 64;
    taken = new long[columns * words];
    begun = new boolean[columns];
    blocked = new long[words];
    run = new long[words];
  }

  /** Last column, or cell of a column, in which something of this size may start; −1 for none. */
  private int last(double roomMm, double sizeMm) {
    return sizeMm > roomMm + 1e-9 ? -1 : (int) Math.floor((roomMm - sizeMm) / cellMm + 1e-7);
  }

  /**
   * The first place from a column on, leftmost and then lowest.
   *
   * @param solid the outline's own cells
   * @param columnsBefore stop before this column
   * @return column and cell as column × 2^16 + cell, or −1
   */
  int place(OutlineCells solid, double[] sizeMm, int fromColumn, int columnsBefore) {
    int lastColumn = Math.min(last(widthMm, sizeMm[0]), columnsBefore - 1);
    int lastCell = last(heightMm, sizeMm[1]);
    if (lastCell < 0) {
      return -1;
    }
    for (int column = fromColumn; column <= lastColumn; column++) {
      int cell = firstFree(solid, column, lastCell);
      if (cell >= 0) {
        return column << 16 | cell;
      }
    }
    return -1;
  }

  /** All cells of a column are looked at together, a bit for each. */
  private int firstFree(OutlineCells solid, int column, int lastCell) {
    Arrays.fill(blocked, 0);
    for (int k = 0; k < solid.columns && column + k < columns; k++) {
      if (!begun[column + k]) {
        continue;
      }
      int[] runs = solid.runs(k);
      for (int r = 0; r < runs.length; r += 2) {
        block(column + k, runs[r], runs[r + 1]);
      }
      if (firstClear(lastCell) < 0) {
        return -1;
      }
    }
    return firstClear(lastCell);
  }

  private int firstClear(int lastCell) {
    for (int w = 0; w < words; w++) {
      long clear = ~blocked[w];
      if (clear != 0) {
        int cell = (w << 6) + Long.numberOfTrailingZeros(clear);
        return cell <= lastCell ? cell : -1;
      }
    }
    return -1;
  }

  /** Blocks every start from which a run of cells would meet one that is taken. */
  private void block(int column, int from, int length) {
    System.arraycopy(taken, column * words, run, 0, words);
    int covered = 1;
    while (covered < length) {
      int step = Math.min(covered, length - covered);
      orShifted(run, run, step);
      covered += step;
    }
    orShifted(blocked, run, from);
  }

  /** Takes each bit of a number into the one some places lower. */
  private void orShifted(long[] into, long[] from, int places) {
    int wordsOff = places >> 6;
    int bitsOff = places & 63;
    for (int w = 0; w + wordsOff < words; w++) {
      long value = from[w + wordsOff] >>> bitsOff;
      if (bitsOff > 0 && w + wordsOff + 1 < words) {
        value |= from[w + wordsOff + 1] << (64 - bitsOff);
      }
      into[w] |= value;
    }
  }

  /** Takes the cells of an outline and those too near to it. */
  void take(OutlineCells wide, int column, int cell) {
    for (int k = 0; k < wide.columns; k++) {
      int at = column + k - wide.off;
      if (at < 0 || at >= columns) {
        continue;
      }
      begun[at] = true;
      for (int c = 0; c < wide.cells; c++) {
        int cellAt = cell + c - wide.off;
        if (wide.touches(k, c) && cellAt >= 0 && cellAt < words << 6) {
          taken[at * words + (cellAt >> 6)] |= 1L << (cellAt & 63);
        }
      }
    }
  }
}
