package trammel.cutting.outlines;

/**
 * A turn counter-clockwise about the origin, exact at quarter turns so that right angles stay
 * right.
 */
final class OutlineTurn {
  private static final double FULL_TURN_DEG = 360;

  final double deg;
  final double cos;
  final double sin;

  OutlineTurn(double deg) {
    this.deg = deg;
    this.cos = cosine(deg);
    this.sin = cosine(deg - 90);
  }

  private static double cosine(double deg) {
    double turn = withinFullTurn(deg);
    if (turn == 90 || turn == 270) {
      return 0;
    }
    if (turn == 0 || turn == 180) {
      return turn == 0 ? 1 : -1;
    }
    return Math.cos(Math.toRadians(turn));
  }

  /** The same direction from 0 to below 360 degrees. */
  static double withinFullTurn(double deg) {
    return ((deg % FULL_TURN_DEG) + FULL_TURN_DEG) % FULL_TURN_DEG;
  }

  double x(double atX, double atY) {
    return atX * cos - atY * sin;
  }

  double y(double atX, double atY) {
    return atX * sin + atY * cos;
  }
}
