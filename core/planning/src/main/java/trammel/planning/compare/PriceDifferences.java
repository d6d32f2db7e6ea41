package trammel.planning.compare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.planning.compare.PriceDifference.Cause;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.money.Contingency;
import trammel.trade.money.CostBuildUp;
import trammel.trade.money.CostClass;
import trammel.trade.money.LabourRate;
import trammel.trade.money.Money;
import trammel.trade.money.Payments;
import trammel.trade.money.PriceShare;
import trammel.trade.money.PriceTerms;
import trammel.trade.money.Rounding;
import trammel.trade.money.SalesTax;

/**
 * Takes the difference between two prices apart. The work of the first is priced again and again,
 * each time with one more term of the other; what each step adds is the part of that term. What is
 * left then is the work's own part, class by class. Every part is the difference of two prices that
 * are rounded as any price is, so the parts add up to the whole difference to the cent.
 */
public final class PriceDifferences {
  private final List<PriceDifference> found = new ArrayList<>();
  private PricedWork work;
  private Money reached;

  private PriceDifferences(PricedWork first) {
    work = first;
    reached = first.price().total();
  }

  /** The parts of the difference between the prices with tax, terms before work. */
  public static List<PriceDifference> between(PricedWork first, PricedWork other) {
    PriceDifferences differences = new PriceDifferences(first);
    differences.terms(first.terms(), other.terms());
    differences.work(other);
    return differences.found;
  }

  /**
   * What is paid when, where deposit or progress payments are other shares of the price; these
   * differences too add up to that of the prices with tax.
   */
  public static List<PriceDifference> ofPayments(CostBuildUp first, CostBuildUp other) {
    if (paidAlike(first.terms(), other.terms())) {
      return List.of();
    }
    Money none = Money.zero(first.terms().currency());
    Map<String, Money> before = payments(first);
    Map<String, Money> after = payments(other);
    Set<String> names = new LinkedHashSet<>(before.keySet());
    names.addAll(after.keySet());
    List<PriceDifference> differences = new ArrayList<>();
    for (String name : names) {
      Money a = before.getOrDefault(name, none);
      Money b = after.getOrDefault(name, none);
      if (!a.equals(b)) {
        differences.add(new PriceDifference(Cause.PAYMENT, name, a.text(), b.text(), b.minus(a)));
      }
    }
    return differences;
  }

  private static boolean paidAlike(PriceTerms first, PriceTerms other) {
    return first.depositFraction().compareTo(other.depositFraction()) == 0
        && first.progress().equals(other.progress());
  }

  private static Map<String, Money> payments(CostBuildUp price) {
    Payments payments = price.payments();
    Map<String, Money> named = new LinkedHashMap<>();
    named.put("deposit with the order", payments.deposit());
    for (int i = 0; i < payments.progress().size(); i++) {
      named.merge(
          "when: " + price.terms().progress().get(i).when(),
          payments.progress().get(i),
          Money::plus);
    }
    named.put("balance on delivery", payments.balance());
    return named;
  }

  private void terms(PriceTerms first, PriceTerms other) {
    LabourRate before = first.rate();
    LabourRate after = other.rate();
    step(
        "labour rate an hour",
        rate(first, before.perHour()),
        rate(other, after.perHour()),
        work.terms().withRate(before.with(after.perHour(), before.overheadPerHour())));
    step(
        "overhead billed on top, an hour",
        rate(first, before.overheadOnTop()),
        rate(other, after.overheadOnTop()),
        work.terms().withRate(after));
    for (CostClass costClass : CostClass.values()) {
      step(
          "markup on " + costClass.title(),
          percent(first.markup(costClass).fraction()),
          percent(other.markup(costClass).fraction()),
          work.terms().withMarkup(costClass, other.markup(costClass)));
    }
    step(
        "steel cut away, of its cost",
        percent(first.steelWaste()),
        percent(other.steelWaste()),
        work.terms().withAdditions(other.steelWaste(), first.suppliesOfLabour()));
    step(
        "shop supplies, of labour",
        percent(first.suppliesOfLabour()),
        percent(other.suppliesOfLabour()),
        work.terms().withAdditions(other.steelWaste(), other.suppliesOfLabour()));
    step(
        "contingency",
        words(first.contingency()),
        words(other.contingency()),
        work.terms().withContingency(other.contingency()));
    step(
        "shares of the price",
        words(first.shares()),
        words(other.shares()),
        work.terms().withShares(other.shares()));
    tax(first.tax(), other.tax());
    step(
        "rounding",
        words(first.rounding()),
        words(other.rounding()),
        work.terms().withRounding(other.rounding()));
  }

