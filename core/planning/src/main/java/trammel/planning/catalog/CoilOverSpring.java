package trammel.planning.catalog;

import trammel.trade.given.Given;

/**
 * A coil spring that sits on a shock, by generic size.
 *
 * @param key the name by which plans ask for it, also the key of its priced item
 * @param title what it is
 * @param rateNPerMm rate (N/mm), above 0
 * @param freeLengthMm length without load (mm), above 0
 * @param solidLengthMm length coil-bound (mm), below the free length
 * @param outsideRadiusMm outside radius (mm), above 0
 */
public record CoilOverSpring(
    String key,
    String title,
    double rateNPerMm,
    double freeLengthMm,
    double solidLengthMm,
    double outsideRadiusMm) {
  public CoilOverSpring {
    Given.text(key, "Key of a coil spring", "Give it a short name.");
    Given.text(title, "Title of coil spring '" + key + "'", "Say what it is.");
    Given.positive(rateNPerMm, 1000, "Rate of '" + key + "' in N/mm", "See its data.");
    Given.positive(freeLengthMm, 2000, "Free length of '" + key + "' in mm", "Measure it.");
    Given.between(
        solidLengthMm, 1, freeLengthMm, "Solid length of '" + key + "' in mm", "See its data.");
    Given.positive(outsideRadiusMm, 200, "Radius of '" + key + "' in mm", "Measure it.");
  }
}
