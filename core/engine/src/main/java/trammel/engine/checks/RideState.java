package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.layout.AxleMotion;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.CornerLoads;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringAtRide;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.AxlePose;
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
    double rideFrequencyHz) {
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
        BodyRoll.of(chassis, rates.rollNmmPerRad(), figures.rollCentreHeightMm()),
        shaft(chassis.driveline()).at(ride),
        figures.antiSquatPercent(heightMm, chassis.wheelbaseMm()) / 100,
        figures.antiLiftPercent(
                chassis.traction().frontBrakeShare(), heightMm, chassis.wheelbaseMm())
            / 100,
        rates.rideFrequencyHz(chassis.masses().sprungPerRearCornerKg()));
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
