package trammel.planning.catalog;

import trammel.engine.quantity.Given;
import trammel.engine.springs.AirSpringSize;
import trammel.engine.springs.RatedAirSpring;

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
    Given.text("key of an air spring", key, "Give it a short name.");
    Given.text("title of air spring '" + key + "'", title, "Say what it is.");
    Given.present("load-height table of '" + key + "'", size, "Give its rows.");
    Given.positive("radius of '" + key + "' in mm", outsideRadiusMm, 500, "", "Measure it.");
    Given.positive("pressure of '" + key + "' in MPa", highestGaugeMPa, 5, "", "See its data.");
  }

  /** Its table with its highest pressure, as a layout keeps them. */
  public RatedAirSpring rating() {
    return new RatedAirSpring(size, highestGaugeMPa);
  }
}
