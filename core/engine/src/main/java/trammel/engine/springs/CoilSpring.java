package trammel.engine.springs;

import trammel.engine.quantity.Given;

/**
 * A round-wire compression spring.
 *
 * @param wireDiameterMm wire diameter, mm, 0.1 to 100
 * @param meanDiameterMm coil diameter to the middle of the wire, mm: outer diameter less one wire,
 *     over one wire and up to 2000
 * @param activeCoils coils that twist, 0.5 to 100; a closed and ground end takes about one off each
 *     end
 * @param shearModulusMPa shear modulus of the wire, MPa, 10000 to 200000
 */
public record CoilSpring(
    double wireDiameterMm, double meanDiameterMm, double activeCoils, double shearModulusMPa) {
  /** Shear modulus of spring steel wire, 11.5e6 psi in MPa. Source: Shigley table 10-5, memory. */
  public static final double SPRING_STEEL_SHEAR_MODULUS_MPA = 79_290.0;

  /**
   * Checks the spring.
   *
   * @throws IllegalArgumentException if a dimension is outside its range
   */
  public CoilSpring {
    Given.within(
        "wire diameter", wireDiameterMm, 0.1, 100, "mm", "Measure the wire across, without paint.");
    Given.within("mean coil diameter", meanDiameterMm, 0.1, 2000, "mm", "Take outer less wire.");
    Given.within("number of active coils", activeCoils, 0.5, 100, "", "Count the free coils.");
    Given.within(
        "shear modulus", shearModulusMPa, 10_000, 200_000, "MPa", "Spring steel has about 79290.");
    if (meanDiameterMm <= wireDiameterMm) {
      throw Given.refusal(
          "mean coil diameter",
          Given.text(meanDiameterMm) + " mm",
          "over the wire diameter, " + Given.text(wireDiameterMm) + " mm",
          "Take the outer diameter of the coil less one wire.");
    }
  }

  /**
   * The spring's own rate, k = G d⁴ / (8 D³ Na).
   *
   * <p>Source: Shigley, Mechanical Engineering Design, ch. 10, from memory; Wentzell, Machine
   * Design, ch. 8.
   *
   * @return rate along the spring, N/mm
   */
  public double rateNPerMm() {
    double wire2 = wireDiameterMm * wireDiameterMm;
    double mean3 = meanDiameterMm * meanDiameterMm * meanDiameterMm;
    return shearModulusMPa * wire2 * wire2 / (8.0 * mean3 * activeCoils);
  }

  /**
   * The number of active coils that gives a wanted rate.
   *
   * @param wireDiameterMm wire diameter, mm
   * @param meanDiameterMm mean coil diameter, mm
   * @param shearModulusMPa shear modulus, MPa
   * @param rateNPerMm wanted rate, N/mm, over 0
   * @return active coils
   * @throws IllegalArgumentException if an input is outside its range
   */
  public static double activeCoilsForRate(
      double wireDiameterMm, double meanDiameterMm, double shearModulusMPa, double rateNPerMm) {
    Given.positive("wanted spring rate", rateNPerMm, "N/mm", "State a rate over zero.");
    CoilSpring oneCoil = new CoilSpring(wireDiameterMm, meanDiameterMm, 1.0, shearModulusMPa);
    return oneCoil.rateNPerMm() / rateNPerMm;
  }

  /**
   * Spring index, mean diameter over wire diameter.
   *
   * @return index, over 1; 4 to 12 is usual
   */
  public double index() {
    return meanDiameterMm / wireDiameterMm;
  }
}
