package trammel.app.motionfile;

import java.util.List;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problem;

/**
 * A motion file that was read and checked.
 *
 * @param document the file as it is written
 * @param layout what moves
 * @param poses where the axle is wanted
 * @param remarks what is to be looked at in the file, which is used as it is
 */
public record MotionFile(
    ObjectNode document, MotionLayout layout, List<WantedPose> poses, List<Problem> remarks) {
  /** What the key {@code format} must say. */
  public static final String FORMAT = "rigid-axle-motion-vectors/1";

  /** Copies the lists. */
  public MotionFile {
    poses = List.copyOf(poses);
    remarks = List.copyOf(remarks);
  }
}
