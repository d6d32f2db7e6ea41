package trammel.planning.order;

import trammel.trade.money.Money;

/**
 * What a supplier asks for an order beside its lines.
 *
 * @param title what for
 * @param amount how much
 */
public record Charge(String title, Money amount) {}
