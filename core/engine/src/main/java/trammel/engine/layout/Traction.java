package trammel.engine.layout;

import java.util.OptionalDouble;
import trammel.engine.quantity.Given;

/**
 * What can push the vehicle: engine and gears, tyre grip, or both.
 *
 * @param engineTorqueNmm largest engine torque (Nmm), above 0
 * @param firstGear ratio of the lowest gear, above 0
 * @param finalDrive ratio of the axle, above 0
 * @param tyreGrip largest grip of the rear tyres as a share of the load on them, above 0
 * @param frontBrakeShare share of the braking that the front wheels do, 0..1
 */
public record Traction(
    OptionalDouble engineTorqueNmm,
    OptionalDouble firstGear,
    OptionalDouble finalDrive,
    OptionalDouble tyreGrip,
    double frontBrakeShare) {
  public Traction {
    if (engineTorqueNmm.isPresent()) {
      Given.positive("engine torque (Nmm)", engineTorqueNmm.getAsDouble());
    }
    if (firstGear.isPresent()) {
      Given.positive("first gear ratio", firstGear.getAsDouble());
    }
    if (finalDrive.isPresent()) {
      Given.positive("final drive ratio", finalDrive.getAsDouble());
    }
    if (tyreGrip.isPresent()) {
      Given.positive("tyre grip", tyreGrip.getAsDouble());
    }
    Given.within("front brake share", frontBrakeShare, 0, 1);
  }

  /** Torque at the rear wheels together that the engine can make (Nmm), if it is known. */
  public OptionalDouble wheelTorqueNmm() {
    if (engineTorqueNmm.isEmpty() || firstGear.isEmpty() || finalDrive.isEmpty()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        engineTorqueNmm.getAsDouble() * firstGear.getAsDouble() * finalDrive.getAsDouble());
  }
}
