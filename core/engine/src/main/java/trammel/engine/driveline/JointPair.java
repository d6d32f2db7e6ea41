package trammel.engine.driveline;

import trammel.engine.quantity.Given;

/**
 * A driveshaft with a universal joint at each end, the two yokes of the shaft in line ("in phase")
 * and both joint angles in one plane.
 *
 * @param firstAngleRad working angle of the joint at the transmission, rad, 0 to 80°
 * @param secondAngleRad working angle of the joint at the axle, rad, 0 to 80°
 */
public record JointPair(double firstAngleRad, double secondAngleRad) {
  /**
   * Limit of torsional acceleration, rad/s²: a maker's figure as quoted in the trade press. A
   * published two-joint table works out to about 400 and older texts say 500; the strictest is used
   * here.
   */
  public static final double TORSIONAL_LIMIT_RAD_PER_S2 = 300.0;

  /** Torsional acceleration behind the two-joint table at 1500 rpm (see {@link #residualRad}). */
  public static final double TWO_JOINT_TABLE_RAD_PER_S2 = 400.0;

  /**
   * Limit of inertia acceleration, rad/s². Source: the joint-angle table of installation manual
   * J3311-1 works out to it up to 3500 rpm.
   */
  public static final double INERTIA_LIMIT_RAD_PER_S2 = 1000.0;

  /**
   * Checks both angles.
   *
   * @throws IllegalArgumentException if an angle is outside its range
   */
  public JointPair {
    UniversalJoint.checkAngle("first joint angle", firstAngleRad);
    UniversalJoint.checkAngle("second joint angle", secondAngleRad);
  }

  /**
   * Angle of the one joint that would leave the same unevenness as the two together, √|β₁² − β₂²|.
   * Equal angles cancel. Source: standard small-angle rule; the two-joint table of the SAE
   * Universal Joint manual (AE-7, section 3.1.1) follows it.
   *
   * @return residual angle, rad
   */
  public double residualRad() {
    return Math.sqrt(Math.abs((firstAngleRad - secondAngleRad) * (firstAngleRad + secondAngleRad)));
  }

  /**
   * Residual angle when the yokes of the shaft are a quarter turn out of line: nothing cancels,
   * √(β₁² + β₂²).
   *
   * @return residual angle, rad
   */
  public double residualOutOfPhaseRad() {
    return Math.hypot(firstAngleRad, secondAngleRad);
  }

  /**
   * Angular acceleration that reaches the pinion, ω²β² of the residual angle.
   *
   * @param speedRpm shaft speed, rev/min, 0 to 100000
   * @return acceleration, rad/s²
   * @throws IllegalArgumentException if the speed is outside its range
   */
  public double torsionalAccelerationRadPerS2(double speedRpm) {
    return accelerationRadPerS2(speedRpm, residualRad());
  }

  /**
   * Angular acceleration of the shaft between the joints, ω²β² of the first joint.
   *
   * @param speedRpm shaft speed, rev/min, 0 to 100000
   * @return acceleration, rad/s²
   * @throws IllegalArgumentException if the speed is outside its range
   */
  public double inertiaAccelerationRadPerS2(double speedRpm) {
    return accelerationRadPerS2(speedRpm, firstAngleRad);
  }

  private static double accelerationRadPerS2(double speedRpm, double angleRad) {
    double product = ShaftSpeed.radPerS(speedRpm) * angleRad;
    return product * product;
  }

  /**
   * Joint angle whose ω²β² is a given acceleration.
   *
   * @param speedRpm shaft speed, rev/min, 1 to 100000
   * @param limitRadPerS2 acceleration allowed, rad/s², 0 to 100000
   * @return angle, rad
   * @throws IllegalArgumentException if an input is outside its range
   */
  public static double angleForAccelerationRad(double speedRpm, double limitRadPerS2) {
    Given.within("shaft speed", speedRpm, 1, 100_000, "rpm", "State the highest speed in use.");
    Given.within("acceleration limit", limitRadPerS2, 0, 100_000, "rad/s²", "300 is strict.");
    return Math.sqrt(limitRadPerS2) / ShaftSpeed.radPerS(speedRpm);
  }

  /**
   * Largest angle the second joint may have, √(β₁² + β²) with β the residual allowed.
   *
   * @param firstAngleRad angle of the first joint, rad, 0 to 80°
   * @param allowedResidualRad residual angle allowed, rad, 0 to 80°
   * @return angle of the second joint, rad
   * @throws IllegalArgumentException if an angle is outside its range
   */
  public static double largestSecondAngleRad(double firstAngleRad, double allowedResidualRad) {
    UniversalJoint.checkAngle("first joint angle", firstAngleRad);
    UniversalJoint.checkAngle("residual angle", allowedResidualRad);
    return Math.hypot(firstAngleRad, allowedResidualRad);
  }

  /**
   * Largest speed ratio through both joints when their yokes are a quarter turn out of line.
   *
   * @return output speed over input speed, 1 or more
   */
  public double maxSpeedRatioOutOfPhase() {
    return 1.0 / (Math.cos(firstAngleRad) * Math.cos(secondAngleRad));
  }

  /**
   * Least speed ratio through both joints when their yokes are a quarter turn out of line.
   *
   * @return output speed over input speed, 1 or less
   */
  public double minSpeedRatioOutOfPhase() {
    return Math.cos(firstAngleRad) * Math.cos(secondAngleRad);
  }
}
