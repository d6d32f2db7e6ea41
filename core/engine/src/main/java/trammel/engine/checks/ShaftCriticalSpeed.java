package trammel.engine.checks;

import java.util.List;
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
    DriveShaftTube tube = ShaftAtSpeed.tube(driveline).orElseThrow();
    double perRpm = analysis.settings().designSpeedMPerS() / rpm.getAsDouble();
    double whirlsRpm = tube.criticalSpeedRpm();
    return new Reading.Value(
        tube.usableSpeedRpm() / rpm.getAsDouble(),
        "",
        List.of(
            new Detail("turning", Measure.ROTATION, rpm.getAsDouble()),
            new Detail("at", Measure.SPEED, analysis.settings().designSpeedMPerS()),
            new Detail("usable to", Measure.ROTATION, tube.usableSpeedRpm()),
            new Detail("that is", Measure.SPEED, perRpm * tube.usableSpeedRpm()),
            new Detail("it would whirl at", Measure.ROTATION, whirlsRpm),
            new Detail("that is", Measure.SPEED, perRpm * whirlsRpm)));
  }

  @Override
  public String advice() {
    return "Fit a shaft of larger diameter (chosen.shaft_tube) or of two pieces with a centre bearing,"
        + " or name the speed that the vehicle will be driven at (chosen.top_speed).";
  }
}
