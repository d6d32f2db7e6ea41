package trammel.engine.motion;

import trammel.engine.quantity.Given;

/**
 * How a vehicle sits down and pitches when a rigid driven rear axle pushes it forward: the load
 * that moves rearward presses the springs, less what the bars carry. Source: Barton and Fieldhouse,
 * Automotive Chassis Engineering, Springer 2018, eq. 3.63, 3.64 and 3.69.
 *
 * @param massKg mass of the vehicle (kg), above 0
 * @param accelerationMPerS2 forward acceleration (m/s2), 0 or more
 * @param gravityHeightMm height of the centre of gravity above ground (mm), above 0
 * @param wheelbaseMm wheelbase (mm), above 0
 * @param centreSlope height of the side-view instant centre over its distance ahead of the axle
 * @param rearRateNPerMm vertical rate of both rear springs together at the wheels (N/mm), above 0
 * @param frontRateNPerMm the same at the front (N/mm), above 0
 */
public record PowerSquat(
    double massKg,
    double accelerationMPerS2,
    double gravityHeightMm,
    double wheelbaseMm,
    double centreSlope,
    double rearRateNPerMm,
    double frontRateNPerMm) {
  /**
   * Checks every figure.
   *
   * @throws IllegalArgumentException if one is outside its range
   */
  public PowerSquat {
    Given.positive("mass (kg)", massKg);
    Given.notNegative("acceleration (m/s2)", accelerationMPerS2);
    Given.positive("height of the centre of gravity (mm)", gravityHeightMm);
    Given.positive("wheelbase (mm)", wheelbaseMm);
    Given.finite("slope to the instant centre", centreSlope);
    Given.positive("rear rate (N/mm)", rearRateNPerMm);
    Given.positive("front rate (N/mm)", frontRateNPerMm);
  }

  /** How far the rear sinks (mm), rise being negative. */
  public double rearSinksMm() {
    return pushN() * (transfer() - centreSlope) / rearRateNPerMm;
  }

  /** How far the front rises (mm). */
  public double frontRisesMm() {
    return pushN() * transfer() / frontRateNPerMm;
  }

  /** How far the nose comes up in pitch (rad). */
  public double pitchRad() {
    return (rearSinksMm() + frontRisesMm()) / wheelbaseMm;
  }

  /** Share of the load transfer that the bars carry, 1 being all of it. */
  public double antiSquat() {
    return centreSlope / transfer();
  }

  /** Slope to the instant centre at which the vehicle does not pitch at all. */
  public double slopeWithoutPitch() {
    return transfer() * (1 + rearRateNPerMm / frontRateNPerMm);
  }

  private double pushN() {
    return massKg * accelerationMPerS2;
  }

  private double transfer() {
    return gravityHeightMm / wheelbaseMm;
  }
}
