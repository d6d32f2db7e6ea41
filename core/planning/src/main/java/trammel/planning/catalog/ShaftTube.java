package trammel.planning.catalog;

import trammel.engine.quantity.Given;

/**
 * A driveshaft that a driveline shop makes to length, by its steel tube.
 *
 * @param key its name in the catalog, which is also that of its price
 * @param title what it is, for lists
 * @param outsideMm outside diameter of the tube (mm), above 0
 * @param wallMm wall of the tube (mm), above 0, under half of the diameter
 */
public record ShaftTube(String key, String title, double outsideMm, double wallMm) {
  public ShaftTube {
    Given.text("key of a driveshaft", key, "Give it a short name.");
    Given.text("title of driveshaft '" + key + "'", title, "Say what it is.");
    Given.within("outside of driveshaft '" + key + "'", outsideMm, 5, 500, "mm", "Measure it.");
    Given.within(
        "wall of driveshaft '" + key + "'",
        wallMm,
        0.1,
        outsideMm / 2 - 0.1,
        "mm",
        "A tube is hollow: its wall is under half of its diameter.");
  }
}
