package trammel.app.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import trammel.planning.estimate.Estimate;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.money.ClassTotal;
import trammel.trade.money.CostBuildUp;
import trammel.trade.money.Payments;
import trammel.trade.money.PriceLine;
import trammel.trade.money.PriceTerms;
import trammel.trade.money.ProgressPayment;

/** The cost build-up and the price of a job on a screen. */
public final class PriceText {
  private final Estimate estimate;
  private final Amounts amounts;

  /**
   * @param estimate the job
   * @param amounts prints values in the reader's units
   */
  public PriceText(Estimate estimate, Amounts amounts) {
    this.estimate = estimate;
    this.amounts = amounts;
  }

  /** Lines by class, then subtotal, tax, total, deposit. */
  public String text() {
    CostBuildUp price = estimate.price();
    StringBuilder text = new StringBuilder("COST BUILD-UP\n");
    for (ClassTotal total : price.classTotals()) {
      text.append("  ").append(total.costClass().title()).append('\n');
      Table table = new Table("lllr");
      for (PriceLine line : total.lines()) {
        table.row(line.line().title(), line.line().quantityText(), line.how(), line.price().text());
      }
      table.row("", "", "together", total.price().text());
      text.append(table.text("    "));
    }
    return text.append("\nPRICE\n").append(sums()).toString();
  }

  /** Subtotal, tax, total and payments, and how long it holds. */
  String sums() {
    CostBuildUp price = estimate.price();
    PriceTerms terms = price.terms();
    Table table = new Table("lrl");
    table.row("subtotal", price.subtotal().text(), "");
    table.row(
        terms.tax().name(),
        price.tax().text(),
        QuantityPrinter.percent(terms.tax().rate())
            + " on "
            + taxable(price)
            + ", "
            + price.taxable().text());
    if (!price.cashRounding().isZero()) {
      table.row("rounding", price.cashRounding().text(), "");
    }
    table.row("TOTAL", price.total().text(), "");
    Payments payments = price.payments();
    table.row("deposit with the order", payments.deposit().text(), share(terms.depositFraction()));
    for (int i = 0; i < terms.progress().size(); i++) {
      ProgressPayment payment = terms.progress().get(i);
      table.row(
          "when: " + payment.when(), payments.progress().get(i).text(), share(payment.fraction()));
    }
    table.row("balance on delivery", payments.balance().text(), "");
    return table.text("  ")
        + "  good for "
        + terms.validDays()
        + " days, until "
        + terms.validUntil(estimate.draft().job().header().date())
        + "; steel added "
        + amounts.printer().mass(estimate.materials().steelMassKg())
        + ", bought parts "
        + amounts.printer().mass(estimate.materials().partsMassKg())
        + "\n  Example prices and hours are invented unless the shop's own are set.\n";
  }

  private static String share(BigDecimal fraction) {
    return QuantityPrinter.percent(fraction) + " of the total";
  }

  private static String taxable(CostBuildUp price) {
    List<String> classes = new ArrayList<>();
    for (ClassTotal total : price.classTotals()) {
      if (price.terms().tax().isDueOn(total.costClass())) {
        classes.add(total.costClass().title());
      }
    }
    return classes.isEmpty() ? "nothing" : String.join(" and ", classes);
  }
}
