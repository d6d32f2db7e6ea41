package trammel.planning.order;

/**
 * Something that comes off the rack instead of being bought, or goes back on it.
 *
 * @param name the name painted on it, or its key in the catalog
 * @param title what it is
 * @param amount how much, in words
 */
public record StockUse(String name, String title, String amount) {}
