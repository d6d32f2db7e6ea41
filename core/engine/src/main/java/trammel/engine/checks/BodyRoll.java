package trammel.engine.checks;

import java.util.OptionalDouble;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Masses;
import trammel.engine.quantity.Gravity;
import trammel.engine.springs.RollStiffness;

/**
 * How the body rolls in a bend, and what the rear axle carries of it.
 *
 * <p>The body turns about the line from the front's roll centre, taken on the ground, to the
 * rear's. Each axle then carries its springs' moment, its share of the sprung weight at its own
 * roll centre and its own unsprung weight. Where the front's roll stiffness is not measured it is
 * that of springs at the tyres and no anti-roll bar: of the rate at its wheels, or else of a ride
 * frequency of 1.2 Hz, from memory.
 *
 * <p>Sources: Gillespie, Fundamentals of Vehicle Dynamics (1992) ch. 6, from memory; Barton and
 * Fieldhouse, Automotive Chassis Engineering (2018) p. 225.
 *
 * @param rearNmmPerRad roll stiffness of the rear, springs and anti-roll bar (Nmm/rad)
 * @param antiRollBarNmmPerRad what of it is the anti-roll bar's (Nmm/rad), 0 for none
 * @param frontNmmPerRad roll stiffness of the front (Nmm/rad)
 * @param frontMeasured whether that of the front was measured
 * @param armMm height of the sprung mass above the roll axis (mm), 0 or more
 * @param rollRadPerG body roll for each g (rad); empty where the springs cannot hold the body
 *     upright
 * @param rearNmmPerG moment that the rear tyres hold for each g, about the ground (Nmm)
 * @param totalNmmPerG moment of the whole vehicle for each g, weight times height (Nmm)
 */
public record BodyRoll(
    double rearNmmPerRad,
    double antiRollBarNmmPerRad,
    double frontNmmPerRad,
    boolean frontMeasured,
    double armMm,
    OptionalDouble rollRadPerG,
    double rearNmmPerG,
    double totalNmmPerG) {
  /** Ride frequency of the front where nothing is known (Hz): from memory. */
  private static final double FRONT_HZ = 1.2;

  /** Share of the front's weight that is wheels, brakes and links: from memory. */
  private static final double FRONT_UNSPRUNG = 0.12;

  /** Roll that is reckoned with where the springs alone would let the body fall over (rad). */
  private static final double FALLEN_RAD = Math.toRadians(15);

  /**
   * The roll of a vehicle.
   *
   * @param chassis the vehicle
   * @param springsNmmPerRad roll stiffness of the rear springs (Nmm/rad)
   * @param antiRollBarNmmPerRad that of the rear's anti-roll bar (Nmm/rad), 0 for none
   * @param rearRollCentreMm height of the rear's roll centre above the ground (mm)
   */
  static BodyRoll of(
      Chassis chassis,
      double springsNmmPerRad,
      double antiRollBarNmmPerRad,
      double rearRollCentreMm) {
    double rearNmmPerRad = springsNmmPerRad + antiRollBarNmmPerRad;
    Masses masses = chassis.masses();
    double frontSprungKg = frontSprungKg(masses);
    double rearSprungKg = masses.rearAxleKg() - masses.rearUnsprungKg();
    double sprungN = (frontSprungKg + rearSprungKg) * Gravity.M_PER_S2;
    double totalNmmPerG = masses.totalKg() * Gravity.M_PER_S2 * masses.centreOfGravityHeightMm();
    double unsprungNmm =
        (masses.frontAxleKg() * FRONT_UNSPRUNG + masses.rearUnsprungKg())
            * Gravity.M_PER_S2
            * chassis.tyre().loadedRadiusMm();
    double sprungHeightMm = Math.max(0, (totalNmmPerG - unsprungNmm) / sprungN);
    double axisMm = rearRollCentreMm * rearSprungKg / (frontSprungKg + rearSprungKg);
    double armMm = Math.max(0, sprungHeightMm - axisMm);
    double frontNmmPerRad = frontNmmPerRad(masses, chassis.axle().trackMm());
    double stiffness = frontNmmPerRad + rearNmmPerRad;
    OptionalDouble roll =
        stiffness > sprungN * armMm * (1 + 1e-6)
            ? OptionalDouble.of(RollStiffness.rollRadPerG(sprungN, armMm, stiffness))
            : OptionalDouble.empty();
    double rearNmmPerG =
        rearNmmPerRad * roll.orElse(FALLEN_RAD)
            + rearSprungKg * Gravity.M_PER_S2 * rearRollCentreMm
            + masses.rearUnsprungKg() * Gravity.M_PER_S2 * chassis.tyre().loadedRadiusMm();
    return new BodyRoll(
        rearNmmPerRad,
        antiRollBarNmmPerRad,
        frontNmmPerRad,
        masses.frontRollNmmPerRad().isPresent(),
        armMm,
        roll,
        rearNmmPerG,
        totalNmmPerG);
  }

  /** What the front springs carry, its wheels and brakes taken off by rule (kg). */
  static double frontSprungKg(Masses masses) {
    return masses.frontAxleKg() * (1 - FRONT_UNSPRUNG);
  }

  /**
   * As measured; else of springs at the tyres, whose rate is measured or of the usual frequency.
   */
  private static double frontNmmPerRad(Masses masses, double trackMm) {
    if (masses.frontRollNmmPerRad().isPresent()) {
      return masses.frontRollNmmPerRad().getAsDouble();
    }
    double radPerS = 2 * Math.PI * FRONT_HZ;
    double usualNPerMm = frontSprungKg(masses) / 2 * radPerS * radPerS / 1000;
    double rateNPerMm = masses.frontWheelNPerMm().orElse(usualNPerMm);
    return RollStiffness.rigidAxleNmmPerRad(rateNPerMm, trackMm);
  }

  /** Share of the roll stiffness at the rear, 0 to 1. */
  public double rearStiffnessShare() {
    return rearNmmPerRad / (rearNmmPerRad + frontNmmPerRad);
  }

  /** Share of the load transfer at the rear, 0 to 1. */
  public double rearTransferShare() {
    return Math.max(0, Math.min(1, rearNmmPerG / totalNmmPerG));
  }
}
