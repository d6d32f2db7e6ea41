package trammel.trade.money;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import trammel.engine.quantity.Given;

/**
 * Sales tax on what is taxable. Which classes are, labour and fabrication among them, varies by
 * state and is a setting. Tax is carried past the cent and rounded half up, on each item or on the
 * invoice, as the seller chooses (Streamlined Sales and Use Tax Agreement, section 324; R.I. Gen.
 * Laws 44-18.1-25).
 *
 * @param rate 0 to 1; 0.0725 for 7.25 %; state and local together
 * @param taxable classes on which it is due
 * @param rounding on each item or on the invoice
 */
public record SalesTax(BigDecimal rate, Set<CostClass> taxable, Rounding rounding) {

  /** Where tax is rounded. */
  public enum Rounding {
    BY_ITEM,
    BY_INVOICE
  }

  /** No tax at all. */
  public static final SalesTax NONE = new SalesTax(BigDecimal.ZERO, Set.of(), Rounding.BY_INVOICE);

  public SalesTax {
    Given.decimal("sales tax rate", rate, 0, 1, "Give a fraction: 0.0725 for 7.25 %.");
    Given.present("rounding of sales tax", rounding, "By item or by invoice.");
    taxable = Set.copyOf(taxable);
  }

  /** The same with another rate. */
  public SalesTax withRate(BigDecimal other) {
    return new SalesTax(other, taxable, rounding);
  }

  /** Whether it is due on a class. */
  public boolean isDueOn(CostClass costClass) {
    return taxable.contains(costClass);
  }

  /** Tax on one amount. */
  public Money on(Money amount) {
    return amount.times(rate);
  }

  /**
   * Tax on several amounts, rounded by item or by invoice.
   *
   * @param amounts taxable amounts in one currency
   * @param none nothing in that currency
   */
  public Money onAll(List<Money> amounts, Money none) {
    Money tax = none;
    Money base = none;
    for (Money amount : amounts) {
      tax = tax.plus(on(amount));
      base = base.plus(amount);
    }
    return rounding == Rounding.BY_ITEM ? tax : on(base);
  }
}
