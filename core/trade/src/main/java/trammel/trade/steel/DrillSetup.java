package trammel.trade.steel;

import trammel.engine.quantity.Given;

/**
 * How the shop drills: the rim speed of the drill and the feed for each turn.
 *
 * @param rimSpeedMmPerMin cutting speed at the rim, mm/min (80 surface feet per minute is 24 384)
 * @param feedMmPerTurn advance for each turn, mm
 */
public record DrillSetup(double rimSpeedMmPerMin, double feedMmPerTurn) {

  /** Half the point angle of a common 118° drill, rad. */
  private static final double HALF_POINT_RAD = Math.toRadians(59);

  public DrillSetup {
    checkedRimSpeed(rimSpeedMmPerMin);
    Given.positive(
        "feed of the drill in mm per turn",
        feedMmPerTurn,
        2,
        "",
        "Common for steel is 0.05 to 0.4.");
  }

  /**
   * Turns per minute for a rim speed: v / (π D).
   *
   * @param rimSpeedMmPerMin cutting speed at the rim, mm/min
   * @param diameterMm diameter of drill or tap, mm
   * @return turns per minute
   * @throws IllegalArgumentException on a speed or diameter that is not positive
   */
  public static double turnsPerMin(double rimSpeedMmPerMin, double diameterMm) {
    checkedRimSpeed(rimSpeedMmPerMin);
    Given.positive("diameter of a drill", diameterMm, 200, "mm", "Give the size of the drill.");
    return rimSpeedMmPerMin / (Math.PI * diameterMm);
  }

  /** Length the point runs ahead of the full diameter: D / (2 tan 59°), mm. */
  public static double pointLeadMm(double diameterMm) {
    return diameterMm / (2 * Math.tan(HALF_POINT_RAD));
  }

  /**
   * Time to drill one hole through: (depth + point lead) / (feed × turns).
   *
   * @param diameterMm diameter of the drill, mm
   * @param depthMm thickness drilled through, mm
   * @return minutes
   * @throws IllegalArgumentException on a size that is not positive
   */
  public double minutes(double diameterMm, double depthMm) {
    Given.positive("depth of a hole", depthMm, 1000, "mm", "Give the thickness drilled through.");
    double turnsPerMin = turnsPerMin(rimSpeedMmPerMin, diameterMm);
    return (depthMm + pointLeadMm(diameterMm)) / (feedMmPerTurn * turnsPerMin);
  }

  static double checkedRimSpeed(double rimSpeedMmPerMin) {
    return Given.positive(
        "cutting speed in mm/min",
        rimSpeedMmPerMin,
        1_000_000,
        "",
        "Mild steel with plain drills takes about 21 000 to 30 000 (70 to 100 feet per minute).");
  }
}
