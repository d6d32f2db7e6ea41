package trammel.app.motionfile;

import java.util.List;
import java.util.Optional;
import trammel.engine.mechanism.Mechanism;
import trammel.engine.motion.Shaft;
import trammel.engine.motion.SpringPoint;

/**
 * The part of a motion file that moves, and the vehicle it moves under.
 *
 * @param mechanism axle and what guides it at ride
 * @param wheelbaseMm distance between the axles (mm)
 * @param sprungCentreOfGravityHeightMm height of the sprung mass's centre of gravity (mm)
 * @param frontBrakeShare share of the brake force at the front wheels, 0 to 1
 * @param sprungMassPerCornerKg sprung mass carried by one wheel (kg)
 * @param springs springs with their rates
 * @param shocks shocks, with a rate of 0
 * @param shaft driveshaft, if the file has one
 */
public record MotionLayout(
    Mechanism mechanism,
    double wheelbaseMm,
    double sprungCentreOfGravityHeightMm,
    double frontBrakeShare,
    double sprungMassPerCornerKg,
    List<SpringPoint> springs,
    List<SpringPoint> shocks,
    Optional<Shaft> shaft) {
  /** Copies the lists. */
  public MotionLayout {
    springs = List.copyOf(springs);
    shocks = List.copyOf(shocks);
  }
}
