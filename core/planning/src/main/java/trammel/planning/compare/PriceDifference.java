package trammel.planning.compare;

import trammel.trade.money.Money;

/**
 * One part of the difference between the prices of two variants.
 *
 * @param cause what makes it
 * @param name which term, class of cost or payment
 * @param first how it stands in the first variant: a rate, a percentage or an amount
 * @param other how it stands in the other
 * @param change what it adds to the price with tax; less than nothing where it takes away
 */
public record PriceDifference(Cause cause, String name, String first, String other, Money change) {
  /** What makes a part of a difference. */
  public enum Cause {
    /** Other terms, for the work of the first variant. */
    TERMS,
    /** Other work, at the terms of the other variant. */
    WORK,
    /** When it is paid. */
    PAYMENT
  }
}
