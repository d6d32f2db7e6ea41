package trammel.engine.driveline;

import trammel.engine.quantity.Given;

/**
 * The steel tube of a driveshaft.
 *
 * @param outerDiameterMm outer diameter, mm, 5 to 500
 * @param innerDiameterMm inner diameter, mm, 0 and up, under the outer
 * @param jointToJointMm length between joint centres, mm, 50 to 5000
 */
public record DriveShaftTube(
    double outerDiameterMm, double innerDiameterMm, double jointToJointMm) {
  /** Share of the critical speed that may be used in a vehicle. Source: SAE selection graph. */
  public static final double USABLE_SHARE = 0.7;

  /**
   * Checks the tube.
   *
   * @throws IllegalArgumentException if a dimension is outside its range
   */
  public DriveShaftTube {
    Given.within("shaft outer diameter", outerDiameterMm, 5, 500, "mm", "Measure the tube.");
    Given.within(
        "shaft inner diameter",
        innerDiameterMm,
        0,
        outerDiameterMm - 0.01,
        "mm",
        "Take the outer diameter less twice the wall.");
    Given.within("shaft length", jointToJointMm, 50, 5000, "mm", "Measure joint to joint.");
  }

  /**
   * Speed at which the shaft whirls, N = C √(D² + d²)/L².
   *
   * @param constant which published constant to use
   * @return critical speed, rev/min
   */
  public double criticalSpeedRpm(CriticalSpeedConstant constant) {
    double diameters = Math.hypot(outerDiameterMm, innerDiameterMm);
    return constant.valueRpmMm() * diameters / (jointToJointMm * jointToJointMm);
  }

  /**
   * Speed at which the shaft whirls, by {@link CriticalSpeedConstant#JOINT_SELECTION_GRAPH}.
   *
   * @return critical speed, rev/min
   */
  public double criticalSpeedRpm() {
    return criticalSpeedRpm(CriticalSpeedConstant.JOINT_SELECTION_GRAPH);
  }

  /**
   * Highest speed to use, 0.7 of the critical speed.
   *
   * @return speed, rev/min
   */
  public double usableSpeedRpm() {
    return USABLE_SHARE * criticalSpeedRpm();
  }

  /**
   * Shear stress at the outside under torque, 16 T D/π(D⁴ − d⁴). Source: Shigley, Mechanical
   * Engineering Design, ch. 3, from memory.
   *
   * @param torqueNmm torque, Nmm, either direction
   * @return shear stress, MPa, 0 or more
   * @throws IllegalArgumentException if the torque is not a number
   */
  public double shearStressMPa(double torqueNmm) {
    Given.finite("shaft torque", torqueNmm, "Nmm");
    double outer2 = outerDiameterMm * outerDiameterMm;
    double inner2 = innerDiameterMm * innerDiameterMm;
    double fourth = (outer2 - inner2) * (outer2 + inner2);
    return 16.0 * Math.abs(torqueNmm) * outerDiameterMm / (Math.PI * fourth);
  }
}
