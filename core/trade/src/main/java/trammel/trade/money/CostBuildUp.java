package trammel.trade.money;

import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import trammel.engine.quantity.Given;

/**
 * The price of a job, built from its lines. Every figure here is a sum of lines or follows from
 * such a sum by one stated step, so that it can be traced.
 *
 * @param terms the shop's terms
 * @param lines all lines in the order of the cost sheet
 */
public record CostBuildUp(PriceTerms terms, List<PriceLine> lines) {

  public CostBuildUp {
    Given.present("terms of the price", terms, "Give the shop's terms.");
    lines = List.copyOf(lines);
    for (PriceLine line : lines) {
      requireCurrency(line.line(), terms.currency());
    }
  }

  /** Refuses a line in another currency than that of the job. */
  static void requireCurrency(CostLine line, Currency currency) {
    if (!line.currency().equals(currency)) {
      throw new IllegalArgumentException(
          "The cost line '"
              + line.key()
              + "' was given in "
              + line.currency().getCurrencyCode()
              + "; allowed is "
              + currency.getCurrencyCode()
              + ", the currency of the job. Convert its price first.");
    }
  }

  /** Lines of one class. */
  public List<PriceLine> lines(CostClass costClass) {
    List<PriceLine> found = new ArrayList<>();
    for (PriceLine line : lines) {
      if (line.line().costClass() == costClass) {
        found.add(line);
      }
    }
    return List.copyOf(found);
  }

  /** Total of one class with its lines. */
  public ClassTotal total(CostClass costClass) {
    Money cost = none();
    Money price = none();
    List<PriceLine> found = lines(costClass);
    for (PriceLine line : found) {
      cost = cost.plus(line.cost());
      price = price.plus(line.price());
    }
    return new ClassTotal(costClass, cost, price, found);
  }

  /** Totals of the classes that have lines, in the order of {@link CostClass}. */
  public List<ClassTotal> classTotals() {
    List<ClassTotal> totals = new ArrayList<>();
    for (CostClass costClass : CostClass.values()) {
      ClassTotal total = total(costClass);
      if (!total.lines().isEmpty()) {
        totals.add(total);
      }
    }
    return List.copyOf(totals);
  }

  /** Sum of all lines before tax. */
  public Money subtotal() {
    Money sum = none();
    for (PriceLine line : lines) {
      sum = sum.plus(line.price());
    }
    return sum;
  }

  /** What all lines cost the shop. */
  public Money cost() {
    Money sum = none();
    for (PriceLine line : lines) {
      sum = sum.plus(line.cost());
    }
    return sum;
  }

  /** Lines on which tax is due. */
  public List<PriceLine> taxableLines() {
    List<PriceLine> found = new ArrayList<>();
    for (PriceLine line : lines) {
      if (line.taxable()) {
        found.add(line);
      }
    }
    return List.copyOf(found);
  }

  /** Amount on which tax is due. */
  public Money taxable() {
    Money sum = none();
    for (PriceLine line : taxableLines()) {
      sum = sum.plus(line.price());
    }
    return sum;
  }

  /** Tax, rounded by item or by invoice as the terms say. */
  public Money tax() {
    List<Money> amounts = new ArrayList<>();
    for (PriceLine line : taxableLines()) {
      amounts.add(line.price());
    }
    return terms.tax().onAll(amounts, none(), terms.rounding());
  }

  /** What is added or left off so that the total can be paid in cash; nothing by most shops. */
  public Money cashRounding() {
    Money exact = subtotal().plus(tax());
    return terms.rounding().cash(exact).minus(exact);
  }

  /** Subtotal and tax, rounded to what can be paid in cash where the shop does so. */
  public Money total() {
    return subtotal().plus(tax()).plus(cashRounding());
  }

  /** Deposit, progress payments and balance; they add up to the total. */
  public Payments payments() {
    return Payments.of(total(), terms);
  }

  private Money none() {
    return Money.zero(terms.currency());
  }
}
