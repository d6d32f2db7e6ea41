package trammel.planning.catalog;

import java.util.Currency;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.engine.quantity.Given;
import trammel.planning.job.Tax;
import trammel.planning.job.Terms;
import trammel.trade.labour.LabourPlan;
import trammel.trade.money.CostClass;
import trammel.trade.money.Markup;
import trammel.trade.money.PriceTerms;
import trammel.trade.money.SalesTax;

/**
 * A shop with its usual terms.
 *
 * @param letterhead what stands at the head of its papers
 * @param terms the terms of a job that says nothing else
 * @param labour the hands, bays and hours of a day in it
 * @param priceDays age in days from which prices are old, 1 or more
 * @param hoursCorrelation how much the hours of different operations run over together, 0 to 1
 * @param billsPackRests whether a job pays for whole packs; otherwise only for what it uses of them
 * @param promises what it promises beside the price
 */
public record Shop(
    Letterhead letterhead,
    PriceTerms terms,
    LabourPlan labour,
    int priceDays,
    double hoursCorrelation,
    boolean billsPackRests,
    Promises promises) {
  public Shop {
    Given.present("letterhead of the shop", letterhead, "Say whose documents they are.");
    Given.present("terms of the shop", terms, "Give its usual terms.");
    Given.present("hands and bays of the shop", labour, "Give how many there are.");
    Given.count("age of old prices in days", priceDays, 1, 3650, "90 is usual.");
    Given.within(
        "correlation of the shop's hours",
        hoursCorrelation,
        0,
        1,
        "",
        "0.3 is usual; 0 is too sure.");
    Given.present("promises of the shop", promises, "Give none if it makes none.");
  }

  /** Name on its documents. */
  public String name() {
    return letterhead.name();
  }

  /**
   * The terms of a job: the shop's usual ones with what the job says differently.
   *
   * @throws IllegalArgumentException if the job is in another currency than the shop's prices
   */
  public PriceTerms termsFor(Terms job) {
    refuseOtherCurrency(job);
    return new PriceTerms(
        terms.currency(),
        terms
            .rate()
            .with(
                job.labourRate().orElse(terms.rate().perHour()),
                job.overheadRate().orElse(terms.rate().overheadPerHour())),
        markups(job),
        terms.steelWaste(),
        job.supplies().orElse(terms.suppliesOfLabour()),
        job.contingency().orElse(terms.contingency()),
        terms.shares().stream()
            .filter(
                share -> job.leftOut().stream().noneMatch(out -> out.what().equals(share.key())))
            .toList(),
        job.tax().isPresent() ? tax(job.tax().get(), terms.tax().name()) : terms.tax(),
        job.deposit().orElse(terms.depositFraction()),
        job.progress().orElse(terms.progress()),
        job.validDays().orElse(terms.validDays()),
        terms.rounding());
  }

  private void refuseOtherCurrency(Terms job) {
    Currency currency = terms.currency();
    if (job.currency().isPresent() && !job.currency().get().equals(currency)) {
      throw new IllegalArgumentException(
          "the job's terms are in "
              + job.currency().get().getCurrencyCode()
              + " and the catalog's prices in "
              + currency.getCurrencyCode()
              + "; both must be the same. Take terms.currency out of the job, or price the catalog"
              + " in that currency.");
    }
  }

  private Map<CostClass, Markup> markups(Terms job) {
    Map<CostClass, Markup> markups = new EnumMap<>(CostClass.class);
    markups.putAll(terms.markups());
    markups.putAll(job.markups());
    return markups;
  }

  static SalesTax tax(Tax tax, String usualName) {
    return new SalesTax(
        tax.name().orElse(usualName),
        tax.rate(),
        taxable(tax.taxable()),
        tax.byItem() ? SalesTax.RoundedBy.BY_ITEM : SalesTax.RoundedBy.BY_INVOICE);
  }

  /** The classes behind the words of a file; labour takes with it what is added on labour. */
  private static Set<CostClass> taxable(List<String> words) {
    Set<CostClass> taxable = EnumSet.noneOf(CostClass.class);
    for (String word : words) {
      switch (word) {
        case "parts" -> taxable.add(CostClass.PARTS);
        case "steel" -> taxable.add(CostClass.STEEL);
        case "supplies" -> taxable.add(CostClass.SUPPLIES);
        case "outside" -> taxable.add(CostClass.OUTSIDE);
        case "freight" -> taxable.add(CostClass.FREIGHT);
        case "fees" -> taxable.add(CostClass.FEES);
        case "labour" -> {
          taxable.add(CostClass.LABOUR);
          taxable.add(CostClass.OVERHEAD);
          taxable.add(CostClass.CONTINGENCY);
        }
        default ->
            throw new IllegalArgumentException(
                "'"
                    + word
                    + "' was given as taxable; allowed are parts, steel, supplies, labour,"
                    + " outside, freight and fees. Write one of these.");
      }
    }
    return taxable;
  }
}
