package trammel.trade.money;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import trammel.engine.quantity.Given;

/**
 * What an hour that can be billed costs the shop. All money in one currency, unrounded.
 *
 * @param wagePerHour wage of a paid hour
 * @param burdenFraction taxes, insurance and leave on top of the wage: 0.22 for 22 %
 * @param paidHours hours paid in a year
 * @param billableFraction part of the paid hours that can be billed, above 0 to 1
 * @param yearlyOverhead rent, power, tools, office in a year
 */
public record HourlyCost(
    BigDecimal wagePerHour,
    BigDecimal burdenFraction,
    BigDecimal paidHours,
    BigDecimal billableFraction,
    BigDecimal yearlyOverhead) {

  private static final int CENT_PLACES = 2;

  public HourlyCost {
    Given.decimal("wage per hour", wagePerHour, 0, 100_000_000, "Give the wage of one hour.");
    Given.decimal("burden on the wage", burdenFraction, 0, 3, "Give a fraction: 0.22 for 22 %.");
    Given.decimal("paid hours in a year", paidHours, 1, 1_000_000, "One person is about 2000.");
    Given.decimal("billable part of paid hours", billableFraction, 0, 1, "Give a fraction: 0.70.");
    Given.decimal(
        "overhead in a year", yearlyOverhead, 0, 1_000_000_000_000L, "Add up rent, power, tools.");
    if (billableFraction.signum() == 0) {
      throw new IllegalArgumentException(
          "Billable part of paid hours was given as 0; allowed is above 0, up to 1. "
              + "A shop that bills no hour has no hourly cost.");
    }
  }

  /** Hours that can be billed in a year. */
  public BigDecimal billableHours() {
    return paidHours.multiply(billableFraction);
  }

  /** Overhead on each billable hour. */
  public BigDecimal overheadPerHour() {
    return yearlyOverhead.divide(billableHours(), MathContext.DECIMAL64);
  }

  /** Wage with burden, paid hours over billable hours. */
  public BigDecimal labourPerHour() {
    BigDecimal paid = wagePerHour.multiply(BigDecimal.ONE.add(burdenFraction)).multiply(paidHours);
    return paid.divide(billableHours(), MathContext.DECIMAL64);
  }

  /** Labour and overhead for a billable hour. */
  public BigDecimal costPerHour() {
    return labourPerHour().add(overheadPerHour());
  }

  /**
   * Rate that leaves a margin: cost / (1 − margin), rounded half up to hundredths.
   *
   * @param margin fraction of the rate, 0 to 0.9
   */
  public BigDecimal ratePerHour(BigDecimal margin) {
    Markup.checkedMargin(margin);
    return costPerHour()
        .divide(BigDecimal.ONE.subtract(margin), MathContext.DECIMAL64)
        .setScale(CENT_PLACES, RoundingMode.HALF_UP);
  }
}
