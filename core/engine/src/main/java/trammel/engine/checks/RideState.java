package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trammel.engine.layout.AntiRollBar;
import trammel.engine.layout.AxleMotion;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.CornerLoads;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Masses;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringAtRide;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.MotionRates;
import trammel.engine.motion.RideFigures;
import trammel.engine.motion.Shaft;
import trammel.engine.motion.ShaftReading;
import trammel.engine.motion.SpringPoint;
import trammel.engine.motion.SpringReading;
import trammel.engine.motion.WheelRates;

/**
 * The figures of a layout at ride height.
 *
 * @param figures instant centre, roll centre, roll steer and the rates behind them
 * @param shocks each shock's length and motion ratios
 * @param rates each spring's length and motion ratios, wheel rate and roll stiffness
 * @param loaded each spring under the load that it carries at ride
 * @param roll how the body rolls in a bend
 * @param shaft length and joint angles of the driveshaft
 * @param antiSquatShare anti-squat, 1 for 100 %
 * @param antiLiftShare anti-lift under braking, 1 for 100 %
 * @param rideFrequencyHz natural frequency of a rear corner on its springs (Hz)
 * @param frontFrequencyHz that of a front corner, where the rate at its wheel is measured (Hz)
 */
public record RideState(
    RideFigures figures,
    List<SpringReading> shocks,
    WheelRates rates,
    List<SpringAtRide> loaded,
    BodyRoll roll,
    ShaftReading shaft,
    double antiSquatShare,
    double antiLiftShare,
    double rideFrequencyHz,
    OptionalDouble frontFrequencyHz) {
  public RideState {
    shocks = List.copyOf(shocks);
    loaded = List.copyOf(loaded);
  }

  static RideState of(Layout layout, AxleMotion motion) {
    Chassis chassis = layout.chassis();
    AxlePose ride = motion.atRide();
    RideFigures figures = motion.rideFigures();
    List<SpringPoint> springs = new ArrayList<>(2);
    for (SpringUnit unit : layout.springs()) {
      springs.add(new SpringPoint(unit.name(), unit.frame(), unit.axle(), unit.rateNPerMm()));
    }
    WheelRates rates = WheelRates.of(figures.rates(), ride, chassis.axle().trackMm(), springs);
    List<SpringReading> shocks = new ArrayList<>(2);
    for (ShockUnit unit : layout.shocks()) {
      SpringPoint shock = new SpringPoint(unit.name(), unit.frame(), unit.axle(), 0);
      shocks.add(shock.at(ride, figures.rates(), chassis.axle().trackMm()));
    }
    double heightMm = chassis.masses().centreOfGravityHeightMm();
    return new RideState(
        figures,
        shocks,
        rates,
        CornerLoads.onSprings(layout, rates.springs()),
        BodyRoll.of(
            chassis,
            rates.rollNmmPerRad(),
            antiRollBarNmmPerRad(layout, ride, figures.rates()),
            figures.rollCentreHeightMm()),
        shaft(chassis.driveline()).at(ride),
        figures.antiSquatPercent(heightMm, chassis.wheelbaseMm()) / 100,
        figures.antiLiftPercent(
                chassis.traction().frontBrakeShare(), heightMm, chassis.wheelbaseMm())
            / 100,
        rates.rideFrequencyHz(chassis.masses().sprungPerRearCornerKg()),
        frontFrequencyHz(chassis.masses()));
  }

  private static OptionalDouble frontFrequencyHz(Masses masses) {
    if (masses.frontWheelNPerMm().isEmpty()) {
      return OptionalDouble.empty();
    }
    double cornerKg = BodyRoll.frontSprungKg(masses) / 2;
    double rateNPerMm = masses.frontWheelNPerMm().getAsDouble();
    return OptionalDouble.of(Math.sqrt(1000 * rateNPerMm / cornerKg) / (2 * Math.PI));
  }

  /** Rate of the bar times the square of how far roll drives its arm ends apart. */
  private static double antiRollBarNmmPerRad(Layout layout, AxlePose ride, MotionRates rates) {
    if (layout.antiRollBar().isEmpty()) {
      return 0;
    }
    AntiRollBar bar = layout.antiRollBar().get();
    double trackMm = layout.chassis().axle().trackMm();
    SpringPoint left = new SpringPoint("left link", bar.linkTop(), bar.armEnd(), 0);
    SpringPoint right =
        new SpringPoint("right link", bar.linkTop().mirrored(), bar.armEnd().mirrored(), 0);
    double apartMmPerRad =
        left.at(ride, rates, trackMm).lengthMmPerRadRoll()
            - right.at(ride, rates, trackMm).lengthMmPerRadRoll();
    return bar.size().rateNPerMm() * apartMmPerRad * apartMmPerRad;
  }

  /** The driveshaft of a driveline as the motion engine sees it. */
  public static Shaft shaft(Driveline driveline) {
    return new Shaft(
        driveline.pinionJoint(),
        driveline.pinionAxis(),
        driveline.transmissionJoint(),
        driveline.transmissionAxis());
  }

  /** Roll steer, understeer positive, angle of steer per angle of roll. */
  public double rollUndersteer() {
    return figures.rollUndersteerRadPerRad();
  }
}
