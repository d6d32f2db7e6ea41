package trammel.trade.steel;

import trammel.engine.quantity.Given;

/**
 * How the shop taps by power.
 *
 * @param rimSpeedMmPerMin cutting speed at the rim, mm/min
 * @param chamferThreads threads of lead on the tap that must pass beyond the full depth
 */
public record TapSetup(double rimSpeedMmPerMin, double chamferThreads) {

  public TapSetup {
    DrillSetup.checkedRimSpeed(rimSpeedMmPerMin);
    Given.within(
        "lead of a tap in threads", chamferThreads, 0, 12, "", "A plug tap has about 4 threads.");
  }

  /**
   * Time to tap one hole and back out at the same speed: 2 (depth / pitch + lead) / turns.
   *
   * @param diameterMm thread diameter, mm
   * @param pitchMm thread pitch, mm
   * @param depthMm depth of full thread, mm
   * @return minutes
   * @throws IllegalArgumentException on a size that is not positive
   */
  public double minutes(double diameterMm, double pitchMm, double depthMm) {
    Given.positive("thread pitch", pitchMm, diameterMm, "mm", "13 threads per inch is 1.954 mm.");
    Given.positive("depth of thread", depthMm, 500, "mm", "Give the depth of full thread.");
    double turns = depthMm / pitchMm + chamferThreads;
    return 2 * turns / DrillSetup.turnsPerMin(rimSpeedMmPerMin, diameterMm);
  }
}
