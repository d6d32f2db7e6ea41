package trammel.engine.motion;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.engine.geometry.Point3;

/**
 * What the links do at ride height, from the derivatives of their motion.
 *
 * @param rates how the axle moves with heave and roll
 * @param instantCentreFromLinks where the side-view link lines meet; empty for parallel lines and
 *     for linkages that are not two symmetric pairs
 * @param slopeFromLinks slope of the line from the contact patch to that point, or of the parallel
 *     lines; empty for linkages that are not two symmetric pairs
 * @param instantCentreFromMotion point of the axle in the centre plane that stands still in heave
 *     but for its rise; empty if it is farther away than 10 km
 * @param slopeFromMotion slope of the line from the contact patch to that point; finite, and in
 *     general not zero, when the point is at infinity
 * @param rollCentreHeightMm height over the ground, at the axle line in the centre plane, of the
 *     point of the axle that does not move sideways in a small roll (mm)
 * @param rollSteerRadPerRad change of heading over roll; counter-clockwise with the left wheel up
 *     is positive (rad/rad)
 */
public record RideFigures(
    MotionRates rates,
    Optional<Point3> instantCentreFromLinks,
    OptionalDouble slopeFromLinks,
    Optional<Point3> instantCentreFromMotion,
    double slopeFromMotion,
    double rollCentreHeightMm,
    double rollSteerRadPerRad) {

  /** An instant centre farther away than this counts as at infinity (mm). */
  private static final double INFINITY_MM = 1e7;

  private static final double NEUTRAL = 1e-9;

  /** Figures of a linkage at ride height. */
  public static RideFigures of(PoseSolver solver) {
    Linkage linkage = solver.linkage();
    double radiusMm = linkage.tyreLoadedRadiusMm();
    return of(solver.ratesAt(AxlePose.atRide(radiusMm)), linkage.links(), radiusMm);
  }

  /**
   * Figures of an axle at ride height.
   *
   * @param rates how it moves at ride
   * @param sideViewLines bars, or what stands for them, whose lines in side view meet in the
   *     instant centre
   * @param radiusMm height of the wheel centres above the ground (mm)
   */
  public static RideFigures of(MotionRates rates, List<Link> sideViewLines, double radiusMm) {
    SideViewCentre lines = SideViewCentre.of(sideViewLines);
    double noseUp = rates.pitchNoseUpRadPerMmHeave();
    double forward = rates.forwardPerMmHeave();
    Optional<Point3> pole = Optional.empty();
    double poleX = -1 / noseUp;
    double poleZ = radiusMm + forward / noseUp;
    if (Math.abs(poleX) <= INFINITY_MM && Math.abs(poleZ) <= INFINITY_MM) {
      pole = Optional.of(new Point3(poleX, 0, poleZ));
    }
    return new RideFigures(
        rates,
        lines.point(),
        lines.slope(),
        pole,
        0 - (forward + noseUp * radiusMm),
        radiusMm + rates.lateralMmPerRadRoll(),
        rates.yawRadPerRadRoll());
  }

  /** Whether the instant centre of the motion is out of any reach. */
  public boolean instantCentreAtInfinity() {
    return instantCentreFromMotion.isEmpty();
  }

  /** Horizontal distance from the axle line to the instant centre, ahead positive (mm). */
  public OptionalDouble swingArmLengthMm() {
    return instantCentreFromMotion.isPresent()
        ? OptionalDouble.of(instantCentreFromMotion.get().xMm())
        : OptionalDouble.empty();
  }

  /**
   * Anti-squat of a driven rigid axle, whose housing takes the drive torque: the slope from the
   * contact patch to the instant centre over the slope to the height of the centre of gravity above
   * the front axle (Barton and Fieldhouse, Automotive Chassis Engineering, Springer 2018, p. 197,
   * eq. 3.63; Gillespie 1992 ch. 7, from memory).
   *
   * @param sprungCentreOfGravityHeightMm height of the sprung mass's centre of gravity (mm, above
   *     0)
   * @param wheelbaseMm distance between the axles (mm, above 0)
   * @return percent of the squat that the links take away
   * @throws IllegalArgumentException if a length is not positive
   */
  public double antiSquatPercent(double sprungCentreOfGravityHeightMm, double wheelbaseMm) {
    requirePositive("height of the sprung centre of gravity", sprungCentreOfGravityHeightMm);
    requirePositive("wheelbase", wheelbaseMm);
    return 100 * slopeFromMotion * wheelbaseMm / sprungCentreOfGravityHeightMm;
  }

  /**
   * Anti-lift under braking with the brakes on the axle (Gillespie 1992 ch. 7, from memory).
   *
   * @param frontBrakeShare share of the brake force at the front wheels, 0 to 1
   * @param sprungCentreOfGravityHeightMm height of the sprung mass's centre of gravity (mm, above
   *     0)
   * @param wheelbaseMm distance between the axles (mm, above 0)
   * @return percent of the lift that the links take away
   * @throws IllegalArgumentException if a length is not positive or the share not within 0 to 1
   */
  public double antiLiftPercent(
      double frontBrakeShare, double sprungCentreOfGravityHeightMm, double wheelbaseMm) {
    if (!(frontBrakeShare >= 0 && frontBrakeShare <= 1)) {
      throw new IllegalArgumentException(
          "The front share of the brake force is "
              + frontBrakeShare
              + "; it must lie between 0 and 1. For 70 percent give 0.7.");
    }
    return (1 - frontBrakeShare) * antiSquatPercent(sprungCentreOfGravityHeightMm, wheelbaseMm);
  }

  /**
   * Rise over run, to the front, of the axis the axle rolls about in the centre plane. Equal to the
   * roll steer (Gillespie 1992 ch. 7, from memory): an axis that falls to the front understeers.
   */
  public double rollAxisSlope() {
    return rollSteerRadPerRad;
  }

  /** Angle of the roll axis, rising to the front positive (rad). */
  public double rollAxisAngleRad() {
    return Math.atan(rollSteerRadPerRad);
  }

  /** Roll steer with understeer positive (rad/rad). */
  public double rollUndersteerRadPerRad() {
    return 0 - rollSteerRadPerRad;
  }

  /** Which way the roll steer works. */
  public RollSteerSense rollSteerSense() {
    if (Math.abs(rollSteerRadPerRad) <= NEUTRAL) {
      return RollSteerSense.NEUTRAL;
    }
    return rollSteerRadPerRad < 0 ? RollSteerSense.UNDERSTEER : RollSteerSense.OVERSTEER;
  }

  private static void requirePositive(String what, double lengthMm) {
    if (!(lengthMm > 0 && lengthMm < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "The " + what + " is " + lengthMm + " mm; it must be above 0. Measure it again.");
    }
  }
}
