package trammel.engine.driveline;

import trammel.engine.quantity.Given;

/**
 * One universal joint (Hooke's joint) at a working angle. The input's rotation is counted from the
 * position in which the output turns fastest. Source of all relations: Khurmi and Gupta, Theory of
 * Machines, ch. 9.
 *
 * @param angleRad working angle between the two shafts, rad, 0 to 80°
 */
public record UniversalJoint(double angleRad) {
  private static final double LARGEST_ANGLE_RAD = Math.toRadians(80);

  /**
   * Checks the angle.
   *
   * @throws IllegalArgumentException if it is outside its range
   */
  public UniversalJoint {
    checkAngle("joint angle", angleRad);
  }

  static void checkAngle(String what, double angleRad) {
    Given.angle(
        what,
        angleRad,
        0,
        LARGEST_ANGLE_RAD,
        "Take the angle between the shafts without its direction.");
  }

  /**
   * The joint whose speed swings by a given share, from 1/cosβ − cosβ = U.
   *
   * @param nonUniformity total swing of the output speed over the input speed, 0 to 5
   * @return the joint
   * @throws IllegalArgumentException if the share is outside its range
   */
  public static UniversalJoint withNonUniformity(double nonUniformity) {
    Given.within("speed swing", nonUniformity, 0, 5, "", "Divide the swing by the input speed.");
    double cosine = (Math.sqrt(nonUniformity * nonUniformity + 4.0) - nonUniformity) / 2.0;
    return new UniversalJoint(Math.acos(Math.min(1.0, cosine)));
  }

  /**
   * Largest output speed over input speed, 1/cosβ.
   *
   * @return ratio, 1 or more
   */
  public double maxSpeedRatio() {
    return 1.0 / Math.cos(angleRad);
  }

  /**
   * Least output speed over input speed, cosβ.
   *
   * @return ratio, 1 or less
   */
  public double minSpeedRatio() {
    return Math.cos(angleRad);
  }

  /**
   * Output speed over input speed, cosβ/(1 − sin²β cos²θ).
   *
   * @param inputRotationRad rotation of the input θ, rad, from where the output turns fastest
   * @return ratio
   * @throws IllegalArgumentException if the rotation is not a number
   */
  public double speedRatioAt(double inputRotationRad) {
    Given.finite("input rotation", inputRotationRad, "rad");
    double product = Math.sin(angleRad) * Math.cos(inputRotationRad);
    return Math.cos(angleRad) / (1.0 - product * product);
  }

  /**
   * Output rotation, tanθ₂ = tanθ₁/cosβ, in the same quarter turn as the input. Computed as input
   * plus lead, so that whole turns are kept.
   *
   * @param inputRotationRad rotation of the input θ₁, rad, from where the output turns fastest
   * @return rotation of the output, rad
   * @throws IllegalArgumentException if the rotation is not a number
   */
  public double outputRotationRad(double inputRotationRad) {
    Given.finite("input rotation", inputRotationRad, "rad");
    double lead =
        Math.atan2(
            Math.sin(inputRotationRad) * (1.0 - Math.cos(angleRad)) * Math.cos(inputRotationRad),
            cosineOfLead(inputRotationRad));
    return inputRotationRad + lead;
  }

  private double cosineOfLead(double inputRotationRad) {
    double sine = Math.sin(inputRotationRad);
    double cosine = Math.cos(inputRotationRad);
    return cosine * cosine * Math.cos(angleRad) + sine * sine;
  }

  /**
   * Largest difference between output and input rotation, atan[(1 − cosβ)/(2√cosβ)].
   *
   * @return angle, rad
   */
  public double largestRotationErrorRad() {
    double cosine = Math.cos(angleRad);
    return Math.atan((1.0 - cosine) / (2.0 * Math.sqrt(cosine)));
  }

  /**
   * Swing of the output speed over the input speed, 1/cosβ − cosβ = tanβ sinβ. A joint maker asks
   * for 0.0027 or less (about 3°) of what is left of a whole shaft.
   *
   * @return non-uniformity, 0 or more
   */
  public double nonUniformity() {
    return Math.tan(angleRad) * Math.sin(angleRad);
  }

  /**
   * Input rotation at which the output speeds up or slows down most. Exact: the root of s²c² + (2 −
   * s²)c − 2s² = 0 with s = sinβ, c = cos2θ; textbooks drop the first term and give cos2θ = 2s²/(2
   * − s²), 0.03° off at a joint angle of 20°.
   *
   * @return rotation, rad, just under 45°
   */
  public double rotationAtMaxAccelerationRad() {
    double sine = Math.sin(angleRad);
    double square = sine * sine;
    double linear = 2.0 - square;
    double root = Math.sqrt(linear * linear + 8.0 * square * square);
    return 0.5 * Math.acos(4.0 * square / (linear + root));
  }

  /**
   * Largest angular acceleration of the output, ω² cosβ sin²β sin2θ/(1 − sin²β cos²θ)² at the
   * rotation where it is greatest. At small angles it is ω²β².
   *
   * @param inputSpeedRpm input speed, rev/min, 0 to 100000
   * @return angular acceleration, rad/s²
   * @throws IllegalArgumentException if the speed is outside its range
   */
  public double maxAccelerationRadPerS2(double inputSpeedRpm) {
    double speedRadPerS = ShaftSpeed.radPerS(inputSpeedRpm);
    double rotationRad = rotationAtMaxAccelerationRad();
    double sine = Math.sin(angleRad);
    double cosine = Math.cos(rotationRad);
    double denominator = 1.0 - sine * sine * cosine * cosine;
    double numerator = Math.cos(angleRad) * sine * sine * Math.sin(2.0 * rotationRad);
    return speedRadPerS * speedRadPerS * numerator / (denominator * denominator);
  }
}
