package trammel.trade.money;

import java.math.BigDecimal;
import java.util.Currency;
import trammel.trade.given.Given;

/**
 * One cost of the job: so much of something at a price each.
 *
 * @param key short name in files: "lower-bar-tube"
 * @param title name on the cost sheet
 * @param costClass what it is for
 * @param quantity how much, 0 or more
 * @param quantityText how much in words: "20 ft", "4 pieces"
 * @param unitCost price of one, unrounded
 * @param currency currency of the price
 * @param why which part, weld or operation asks for it
 */
public record CostLine(
    String key,
    String title,
    CostClass costClass,
    BigDecimal quantity,
    String quantityText,
    BigDecimal unitCost,
    Currency currency,
    String why) {

  private static final long MOST = 1_000_000_000L;

  public CostLine {
    Given.text(key, "Key of a cost line", "For example lower-bar-tube.");
    Given.text(title, "Title of the cost line '" + key + "'", "Say what is bought or done.");
    Given.present(costClass, "Class of the cost line '" + key + "'", "For example STEEL.");
    Given.decimal(quantity, 0, MOST, "Quantity of the cost line '" + key + "'", "Give how much.");
    Given.text(quantityText, "Quantity text of the cost line '" + key + "'", "For example 20 ft.");
    Given.decimal(unitCost, 0, MOST, "Price of the cost line '" + key + "'", "Give it for one.");
    Given.present(currency, "Currency of the cost line '" + key + "'", "Give a code such as USD.");
    Given.text(why, "Reason for the cost line '" + key + "'", "Say what asks for it.");
  }

  /** Quantity × price, rounded once. */
  public Money amount() {
    return new Money(quantity.multiply(unitCost), currency);
  }
}
