package trammel.engine.clearance;

/**
 * Nearest points of two line segments in closed form; either may be a single point.
 *
 * <p>Source: C. Ericson, Real-Time Collision Detection (2005), section 5.1.9, from memory. Nearly
 * parallel segments are handled by comparing the four ends instead, which loses nothing: their
 * nearest points can be chosen so that one of them is an end.
 */
final class LinePair {

  /** Squared sine of the angle below which the crossing point of two lines is only noise. */
  private static final double PARALLEL_SINE_SQUARED = 1e-12;

  /** Closer than this the line between the nearest points has no usable direction. */
  private static final double TOUCH_MM = 1e-9;

  private LinePair() {}

  static void find(Placed a, Placed b, NearestPoints near) {
    double uu = square(a);
    double vv = square(b);
    double uv = a.alongX() * b.alongX() + a.alongY() * b.alongY() + a.alongZ() * b.alongZ();
    double rx = b.centreX() - a.centreX();
    double ry = b.centreY() - a.centreY();
    double rz = b.centreZ() - a.centreZ();
    double ur = a.alongX() * rx + a.alongY() * ry + a.alongZ() * rz;
    double vr = b.alongX() * rx + b.alongY() * ry + b.alongZ() * rz;
    double denominator = uu * vv - uv * uv;
    near.gapMm = Double.POSITIVE_INFINITY;
    if (denominator > PARALLEL_SINE_SQUARED * uu * vv) {
      double s = clamp((ur * vv - vr * uv) / denominator);
      double t = (s * uv - vr) / vv;
      if (t < -1 || t > 1) {
        t = clamp(t);
        s = clamp((ur + t * uv) / uu);
      }
      keepNearer(a, b, s, t, near);
    } else {
      keepNearer(a, b, 1, nearest(uv - vr, vv), near);
      keepNearer(a, b, -1, nearest(-uv - vr, vv), near);
      keepNearer(a, b, nearest(ur + uv, uu), 1, near);
      keepNearer(a, b, nearest(ur - uv, uu), -1, near);
    }
    setDirection(a, b, near);
  }

  private static double nearest(double numerator, double square) {
    return square > 0 ? clamp(numerator / square) : 0;
  }

  private static void keepNearer(Placed a, Placed b, double s, double t, NearestPoints near) {
    double ax = a.centreX() + s * a.alongX();
    double ay = a.centreY() + s * a.alongY();
    double az = a.centreZ() + s * a.alongZ();
    double bx = b.centreX() + t * b.alongX();
    double by = b.centreY() + t * b.alongY();
    double bz = b.centreZ() + t * b.alongZ();
    double x = ax - bx;
    double y = ay - by;
    double z = az - bz;
    double gapMm = Math.sqrt(x * x + y * y + z * z);
    if (gapMm < near.gapMm) {
      near.gapMm = gapMm;
      near.ax = ax;
      near.ay = ay;
      near.az = az;
      near.bx = bx;
      near.by = by;
      near.bz = bz;
    }
  }

  private static void setDirection(Placed a, Placed b, NearestPoints near) {
    if (near.gapMm > TOUCH_MM) {
      near.setClear(near.ax - near.bx, near.ay - near.by, near.az - near.bz);
      return;
    }
    double x = a.alongY() * b.alongZ() - a.alongZ() * b.alongY();
    double y = a.alongZ() * b.alongX() - a.alongX() * b.alongZ();
    double z = a.alongX() * b.alongY() - a.alongY() * b.alongX();
    double crossSquare = x * x + y * y + z * z;
    if (crossSquare > PARALLEL_SINE_SQUARED * square(a) * square(b)) {
      near.setClear(x, y, z);
    } else if (square(a) >= square(b)) {
      near.clearSquareTo(a.alongX(), a.alongY(), a.alongZ());
    } else {
      near.clearSquareTo(b.alongX(), b.alongY(), b.alongZ());
    }
  }

  private static double square(Placed line) {
    return line.alongX() * line.alongX()
        + line.alongY() * line.alongY()
        + line.alongZ() * line.alongZ();
  }

  private static double clamp(double value) {
    return Math.max(-1, Math.min(1, value));
  }
}
