package trammel.planning.job;

import java.util.Optional;
import trammel.reading.quantity.Measurement;

/**
 * The vehicle on the scales, ready to drive.
 *
 * @param frontLeft left front wheel
 * @param frontRight right front wheel
 * @param rearLeft left rear wheel
 * @param rearRight right rear wheel
 * @param unsprungRearKg axle, wheels, brakes and half of what joins them to the body, kg
 * @param centreOfGravityHeightMm height of the centre of gravity above the ground at ride, mm
 * @param centreOfGravityMeasured true if that height was measured, false if it is an estimate
 * @param frontRollNmmPerDegree roll stiffness of the front axle, Nmm/deg, if it was measured
 * @param frontWheelNPerMm rate at one front wheel, N/mm, if it was measured
 */
public record Weights(
    Measurement frontLeft,
    Measurement frontRight,
    Measurement rearLeft,
    Measurement rearRight,
    double unsprungRearKg,
    double centreOfGravityHeightMm,
    boolean centreOfGravityMeasured,
    Optional<Double> frontRollNmmPerDegree,
    Optional<Double> frontWheelNPerMm) {
  /** Mass on the front axle, kg. */
  public double frontKg() {
    return frontLeft.meanKg() + frontRight.meanKg();
  }

  /** Mass on the rear axle, kg. */
  public double rearKg() {
    return rearLeft.meanKg() + rearRight.meanKg();
  }

  /** Mass of the vehicle, kg. */
  public double totalKg() {
    return frontKg() + rearKg();
  }
}
