package trammel.app.motionfile;

import java.util.List;
import java.util.Map;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problem;

/**
 * A motion file that was read and checked.
 *
 * @param document the file as it is written
 * @param layout what moves
 * @param withBodies whether the file is of the format with further bodies
 * @param travel how far to look for limits
 * @param poses where the axle is wanted
 * @param remarks what is to be looked at in the file, which is used as it is
 */
public record MotionFile(
    ObjectNode document,
    MotionLayout layout,
    boolean withBodies,
    Travel travel,
    List<WantedPose> poses,
    List<Problem> remarks) {
  /** What the key {@code format} says of plain bars. */
  public static final String BARS_FORMAT = "trammel-linkage/1";

  /** What it says where rockers, slides, ball joints and bushes may be. */
  public static final String BODIES_FORMAT = "trammel-linkage/2";

  /** Former names of the formats, which are still read. */
  static final Map<String, String> FORMER =
      Map.of(
          "rigid-axle-motion-vectors/1", BARS_FORMAT,
          "rigid-axle-motion-vectors/2", BODIES_FORMAT);

  /** Copies the lists. */
  public MotionFile {
    poses = List.copyOf(poses);
    remarks = List.copyOf(remarks);
  }

  /**
   * How far to look for limits of travel, both ways.
   *
   * @param heaveMm heave (mm)
   * @param rollDeg roll (degrees)
   */
  public record Travel(double heaveMm, double rollDeg) {
    /** What is looked at where the file says nothing. */
    static final Travel USUAL = new Travel(WantedPose.HEAVE_RANGE_MM, WantedPose.ROLL_RANGE_DEG);
  }
}
