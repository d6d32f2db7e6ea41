package trammel.planning.work;

import trammel.trade.given.Given;

/**
 * Something bought that the job needs.
 *
 * @param itemKey key of the priced item in the catalog
 * @param quantity how many of its unit, above 0
 * @param why which point, joint or obstacle asks for it
 */
public record PartNeed(String itemKey, double quantity, String why) {
  public PartNeed {
    Given.text(itemKey, "Item of a part", "Give its key in the catalog.");
    Given.positive(quantity, 10_000, "Quantity of '" + itemKey + "'", "Leave it out for none.");
    Given.text(why, "Reason for '" + itemKey + "'", "Say what asks for it.");
  }
}
