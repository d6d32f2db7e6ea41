package trammel.app.motionfile;

import java.util.ArrayList;
import java.util.List;

/**
 * A heave and roll at which the axle is wanted.
 *
 * @param set name of the sweep it belongs to: {@value #HEAVE}, {@value #ROLL}, or another
 * @param heaveMm rise of the axle's middle, bump positive (mm)
 * @param rollDeg elevation of the axle line, left wheel up positive (degrees)
 */
public record WantedPose(String set, double heaveMm, double rollDeg) {
  /** The sweep through heave at zero roll. */
  public static final String HEAVE = "heave";

  /** The sweep through roll at zero heave. */
  public static final String ROLL = "roll";

  /** Poses with both heave and roll. */
  public static final String COMBINED = "combined";

  /** Farthest heave of the usual poses, and of the search for limits of travel (mm). */
  static final int HEAVE_RANGE_MM = 100;

  /** Farthest roll of the usual poses, and of the search for limits of travel (degrees). */
  static final int ROLL_RANGE_DEG = 6;

  private static final int HEAVE_STEP_MM = 10;

  /** The poses of a file that asks for none: heave by 10 mm to 100 mm, roll by 1 to 6 degrees. */
  public static List<WantedPose> usual() {
    List<WantedPose> poses = new ArrayList<>();
    for (int heave = -HEAVE_RANGE_MM; heave <= HEAVE_RANGE_MM; heave += HEAVE_STEP_MM) {
      poses.add(new WantedPose(HEAVE, heave, 0));
    }
    for (int roll = -ROLL_RANGE_DEG; roll <= ROLL_RANGE_DEG; roll++) {
      poses.add(new WantedPose(ROLL, 0, roll));
    }
    return List.copyOf(poses);
  }

  /** The sweep that a pose belongs to by its values. */
  static String setOf(double heaveMm, double rollDeg) {
    if (rollDeg == 0) {
      return HEAVE;
    }
    return heaveMm == 0 ? ROLL : COMBINED;
  }
}
