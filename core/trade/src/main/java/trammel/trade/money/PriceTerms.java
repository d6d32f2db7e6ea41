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
 * @param rate what an hour is billed at and what it costs
 * @param markups markup by class; a class that is not named has none
 * @param steelWaste steel cut away as a part of the steel bought, 0 when whole sticks are priced
 * @param suppliesOfLabour shop supplies as a part of labour: 0.035 for 3.5 %
 * @param contingency how the price covers work that takes longer
 * @param shares lines that are a share of all others, in order
 * @param tax tax
 * @param depositFraction part of the total due with the order
 * @param progress payments between deposit and balance, in order
 * @param validDays days for which the price holds
 * @param rounding how amounts are rounded
 */
public record PriceTerms(
    Currency currency,
    LabourRate rate,
    Map<CostClass, Markup> markups,
    BigDecimal steelWaste,
    BigDecimal suppliesOfLabour,
    Contingency contingency,
    List<PriceShare> shares,
    SalesTax tax,
    BigDecimal depositFraction,
    List<ProgressPayment> progress,
    int validDays,
    Rounding rounding) {

  private static final int USUAL_VALID_DAYS = 30;

  public PriceTerms {
    Given.present("currency of the terms", currency, "Give a code such as USD.");
    Given.present("labour rate of the terms", rate, "Give an hour's rate.");
    Given.decimal("steel waste", steelWaste, 0, 1, "Give a fraction: 0.10 for 10 %.");
    Given.decimal("supplies as part of labour", suppliesOfLabour, 0, 1, "0.035 for 3.5 %.");
    Given.present("contingency of the terms", contingency, "Say none when there is none.");
    shares = List.copyOf(shares);
    Given.present("tax of the terms", tax, "Say none when there is none.");
    Given.decimal("deposit", depositFraction, 0, 1, "Give a fraction: 0.50 for half.");
    progress = List.copyOf(progress);
    requirePartsOfOneWhole(depositFraction, progress);
    Given.count("days for which the price holds", validDays, 1, 3650, "Common is 30.");
    Given.present("rounding of the terms", rounding, "Half up is usual.");
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
        LabourRate.door(labourPerHour),
        Map.of(),
        BigDecimal.ZERO,
        BigDecimal.ZERO,
        new Contingency.None(),
        List.of(),
        SalesTax.NONE,
        BigDecimal.ZERO,
        List.of(),
        USUAL_VALID_DAYS,
        Rounding.USUAL);
  }

  /** The same with another rate for an hour. */
  public PriceTerms withRate(LabourRate other) {
    Draft draft = new Draft(this);
    draft.rate = other;
    return draft.terms();
  }

  /** The same with another markup of one class. */
  public PriceTerms withMarkup(CostClass costClass, Markup other) {
    Draft draft = new Draft(this);
    draft.markups.put(costClass, other);
    return draft.terms();
  }

  /** The same with other additions for steel cut away and for supplies that go by labour. */
  public PriceTerms withAdditions(BigDecimal waste, BigDecimal supplies) {
    Draft draft = new Draft(this);
    draft.steelWaste = waste;
    draft.suppliesOfLabour = supplies;
    return draft.terms();
  }

  /** The same with another contingency. */
  public PriceTerms withContingency(Contingency other) {
    Draft draft = new Draft(this);
    draft.contingency = other;
    return draft.terms();
  }

  /** The same with other lines that are a share of all others. */
  public PriceTerms withShares(List<PriceShare> other) {
    Draft draft = new Draft(this);
    draft.shares = other;
    return draft.terms();
  }

  /** The same with another tax. */
  public PriceTerms withTax(SalesTax other) {
    Draft draft = new Draft(this);
    draft.tax = other;
    return draft.terms();
  }

  /** The same with another deposit and other payments between it and the balance. */
  public PriceTerms withPayments(BigDecimal deposit, List<ProgressPayment> between) {
    Draft draft = new Draft(this);
    draft.depositFraction = deposit;
    draft.progress = between;
    return draft.terms();
  }

  /** The same rounded in another way. */
  public PriceTerms withRounding(Rounding other) {
    Draft draft = new Draft(this);
    draft.rounding = other;
    return draft.terms();
  }

  /** Markup of a class. */
  public Markup markup(CostClass costClass) {
    return markups.getOrDefault(costClass, Markup.NONE);
  }

  /** Last day on which the price holds. */
  public LocalDate validUntil(LocalDate quoted) {
    return quoted.plusDays(validDays);
  }

  /** Terms in the making, so that one of them can be changed. */
  private static final class Draft {
    private final PriceTerms before;
    private LabourRate rate;
    private final Map<CostClass, Markup> markups = new EnumMap<>(CostClass.class);
    private BigDecimal steelWaste;
    private BigDecimal suppliesOfLabour;
    private Contingency contingency;
    private List<PriceShare> shares;
    private SalesTax tax;
    private BigDecimal depositFraction;
    private List<ProgressPayment> progress;
    private Rounding rounding;

    Draft(PriceTerms before) {
      this.before = before;
      rate = before.rate;
      markups.putAll(before.markups);
      steelWaste = before.steelWaste;
      suppliesOfLabour = before.suppliesOfLabour;
      contingency = before.contingency;
      shares = before.shares;
      tax = before.tax;
      depositFraction = before.depositFraction;
      progress = before.progress;
      rounding = before.rounding;
    }

    PriceTerms terms() {
      return new PriceTerms(
          before.currency,
          rate,
          markups,
          steelWaste,
          suppliesOfLabour,
          contingency,
          shares,
          tax,
          depositFraction,
          progress,
          before.validDays,
          rounding);
    }
  }
}
