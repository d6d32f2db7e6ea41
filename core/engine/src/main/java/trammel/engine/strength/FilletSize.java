package trammel.engine.strength;

import trammel.engine.quantity.Given;

/** How much base metal or side weld a fillet asks for. */
public final class FilletSize {
  private FilletSize() {}

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
}
