package trammel.app.motionfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.LinkReading;
import trammel.engine.motion.PoseResult;
import trammel.engine.motion.PoseSolver;
import trammel.engine.motion.RideFigures;
import trammel.engine.motion.ShaftReading;
import trammel.engine.motion.TravelLimits;
import trammel.engine.motion.WheelRates;

/**
 * The motion of a layout: its limits, its figures at ride and its poses.
 *
 * @param layout what moves
 * @param limits where the links run out of travel
 * @param figures what the links do at ride
 * @param rates what the springs do at ride
 * @param poses what became of each wanted pose, in the order of the file
 */
public record MotionStudy(
    MotionLayout layout,
    TravelLimits limits,
    RideFigures figures,
    WheelRates rates,
    List<Solved> poses) {
  /** Copies the list. */
  public MotionStudy {
    poses = List.copyOf(poses);
  }

  /**
   * What became of one wanted pose.
   *
   * @param wanted where the axle was wanted
   * @param result what the search ended with
   */
  public record Solved(WantedPose wanted, PoseResult result) {}

  /**
   * Solves a file.
   *
   * @throws CommandFailure if the links have no motion at ride
   */
  public static MotionStudy of(MotionFile file) {
    MotionLayout layout = file.layout();
    PoseSolver solver = new PoseSolver(layout.linkage());
    List<Solved> poses = new ArrayList<>(file.poses().size());
    for (WantedPose wanted : file.poses()) {
      poses.add(
          new Solved(wanted, solver.solve(wanted.heaveMm(), Math.toRadians(wanted.rollDeg()))));
    }
    try {
      return new MotionStudy(
          layout,
          solver.limits(WantedPose.HEAVE_RANGE_MM, Math.toRadians(WantedPose.ROLL_RANGE_DEG)),
          RideFigures.of(solver),
          WheelRates.of(solver, atRide(layout), layout.springs()),
          poses);
    } catch (IllegalStateException atTheEnd) {
      throw CommandFailure.badInput(
          file.document().location().file() + ", layout.links: " + atTheEnd.getMessage());
    }
  }

  private static AxlePose atRide(MotionLayout layout) {
    return AxlePose.atRide(layout.linkage().tyreLoadedRadiusMm());
  }

  /** The links at ride. */
  List<LinkReading> linksAtRide() {
    return LinkReading.of(layout.linkage(), atRide(layout));
  }

  /** The links at a pose. */
  public List<LinkReading> links(AxlePose pose) {
    return LinkReading.of(layout.linkage(), pose);
  }

  /** The driveshaft at a pose, if the layout has one. */
  public Optional<ShaftReading> shaft(AxlePose pose) {
    return layout.shaft().isPresent()
        ? Optional.of(layout.shaft().get().at(pose))
        : Optional.empty();
  }
}
