package trammel.engine.clearance;

import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Placement;

/** A solid convex body that takes up room, in vehicle axes (mm). */
public sealed interface Shape permits Capsule, Cylinder, Box, Sphere {

  /**
   * The shape carried along with the axle.
   *
   * @param pose where the axle has gone from its ride position
   * @return the same shape at that pose
   */
  default Shape moved(AxlePose pose) {
    return moved(pose.placement());
  }

  /**
   * The same, for moving many shapes to one pose.
   *
   * @param placement the pose, worked out once
   */
  Shape moved(Placement placement);
}
