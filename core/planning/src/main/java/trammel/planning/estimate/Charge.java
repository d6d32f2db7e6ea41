package trammel.planning.estimate;

import trammel.trade.money.Money;

/**
 * What a supplier asks for an order beside its lines.
 *
 * @param key short name in files: "freight"
 * @param title what for
 * @param amount how much
 */
public record Charge(String key, String title, Money amount) {}
