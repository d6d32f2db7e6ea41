package trammel.engine.strength;

import trammel.engine.quantity.Given;

/** Rules for the size of fillet welds. Source: AISC 360 Table J2.4 and section J2.2b. */
public final class FilletSize {
  private static final double INCH_MM = 25.4;

  /** Rounding room on a thickness, mm: 6.35 typed as 6.350000001 is still a quarter inch. */
  private static final double ROUNDING_MM = 1e-6;

  private FilletSize() {}

  /**
   * Least leg by the thickness of the thinner part: 1/8 in to 1/4 in, 3/16 to 1/2, 1/4 to 3/4, 5/16
   * over it. The welding code ties the same table to the thicker part when the process is not low
   * in hydrogen; pass that thickness then.
   *
   * @param thicknessMm thickness, mm, 0.1 to 200
   * @return leg, mm
   * @throws IllegalArgumentException if the thickness is outside its range
   */
  public static double leastLegMm(double thicknessMm) {
    checkThickness(thicknessMm);
    double inches = (thicknessMm - ROUNDING_MM) / INCH_MM;
    if (inches <= 0.25) {
      return INCH_MM / 8;
    }
    if (inches <= 0.5) {
      return INCH_MM * 3 / 16;
    }
    return inches <= 0.75 ? INCH_MM / 4 : INCH_MM * 5 / 16;
  }

  /**
   * Largest leg along an edge: the thickness under 1/4 in, else 1/16 in less, so that the edge can
   * be seen not to be melted away.
   *
   * @param edgeThicknessMm thickness at the edge, mm, 0.1 to 200
   * @return leg, mm
   * @throws IllegalArgumentException if the thickness is outside its range
   */
  public static double largestLegMm(double edgeThicknessMm) {
    checkThickness(edgeThicknessMm);
    return edgeThicknessMm < INCH_MM / 4 - ROUNDING_MM
        ? edgeThicknessMm
        : edgeThicknessMm - INCH_MM / 16;
  }

  /**
   * Least length at which the whole leg counts, four legs.
   *
   * @param legMm leg, mm, 0.5 to 50
   * @return length, mm
   * @throws IllegalArgumentException if the leg is outside its range
   */
  public static double leastLengthMm(double legMm) {
    FilletSeam.checkLeg(legMm);
    return 4.0 * legMm;
  }

  /**
   * Least length of one piece of an intermittent weld, four legs and at least 1½ in.
   *
   * @param legMm leg, mm, 0.5 to 50
   * @return length, mm
   * @throws IllegalArgumentException if the leg is outside its range
   */
  public static double leastIntermittentLengthMm(double legMm) {
    return Math.max(leastLengthMm(legMm), 1.5 * INCH_MM);
  }

  /**
   * Base metal that is as strong as a fillet on one side of it, 0.6 FEXX (√2/2) w/(0.6 Fu); for E70
   * this is 3.09 D/Fu with D in sixteenths. Source: AISC Steel Construction Manual part 9, from
   * memory.
   *
   * @param legMm leg, mm, 0.5 to 50
   * @param electrode filler metal
   * @param baseTensileMPa tensile strength of the base metal, MPa, 50 to 3500
   * @return thickness, mm
   * @throws IllegalArgumentException if an input is outside its range
   */
  public static double matchingThicknessMm(
      double legMm, Electrode electrode, double baseTensileMPa) {
    FilletSeam.checkLeg(legMm);
    Given.within(
        "tensile strength of the base metal", baseTensileMPa, 50, 3500, "MPa", "Check its unit.");
    return FilletSeam.THROAT_SHARE * electrode.tensileMPa() * legMm / baseTensileMPa;
  }

  /**
   * Length of each of two side welds when an end weld takes its share of the load.
   *
   * @param loadN load, N, 0 or more
   * @param strengthNPerMm strength of the weld for each mm, N/mm, over 0
   * @param endWeldMm length of the end weld, mm, 0 or more
   * @return length of each side weld, mm, 0 when the end weld is enough
   * @throws IllegalArgumentException if an input is outside its range
   */
  public static double sideWeldMm(double loadN, double strengthNPerMm, double endWeldMm) {
    Given.notNegative("load on the welds", loadN, "N", "Take it without its direction.");
    Given.positive("strength of the weld", strengthNPerMm, "N/mm", "Check leg and filler.");
    Given.notNegative("end weld", endWeldMm, "mm", "Give 0 for none.");
    return Math.max(0.0, (loadN / strengthNPerMm - endWeldMm) / 2.0);
  }

  private static void checkThickness(double thicknessMm) {
    Given.within("thickness at the weld", thicknessMm, 0.1, 200, "mm", "Measure the part.");
  }
}
