package trammel.planning.catalog;

import trammel.engine.quantity.Given;

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
    Given.text("key of a coil spring", key, "Give it a short name.");
    Given.text("title of coil spring '" + key + "'", title, "Say what it is.");
    Given.positive("rate of '" + key + "' in N/mm", rateNPerMm, 1000, "", "See its data.");
    Given.positive("free length of '" + key + "' in mm", freeLengthMm, 2000, "", "Measure it.");
    Given.within(
        "solid length of '" + key + "' in mm", solidLengthMm, 1, freeLengthMm, "", "See its data.");
    Given.positive("radius of '" + key + "' in mm", outsideRadiusMm, 200, "", "Measure it.");
  }
}
