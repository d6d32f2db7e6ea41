package trammel.planning.catalog;

import trammel.trade.given.Given;

/**
 * How a shop cuts.
 *
 * @param sawKerfMm what the saw takes (mm), 0 or more
 * @param sawTrimMm trimmed off the mill end of a stick (mm), 0 or more
 * @param tableKerfMm what the plate cutter takes (mm), 0 or more
 * @param leadInRoomMm room between neighbouring plates for the torch to pierce and run in, beside
 *     the kerf (mm), 0 or more
 * @param sheetMarginMm kept free along a sheet's edge (mm), 0 or more
 * @param usefulStickMm offcut of a stick that goes back on the rack (mm), above 0
 * @param usefulSheetMm least side of a sheet offcut that goes back on the rack (mm), above 0
 */
public record CuttingPractice(
    double sawKerfMm,
    double sawTrimMm,
    double tableKerfMm,
    double leadInRoomMm,
    double sheetMarginMm,
    double usefulStickMm,
    double usefulSheetMm) {
  public CuttingPractice {
    Given.between(sawKerfMm, 0, 20, "Saw kerf in mm", "Measure a cut.");
    Given.between(sawTrimMm, 0, 500, "Saw trim in mm", "0 for none.");
    Given.between(tableKerfMm, 0, 20, "Kerf of the plate cutter in mm", "Measure a cut.");
    Given.between(leadInRoomMm, 0, 100, "Room for the lead-in in mm", "0 for none.");
    Given.between(sheetMarginMm, 0, 200, "Sheet margin in mm", "0 for none.");
    Given.positive(usefulStickMm, 10_000, "Useful stick offcut in mm", "Give a length.");
    Given.positive(usefulSheetMm, 10_000, "Useful sheet offcut in mm", "Give a side.");
  }

  /** Least distance between plates on a sheet (mm). */
  public double plateGapMm() {
    return tableKerfMm + leadInRoomMm;
  }
}
