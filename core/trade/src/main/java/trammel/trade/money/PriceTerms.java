package trammel.trade.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import trammel.engine.quantity.Given;

/**
 * The shop's terms for a job.
 *
 * @param currency currency of the job
 * @param labourPerHour labour rate for an hour
 * @param overheadPerHour overhead charged on top for each labour hour; 0 when the rate has it
 * @param markups markup by class; a class that is not named has none
 * @param steelWaste steel cut away as a part of the steel bought, 0 when whole sticks are priced
 * @param suppliesOfLabour shop supplies as a part of labour: 0.035 for 3.5 %
 * @param contingency how the price covers work that takes longer
 * @param tax sales tax
 * @param depositFraction part of the total due with the order
 * @param progress payments between deposit and balance, in order
 * @param validDays days for which the price holds
 */
public record PriceTerms(
    Currency currency,
    BigDecimal labourPerHour,
    BigDecimal overheadPerHour,
    Map<CostClass, Markup> markups,
    BigDecimal steelWaste,
    BigDecimal suppliesOfLabour,
    Contingency contingency,
    SalesTax tax,
    BigDecimal depositFraction,
    List<ProgressPayment> progress,
    int validDays) {

  private static final long MOST_PER_HOUR = 100_000_000L;
  private static final int USUAL_VALID_DAYS = 30;

  public PriceTerms {
    Given.present("currency of the terms", currency, "Give a code such as USD.");
    Given.decimal("labour rate per hour", labourPerHour, 0, MOST_PER_HOUR, "Give an hour's rate.");
    Given.decimal("overhead per hour", overheadPerHour, 0, MOST_PER_HOUR, "Give 0 for none.");
    Given.decimal("steel waste", steelWaste, 0, 1, "Give a fraction: 0.10 for 10 %.");
    Given.decimal("supplies as part of labour", suppliesOfLabour, 0, 1, "0.035 for 3.5 %.");
    Given.present("contingency of the terms", contingency, "Say none when there is none.");
    Given.present("sales tax of the terms", tax, "Say none when there is none.");
    Given.decimal("deposit", depositFraction, 0, 1, "Give a fraction: 0.50 for half.");
    progress = List.copyOf(progress);
    requirePartsOfOneWhole(depositFraction, progress);
    Given.count("days for which the price holds", validDays, 1, 3650, "Common is 30.");
    EnumMap<CostClass, Markup> copy = new EnumMap<>(CostClass.class);
    copy.putAll(markups);
    markups = Collections.unmodifiableMap(copy);
  }

  private static void requirePartsOfOneWhole(BigDecimal deposit, List<ProgressPayment> progress) {
    BigDecimal sum = deposit;
    for (ProgressPayment payment : progress) {
      sum = sum.add(payment.fraction());
    }
    if (sum.compareTo(BigDecimal.ONE) > 0) {
      throw new IllegalArgumentException(
          "Deposit and progress payments are "
              + sum.movePointRight(2).stripTrailingZeros().toPlainString()
              + " % of the total together; allowed is 100 % at most. Make deposit or progress"
              + " smaller.");
    }
  }

  /** Labour at a rate and nothing else: no markup, waste, supplies, contingency, tax, deposit. */
  public static PriceTerms labourOnly(Currency currency, BigDecimal labourPerHour) {
    return new PriceTerms(
        currency,
        labourPerHour,
        BigDecimal.ZERO,
        Map.of(),
        BigDecimal.ZERO,
        BigDecimal.ZERO,
        new Contingency.None(),
        SalesTax.NONE,
        BigDecimal.ZERO,
        List.of(),
        USUAL_VALID_DAYS);
  }

  /** The same with other rates for an hour of labour and its overhead. */
  public PriceTerms withRates(BigDecimal labour, BigDecimal overhead) {
    return new PriceTerms(
        currency,
        labour,
        overhead,
        markups,
        steelWaste,
        suppliesOfLabour,
        contingency,
        tax,
        depositFraction,
        progress,
        validDays);
  }

  /** The same with another markup of one class. */
  public PriceTerms withMarkup(CostClass costClass, Markup other) {
    Map<CostClass, Markup> changed = new EnumMap<>(CostClass.class);
    changed.putAll(markups);
    changed.put(costClass, other);
    return new PriceTerms(
        currency,
        labourPerHour,
        overheadPerHour,
        changed,
        steelWaste,
        suppliesOfLabour,
        contingency,
        tax,
        depositFraction,
        progress,
        validDays);
  }

  /** The same with other additions for steel cut away and for supplies that go by labour. */
  public PriceTerms withAdditions(BigDecimal waste, BigDecimal supplies) {
    return new PriceTerms(
        currency,
        labourPerHour,
        overheadPerHour,
        markups,
        waste,
        supplies,
        contingency,
        tax,
        depositFraction,
        progress,
        validDays);
  }

  /** The same with another contingency. */
  public PriceTerms withContingency(Contingency other) {
    return new PriceTerms(
        currency,
        labourPerHour,
        overheadPerHour,
        markups,
        steelWaste,
        suppliesOfLabour,
        other,
        tax,
        depositFraction,
        progress,
        validDays);
  }

  /** The same with another tax. */
  public PriceTerms withTax(SalesTax other) {
    return new PriceTerms(
        currency,
        labourPerHour,
        overheadPerHour,
        markups,
        steelWaste,
        suppliesOfLabour,
        contingency,
        other,
        depositFraction,
        progress,
        validDays);
  }

  /** The same with another deposit and other payments between it and the balance. */
  public PriceTerms withPayments(BigDecimal deposit, List<ProgressPayment> between) {
    return new PriceTerms(
        currency,
        labourPerHour,
        overheadPerHour,
        markups,
        steelWaste,
        suppliesOfLabour,
        contingency,
        tax,
        deposit,
        between,
        validDays);
  }

  /** Markup of a class. */
  public Markup markup(CostClass costClass) {
    return markups.getOrDefault(costClass, Markup.NONE);
  }

  /** Last day on which the price holds. */
  public LocalDate validUntil(LocalDate quoted) {
    return quoted.plusDays(validDays);
  }
}
