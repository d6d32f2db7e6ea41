package trammel.plugins.airspring;

import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Rails;

/**
 * The outer face of a rail, upright and turned in plan as the rails taper: what is set square on it
 * stands as far off straight ahead.
 *
 * @param rails the rails
 * @param left true for the left one
 */
record OuterFace(Rails rails, boolean left) {
  /** How much further out the face is per length forward. */
  private double taper() {
    return rails.outerFaceMm(0.5) - rails.outerFaceMm(-0.5);
  }

  private double side() {
    return left ? 1 : -1;
  }

  /** Unit vector forward along the face. */
  Vector3 along() {
    return new Vector3(1, side() * taper(), 0).normalized();
  }

  /** Unit vector outboard, square to the face. */
  Vector3 outward() {
    return new Vector3(-taper(), side(), 0).normalized();
  }

  /** Distance of a point from the face, square to it, outboard positive (mm). */
  double offMm(Point3 point) {
    Point3 beside = new Point3(point.xMm(), side() * rails.outerFaceMm(point.xMm()), point.zMm());
    return beside.to(point).dot(outward());
  }

  /** The place on the face that is square in from a point, at its height (mm). */
  Point3 foot(Point3 point) {
    return point.plus(outward().scaled(-offMm(point)));
  }
}
