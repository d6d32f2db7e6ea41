package trammel.trade.money;

import java.math.BigDecimal;
import trammel.engine.quantity.Given;

/**
 * A payment between deposit and balance.
 *
 * @param when what it is due at: "bars and brackets tacked"
 * @param fraction part of the total, 0 to 1
 */
public record ProgressPayment(String when, BigDecimal fraction) {
  public ProgressPayment {
    Given.text("event of a progress payment", when, "For example bars and brackets tacked.");
    Given.decimal("progress payment at '" + when + "'", fraction, 0, 1, "0.25 for a quarter.");
  }
}
