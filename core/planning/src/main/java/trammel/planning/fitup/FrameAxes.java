package trammel.planning.fitup;

import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Rails;

/**
 * The axes in which the floor measures: along the underside of the rails, forward positive; out
 * from the body's centre line, left positive; square to the rails' underside, up positive. They are
 * fixed to the frame, so that a measurement is the same on the stands and at ride.
 *
 * @param along forward along the rails' underside, a unit vector
 * @param square up, square to it, a unit vector
 */
public record FrameAxes(Vector3 along, Vector3 square) {

  /** The axes of rails as they lie at ride. */
  public static FrameAxes of(Rails rails) {
    double runMm = rails.frontMountsForwardMm();
    double slopeRad = Math.atan2(rails.undersideMm(runMm) - rails.undersideMm(0), runMm);
    return new FrameAxes(
        new Vector3(Math.cos(slopeRad), 0, Math.sin(slopeRad)),
        new Vector3(-Math.sin(slopeRad), 0, Math.cos(slopeRad)));
  }

  /** Slope of the rails' underside at ride, rising to the front positive (rad). */
  public double slopeRad() {
    return along.sideViewRad();
  }

  /** A point's distances from an origin: along, left, square (mm). */
  double[] from(Point3 origin, Point3 point) {
    Vector3 offset = origin.to(point);
    return new double[] {offset.dot(along), offset.y(), offset.dot(square)};
  }

  /** A displacement of so much along, left and square (mm). */
  Vector3 displacement(double alongMm, double leftMm, double squareMm) {
    return along.scaled(alongMm).plus(new Vector3(0, leftMm, 0)).plus(square.scaled(squareMm));
  }
}
