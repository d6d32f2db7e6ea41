package trammel.engine.checks;

import java.util.OptionalDouble;
import trammel.engine.driveline.ShaftSpeed;
import trammel.engine.layout.Chassis;

/** How fast the propeller shaft turns at the road speed that a layout is judged for. */
final class ShaftAtSpeed {
  private ShaftAtSpeed() {}

  /** The shaft's speed (rev/min); empty where the final drive is not known. */
  static OptionalDouble rpm(LayoutAnalysis analysis) {
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

  /** The speed in words. */
  static String at(double rpm) {
    return "at " + Math.round(rpm) + " rpm";
  }
}
