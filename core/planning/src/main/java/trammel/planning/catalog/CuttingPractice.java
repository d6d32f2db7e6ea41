package trammel.planning.catalog;

import trammel.engine.quantity.Given;

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
 * @param cutFileUnits in which units the cutting table is given its files
 */
public record CuttingPractice(
    double sawKerfMm,
    double sawTrimMm,
    double tableKerfMm,
    double leadInRoomMm,
    double sheetMarginMm,
    double usefulStickMm,
    double usefulSheetMm,
    CutFileUnits cutFileUnits) {
  public CuttingPractice {
    Given.within("saw kerf", sawKerfMm, 0, 20, "mm", "Measure a cut.");
    Given.within("saw trim", sawTrimMm, 0, 500, "mm", "0 for none.");
    Given.within("kerf of the plate cutter", tableKerfMm, 0, 20, "mm", "Measure a cut.");
    Given.within("room for the lead-in", leadInRoomMm, 0, 100, "mm", "0 for none.");
    Given.within("sheet margin", sheetMarginMm, 0, 200, "mm", "0 for none.");
    Given.positive("useful stick offcut", usefulStickMm, 10_000, "mm", "Give a length.");
    Given.positive("useful sheet offcut", usefulSheetMm, 10_000, "mm", "Give a side.");
  }

  /** Least distance between plates on a sheet (mm). */
  public double plateGapMm() {
    return tableKerfMm + leadInRoomMm;
  }
}
