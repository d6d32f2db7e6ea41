package trammel.engine.clearance;

import java.util.Optional;
import trammel.engine.motion.AxlePose;

/** Where the axle stands for a heave and roll that lie between the poses of a grid. */
@FunctionalInterface
public interface PoseSource {

  /**
   * The axle's pose.
   *
   * @param heaveMm bump positive
   * @param rollRad left wheel up positive
   * @return the pose, or empty if the linkage does not reach it
   */
  Optional<AxlePose> at(double heaveMm, double rollRad);
}