  private void tax(SalesTax first, SalesTax other) {
    step(
        first.name(),
        percent(first.rate()),
        percent(other.rate()),
        work.terms().withTax(first.withRate(other.rate())));
    step(
        "what is taxable",
        taxable(first),
        taxable(other),
        work.terms()
            .withTax(new SalesTax(first.name(), other.rate(), other.taxable(), first.rounding())));
    step("tax is rounded", rounded(first), rounded(other), work.terms().withTax(other));
  }

  /** Goes on with one more term of the other; one that is the same in both makes no part. */
  private void step(String name, String first, String other, PriceTerms terms) {
    if (first.equals(other)) {
      return;
    }
    work = work.at(terms);
    Money total = work.price().total();
    found.add(new PriceDifference(Cause.TERMS, name, first, other, total.minus(reached)));
    reached = total;
  }

  private void work(PricedWork other) {
    CostBuildUp before = work.price();
    CostBuildUp after = other.price();
    for (CostClass costClass : CostClass.values()) {
      line(costClass.title(), before.total(costClass).price(), after.total(costClass).price());
    }
    line(after.terms().tax().name() + " on the work", before.tax(), after.tax());
    line("rounding of the total", before.cashRounding(), after.cashRounding());
  }

  private void line(String name, Money first, Money other) {
    if (!first.equals(other)) {
      found.add(
          new PriceDifference(Cause.WORK, name, first.text(), other.text(), other.minus(first)));
    }
  }

  /** An hour's rate; one with more decimals than there are coins keeps them. */
  private static String rate(PriceTerms terms, BigDecimal perHour) {
    Money coins = new Money(perHour, terms.currency());
    return coins.amount().compareTo(perHour) == 0
        ? coins.text()
        : perHour.toPlainString() + " " + terms.currency().getCurrencyCode();
  }

  private static String percent(BigDecimal ratio) {
    return QuantityPrinter.percent(ratio);
  }

  private static String words(Contingency contingency) {
    if (contingency instanceof Contingency.PartOfLabour part) {
      return percent(part.fraction()) + " of labour";
    }
    return contingency instanceof Contingency.HoursToChance target
        ? "P" + percent(BigDecimal.valueOf(target.chance())).replace(" %", "")
        : "none";
  }

  private static String words(List<PriceShare> shares) {
    StringBuilder words = new StringBuilder();
    for (PriceShare share : shares) {
      words
          .append(words.isEmpty() ? "" : ", ")
          .append(share.title())
          .append(' ')
          .append(percent(share.fraction()));
    }
    return words.isEmpty() ? "none" : words.toString();
  }

  private static String words(Rounding rounding) {
    return rounding.word()
        + rounding.cashStep().map(step -> ", total in " + step.toPlainString()).orElse("");
  }

  private static String taxable(SalesTax tax) {
    if (tax.taxable().isEmpty()) {
      return "nothing";
    }
    StringBuilder words = new StringBuilder();
    for (CostClass costClass : EnumSet.copyOf(tax.taxable())) {
      words.append(words.isEmpty() ? "" : ", ").append(costClass.title());
    }
    return words.toString();
  }

  private static String rounded(SalesTax tax) {
    return tax.rounding() == SalesTax.RoundedBy.BY_ITEM ? "by item" : "by invoice";
  }
}
