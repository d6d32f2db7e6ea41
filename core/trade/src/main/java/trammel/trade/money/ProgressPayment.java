package trammel.trade.money;

import java.math.BigDecimal;
import trammel.trade.given.Given;

/**
 * A payment between deposit and balance.
 *
 * @param when what it is due at: "bars and brackets tacked"
 * @param fraction part of the total, 0 to 1
 */
public record ProgressPayment(String when, BigDecimal fraction) {
  public ProgressPayment {
    Given.text(when, "Event of a progress payment", "For example bars and brackets tacked.");
    Given.decimal(fraction, 0, 1, "Progress payment at '" + when + "'", "0.25 for a quarter.");
  }
}
