package trammel.engine.checks;

import java.util.List;
import java.util.OptionalDouble;
import trammel.engine.driveline.JointAngleTable;
import trammel.engine.driveline.ShaftSpeed;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;

/** Working angle of one universal joint at ride, as a true angle in space. */
record JointAngle(String id, String title, boolean front) implements Check {

  @Override
  public Measure measure() {
    return Measure.ANGLE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Driveline driveline = analysis.layout().chassis().driveline();
    Vector3 shaft = driveline.pinionJoint().to(driveline.transmissionJoint());
    Vector3 axis = front ? driveline.transmissionAxis() : driveline.pinionAxis();
    OptionalDouble speed = shaftSpeedRpm(analysis);
    String at =
        speed.isEmpty()
            ? "shaft speed unknown: give measured.drive.final_drive"
            : "at " + Math.round(speed.getAsDouble()) + " rpm";
    return new Reading.Value(shaft.angleToLineRad(axis), at);
  }

  /** The stop limit is the published largest angle for the shaft's speed, where it is known. */
  @Override
  public Limit limit(Limit general, LayoutAnalysis analysis) {
    OptionalDouble speed = shaftSpeedRpm(analysis);
    if (speed.isEmpty()) {
      return general;
    }
    double largest = JointAngleTable.largestAngleRad(speed.getAsDouble());
    return new Limit(
        general.goodMin(),
        Math.min(general.goodMax(), largest),
        general.stopMin(),
        largest,
        general.source());
  }

  private static OptionalDouble shaftSpeedRpm(LayoutAnalysis analysis) {
    Chassis chassis = analysis.layout().chassis();
    OptionalDouble finalDrive = chassis.traction().finalDrive();
    if (finalDrive.isEmpty()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        ShaftSpeed.rpmAtRoadSpeed(
            analysis.settings().designSpeedMPerS(),
            chassis.tyre().loadedRadiusMm(),
            finalDrive.getAsDouble()));
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return front
        ? List.of(new Adjustment.TiltTransmission())
        : List.of(new Adjustment.TurnPinion(), new Adjustment.TiltTransmission());
  }
}
