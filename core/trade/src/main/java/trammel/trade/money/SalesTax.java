package trammel.trade.money;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import trammel.engine.quantity.Given;

/**
 * Tax on what is taxable: sales tax, value added tax or what the shop's country calls it. Which
 * classes are, labour and fabrication among them, varies by state and is a setting. Tax is carried
 * past the cent and rounded half up, on each item or on the invoice, as the seller chooses
 * (Streamlined Sales and Use Tax Agreement, section 324; R.I. Gen. Laws 44-18.1-25).
 *
 * @param name what it is called on the shop's papers, such as sales tax
 * @param rate 0 to 1; 0.0725 for 7.25 %; state and local together
 * @param taxable classes on which it is due
 * @param rounding on each item or on the invoice
 */
public record SalesTax(String name, BigDecimal rate, Set<CostClass> taxable, RoundedBy rounding) {

  /** Where tax is rounded. */
  public enum RoundedBy {
    BY_ITEM,
    BY_INVOICE
  }

  /** What tax is called where nobody says otherwise. */
  public static final String USUAL_NAME = "tax";

  /** No tax at all. */
  public static final SalesTax NONE =
      new SalesTax(USUAL_NAME, BigDecimal.ZERO, Set.of(), RoundedBy.BY_INVOICE);

  public SalesTax {
    Given.text("name of the tax", name, "For example sales tax.");
    Given.decimal("rate of the " + name, rate, 0, 1, "Give a fraction: 0.0725 for 7.25 %.");
    Given.present("rounding of the " + name, rounding, "By item or by invoice.");
    taxable = Set.copyOf(taxable);
  }

  /** The same with another rate. */
  public SalesTax withRate(BigDecimal other) {
    return new SalesTax(name, other, taxable, rounding);
  }

  /** Whether it is due on a class. */
  public boolean isDueOn(CostClass costClass) {
    return taxable.contains(costClass);
  }

  /** Tax on one amount, rounded half up. */
  public Money on(Money amount) {
    return on(amount, Rounding.USUAL);
  }

  private Money on(Money amount, Rounding coins) {
    return coins.part(amount, rate);
  }

  /**
   * Tax on several amounts, rounded by item or by invoice.
   *
   * @param amounts taxable amounts in one currency
   * @param none nothing in that currency
   * @param coins where half a coin goes
   */
  public Money onAll(List<Money> amounts, Money none, Rounding coins) {
    Money tax = none;
    Money base = none;
    for (Money amount : amounts) {
      tax = tax.plus(on(amount, coins));
      base = base.plus(amount);
    }
    return rounding == RoundedBy.BY_ITEM ? tax : on(base, coins);
  }
}
