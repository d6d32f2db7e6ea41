package trammel.trade.welding;

import trammel.engine.quantity.Given;

/**
 * Smallest and largest fillet leg and shortest weld by ANSI/AISC 360, section J2.2b and Table J2.4.
 * The table is kept for the thinner of the two parts joined.
 */
public final class FilletLegs {

  private static final double MM_PER_INCH = 25.4;
  private static final double QUARTER_INCH_MM = MM_PER_INCH / 4;
  private static final double SIXTEENTH_INCH_MM = MM_PER_INCH / 16;

  /** Measured plate runs a little over its nominal size without changing its row of the table. */
  private static final double ROLLING_TOLERANCE_MM = 0.1;

  private static final double SHORTEST_STEP_MM = 1.5 * MM_PER_INCH;

  private FilletLegs() {}

  /**
   * Least leg by the table: 1/8 in to 1/4 in plate, 3/16 to 1/2, 1/4 to 3/4, 5/16 over that.
   *
   * @param thinnerMm thickness of the thinner part, mm; the welding code ties the same table to the
   *     thicker part where the process is not low in hydrogen
   * @return leg, mm
   * @throws IllegalArgumentException when the thickness is not above 0, up to 100 mm
   */
  public static double leastByTableMm(double thinnerMm) {
    checkedThickness(thinnerMm);
    double nominalMm = thinnerMm - ROLLING_TOLERANCE_MM;
    if (nominalMm <= QUARTER_INCH_MM) {
      return 2 * SIXTEENTH_INCH_MM;
    }
    if (nominalMm <= 2 * QUARTER_INCH_MM) {
      return 3 * SIXTEENTH_INCH_MM;
    }
    return nominalMm <= 3 * QUARTER_INCH_MM ? 4 * SIXTEENTH_INCH_MM : 5 * SIXTEENTH_INCH_MM;
  }

  /**
   * Smallest leg to weld: by the table; in sheet thinner than 1/8 in, which it does not cover, the
   * thickness itself.
   *
   * @param thinnerMm thickness of the thinner part, mm
   * @return leg, mm
   * @throws IllegalArgumentException when the thickness is not above 0, up to 100 mm
   */
  public static double smallestMm(double thinnerMm) {
    return Math.min(thinnerMm, leastByTableMm(thinnerMm));
  }

  /**
   * Largest leg along the edge of a part: its thickness under 1/4 in, 1/16 in less from there on.
   * Against the face of a part there is no such limit.
   *
   * @param edgeMm thickness of the part whose edge is welded, mm
   * @return leg, mm
   * @throws IllegalArgumentException when the thickness is not above 0, up to 100 mm
   */
  public static double largestAlongEdgeMm(double edgeMm) {
    checkedThickness(edgeMm);
    return edgeMm < QUARTER_INCH_MM - ROLLING_TOLERANCE_MM ? edgeMm : edgeMm - SIXTEENTH_INCH_MM;
  }

  /** Leg that counts for strength: a weld shorter than four legs counts as a quarter its length. */
  public static double countedLegMm(double legMm, double lengthMm) {
    return Math.min(legMm, lengthMm / 4);
  }

  /** Least length at which the whole leg counts: four legs. */
  public static double leastLengthMm(double legMm) {
    return 4 * legMm;
  }

  /** Shortest step of an intermittent fillet: four legs, and 1 1/2 in. */
  public static double shortestStepMm(double legMm) {
    return Math.max(leastLengthMm(legMm), SHORTEST_STEP_MM);
  }

  private static void checkedThickness(double thicknessMm) {
    Given.positive(
        "thickness at a fillet weld", thicknessMm, 100, "mm", "Give the thickness of the part.");
  }
}
