package trammel.planning.estimate;

import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Item;

/**
 * So many of one bought item.
 *
 * @param item the item
 * @param quantity how many of its unit
 * @param why what asks for it
 */
public record PartLine(Item item, double quantity, Phrase why) {}
