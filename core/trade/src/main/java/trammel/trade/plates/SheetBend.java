package trammel.trade.plates;

import trammel.trade.given.Dimension;

/**
 * One bend in sheet or plate, by the neutral-axis rule: allowance = angle (R + K T), outside
 * setback = (R + T) tan(angle/2), deduction = 2 setback - allowance.
 *
 * @param thicknessMm sheet thickness T
 * @param insideRadiusMm inside bend radius R
 * @param angleRad angle the sheet is bent through, from flat
 * @param neutralFactor K, the neutral axis from the inside face in thicknesses
 */
public record SheetBend(
    double thicknessMm, double insideRadiusMm, double angleRad, double neutralFactor) {
  /** K for soft steel at small radii; 0.42 to 0.47 (Machinery's Handbook 26th ed.). */
  public static final double STEEL_K = 0.42;

  private static final double MOST_BEND_RAD = Math.toRadians(175.0);

  public SheetBend {
    Dimension.positiveMm("sheet thickness", thicknessMm);
    Dimension.notNegativeMm("inside bend radius", insideRadiusMm);
    Dimension.angleRad("bend", angleRad, 0.0, MOST_BEND_RAD, "Make it of two bends.");
    if (!(neutralFactor >= 0.0 && neutralFactor <= 0.5)) {
      throw Dimension.refuse(
          "neutral-axis factor K",
          Double.toString(neutralFactor),
          "0 to 0.5",
          "Use 0.42 for steel.");
    }
  }

  /** Length of sheet used up in the bend. */
  public double allowanceMm() {
    return angleRad * (insideRadiusMm + neutralFactor * thicknessMm);
  }

  /** From the bend's start to the meeting point of the outside faces. */
  public double outsideSetbackMm() {
    return (insideRadiusMm + thicknessMm) * Math.tan(angleRad / 2.0);
  }

  /** What the flat is shorter than the sum of the outside legs. */
  public double deductionMm() {
    return 2.0 * outsideSetbackMm() - allowanceMm();
  }
}
