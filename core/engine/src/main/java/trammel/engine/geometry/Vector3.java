package trammel.engine.geometry;

/**
 * Vector in vehicle axes (ISO 8855): x forward, y left, z up. It carries the unit of what it stands
 * for: mm, N, Nmm, or none for a direction.
 *
 * @param x forward component
 * @param y left component
 * @param z upward component
 */
public record Vector3(double x, double y, double z) {

  /**
   * @throws IllegalArgumentException if a component is not a finite number
   */
  public Vector3 {
    if (!(Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z))) {
      throw new IllegalArgumentException(
          "The vector ("
              + x
              + ", "
              + y
              + ", "
              + z
              + ") has a component that is no number; give three finite components.");
    }
  }

  /** Scalar product. */
  public double dot(Vector3 other) {
    return x * other.x + y * other.y + z * other.z;
  }

  /** Vector product, right-handed. */
  public Vector3 cross(Vector3 other) {
    return new Vector3(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  /** Length of the vector, in its own unit. */
  public double norm() {
    return Math.sqrt(x * x + y * y + z * z);
  }

  /**
   * Unit vector in the same direction.
   *
   * @throws IllegalArgumentException if the vector has no length
   */
  public Vector3 normalized() {
    double norm = norm();
    if (!(norm > 0)) {
      throw new IllegalArgumentException(
          "The vector ("
              + x
              + ", "
              + y
              + ", "
              + z
              + ") has no length and so no direction; give a vector with a length.");
    }
    return new Vector3(x / norm, y / norm, z / norm);
  }

  /** This vector times a factor. */
  public Vector3 scaled(double factor) {
    return new Vector3(x * factor, y * factor, z * factor);
  }

  /** Sum. */
  public Vector3 plus(Vector3 other) {
    return new Vector3(x + other.x, y + other.y, z + other.z);
  }

  /** Difference. */
  public Vector3 minus(Vector3 other) {
    return new Vector3(x - other.x, y - other.y, z - other.z);
  }

  /** The same vector seen in a mirror that lies in the body's centre plane. */
  public Vector3 mirrored() {
    return new Vector3(x, 0 - y, z);
  }

  /**
   * Angle between the lines along the two vectors, whichever way they point: 0 to pi/2 (rad). Taken
   * from sine and cosine together, because the arc cosine alone loses half its digits near zero.
   *
   * @throws IllegalArgumentException if one of the vectors has no length
   */
  public double angleToLineRad(Vector3 other) {
    requireLength();
    other.requireLength();
    return Math.atan2(cross(other).norm(), Math.abs(dot(other)));
  }

  /**
   * Angle between the two vectors as directed: 0 to pi (rad).
   *
   * @throws IllegalArgumentException if one of the vectors has no length
   */
  public double angleToRad(Vector3 other) {
    requireLength();
    other.requireLength();
    return Math.atan2(cross(other).norm(), dot(other));
  }

  /** Rise towards the front in side view: {@code atan2(z, x)} (rad). */
  public double sideViewRad() {
    return Math.atan2(z, x);
  }

  /** Turn to the left in plan view: {@code atan2(y, x)} (rad). */
  public double planViewRad() {
    return Math.atan2(y, x);
  }

  /** True angle above the ground plane, -pi/2 to pi/2 (rad). */
  public double elevationRad() {
    return Math.atan2(z, Math.sqrt(x * x + y * y));
  }

  private void requireLength() {
    if (!(norm() > 0)) {
      throw new IllegalArgumentException(
          "An angle to the vector ("
              + x
              + ", "
              + y
              + ", "
              + z
              + ") was asked for, but it has no length; give a vector with a length.");
    }
  }
}
