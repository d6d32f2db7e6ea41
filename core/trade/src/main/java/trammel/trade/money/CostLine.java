package trammel.trade.money;

import java.math.BigDecimal;
import java.util.Currency;
import trammel.engine.quantity.Given;
import trammel.engine.quantity.Phrase;

/**
 * One cost of the job: so much of something at a price each.
 *
 * @param key short name in files: "lower-bar-tube"
 * @param title name on the cost sheet
 * @param costClass what it is for
 * @param quantity how much, 0 or more
 * @param quantityText how much in words: "20 ft", "4 pieces"
 * @param unitCost price of one, unrounded; below 0 for a credit
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
    Phrase why) {

  private static final long MOST = 1_000_000_000L;

  public CostLine {
    Given.text("key of a cost line", key, "For example lower-bar-tube.");
    Given.text("title of the cost line '" + key + "'", title, "Say what is bought or done.");
    Given.present("class of the cost line '" + key + "'", costClass, "For example STEEL.");
    Given.decimal("quantity of the cost line '" + key + "'", quantity, 0, MOST, "Give how much.");
    Given.text("quantity text of the cost line '" + key + "'", quantityText, "For example 20 ft.");
    Given.decimal(
        "price of the cost line '" + key + "'", unitCost, -MOST, MOST, "Give it for one.");
    Given.present("currency of the cost line '" + key + "'", currency, "Give a code such as USD.");
    Given.text("reason for the cost line '" + key + "'", why, "Say what asks for it.");
  }

  /** Quantity × price, rounded once, half up. */
  public Money amount() {
    return amount(Rounding.USUAL);
  }

  /** Quantity × price, rounded once as the shop rounds. */
  public Money amount(Rounding rounding) {
    return rounding.coin(quantity.multiply(unitCost), currency);
  }
}
