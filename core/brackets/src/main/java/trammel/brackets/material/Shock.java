package trammel.brackets.material;

import trammel.engine.quantity.Given;

/**
 * A shock by generic size.
 *
 * @param key the name by which options and plans ask for it, also the key of its priced item
 * @param title what it is
 * @param closedMm eye to eye fully closed (mm), above 0
 * @param openMm eye to eye fully open (mm), above the closed length
 * @param bodyRadiusMm outside radius (mm), above 0
 * @param coilOver true when a coil spring sits on it
 * @param boltMm diameter of its mounting bolts (mm), above 0
 * @param eyeWidthMm width of its eyes between the tabs (mm), above 0
 */
public record Shock(
    String key,
    String title,
    double closedMm,
    double openMm,
    double bodyRadiusMm,
    boolean coilOver,
    double boltMm,
    double eyeWidthMm) {
  public Shock {
    Given.text("key of a shock", key, "Give it a short name.");
    Given.text("title of shock '" + key + "'", title, "Say what it is.");
    Given.positive("closed length of '" + key + "' in mm", closedMm, 2000, "", "Measure it.");
    Given.within(
        "open length of '" + key + "' in mm", openMm, closedMm + 1, 3000, "", "Measure it.");
    Given.positive("radius of '" + key + "' in mm", bodyRadiusMm, 200, "", "Measure it.");
    Given.positive("bolt of '" + key + "' in mm", boltMm, 50, "", "Measure it.");
    Given.positive("eye width of '" + key + "' in mm", eyeWidthMm, 200, "", "Measure it.");
  }
}
