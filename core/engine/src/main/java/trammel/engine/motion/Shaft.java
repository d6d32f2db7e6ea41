package trammel.engine.motion;

import java.util.Objects;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * Driveshaft between the transmission, which stands still with the body, and the pinion, which
 * moves with the axle.
 *
 * @param pinionJoint centre of the joint at the pinion, at ride (mm)
 * @param pinionAxis axis of the pinion at ride, pointing forward
 * @param transmissionJoint centre of the joint at the transmission (mm)
 * @param transmissionAxis axis of the transmission's output, pointing forward
 */
public record Shaft(
    Point3 pinionJoint, Vector3 pinionAxis, Point3 transmissionJoint, Vector3 transmissionAxis) {

  /**
   * @throws IllegalArgumentException if an axis has no direction or the two joints fall together
   */
  public Shaft {
    Objects.requireNonNull(pinionJoint, "joint at the pinion");
    Objects.requireNonNull(transmissionJoint, "joint at the transmission");
    pinionAxis = Objects.requireNonNull(pinionAxis, "axis of the pinion").normalized();
    transmissionAxis =
        Objects.requireNonNull(transmissionAxis, "axis of the transmission").normalized();
    if (pinionJoint.distanceMm(transmissionJoint) < Link.SHORTEST_MM) {
      throw new IllegalArgumentException(
          "The driveshaft is "
              + pinionJoint.distanceMm(transmissionJoint)
              + " mm long; its joints must be at least 0.000001 mm apart. Check whether the pinion"
              + " joint was copied from the transmission joint.");
    }
  }

  /** Length and joint angles at a pose. */
  public ShaftReading at(AxlePose pose) {
    Placement placement = pose.placement();
    Vector3 line = placement.move(pinionJoint).to(transmissionJoint);
    Vector3 pinion = placement.turn(pinionAxis);
    return new ShaftReading(
        line.norm(),
        line.angleToLineRad(transmissionAxis),
        line.angleToLineRad(pinion),
        pinion.sideViewRad());
  }
}
