package trammel.trade.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Optional;
import trammel.engine.quantity.Given;

/**
 * How the shop rounds what it bills.
 *
 * @param mode where half a coin goes: half up, or half even (to the even coin)
 * @param cashStep the total is a whole number of these, such as 0.05 where there is no smaller
 *     coin; empty to leave the total as it is
 */
public record Rounding(RoundingMode mode, Optional<BigDecimal> cashStep) {

  /** Half up, to the smallest coin of the currency. */
  public static final Rounding USUAL = new Rounding(RoundingMode.HALF_UP, Optional.empty());

  public Rounding {
    if (mode != RoundingMode.HALF_UP && mode != RoundingMode.HALF_EVEN) {
      throw new IllegalArgumentException(
          "Rounding was given as " + mode + "; allowed is half up or half even. Choose one.");
    }
    cashStep.ifPresent(
        step -> {
          Given.decimal("cash rounding", step, 0, 1000, "For example 0.05.");
          if (step.signum() == 0) {
            throw new IllegalArgumentException(
                "Cash rounding was given as 0; allowed is more than 0. Leave it out for none.");
          }
        });
  }

  /** Word for where half a coin goes. */
  public String word() {
    return mode == RoundingMode.HALF_EVEN ? "half even" : "half up";
  }

  /** An amount rounded to the smallest coin. */
  public Money coin(BigDecimal amount, Currency currency) {
    return Money.rounded(amount, currency, mode);
  }

  /** Part of an amount, rounded to the smallest coin. */
  public Money part(Money of, BigDecimal fraction) {
    return coin(of.amount().multiply(fraction), of.currency());
  }

  /** An amount rounded to what can be paid in cash; the same where nothing is said of cash. */
  public Money cash(Money amount) {
    if (cashStep.isEmpty()) {
      return amount;
    }
    BigDecimal steps = amount.amount().divide(cashStep.get(), 0, mode);
    return coin(steps.multiply(cashStep.get()), amount.currency());
  }
}
