package trammel.engine.springs;

/**
 * The air in an air spring that was filled at ride height and then shut in. At another height its
 * pressure follows p V^n = constant on absolute pressure (n 1.38 in motion, 1 at rest); load and
 * rate follow from the effective area at that height.
 *
 * <p>Source: air-spring engineering manual EMDG198, pp. 22-23; the gas law.
 *
 * @param size effective area and volume by height
 * @param rideHeightMm height at which it was filled, mm, inside the table
 * @param rideGaugeMPa pressure above the atmosphere there, MPa, 0 to 10
 */
public record AirCharge(AirSpringSize size, double rideHeightMm, double rideGaugeMPa) {
  /**
   * Checks the charge.
   *
   * @throws IllegalArgumentException if the height is outside the table or the pressure impossible
   */
  public AirCharge {
    size.at(rideHeightMm);
    TrappedAir.checkGauge(rideGaugeMPa);
  }

  /**
   * Pressure at another height with the air shut in.
   *
   * @param heightMm height, mm, inside the table
   * @param exponent 1.0 (at rest) to 1.4; 1.38 in motion
   * @return pressure above the atmosphere, MPa; negative under it
   * @throws IllegalArgumentException if an input is outside its range
   */
  public double gaugeMPa(double heightMm, double exponent) {
    return TrappedAir.gaugeAfterMPa(
        rideGaugeMPa, size.at(rideHeightMm).volumeMm3(), size.at(heightMm).volumeMm3(), exponent);
  }

  /**
   * Load at another height with the air shut in.
   *
   * @param heightMm height, mm, inside the table
   * @param exponent 1.0 (at rest) to 1.4; 1.38 in motion
   * @return load, N; negative where the pressure is under the atmosphere
   * @throws IllegalArgumentException if an input is outside its range
   */
  public double loadN(double heightMm, double exponent) {
    return gaugeMPa(heightMm, exponent) * size.at(heightMm).effectiveAreaMm2();
  }

  /**
   * Rate at another height in motion: the difference of load between ½ in below and ½ in above it
   * over that inch, as far as the table reaches on either side.
   *
   * @param heightMm height, mm, inside the table
   * @return rate, N/mm
   * @throws IllegalArgumentException if the height is outside the table
   */
  public double rateNPerMm(double heightMm) {
    double lowMm = Math.max(size.leastHeightMm(), heightMm - AirSpringSize.RATE_HALF_STEP_MM);
    double highMm = Math.min(size.mostHeightMm(), heightMm + AirSpringSize.RATE_HALF_STEP_MM);
    return (loadN(lowMm, TrappedAir.FAST) - loadN(highMm, TrappedAir.FAST)) / (highMm - lowMm);
  }
}
