package trammel.engine.layout;

import java.util.OptionalDouble;
import trammel.engine.quantity.Given;

/**
 * What can push the vehicle: engine and gears, tyre grip, or both.
 *
 * @param engineTorqueNmm largest engine torque (Nmm), above 0
 * @param firstGear ratio of the lowest gear, above 0
 * @param stallRatio what a torque converter multiplies torque by at stall, 1 for a clutch, 1 to 6
 * @param lowRange ratio of a transfer case in low range, 1 for none, 1 to 10
 * @param finalDrive ratio of the axle, above 0
 * @param tyreGrip largest grip of the rear tyres as a share of the load on them, above 0
 * @param frontBrakeShare share of the braking that the front wheels do, 0..1
 */
public record Traction(
    OptionalDouble engineTorqueNmm,
    OptionalDouble firstGear,
    double stallRatio,
    double lowRange,
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
    Given.within("stall ratio of the torque converter", stallRatio, 1, 6);
    Given.within("low range of the transfer case", lowRange, 1, 10);
    if (finalDrive.isPresent()) {
      Given.positive("final drive ratio", finalDrive.getAsDouble());
    }
    if (tyreGrip.isPresent()) {
      Given.positive("tyre grip", tyreGrip.getAsDouble());
    }
    Given.within("front brake share", frontBrakeShare, 0, 1);
  }

  /** A clutch and no transfer case. */
  public Traction(
      OptionalDouble engineTorqueNmm,
      OptionalDouble firstGear,
      OptionalDouble finalDrive,
      OptionalDouble tyreGrip,
      double frontBrakeShare) {
    this(engineTorqueNmm, firstGear, 1, 1, finalDrive, tyreGrip, frontBrakeShare);
  }

  /**
   * Turns of the engine for one of the driveshaft, as far as torque goes: lowest gear, low range
   * and torque converter at stall; empty where the gear is not known.
   */
  public OptionalDouble torqueMultiplication() {
    return firstGear.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(firstGear.getAsDouble() * stallRatio * lowRange);
  }

  /** Whether engine, gear and axle are known. */
  public boolean isDriveKnown() {
    return engineTorqueNmm.isPresent() && firstGear.isPresent() && finalDrive.isPresent();
  }
}
