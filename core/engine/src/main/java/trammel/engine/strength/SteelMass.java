package trammel.engine.strength;

import trammel.engine.quantity.Given;

/** Weight of steel parts. */
public final class SteelMass {
  /** Density of carbon and low-alloy steel, kg/mm³: 7850 kg/m³, 0.2836 lb/in³. Source: EN 1993. */
  public static final double DENSITY_KG_PER_MM3 = 7850e-9;

  private SteelMass() {}

  /**
   * Mass of a flat part. Merchants' tables round to 40.8 lb/ft² for each inch; the density used
   * here gives 40.84.
   *
   * @param areaMm2 area of one face, mm², 0 or more
   * @param thicknessMm thickness, mm, over 0
   * @return mass, kg
   * @throws IllegalArgumentException if an input is outside its range
   */
  public static double plateKg(double areaMm2, double thicknessMm) {
    Given.notNegative("plate area", areaMm2, "mm²", "Take the area less the holes.");
    Given.positive("plate thickness", thicknessMm, "mm", "Measure it without paint.");
    return DENSITY_KG_PER_MM3 * areaMm2 * thicknessMm;
  }

  /**
   * Mass of a length of section.
   *
   * @param section its cross-section
   * @param lengthMm length, mm, 0 or more
   * @return mass, kg
   * @throws IllegalArgumentException if the length is negative
   */
  public static double lengthKg(Section section, double lengthMm) {
    Given.notNegative("length", lengthMm, "mm", "Measure along the middle line.");
    return section.massKgPerM() * lengthMm / 1000.0;
  }
}
