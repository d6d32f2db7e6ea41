package trammel.cutting.outlines;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Of all sides of all pieces those that decide how deep a shift lies, within one square; mm. */
final class NoFitCell {
  private static final int STEP = NoFitPiece.NUMBERS_PER_SIDE;

  private final double x;
  private final double y;
  private final double half;
  private final List<double[]> kept = new ArrayList<>();

  /**
   * @param x middle of the square
   * @param half half the length of its sides
   */
  NoFitCell(double x, double y, double half) {
    this.x = x;
    this.y = y;
    this.half = half;
  }

  int pieces() {
    return kept.size();
  }

  double[] sides(int piece) {
    return kept.get(piece);
  }

  /** Takes a piece, unless it reaches nowhere into the square or another is deeper all over it. */
  void add(double[] sides) {
    double[] added = deciding(sides);
    if (staysOut(added)) {
      return;
    }
    for (double[] known : kept) {
      if (isDeeper(known, added)) {
        return;
      }
    }
    kept.removeIf(known -> isDeeper(added, known));
    kept.add(added);
  }

  private double[] deciding(double[] sides) {
    double[] deciding = new double[sides.length];
    int length = 0;
    for (int i = 0; i < sides.length; i += STEP) {
      boolean decides = true;
      for (int k = 0; k < length && decides; k += STEP) {
        decides = !isFurther(sides, i, deciding, k);
      }
      for (int k = i + STEP; k < sides.length && decides; k += STEP) {
        decides = !isFurther(sides, i, sides, k);
      }
      if (decides) {
        System.arraycopy(sides, i, deciding, length, STEP);
        length += STEP;
      }
    }
    return Arrays.copyOf(deciding, length);
  }

  private boolean staysOut(double[] sides) {
    for (int i = 0; i < sides.length; i += STEP) {
      double reach = half * (Math.abs(sides[i]) + Math.abs(sides[i + 1]));
      if (inside(sides, i) + reach <= 0) {
        return true;
      }
    }
    return false;
  }

  /** One piece is deeper all over the square if it is so against a single side of the other. */
  private boolean isDeeper(double[] one, double[] other) {
    for (int i = 0; i < other.length; i += STEP) {
      boolean all = true;
      for (int k = 0; k < one.length && all; k += STEP) {
        all = isFurther(one, k, other, i);
      }
      if (all) {
        return true;
      }
    }
    return false;
  }

  /** All over the square, side i of one is at least as far away as side k of the other. */
  private boolean isFurther(double[] one, int i, double[] other, int k) {
    double differs = Math.abs(one[i] - other[k]) + Math.abs(one[i + 1] - other[k + 1]);
    return inside(one, i) - inside(other, k) >= half * differs;
  }

  private double inside(double[] sides, int i) {
    return sides[i + 2] - sides[i] * x - sides[i + 1] * y;
  }
}
