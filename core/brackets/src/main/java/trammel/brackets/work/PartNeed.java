package trammel.brackets.work;

import java.util.List;
import trammel.engine.quantity.Given;
import trammel.engine.quantity.Phrase;

/**
 * Something bought that the job needs. It either stands somewhere on the vehicle, piece by piece,
 * or is no thing with a place of its own: a service, a supply, or a kit that is laid as it fits.
 *
 * @param itemKey key of the priced item in the catalog
 * @param quantity how many of its unit, above 0
 * @param pieces where each of them stands; empty for what has no place of its own
 * @param why which point, joint or obstacle asks for it
 */
public record PartNeed(String itemKey, double quantity, List<BoughtPiece> pieces, Phrase why) {
  public PartNeed {
    Given.text("item of a part", itemKey, "Give its key in the catalog.");
    Given.positive("quantity of '" + itemKey + "'", quantity, 10_000, "", "Leave it out for none.");
    Given.text("reason for '" + itemKey + "'", why, "Say what asks for it.");
    pieces = List.copyOf(pieces);
    if (!pieces.isEmpty() && pieces.size() != quantity) {
      throw new IllegalArgumentException(
          "'"
              + itemKey
              + "' has "
              + pieces.size()
              + " places for a quantity of "
              + quantity
              + "; each needs one. Give as many places as pieces.");
    }
  }

  /** Parts that stand where their pieces say. */
  public static PartNeed placed(String itemKey, List<BoughtPiece> pieces, Phrase why) {
    return new PartNeed(itemKey, pieces.size(), pieces, why);
  }

  /** What has no place of its own: a service, a supply, or a kit that is laid as it fits. */
  public static PartNeed withoutPlace(String itemKey, double quantity, Phrase why) {
    return new PartNeed(itemKey, quantity, List.of(), why);
  }
}
