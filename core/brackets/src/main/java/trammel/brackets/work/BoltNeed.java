package trammel.brackets.work;

import java.util.List;
import trammel.trade.given.Given;

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
    String boltKey, double gripMm, List<Bolting> places, String where, String why) {
  public BoltNeed {
    Given.text(boltKey, "Size of a bolt", "Give its key in the catalog.");
    Given.positive(gripMm, 500, "Grip of bolt '" + boltKey + "' in mm", "Add up what it clamps.");
    places = List.copyOf(places);
    Given.count(places.size(), 1, 1000, "Places of bolts '" + boltKey + "'", "Say where they go.");
    Given.text(where, "Place of bolt '" + boltKey + "'", "Say which joint.");
    Given.text(why, "Reason for bolt '" + boltKey + "'", "Say what asks for it.");
  }

  /** How many there are. */
  public int quantity() {
    return places.size();
  }
}
