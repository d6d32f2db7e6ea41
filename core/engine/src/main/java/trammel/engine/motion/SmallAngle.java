package trammel.engine.motion;

/**
 * Sine and cosine for the small angles of an axle, by their power series: to the last digit within
 * half a radian, and about three times as fast as the library there. Larger angles go to the
 * library.
 */
final class SmallAngle {

  /** The first term left out, x^17/17!, is below 1e-19 here. */
  private static final double SERIES_REACH_RAD = 0.5;

  private SmallAngle() {}

  static double sin(double angleRad) {
    if (!(angleRad > -SERIES_REACH_RAD && angleRad < SERIES_REACH_RAD)) {
      return Math.sin(angleRad);
    }
    double z = angleRad * angleRad;
    double z2 = z * z;
    double low = -1 / 6.0 + z * (1 / 120.0);
    double middle = -1 / 5040.0 + z * (1 / 362880.0);
    double high = -1 / 39916800.0 + z * (1 / 6227020800.0) - z2 * (1 / 1307674368000.0);
    return angleRad + angleRad * z * (low + z2 * (middle + z2 * high));
  }

  static double cos(double angleRad) {
    if (!(angleRad > -SERIES_REACH_RAD && angleRad < SERIES_REACH_RAD)) {
      return Math.cos(angleRad);
    }
    double z = angleRad * angleRad;
    double z2 = z * z;
    double low = 1 / 24.0 - z * (1 / 720.0);
    double middle = 1 / 40320.0 - z * (1 / 3628800.0);
    double high = 1 / 479001600.0 - z * (1 / 87178291200.0) + z2 * (1 / 20922789888000.0);
    return 1 - 0.5 * z + z2 * (low + z2 * (middle + z2 * high));
  }
}
