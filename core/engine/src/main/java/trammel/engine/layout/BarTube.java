package trammel.engine.layout;

import trammel.engine.quantity.Given;

/**
 * The tube that a bar is made of.
 *
 * @param outsideDiameterMm outside diameter (mm), above 0
 * @param wallMm wall (mm), above 0 and at most half the diameter
 * @param yieldMPa minimum yield strength of the steel (MPa), above 0
 */
public record BarTube(double outsideDiameterMm, double wallMm, double yieldMPa) {
  public BarTube {
    Given.positive("tube outside diameter (mm)", outsideDiameterMm);
    Given.within("tube wall (mm)", wallMm, Double.MIN_NORMAL, outsideDiameterMm / 2);
    Given.positive("tube yield strength (MPa)", yieldMPa);
  }
}
