package trammel.planning.draft;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.engine.checks.Detail;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.engine.checks.ShaftAtSpeed;
import trammel.engine.driveline.DriveShaftTube;
import trammel.planning.catalog.PlanCheck;
import trammel.planning.job.Driveshaft;

/**
 * How near the tube of the front piece of a driveshaft of two comes to whirling.
 *
 * @param shaft the shaft as measured
 * @param front its front piece; empty for a shaft of one
 */
record FrontShaftSpeed(Optional<Driveshaft> shaft, Optional<FrontShaft> front)
    implements CatalogCheck {

  @Override
  public PlanCheck check() {
    return PlanCheck.FRONT_SHAFT_SPEED;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    if (front.isEmpty()) {
      return FrontShaft.OF_ONE_PIECE;
    }
    OptionalDouble rpm = ShaftAtSpeed.rpm(analysis);
    if (rpm.isEmpty()) {
      return new Reading.Unknown("the shaft's speed is not known; give measured.drive.final_drive");
    }
    double diameterMm = shaft.orElseThrow().tubeDiameterMm();
    DriveShaftTube tube =
        new DriveShaftTube(
            diameterMm, diameterMm - 2 * shaft.orElseThrow().tubeWallMm(), front.get().lengthMm());
    return new Reading.Value(
        tube.usableSpeedRpm() / rpm.getAsDouble(),
        "",
        List.of(
            new Detail("joint to joint", Measure.LENGTH, front.get().lengthMm()),
            new Detail("turning", Measure.ROTATION, rpm.getAsDouble()),
            new Detail("usable to", Measure.ROTATION, tube.usableSpeedRpm())));
  }

  @Override
  public String advice() {
    return "Move the centre bearing forward, or fit a front piece of larger diameter.";
  }
}
