package trammel.engine.geometry;

/**
 * Point in vehicle axes (ISO 8855): x forward, y left, z up; origin on the ground under the middle
 * of the rear axle at ride height.
 *
 * @param xMm forward of the axle line (mm)
 * @param yMm left of the body's centre plane (mm)
 * @param zMm above the ground (mm)
 */
public record Point3(double xMm, double yMm, double zMm) {

  /**
   * @throws IllegalArgumentException if a coordinate is not a finite number
   */
  public Point3 {
    if (!(Double.isFinite(xMm) && Double.isFinite(yMm) && Double.isFinite(zMm))) {
      throw new IllegalArgumentException(
          "The point ("
              + xMm
              + ", "
              + yMm
              + ", "
              + zMm
              + ") mm has a coordinate that is no number; give three finite lengths.");
    }
  }

  /** Straight distance to another point (mm). */
  public double distanceMm(Point3 other) {
    double dx = other.xMm - xMm;
    double dy = other.yMm - yMm;
    double dz = other.zMm - zMm;
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
  }

  /** This point displaced by a vector (mm). */
  public Point3 plus(Vector3 displacementMm) {
    return new Point3(xMm + displacementMm.x(), yMm + displacementMm.y(), zMm + displacementMm.z());
  }

  /** Vector from this point to another (mm). */
  public Vector3 to(Point3 other) {
    return new Vector3(other.xMm - xMm, other.yMm - yMm, other.zMm - zMm);
  }

  /** The same point on the other side of the body's centre plane. */
  public Point3 mirrored() {
    return new Point3(xMm, 0 - yMm, zMm);
  }

  /** Where this point of the left side is on either side: itself, or its mirror on the right. */
  public Point3 onSide(boolean left) {
    return left ? this : mirrored();
  }

  /** Point half way to another. */
  public Point3 midpoint(Point3 other) {
    return new Point3(
        xMm + (other.xMm - xMm) / 2, yMm + (other.yMm - yMm) / 2, zMm + (other.zMm - zMm) / 2);
  }
}
