package trammel.engine.clearance;

/**
 * Working result of one distance search: the nearest points a and b, the unit direction from b to a
 * (the way the first body must move to get clear) and the signed gap, so that a - b is the
 * direction times the gap, in penetration too.
 */
final class NearestPoints {
  double gapMm;
  double ax;
  double ay;
  double az;
  double bx;
  double by;
  double bz;
  double clearX;
  double clearY;
  double clearZ;

  /** Thickens both bodies by a margin. */
  void thicken(double marginAMm, double marginBMm) {
    gapMm -= marginAMm + marginBMm;
    ax -= clearX * marginAMm;
    ay -= clearY * marginAMm;
    az -= clearZ * marginAMm;
    bx += clearX * marginBMm;
    by += clearY * marginBMm;
    bz += clearZ * marginBMm;
  }

  /** Makes the direction a unit vector square to the given one, which may be zero. */
  void clearSquareTo(double x, double y, double z) {
    double square = x * x + y * y + z * z;
    if (square == 0) {
      setClear(0, 0, 1);
    } else if (Math.abs(z) <= Math.abs(x) || Math.abs(z) <= Math.abs(y)) {
      // Up as far as possible, because lifting is how parts are usually moved apart.
      setClear(-x * z / square, -y * z / square, 1 - z * z / square);
    } else {
      setClear(1 - x * x / square, -y * x / square, -z * x / square);
    }
  }

  /** Sets the direction from a vector of any length but zero. */
  void setClear(double x, double y, double z) {
    double length = Math.sqrt(x * x + y * y + z * z);
    clearX = x / length;
    clearY = y / length;
    clearZ = z / length;
  }
}
