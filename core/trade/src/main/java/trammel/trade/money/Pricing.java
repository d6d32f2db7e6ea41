package trammel.trade.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import trammel.engine.quantity.Phrase;
import trammel.trade.labour.HoursEstimate;
import trammel.trade.labour.OperationLine;

/**
 * Prices a job: what is bought with the waste and markup of its class, then labour by operation,
 * then supplies, overhead and contingency that go by labour, then what is a share of all that.
 * Hours are billed in hundredths, each operation at its mean, so that the operations add up to the
 * labour on the quote.
 *
 * @param terms the shop's terms
 */
public record Pricing(PriceTerms terms) {

  private static final int HOUR_PLACES = 2;

  /**
   * The price of a job.
   *
   * @param bought steel, parts, supplies, outside work and charges, in the currency of the terms
   * @param hours hours of the job
   * @return lines and totals
   * @throws IllegalArgumentException when a cost is in another currency
   */
  public CostBuildUp price(List<CostLine> bought, HoursEstimate hours) {
    return price(bought, hours, extraHours(hours));
  }

  /**
   * Hours from the mean up to those that the terms want to be sure of; 0 if the terms cover what
   * takes longer otherwise.
   */
  public double extraHours(HoursEstimate hours) {
    return terms.contingency() instanceof Contingency.HoursToChance target
        ? hours.contingencyHours(target.chance())
        : 0;
  }

  /**
   * The price of a job whose {@link #extraHours} are known already.
   *
   * @throws IllegalArgumentException when a cost is in another currency
   */
  public CostBuildUp price(List<CostLine> bought, HoursEstimate hours, double extraHours) {
    List<PriceLine> lines = new ArrayList<>();
    for (CostLine line : bought) {
      CostBuildUp.requireCurrency(line, currency());
      lines.add(marked(line));
    }
    BigDecimal workHours = BigDecimal.ZERO;
    Money labour = Money.zero(currency());
    for (OperationLine operation : hours.lines()) {
      CostLine line = labour(operation);
      lines.add(plain(line, coin(line.quantity().multiply(rate().costPerHour()))));
      workHours = workHours.add(line.quantity());
      labour = labour.plus(amount(line));
    }
    addSupplies(lines, labour);
    addOverhead(lines, workHours);
    addContingency(lines, workHours, labour, extraHours);
    addShares(lines);
    return new CostBuildUp(terms, lines);
  }

  /** A credit carries no markup and saves the shop no cost. */
  private PriceLine marked(CostLine line) {
    Money none = Money.zero(line.currency());
    Money amount = amount(line);
    Money waste =
        line.costClass() == CostClass.STEEL
            ? terms.rounding().part(amount, terms.steelWaste())
            : none;
    boolean credit = amount.amount().signum() < 0;
    Money markup =
        credit ? none : terms.markup(line.costClass()).on(amount.plus(waste), terms.rounding());
    return new PriceLine(
        line, amount, waste, markup, credit ? none : amount, terms.tax().isDueOn(line.costClass()));
  }

  /** A line without markup of its own, which costs the shop what it says. */
  private PriceLine plain(CostLine line) {
    return plain(line, amount(line));
  }

  private PriceLine plain(CostLine line, Money cost) {
    Money none = Money.zero(line.currency());
    return new PriceLine(
        line, amount(line), none, none, cost, terms.tax().isDueOn(line.costClass()));
  }

  private CostLine labour(OperationLine operation) {
    BigDecimal hours = billed(operation.hours().mean());
    return new CostLine(
        operation.operation().key(),
        operation.operation().title(),
        CostClass.LABOUR,
        hours,
        hours.toPlainString() + " h",
        rate().perHour(),
        currency(),
        operation.why());
  }

  private void addSupplies(List<PriceLine> lines, Money labour) {
    if (terms.suppliesOfLabour().signum() > 0) {
      lines.add(
          plain(
              new CostLine(
                  "supplies-by-labour",
                  "Shop supplies",
                  CostClass.SUPPLIES,
                  labour.amount(),
                  labour.text() + " of labour",
                  terms.suppliesOfLabour(),
                  currency(),
                  Phrase.of("cleaner, discs, tips and gloves go by the hours worked"))));
    }
  }

  private void addOverhead(List<PriceLine> lines, BigDecimal workHours) {
    if (rate().overheadOnTop().signum() > 0) {
      lines.add(
          plain(
              new CostLine(
                  "overhead-by-hour",
                  "Overhead",
                  CostClass.OVERHEAD,
                  workHours,
                  workHours.toPlainString() + " h",
                  rate().overheadOnTop(),
                  currency(),
                  Phrase.of("rent, power and tools on each hour worked"))));
    }
  }

  /** What it costs is reckoned as if its hours were worked. */
  private void addContingency(
      List<PriceLine> lines, BigDecimal workHours, Money labour, double extraHours) {
    BigDecimal hourCosts = rate().costPerHour().add(rate().overheadOnTop());
    if (terms.contingency() instanceof Contingency.PartOfLabour part) {
      lines.add(
          plain(
              contingency(
                  labour.amount(),
                  labour.text() + " of labour",
                  part.fraction(),
                  Phrase.of("a fixed part of labour for work that takes longer")),
              coin(workHours.multiply(part.fraction()).multiply(hourCosts))));
    } else if (terms.contingency() instanceof Contingency.HoursToChance target) {
      BigDecimal extra = billed(extraHours);
      lines.add(
          plain(
              contingency(
                  extra,
                  extra.toPlainString() + " h",
                  rate().billedPerHour(),
                  Phrase.of("hours from the mean up to P{}", Math.round(target.chance() * 100))),
              coin(extra.multiply(hourCosts))));
    }
  }

  private CostLine contingency(
      BigDecimal quantity, String quantityText, BigDecimal unitCost, Phrase why) {
    return new CostLine(
        "contingency",
        "Contingency",
        CostClass.CONTINGENCY,
        quantity,
        quantityText,
        unitCost,
        currency(),
        why);
  }

  /** Each is a share of the lines before it, not of one another. */
  private void addShares(List<PriceLine> lines) {
    Money before = Money.zero(currency());
    for (PriceLine line : lines) {
      before = before.plus(line.price());
    }
    if (before.amount().signum() < 0) {
      return;
    }
    for (PriceShare share : terms.shares()) {
      lines.add(
          plain(
              new CostLine(
                  share.key(),
                  share.title(),
                  CostClass.FEES,
                  before.amount(),
                  before.text() + " before it",
                  share.fraction(),
                  currency(),
                  Phrase.text(share.why()))));
    }
  }

  private static BigDecimal billed(double hours) {
    return BigDecimal.valueOf(hours).setScale(HOUR_PLACES, RoundingMode.HALF_UP);
  }

  private Money amount(CostLine line) {
    return line.amount(terms.rounding());
  }

  private Money coin(BigDecimal amount) {
    return terms.rounding().coin(amount, currency());
  }

  private LabourRate rate() {
    return terms.rate();
  }

  private Currency currency() {
    return terms.currency();
  }
}
