package trammel.engine.loads;

import trammel.engine.quantity.Given;

/**
 * A vehicle as far as loads on its rear axle depend on it. The rear axle alone is driven.
 *
 * @param size weight and outline
 * @param driveTrain what turns the axle
 * @param tyreRadiusMm loaded radius of the rear tyres, mm, 50 to 1500
 * @param rearBrakeShare share of the brake force at the rear, 0 to 1
 * @param rearRollShare share of the roll stiffness at the rear, 0 to 1
 * @param rearTransferShare share of the load that moves sideways in a bend at the rear, 0 to 1
 */
public record LoadedVehicle(
    WeightAndSize size,
    DriveTrain driveTrain,
    double tyreRadiusMm,
    double rearBrakeShare,
    double rearRollShare,
    double rearTransferShare) {
  /** A vehicle whose load transfer is shared as its roll stiffness is. */
  public LoadedVehicle(
      WeightAndSize size,
      DriveTrain driveTrain,
      double tyreRadiusMm,
      double rearBrakeShare,
      double rearRollShare) {
    this(size, driveTrain, tyreRadiusMm, rearBrakeShare, rearRollShare, rearRollShare);
  }

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is outside its range
   */
  public LoadedVehicle {
    Given.within("tyre radius", tyreRadiusMm, 50, 1500, "mm", "Measure axle centre to ground.");
    Given.within(
        "rear share of the braking", rearBrakeShare, 0, 1, "", "0.3 to 0.4 is usual for a car.");
    Given.within(
        "rear share of the roll stiffness", rearRollShare, 0, 1, "", "0.4 to 0.5 is usual.");
    Given.within("rear share of the load transfer", rearTransferShare, 0, 1, "", "As a share.");
  }
}
