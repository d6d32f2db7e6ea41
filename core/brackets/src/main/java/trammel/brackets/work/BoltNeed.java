package trammel.brackets.work;

import java.util.List;
import trammel.engine.quantity.Given;
import trammel.engine.quantity.Phrase;

/**
 * Bolts with nut and two washers that the job needs.
 *
 * @param boltKey key of the bolt size in the catalog
 * @param gripMm thickness that each clamps, washers left out (mm), above 0
 * @param places where each of them goes, as many as are needed
 * @param where the joint they go through
 * @param why what asks for them
 */
public record BoltNeed(
    String boltKey, double gripMm, List<Bolting> places, String where, Phrase why) {
  public BoltNeed {
    Given.text("size of a bolt", boltKey, "Give its key in the catalog.");
    Given.positive(
        "grip of bolt '" + boltKey + "' in mm", gripMm, 500, "", "Add up what it clamps.");
    places = List.copyOf(places);
    Given.count("places of bolts '" + boltKey + "'", places.size(), 1, 1000, "Say where they go.");
    Given.text("place of bolt '" + boltKey + "'", where, "Say which joint.");
    Given.text("reason for bolt '" + boltKey + "'", why, "Say what asks for it.");
  }

  /** How many there are. */
  public int quantity() {
    return places.size();
  }
}
