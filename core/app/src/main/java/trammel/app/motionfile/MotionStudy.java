package trammel.app.motionfile;

import java.util.List;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;
import trammel.engine.mechanism.Mechanism;
import trammel.engine.mechanism.MechanismPose;
import trammel.engine.mechanism.MechanismRates;
import trammel.engine.mechanism.MechanismSolver;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.PoseResult;
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
 * @param motion how axle and further bodies move at ride
 * @param rates what the springs do at ride
 * @param ride everything at ride
 * @param poses what became of each wanted pose, in the order of the file
 */
public record MotionStudy(
    MotionLayout layout,
    TravelLimits limits,
    RideFigures figures,
    MechanismRates motion,
    WheelRates rates,
    MechanismPose ride,
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
   * @param pose where everything stands, if there is a pose
   */
  public record Solved(WantedPose wanted, PoseResult result, Optional<MechanismPose> pose) {}

  /**
   * Solves a file.
   *
   * @throws CommandFailure if the links have no motion at ride
   */
  public static MotionStudy of(MotionFile file) {
    MotionLayout layout = file.layout();
    Mechanism mechanism = layout.mechanism();
    try {
      MechanismSolver solver = new MechanismSolver(mechanism);
      MechanismRates motion = solver.ratesAtRide();
      MechanismPose ride = solver.atRide();
      return new MotionStudy(
          layout,
          solver.limits(file.travel().heaveMm(), Math.toRadians(file.travel().rollDeg())),
          RideFigures.of(motion.axle(), mechanism.sideViewLines(), mechanism.tyreLoadedRadiusMm()),
          motion,
          WheelRates.of(motion.axle(), ride.axle(), mechanism.trackMm(), layout.springs()),
          ride,
          file.poses().stream().map(wanted -> solved(solver, wanted)).toList());
    } catch (IllegalStateException atTheEnd) {
      throw CommandFailure.badInput(
          file.document().location().file() + ", layout.links: " + atTheEnd.getMessage());
    }
  }

  private static Solved solved(MechanismSolver solver, WantedPose wanted) {
    MechanismSolver.Outcome outcome =
        solver.solve(wanted.heaveMm(), Math.toRadians(wanted.rollDeg()));
    return new Solved(wanted, outcome.result(), outcome.pose());
  }

  /** The driveshaft at a pose, if the layout has one. */
  public Optional<ShaftReading> shaft(AxlePose pose) {
    return layout.shaft().map(shaft -> shaft.at(pose));
  }
}
