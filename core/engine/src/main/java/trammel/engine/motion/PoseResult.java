package trammel.engine.motion;

import java.util.Optional;

/** What the search for a pose ended with. */
public sealed interface PoseResult {

  /**
   * The axle stands there.
   *
   * @param pose the pose, connected to ride by the motion itself
   */
  record Solved(AxlePose pose) implements PoseResult {}

  /**
   * The links run out of travel before the heave and roll asked for.
   *
   * @param heaveMm heave asked for (mm)
   * @param rollRad roll asked for (rad)
   * @param fraction share of the straight way from ride to it that can be covered, 0 to 1
   */
  record OutOfReach(double heaveMm, double rollRad, double fraction) implements PoseResult {}

  /**
   * The search gave up; there is no answer to rely on.
   *
   * @param heaveMm heave asked for (mm)
   * @param rollRad roll asked for (rad)
   * @param fraction share of the straight way from ride up to which the motion was followed, 0 to 1
   */
  record NotConverged(double heaveMm, double rollRad, double fraction) implements PoseResult {}

  /** The pose, if there is one. */
  default Optional<AxlePose> found() {
    return this instanceof Solved solved ? Optional.of(solved.pose()) : Optional.empty();
  }

  /**
   * The pose.
   *
   * @throws IllegalStateException if there is none, with a sentence that says how far the axle gets
   */
  default AxlePose required() {
    if (this instanceof Solved solved) {
      return solved.pose();
    }
    throw new IllegalStateException(sentence());
  }

  /** The result in words. */
  default String sentence() {
    if (this instanceof OutOfReach out) {
      return "The links run out of travel: of heave "
          + out.heaveMm
          + " mm with roll "
          + Math.toDegrees(out.rollRad)
          + " degrees the axle covers "
          + 100 * out.fraction
          + " percent. Use longer links, or less travel.";
    }
    if (this instanceof NotConverged lost) {
      return "The motion could be followed through "
          + 100 * lost.fraction
          + " percent of the way to heave "
          + lost.heaveMm
          + " mm with roll "
          + Math.toDegrees(lost.rollRad)
          + " degrees and no farther. Check the links for a layout that is nearly loose.";
    }
    return "The axle stands at heave "
        + required().heaveMm()
        + " mm with roll "
        + Math.toDegrees(required().rollRad())
        + " degrees.";
  }
}
