package trammel.engine.checks;

import java.util.Optional;
import java.util.OptionalDouble;
import trammel.engine.driveline.DriveShaftTube;
import trammel.engine.driveline.JointAngleTable;
import trammel.engine.driveline.ShaftSpeed;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;

/** How fast the driveshaft turns at the road speed that a layout is judged for. */
public final class ShaftAtSpeed {
  /** Beyond this the angle that the table allows is taken as there (rev/min). */
  private static final double MOST_RPM = 20_000;

  private ShaftAtSpeed() {}

  /** The shaft's speed (rev/min); empty where the final drive is not known. */
  public static OptionalDouble rpm(LayoutAnalysis analysis) {
    return rpm(analysis.layout().chassis(), analysis.settings());
  }

  /** The same of a chassis by itself. */
  public static OptionalDouble rpm(Chassis chassis, AnalysisSettings settings) {
    OptionalDouble finalDrive = chassis.traction().finalDrive();
    if (finalDrive.isEmpty()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        ShaftSpeed.rpmAtRoadSpeed(
            settings.designSpeedMPerS(),
            chassis.tyre().loadedRadiusMm(),
            finalDrive.getAsDouble()));
  }

  /**
   * Largest angle of a universal joint at a speed of the shaft, {@link JointAngleTable} (rad).
   *
   * @param rpm speed (rev/min), 0 or more
   */
  public static double largestJointAngleRad(double rpm) {
    return JointAngleTable.largestAngleRad(Math.min(MOST_RPM, rpm));
  }

  /** The tube of the shaft; empty where it is not measured. */
  public static Optional<DriveShaftTube> tube(Driveline driveline) {
    if (driveline.shaftDiameterMm().isEmpty() || driveline.shaftWallMm().isEmpty()) {
      return Optional.empty();
    }
    double diameterMm = driveline.shaftDiameterMm().getAsDouble();
    return Optional.of(
        new DriveShaftTube(
            diameterMm,
            diameterMm - 2 * driveline.shaftWallMm().getAsDouble(),
            driveline.pinionJoint().distanceMm(driveline.transmissionJoint())));
  }

  /** The speed in words. */
  static String at(double rpm) {
    return "at " + Math.round(rpm) + " rpm";
  }
}
