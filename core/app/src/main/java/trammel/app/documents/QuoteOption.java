package trammel.app.documents;

import trammel.planning.money.Money;

/**
 * The same job done otherwise, for the customer to choose.
 *
 * @param label what is done otherwise
 * @param total its total price
 * @param hours its mean hours
 */
public record QuoteOption(String label, Money total, double hours) {}
