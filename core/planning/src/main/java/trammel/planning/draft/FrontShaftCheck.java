package trammel.planning.draft;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.engine.checks.Detail;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.engine.checks.ShaftAtSpeed;
import trammel.engine.driveline.DriveShaftTube;
import trammel.engine.driveline.JointAngleTable;
import trammel.planning.catalog.PlanCheck;
import trammel.planning.job.Driveshaft;

/**
 * The front piece of a driveshaft of two: the angle of its joint, which has no partner, or how near
 * its tube comes to whirling. The rear piece is what the other checks of the shaft judge.
 *
 * @param check which of the two it is
 * @param shaft the shaft as measured
 * @param front its front piece; empty for a shaft of one
 */
record FrontShaftCheck(PlanCheck check, Optional<Driveshaft> shaft, Optional<FrontShaft> front)
    implements CatalogCheck {
  private static final double MOST_RPM = 20_000;

  @Override
  public Reading read(LayoutAnalysis analysis) {
    if (front.isEmpty()) {
      return new Reading.NotApplicable("the driveshaft is of one piece");
    }
    if (check == PlanCheck.FRONT_SHAFT_ANGLE) {
      return new Reading.Value(front.get().angleRad(), "at the transmission");
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

  /** Never more than the published largest angle for the shaft's speed. */
  @Override
  public Limit limit(Limit general, LayoutAnalysis analysis) {
    OptionalDouble rpm = ShaftAtSpeed.rpm(analysis);
    if (check != PlanCheck.FRONT_SHAFT_ANGLE || rpm.isEmpty()) {
      return general;
    }
    double largest = JointAngleTable.largestAngleRad(Math.min(MOST_RPM, rpm.getAsDouble()));
    return Limit.atMost(
        Math.min(general.goodMax(), largest),
        Math.min(general.stopMax(), largest),
        general.source());
  }

  @Override
  public String advice() {
    return check == PlanCheck.FRONT_SHAFT_ANGLE
        ? "Shim the centre bearing or the transmission until the front piece runs on straight."
        : "Move the centre bearing forward, or fit a front piece of larger diameter.";
  }
}
