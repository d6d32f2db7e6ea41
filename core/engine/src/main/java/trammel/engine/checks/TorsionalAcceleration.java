package trammel.engine.checks;

import java.util.List;
import java.util.OptionalDouble;
import trammel.engine.driveline.ShaftSpeed;
import trammel.engine.motion.ShaftReading;

/**
 * How unevenly the two universal joints together turn the pinion at ride and at the design road
 * speed: speed squared times the residual angle squared.
 */
record TorsionalAcceleration(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.ANGULAR_ACCELERATION;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    OptionalDouble rpm = ShaftAtSpeed.rpm(analysis);
    if (rpm.isEmpty()) {
      return new Reading.Unknown("the shaft's speed is not known; give measured.drive.final_drive");
    }
    ShaftReading shaft = analysis.ride().shaft();
    double radPerS = ShaftSpeed.radPerS(rpm.getAsDouble());
    String larger = shaft.frontJointRad() > shaft.rearJointRad() ? "front" : "rear";
    return new Reading.Value(
        radPerS * radPerS * Math.abs(shaft.squaresDifferenceRad2()),
        ShaftAtSpeed.at(rpm.getAsDouble()) + ", the " + larger + " joint works more");
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(new Adjustment.TurnPinion(), new Adjustment.TiltTransmission());
  }
}
