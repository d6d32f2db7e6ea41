package trammel.brackets.mount;

import trammel.brackets.material.Shock;
import trammel.engine.clearance.Cylinder;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.ShockUnit;

/**
 * A shock in its place on the left, at ride.
 *
 * @param shock the shock
 * @param frame its upper mount (mm)
 * @param axle its lower mount (mm)
 * @param leftInBumpMm travel left over all poses in bump (mm)
 * @param leftInDroopMm travel left over all poses in droop (mm)
 */
public record ShockFit(
    Shock shock, Point3 frame, Point3 axle, double leftInBumpMm, double leftInDroopMm) {

  /** Distance between the mounts at ride (mm). */
  public double lengthMm() {
    return frame.distanceMm(axle);
  }

  /** The room that it takes with a spring or body of a radius (mm). */
  public Cylinder envelope(double radiusMm) {
    return new Cylinder(frame, axle, radiusMm);
  }

  /** The shock on the left as the layout keeps it. */
  public ShockUnit left() {
    return unit("shock-left", frame, axle);
  }

  /** Its twin on the right. */
  public ShockUnit right() {
    return unit("shock-right", frame.mirrored(), axle.mirrored());
  }

  private ShockUnit unit(String name, Point3 upper, Point3 lower) {
    return new ShockUnit(
        name, upper, lower, shock.bodyRadiusMm(), shock.closedMm(), shock.openMm());
  }
}
