package trammel.planning.work;

import trammel.trade.given.Given;

/**
 * A bolt with nut and two washers that the job needs.
 *
 * @param boltKey key of the bolt size in the catalog
 * @param gripMm thickness that it clamps, washers left out (mm), above 0
 * @param quantity how many, above 0
 * @param where the joint it goes through
 * @param why what asks for it
 */
public record BoltNeed(String boltKey, double gripMm, int quantity, String where, String why) {
  public BoltNeed {
    Given.text(boltKey, "Size of a bolt", "Give its key in the catalog.");
    Given.positive(gripMm, 500, "Grip of bolt '" + boltKey + "' in mm", "Add up what it clamps.");
    Given.count(quantity, 1, 1000, "Number of bolts '" + boltKey + "'", "Leave it out for none.");
    Given.text(where, "Place of bolt '" + boltKey + "'", "Say which joint.");
    Given.text(why, "Reason for bolt '" + boltKey + "'", "Say what asks for it.");
  }
}
