package trammel.brackets.material;

import trammel.trade.given.Given;

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
    Given.text(key, "Key of a shock", "Give it a short name.");
    Given.text(title, "Title of shock '" + key + "'", "Say what it is.");
    Given.positive(closedMm, 2000, "Closed length of '" + key + "' in mm", "Measure it.");
    Given.between(openMm, closedMm + 1, 3000, "Open length of '" + key + "' in mm", "Measure it.");
    Given.positive(bodyRadiusMm, 200, "Radius of '" + key + "' in mm", "Measure it.");
    Given.positive(boltMm, 50, "Bolt of '" + key + "' in mm", "Measure it.");
    Given.positive(eyeWidthMm, 200, "Eye width of '" + key + "' in mm", "Measure it.");
  }
}
