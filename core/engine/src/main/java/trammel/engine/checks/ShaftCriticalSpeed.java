package trammel.engine.checks;

import java.util.OptionalDouble;
import trammel.engine.driveline.DriveShaftTube;
import trammel.engine.layout.Driveline;

/** Highest speed that the shaft's tube may be used at, over its speed at the design road speed. */
record ShaftCriticalSpeed(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.FACTOR;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Driveline driveline = analysis.layout().chassis().driveline();
    if (driveline.shaftDiameterMm().isEmpty() || driveline.shaftWallMm().isEmpty()) {
      return new Reading.Unknown(
          "the shaft's tube is not measured; give measured.driveshaft.tube_diameter and"
              + " measured.driveshaft.tube_wall");
    }
    OptionalDouble rpm = ShaftAtSpeed.rpm(analysis);
    if (rpm.isEmpty()) {
      return new Reading.Unknown("the shaft's speed is not known; give measured.drive.final_drive");
    }
    double diameterMm = driveline.shaftDiameterMm().getAsDouble();
    DriveShaftTube tube =
        new DriveShaftTube(
            diameterMm,
            diameterMm - 2 * driveline.shaftWallMm().getAsDouble(),
            driveline.pinionJoint().distanceMm(driveline.transmissionJoint()));
    return new Reading.Value(
        tube.usableSpeedRpm() / rpm.getAsDouble(),
        "usable to "
            + Math.round(tube.usableSpeedRpm())
            + " rpm, turning "
            + ShaftAtSpeed.at(rpm.getAsDouble()));
  }
}
