package trammel.engine.driveline;

import trammel.engine.quantity.Given;

/**
 * Largest joint angle against shaft speed. Source: installation manual J3311-1 (2005/2008), rows
 * from 5000 to 3500 rpm also on its maker's page, the slower rows from memory.
 *
 * <p>Up to 3500 rpm the rows hold the inertia acceleration ω²β² near 1000 rad/s², above it nearer
 * 900. Between rows speed times angle is therefore taken on a straight line, which is exact for a
 * constant ω²β². Below the first row the angle stays at the first row's 11.5°; above the last row
 * speed times angle stays at the last row's.
 */
public final class JointAngleTable {
  private static final double[] SPEED_RPM = {1500, 2000, 2500, 3000, 3500, 4000, 4500, 5000};
  private static final double[] ANGLE_DEG = {11.5, 8.7, 7.0, 5.8, 5.0, 4.2, 3.7, 3.2};

  private JointAngleTable() {}

  /**
   * Largest working angle at a shaft speed.
   *
   * @param speedRpm shaft speed, rev/min, 0 to 20000
   * @return angle, rad
   * @throws IllegalArgumentException if the speed is outside its range
   */
  public static double largestAngleRad(double speedRpm) {
    Given.within("shaft speed", speedRpm, 0, 20_000, "rpm", "State the highest speed in use.");
    int last = SPEED_RPM.length - 1;
    if (speedRpm <= SPEED_RPM[0]) {
      return Math.toRadians(ANGLE_DEG[0]);
    }
    if (speedRpm >= SPEED_RPM[last]) {
      return Math.toRadians(product(last) / speedRpm);
    }
    int upper = 1;
    while (SPEED_RPM[upper] < speedRpm) {
      upper++;
    }
    double share = (speedRpm - SPEED_RPM[upper - 1]) / (SPEED_RPM[upper] - SPEED_RPM[upper - 1]);
    double between = product(upper - 1) + share * (product(upper) - product(upper - 1));
    return Math.toRadians(between / speedRpm);
  }

  private static double product(int row) {
    return SPEED_RPM[row] * ANGLE_DEG[row];
  }

  /**
   * Largest working angle by the length of the shaft: a fifth of a degree for each inch with
   * parallel ends, a tenth with crossing ends. Source: a drivetrain supplier's web page; common
   * practice.
   *
   * @param jointToJointMm shaft length between joint centres, mm, over 0, up to 5000
   * @param endsParallel whether transmission output and pinion are parallel
   * @return angle, rad
   * @throws IllegalArgumentException if the length is outside its range
   */
  public static double largestAngleByLengthRad(double jointToJointMm, boolean endsParallel) {
    Given.within("shaft length", jointToJointMm, 1, 5000, "mm", "Measure joint to joint.");
    double inches = jointToJointMm / 25.4;
    return Math.toRadians(inches / (endsParallel ? 5.0 : 10.0));
  }
}
