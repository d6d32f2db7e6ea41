package trammel.engine.driveline;

import trammel.engine.quantity.Given;

/** Speed of a turning shaft. */
public final class ShaftSpeed {
  private static final double LARGEST_RPM = 100_000;

  private ShaftSpeed() {}

  /**
   * Converts revolutions a minute.
   *
   * @param speedRpm speed, rev/min, 0 to 100000
   * @return speed, rad/s
   * @throws IllegalArgumentException if the speed is outside its range
   */
  public static double radPerS(double speedRpm) {
    Given.within(
        "shaft speed", speedRpm, 0, LARGEST_RPM, "rpm", "Take the speed without its direction.");
    return speedRpm * Math.PI / 30.0;
  }

  /**
   * Speed of the driveshaft at a road speed.
   *
   * @param roadSpeedMPerS road speed, m/s, 0 to 200
   * @param tyreRadiusMm rolling radius, mm, 50 to 1500
   * @param axleRatio driveshaft turns for one wheel turn, 0.5 to 20
   * @return shaft speed, rev/min
   * @throws IllegalArgumentException if an input is outside its range
   */
  public static double rpmAtRoadSpeed(
      double roadSpeedMPerS, double tyreRadiusMm, double axleRatio) {
    Given.within("road speed", roadSpeedMPerS, 0, 200, "m/s", "Check its unit.");
    Given.within("tyre radius", tyreRadiusMm, 50, 1500, "mm", "Measure axle centre to ground.");
    Given.within("axle ratio", axleRatio, 0.5, 20, "", "Read it from the axle's tag.");
    return roadSpeedMPerS * 1000.0 / tyreRadiusMm * axleRatio * 30.0 / Math.PI;
  }
}
