package trammel.engine.driveline;

import trammel.engine.quantity.Given;

/**
 * Torque in the driveshaft: what the engine can send and what the tyres can hold; the smaller of
 * the two is what the shaft and the axle housing see. Source: Gillespie, Fundamentals of Vehicle
 * Dynamics (1992), ch. 2, from memory.
 */
public final class ShaftTorque {
  private ShaftTorque() {}

  /**
   * Torque the engine sends to the driveshaft.
   *
   * @param engineTorqueNmm engine torque, Nmm, 0 or more
   * @param gearRatio engine turns for one turn of the driveshaft in the gear used, 0.2 to 2000,
   *     with transfer case and torque converter multiplication
   * @param efficiency share of the torque that arrives, over 0 to 1
   * @return shaft torque, Nmm
   * @throws IllegalArgumentException if an input is outside its range
   */
  public static double fromEngineNmm(double engineTorqueNmm, double gearRatio, double efficiency) {
    Given.notNegative("engine torque", engineTorqueNmm, "Nmm", "State the highest torque.");
    Given.within("gear ratio", gearRatio, 0.2, 2000, "", "Multiply all ratios before the shaft.");
    Given.within("efficiency", efficiency, 0.01, 1, "", "About 0.95 is usual for one gearbox.");
    return engineTorqueNmm * gearRatio * efficiency;
  }

  /**
   * Torque at which the driven tyres of the axle slip, μ W r/ratio.
   *
   * @param axleLoadN vertical load on the driven axle at that moment, N, 0 or more
   * @param friction friction of tyre on road, 0 to 5
   * @param tyreRadiusMm loaded radius, mm, 50 to 1500
   * @param axleRatio driveshaft turns for one wheel turn, 0.5 to 20
   * @return shaft torque, Nmm
   * @throws IllegalArgumentException if an input is outside its range
   */
  public static double atTyreSlipNmm(
      double axleLoadN, double friction, double tyreRadiusMm, double axleRatio) {
    Given.notNegative("axle load", axleLoadN, "N", "State the load on both tyres together.");
    Given.within("tyre friction", friction, 0, 5, "", "About 0.9 on dry road, 1.2 on soft tyres.");
    Given.within("tyre radius", tyreRadiusMm, 50, 1500, "mm", "Measure axle centre to ground.");
    Given.within("axle ratio", axleRatio, 0.5, 20, "", "Read it from the axle's tag.");
    return friction * axleLoadN * tyreRadiusMm / axleRatio;
  }

  /**
   * Torque that an angular acceleration asks of a turning part, I α.
   *
   * @param inertiaKgM2 moment of inertia, kg m², 0 or more
   * @param accelerationRadPerS2 angular acceleration, rad/s², 0 or more
   * @return torque, Nmm
   * @throws IllegalArgumentException if an input is negative
   */
  public static double fromInertiaNmm(double inertiaKgM2, double accelerationRadPerS2) {
    Given.notNegative("moment of inertia", inertiaKgM2, "kg m²", "Take it as positive.");
    Given.notNegative("acceleration", accelerationRadPerS2, "rad/s²", "Take it as positive.");
    return inertiaKgM2 * accelerationRadPerS2 * 1000.0;
  }
}
