package trammel.trade.money;

import java.math.BigDecimal;
import trammel.engine.quantity.Given;

/**
 * A line of the price that is a share of all other lines before tax, such as the fee of a card.
 *
 * @param key short name in files: "card-fee"
 * @param title name on the cost sheet
 * @param fraction share of the other lines, 0 to 1
 * @param why what asks for it
 */
public record PriceShare(String key, String title, BigDecimal fraction, String why) {
  public PriceShare {
    Given.text("key of a share of the price", key, "For example card-fee.");
    Given.text("title of '" + key + "'", title, "Say what it is for.");
    Given.decimal("share of '" + key + "'", fraction, 0, 1, "Give a fraction: 0.03 for 3 %.");
    Given.text("reason for '" + key + "'", why, "Say what asks for it.");
  }
}
