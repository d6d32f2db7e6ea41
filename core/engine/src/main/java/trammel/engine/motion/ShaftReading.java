package trammel.engine.motion;

/**
 * A driveshaft at one pose.
 *
 * @param lengthMm distance between the joint centres (mm)
 * @param frontJointRad true angle in space between shaft and transmission axis, 0 to pi/2 (rad)
 * @param rearJointRad true angle in space between shaft and pinion axis, 0 to pi/2 (rad)
 * @param pinionElevationRad side-view elevation of the pinion axis, nose up positive (rad)
 */
public record ShaftReading(
    double lengthMm, double frontJointRad, double rearJointRad, double pinionElevationRad) {

  /** Front angle squared less rear angle squared (rad squared). */
  public double squaresDifferenceRad2() {
    return (frontJointRad - rearJointRad) * (frontJointRad + rearJointRad);
  }

  /**
   * Angle of a single joint that would turn as unevenly as the two together, with their yokes in
   * phase and the shaft in one plane (rad).
   */
  public double residualRad() {
    return Math.sqrt(Math.abs(squaresDifferenceRad2()));
  }
}
