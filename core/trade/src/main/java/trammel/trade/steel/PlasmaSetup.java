package trammel.trade.steel;

import trammel.engine.quantity.Given;

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
        "plasma cutting speed in mm/min",
        speedMmPerMin,
        50_000,
        "",
        "At 40 A, 6 mm mild steel takes about 1050 mm/min.");
    Given.within(
        "pierce delay in seconds",
        pierceDelayS,
        0,
        30,
        "",
        "Common for bracket plate is 0.3 to 0.6.");
    Given.within("plasma lead-in", leadInMm, 0, 100, "mm", "Common is 2.5 to 6.5.");
  }

  /** Length the torch travels while cutting, mm: the outlines and a lead-in for each pierce. */
  public double travelMm(double edgeLengthMm, int pierces) {
    Given.within(
        "length of plasma cut", edgeLengthMm, 0, 1e7, "mm", "Add up all outlines and holes.");
    Given.count("number of pierces", pierces, 0, 1_000_000, "One for each outline and each hole.");
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
