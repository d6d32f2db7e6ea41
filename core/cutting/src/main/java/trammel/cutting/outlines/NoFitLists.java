package trammel.cutting.outlines;

import java.util.Arrays;

/** The lists of a {@link NoFitGrid} while they are made: which pieces decide in a cell. */
final class NoFitLists {
  /** What a cell without a list has in its place. */
  static final int NONE = 0;

  /** The list, without pieces, of all cells that none reaches into. */
  private static final int EMPTY = 1;

  private int[] listed = new int[256];
  private int listedLength = EMPTY + 1;
  private double[] sides = new double[1024];
  private int sidesLength;

  /** Adds the list of a cell; returns where it starts. */
  int add(NoFitCell cell) {
    int count = cell.pieces();
    if (count == 0) {
      return EMPTY;
    }
    int start = listedLength;
    append(count);
    for (int p = 0; p < count; p++) {
      append(sidesLength);
      append(cell.sides(p));
    }
    append(sidesLength);
    return start;
  }

  private void append(int number) {
    if (listedLength == listed.length) {
      listed = Arrays.copyOf(listed, 2 * listed.length);
    }
    listed[listedLength++] = number;
  }

  private void append(double[] more) {
    while (sidesLength + more.length > sides.length) {
      sides = Arrays.copyOf(sides, 2 * sides.length);
    }
    System.arraycopy(more, 0, sides, sidesLength, more.length);
    sidesLength += more.length;
  }

  /**
   * All lists behind each other: of each how many pieces it has, where in {@link #sides} those of
   * each piece start, and where those of the last one end.
   */
  int[] listed() {
    return Arrays.copyOf(listed, listedLength);
  }

  double[] sides() {
    return Arrays.copyOf(sides, sidesLength);
  }
}
