package trammel.planning.catalog;

import trammel.engine.springs.AirSpringSize;
import trammel.engine.springs.RatedAirSpring;
import trammel.trade.given.Given;

/**
 * An air spring by generic size with its load-height table.
 *
 * @param key the name by which options and plans ask for it, also the key of its priced item
 * @param title what it is
 * @param size effective area and volume by height
 * @param outsideRadiusMm largest outside radius inflated (mm), above 0
 * @param highestGaugeMPa highest working pressure above the atmosphere (MPa), above 0
 */
public record AirSpring(
    String key, String title, AirSpringSize size, double outsideRadiusMm, double highestGaugeMPa) {
  public AirSpring {
    Given.text(key, "Key of an air spring", "Give it a short name.");
    Given.text(title, "Title of air spring '" + key + "'", "Say what it is.");
    Given.present(size, "Load-height table of '" + key + "'", "Give its rows.");
    Given.positive(outsideRadiusMm, 500, "Radius of '" + key + "' in mm", "Measure it.");
    Given.positive(highestGaugeMPa, 5, "Pressure of '" + key + "' in MPa", "See its data.");
  }

  /** Its table with its highest pressure, as a layout keeps them. */
  public RatedAirSpring rating() {
    return new RatedAirSpring(size, highestGaugeMPa);
  }
}
