package trammel.engine.checks;

import java.util.List;
import java.util.OptionalDouble;
import trammel.engine.geometry.Vector3;
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
    OptionalDouble speed = ShaftAtSpeed.rpm(analysis);
    String at =
        speed.isEmpty()
            ? "shaft speed unknown: give measured.drive.final_drive"
            : ShaftAtSpeed.at(speed.getAsDouble());
    return new Reading.Value(shaft.angleToLineRad(axis), at);
  }

  /** The stop limit is the published largest angle for the shaft's speed, where it is known. */
  @Override
  public Limit limit(Limit general, LayoutAnalysis analysis) {
    OptionalDouble speed = ShaftAtSpeed.rpm(analysis);
    if (speed.isEmpty()) {
      return general;
    }
    double largest = ShaftAtSpeed.largestJointAngleRad(speed.getAsDouble());
    return new Limit(
        general.goodMin(),
        Math.min(general.goodMax(), largest),
        general.stopMin(),
        largest,
        general.source());
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return front
        ? List.of(new Adjustment.TiltTransmission())
        : List.of(new Adjustment.TurnPinion(), new Adjustment.TiltTransmission());
  }
}
