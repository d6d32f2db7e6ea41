package trammel.trade.money;

import trammel.engine.quantity.Given;

/**
 * One line of the price: an amount with the waste and markup of its class, and what it costs the
 * shop itself.
 *
 * @param line what it comes from
 * @param amount quantity × price of the line, rounded once
 * @param waste money for what is cut away
 * @param markup money added on amount and waste
 * @param cost what it costs the shop: the amount for what is bought, wage and overhead for hours
 * @param taxable whether tax is due on it
 */
public record PriceLine(
    CostLine line, Money amount, Money waste, Money markup, Money cost, boolean taxable) {

  public PriceLine {
    Given.present("cost of a price line", line, "A price needs a cost to come from.");
    Given.present("amount of the price line '" + line.key() + "'", amount, "Give zero for none.");
    Given.present("waste of the price line '" + line.key() + "'", waste, "Give zero for none.");
    Given.present("markup of the price line '" + line.key() + "'", markup, "Give zero for none.");
    Given.present("cost of the price line '" + line.key() + "'", cost, "Give zero for none.");
  }

  /** What the customer pays for it before tax: amount + waste + markup. */
  public Money price() {
    return amount.plus(waste).plus(markup);
  }

  /** What of its price is not cost. */
  public Money profit() {
    return price().minus(cost);
  }

  /** How the price comes about, for the cost sheet. */
  public String how() {
    StringBuilder text = new StringBuilder();
    text.append(line.quantityText()).append(" at ").append(line.unitCost().toPlainString());
    if (!waste.isZero()) {
      text.append(", waste ").append(waste.text());
    }
    if (!markup.isZero()) {
      text.append(", markup ").append(markup.text());
    }
    return text.toString();
  }
}
