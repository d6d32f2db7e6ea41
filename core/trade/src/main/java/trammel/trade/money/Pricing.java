package trammel.trade.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import trammel.trade.labour.HoursEstimate;
import trammel.trade.labour.OperationLine;

/**
 * Prices a job: what is bought with the waste and markup of its class, then labour by operation,
 * then supplies, overhead and contingency that go by labour. Hours are billed in hundredths, each
 * operation at its mean, so that the operations add up to the labour on the quote.
 *
 * @param terms the shop's terms
 */
public record Pricing(PriceTerms terms) {

  private static final int HOUR_PLACES = 2;

  /**
   * The price of a job.
   *
   * @param bought steel, parts, supplies and outside work, in the currency of the terms
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
      lines.add(marked(line));
    }
    BigDecimal workHours = BigDecimal.ZERO;
    Money labour = Money.zero(currency());
    for (OperationLine operation : hours.lines()) {
      CostLine line = labour(operation);
      lines.add(plain(line));
      workHours = workHours.add(line.quantity());
      labour = labour.plus(line.amount());
    }
    addSupplies(lines, labour);
    addOverhead(lines, workHours);
    addContingency(lines, labour, extraHours);
    return new CostBuildUp(terms, lines);
  }

  private PriceLine marked(CostLine line) {
    Money none = Money.zero(line.currency());
    Money cost = line.amount();
    Money waste = line.costClass() == CostClass.STEEL ? cost.times(terms.steelWaste()) : none;
    Money markup = terms.markup(line.costClass()).on(cost.plus(waste));
    return new PriceLine(line, waste, markup, terms.tax().isDueOn(line.costClass()));
  }

  /** Lines that go by labour carry no markup of their own. */
  private PriceLine plain(CostLine line) {
    Money none = Money.zero(line.currency());
    return new PriceLine(line, none, none, terms.tax().isDueOn(line.costClass()));
  }

  private CostLine labour(OperationLine operation) {
    BigDecimal hours = billed(operation.hours().mean());
    return new CostLine(
        operation.operation().key(),
        operation.operation().title(),
        CostClass.LABOUR,
        hours,
        hours.toPlainString() + " h",
        terms.labourPerHour(),
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
                  "abrasives, tips, gloves and cleaner go by the hours worked")));
    }
  }

  private void addOverhead(List<PriceLine> lines, BigDecimal workHours) {
    if (terms.overheadPerHour().signum() > 0) {
      lines.add(
          plain(
              new CostLine(
                  "overhead-by-hour",
                  "Overhead",
                  CostClass.OVERHEAD,
                  workHours,
                  workHours.toPlainString() + " h",
                  terms.overheadPerHour(),
                  currency(),
                  "rent, power and tools on each hour worked")));
    }
  }

  private void addContingency(List<PriceLine> lines, Money labour, double extraHours) {
    if (terms.contingency() instanceof Contingency.PartOfLabour part) {
      lines.add(
          plain(
              contingency(
                  labour.amount(),
                  labour.text() + " of labour",
                  part.fraction(),
                  "a fixed part of labour for work that takes longer")));
    } else if (terms.contingency() instanceof Contingency.HoursToChance target) {
      BigDecimal extra = billed(extraHours);
      lines.add(
          plain(
              contingency(
                  extra,
                  extra.toPlainString() + " h",
                  terms.labourPerHour().add(terms.overheadPerHour()),
                  "hours from the mean up to P" + Math.round(target.chance() * 100))));
    }
  }

  private CostLine contingency(
      BigDecimal quantity, String quantityText, BigDecimal unitCost, String why) {
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

  private static BigDecimal billed(double hours) {
    return BigDecimal.valueOf(hours).setScale(HOUR_PLACES, RoundingMode.HALF_UP);
  }

  private Currency currency() {
    return terms.currency();
  }
}
