package trammel.trade.steel;

import trammel.trade.given.Given;

/**
 * How the shop's plasma cuts one thickness.
 *
 * @param speedMmPerMin cutting speed for that thickness, mm/min
 * @param pierceDelayS standing time for each pierce, s
 * @param leadInMm run from the pierce to the outline, mm
 */
public record PlasmaSetup(double speedMmPerMin, double pierceDelayS, double leadInMm) {

  public PlasmaSetup {
    Given.positive(
        speedMmPerMin,
        50_000,
        "Plasma cutting speed in mm/min",
        "At 40 A, 6 mm mild steel takes about 1050 mm/min.");
    Given.between(
        pierceDelayS, 0, 30, "Pierce delay in seconds", "Common for bracket plate is 0.3 to 0.6.");
    Given.between(leadInMm, 0, 100, "Plasma lead-in in mm", "Common is 2.5 to 6.5.");
  }

  /** Length the torch travels while cutting, mm: the outlines and a lead-in for each pierce. */
  public double travelMm(double edgeLengthMm, int pierces) {
    Given.between(
        edgeLengthMm, 0, 1e7, "Length of plasma cut in mm", "Add up all outlines and holes.");
    Given.count(pierces, 0, 1_000_000, "Number of pierces", "One for each outline and each hole.");
    return edgeLengthMm + pierces * leadInMm;
  }

  /**
   * Torch-on time: travel / speed + pierces × delay.
   *
   * @param edgeLengthMm length of all outlines and holes, mm
   * @param pierces number of pierces
   * @return minutes
   * @throws IllegalArgumentException on a negative length or number
   */
  public double minutes(double edgeLengthMm, int pierces) {
    return travelMm(edgeLengthMm, pierces) / speedMmPerMin + pierces * pierceDelayS / 60.0;
  }
}
