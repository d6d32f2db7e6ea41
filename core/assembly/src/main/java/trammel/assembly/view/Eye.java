package trammel.assembly.view;

import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * From where something is looked at, square to the plane of the picture (an orthographic view, ISO
 * 5456-2, 4).
 *
 * @param right what runs to the right in the picture, a unit vector in vehicle axes
 * @param up what runs up in it, a unit vector square to that
 */
public record Eye(Vector3 right, Vector3 up) {
  private static final double SQUARE = 1e-9;

  /**
   * @throws IllegalArgumentException if they are not unit vectors square to each other
   */
  public Eye {
    double off = Math.abs(right.norm() - 1) + Math.abs(up.norm() - 1) + Math.abs(right.dot(up));
    if (!(off < SQUARE)) {
      throw new IllegalArgumentException(
          "The picture's right is "
              + right
              + " and its up is "
              + up
              + "; they must be unit vectors square to each other. Use two axes of the vehicle.");
    }
  }

  /** A point as it is seen: x to the right, y up, z towards the eye (mm). */
  public Point3 see(Point3 point) {
    Vector3 towards = right.cross(up);
    return new Point3(along(right, point), along(up, point), along(towards, point));
  }

  private static double along(Vector3 axis, Point3 point) {
    return axis.x() * point.xMm() + axis.y() * point.yMm() + axis.z() * point.zMm();
  }
}
