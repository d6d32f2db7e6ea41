package trammel.trade.money;

import trammel.engine.quantity.Given;

/**
 * One line of the price: a cost with the waste and markup of its class.
 *
 * @param line the cost it comes from
 * @param waste money for what is cut away
 * @param markup money added on cost and waste
 * @param taxable whether sales tax is due on it
 */
public record PriceLine(CostLine line, Money waste, Money markup, boolean taxable) {

  public PriceLine {
    Given.present("cost of a price line", line, "A price needs a cost to come from.");
    Given.present("waste of the price line '" + line.key() + "'", waste, "Give zero for none.");
    Given.present("markup of the price line '" + line.key() + "'", markup, "Give zero for none.");
  }

  /** What it costs before waste and markup. */
  public Money cost() {
    return line.amount();
  }

  /** What the customer pays for it before tax: cost + waste + markup. */
  public Money price() {
    return cost().plus(waste).plus(markup);
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
