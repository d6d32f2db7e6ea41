package trammel.engine.layout;

import trammel.engine.quantity.Given;

/**
 * The plate that a bar's brackets are cut from. Each joint sits between two of them.
 *
 * @param thicknessMm thickness of one plate (mm), above 0
 * @param yieldMPa minimum yield strength of the steel (MPa), above 0
 * @param tensileMPa minimum tensile strength of the steel (MPa), not under the yield
 */
public record BracketPlate(double thicknessMm, double yieldMPa, double tensileMPa) {
  public BracketPlate {
    Given.positive("bracket plate thickness (mm)", thicknessMm);
    Given.positive("bracket plate yield strength (MPa)", yieldMPa);
    Given.within("bracket plate tensile strength (MPa)", tensileMPa, yieldMPa, 3500);
  }

  /** The same steel, thicker by an amount (mm), thinner where it is negative. */
  public BracketPlate thickerBy(double amountMm) {
    return new BracketPlate(thicknessMm + amountMm, yieldMPa, tensileMPa);
  }
}
