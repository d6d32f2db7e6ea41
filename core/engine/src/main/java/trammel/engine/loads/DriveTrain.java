package trammel.engine.loads;

import trammel.engine.driveline.ShaftTorque;
import trammel.engine.quantity.Given;

/**
 * What turns the rear axle.
 *
 * @param engineTorqueNmm highest engine torque, Nmm, 0 and up
 * @param gearRatio engine turns for one turn of the driveshaft in the lowest gear, with transfer
 *     case and torque converter, 0.2 to 2000
 * @param efficiency share of the torque that arrives at the axle, 0.01 to 1
 * @param axleRatio driveshaft turns for one wheel turn, 0.5 to 20
 */
public record DriveTrain(
    double engineTorqueNmm, double gearRatio, double efficiency, double axleRatio) {
  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is outside its range
   */
  public DriveTrain {
    ShaftTorque.fromEngineNmm(engineTorqueNmm, gearRatio, efficiency);
    Given.within("axle ratio", axleRatio, 0.5, 20, "", "Read it from the axle's tag.");
  }

  /**
   * Highest torque in the driveshaft.
   *
   * @return torque, Nmm
   */
  public double shaftTorqueNmm() {
    return ShaftTorque.fromEngineNmm(engineTorqueNmm, gearRatio, efficiency);
  }
}
