package trammel.app.text;

import java.util.Optional;
import java.util.OptionalDouble;
import trammel.engine.checks.BodyRoll;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.RideState;
import trammel.engine.checks.ShaftAtSpeed;
import trammel.engine.driveline.DriveShaftTube;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Rails;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringAtRide;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.ShaftReading;
import trammel.engine.motion.SpringReading;
import trammel.reading.quantity.QuantityPrinter;

/**
 * A layout on a screen: where everything is bolted, and its figures at ride and over the travel.
 */
public final class LayoutText {
  private final LayoutAnalysis analysis;
  private final Layout layout;
  private final QuantityPrinter printer;

  /**
   * @param analysis the layout set in motion
   * @param amounts prints values in the reader's units
   */
  public LayoutText(LayoutAnalysis analysis, Amounts amounts) {
    this.analysis = analysis;
    this.layout = analysis.layout();
    printer = amounts.printer();
  }

  /** Points, figures at ride and the travel. */
  public String text() {
    return "LAYOUT at ride, from the axle's centre line, the centre plane and the ground\n"
        + points()
        + "\nAT RIDE\n"
        + figures()
        + "\nTHROUGH THE TRAVEL, both wheels together\n"
        + travel();
  }

  private String points() {
    Table table = new Table("lrrrrrrr");
    table.row("", "frame fwd", "left", "up", "axle fwd", "left", "up", "length");
    for (Bar bar : layout.bars()) {
      row(table, bar.name(), bar.frame(), bar.axle());
    }
    for (SpringUnit spring : layout.springs()) {
      row(table, spring.name(), spring.frame(), spring.axle());
    }
    for (ShockUnit shock : layout.shocks()) {
      row(table, shock.name(), shock.frame(), shock.axle());
    }
    return table.text("  ");
  }

  private void row(Table table, String name, Point3 frame, Point3 axle) {
    table.row(
        name,
        printer.length(frame.xMm()),
        printer.length(frame.yMm()),
        printer.length(frame.zMm()),
        printer.length(axle.xMm()),
        printer.length(axle.yMm()),
        printer.length(axle.zMm()),
        printer.length(frame.distanceMm(axle)));
  }

  private String figures() {
    RideState ride = analysis.ride();
    Chassis chassis = layout.chassis();
    Table table = new Table("lrl");
    table.row("pinion angle", printer.angle(ride.shaft().pinionElevationRad(), 2), "nose up +");
    table.row(
        "transmission output", printer.angle(chassis.driveline().transmissionAngleRad(), 2), "");
    table.row("front joint", printer.angle(ride.shaft().frontJointRad(), 2), "");
    table.row("rear joint", printer.angle(ride.shaft().rearJointRad(), 2), "");
    Optional<Point3> centre = ride.figures().instantCentreFromMotion();
    table.row(
        "instant centre",
        centre.isPresent() ? printer.length(centre.get().xMm()) : "at infinity",
        centre.isPresent() ? "ahead, " + printer.length(centre.get().zMm()) + " up" : "");
    table.row("anti-squat", printer.percent(ride.antiSquatShare()), "");
    table.row("anti-lift braking", printer.percent(ride.antiLiftShare()), "");
    table.row("roll centre", printer.length(ride.figures().rollCentreHeightMm()), "up");
    table.row("roll steer", printer.percent(ride.rollUndersteer()), "understeer +");
    springs(table, ride);
    for (SpringAtRide spring : ride.loaded()) {
      table.row(
          spring.unit().name() + " carries",
          printer.force(spring.loadN()),
          spring.charge().map(air -> "at " + printer.pressure(air.rideGaugeMPa())).orElse(""));
    }
    table.row("wheel rate", printer.rate(ride.rates().heaveNPerMm()), "each wheel");
    table.row(
        "roll stiffness", printer.rollStiffness(ride.rates().rollNmPerDegree()), "of the springs");
    BodyRoll roll = ride.roll();
    if (roll.antiRollBarNmmPerRad() > 0) {
      double perDegree = Math.toRadians(roll.antiRollBarNmmPerRad()) / 1000;
      table.row("anti-roll bar", printer.rollStiffness(perDegree), "more");
    }
    table.row(
        "roll axis",
        printer.length(roll.armMm()),
        "under the centre of gravity of what the springs carry");
    table.row(
        "body roll",
        roll.rollRadPerG().isPresent()
            ? printer.angle(roll.rollRadPerG().getAsDouble(), 2)
            : "falls over",
        roll.frontMeasured() ? "per g" : "per g, the front's roll stiffness estimated");
    table.row("load transfer", printer.percent(roll.rearTransferShare()), "of it at the rear");
    table.row(
        "ride frequency",
        Amounts.fixed(ride.rideFrequencyHz(), 2) + " Hz",
        ride.frontFrequencyHz().isPresent()
            ? "the front's " + Amounts.fixed(ride.frontFrequencyHz().getAsDouble(), 2) + " Hz"
            : "");
    shaft(table, chassis);
    Rails rails = chassis.rails();
    if (rails.notchDepthMm() > 0) {
      table.row(
          "frame notch",
          printer.length(rails.notchDepthMm()),
          rails.notchRiseMm() > 0
              ? "deep, over the axle; its plates rise "
                  + printer.length(rails.notchRiseMm())
                  + " above the rail"
              : "deep, over the axle");
    }
    return table.text("  ");
  }

  /** The speed at which the driveshaft would whirl, and the road speed that is. */
  private void shaft(Table table, Chassis chassis) {
    Optional<DriveShaftTube> tube = ShaftAtSpeed.tube(chassis.driveline());
    OptionalDouble rpm = ShaftAtSpeed.rpm(analysis);
    if (tube.isPresent() && rpm.isPresent()) {
      double whirlsRpm = tube.get().criticalSpeedRpm();
      double speed = analysis.settings().designSpeedMPerS() * whirlsRpm / rpm.getAsDouble();
      table.row("shaft whirls at", printer.rotation(whirlsRpm), "that is " + printer.speed(speed));
    }
  }

  private void springs(Table table, RideState ride) {
    for (SpringReading spring : ride.rates().springs()) {
      table.row(
          spring.name(),
          printer.rate(spring.rateNPerMm()),
          "motion ratio "
              + Amounts.fixed(spring.motionRatioHeave(), 3)
              + " in heave, "
              + Amounts.fixed(spring.motionRatioRoll(), 3)
              + " in roll");
    }
  }

  private String travel() {
    Table table = new Table("rrrrrrr");
    table.row("heave", "pinion", "front joint", "rear joint", "shift", "forward", "shaft");
    for (AxlePose pose : analysis.heaveSweep()) {
      ShaftReading shaft = RideState.shaft(layout.chassis().driveline()).at(pose);
      table.row(
          printer.length(pose.heaveMm()),
          printer.angle(shaft.pinionElevationRad(), 2),
          printer.angle(shaft.frontJointRad(), 2),
          printer.angle(shaft.rearJointRad(), 2),
          printer.length(pose.lateralMm()),
          printer.length(pose.forwardMm()),
          printer.length(shaft.lengthMm()));
    }
    return table.text("  ");
  }
}
