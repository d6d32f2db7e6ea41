package trammel.trade.money;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * How a price is paid. Every payment is its share of the price, rounded to the smallest coin as the
 * shop rounds, and never more than what is left to pay; what comes last, a payment that completes
 * the whole or the balance, takes the rest. So none is negative and all add up to the price
 * exactly.
 *
 * @param deposit due with the order
 * @param progress due between deposit and balance, in the order of the terms
 * @param balance due at the end; nothing where deposit and progress are the whole price
 */
public record Payments(Money deposit, List<Money> progress, Money balance) {

  public Payments {
    progress = List.copyOf(progress);
  }

  /**
   * The payments of a price.
   *
   * @param total the price with tax, 0 or more
   * @param terms the shares of deposit and progress payments
   */
  static Payments of(Money total, PriceTerms terms) {
    BigDecimal share = terms.depositFraction();
    Rounding rounding = terms.rounding();
    Money deposit = due(total, terms.depositFraction(), share, total, rounding);
    Money left = total.minus(deposit);
    List<Money> progress = new ArrayList<>(terms.progress().size());
    for (ProgressPayment payment : terms.progress()) {
      share = share.add(payment.fraction());
      Money due = due(total, payment.fraction(), share, left, rounding);
      progress.add(due);
      left = left.minus(due);
    }
    return new Payments(deposit, progress, left);
  }

  /** A payment whose share, with those before it, makes up {@code reached} of the whole. */
  private static Money due(
      Money total, BigDecimal fraction, BigDecimal reached, Money left, Rounding rounding) {
    if (reached.compareTo(BigDecimal.ONE) >= 0) {
      return left;
    }
    Money due = rounding.part(total, fraction);
    return due.compareTo(left) > 0 ? left : due;
  }
}
