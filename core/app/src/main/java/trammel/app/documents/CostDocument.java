package trammel.app.documents;

import trammel.app.drawings.PartWords;
import trammel.app.text.Amounts;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.labour.OperationLine;
import trammel.trade.money.ClassTotal;
import trammel.trade.money.CostBuildUp;
import trammel.trade.money.Payments;
import trammel.trade.money.PriceLine;
import trammel.trade.money.ProgressPayment;

/** The cost sheet for the shop's own eyes. */
public final class CostDocument {
  /** A reason of more letters than this is not printed twice running. */
  private static final int LONG_REASON = 80;

  /** What the reason of a sheet of plate begins with. */
  private static final String PLATES = "plates: ";

  private final JobPaper paper;

  /**
   * @param paper the job
   */
  public CostDocument(JobPaper paper) {
    this.paper = paper;
  }

  /** The document. */
  public PaperDocument document() {
    CostBuildUp price = paper.estimate().price();
    DocumentModel model = paper.model("Cost sheet, internal");
    model.put("total", price.total().text());
    model.put("hoursMean", Amounts.fixed(paper.estimate().hours().meanHours(), 1));
    model.put("hoursHalf", Amounts.fixed(paper.estimate().hours().p50Hours(), 1));
    model.put("hoursMost", Amounts.fixed(paper.estimate().hours().p80Hours(), 1));
    model.put("summary", summary(price));
    model.put("lines", lines(price));
    model.put("hours", hours());
    return paper.document("cost", model);
  }

  private static Grid summary(CostBuildUp price) {
    Grid grid = new Grid("lrrr", new int[] {46, 18, 18, 18}, "", "cost", "price", "profit");
    for (ClassTotal total : price.classTotals()) {
      grid.row(
          total.costClass().title(),
          total.cost().text(),
          total.price().text(),
          total.profit().text());
    }
    grid.total(
        "subtotal",
        price.cost().text(),
        price.subtotal().text(),
        price.subtotal().minus(price.cost()).text());
    grid.row(
        price.terms().tax().name()
            + ", "
            + QuantityPrinter.percent(price.terms().tax().rate())
            + " on "
            + price.taxable().text(),
        "",
        price.tax().text(),
        "");
    if (!price.cashRounding().isZero()) {
      grid.row("rounding", "", price.cashRounding().text(), "");
    }
    grid.total("total", "", price.total().text(), "");
    Payments payments = price.payments();
    grid.row(
        "deposit, " + QuantityPrinter.percent(price.terms().depositFraction()),
        "",
        payments.deposit().text(),
        "");
    for (int i = 0; i < payments.progress().size(); i++) {
      ProgressPayment payment = price.terms().progress().get(i);
      grid.row(
          "when: " + payment.when() + ", " + QuantityPrinter.percent(payment.fraction()),
          "",
          payments.progress().get(i).text(),
          "");
    }
    grid.row("balance", "", payments.balance().text(), "");
    return grid;
  }

  /** Two sheets of one thickness are cut into the same plates, which are listed once. */
  private Grid lines(CostBuildUp price) {
    PartWords words = paper.words();
    Grid grid =
        new Grid(
            "llrr",
            new int[] {52, 24, 12, 12},
            "what, and what asks for it",
            "how",
            "cost",
            "price");
    for (ClassTotal total : price.classTotals()) {
      grid.group(total.costClass().title());
      String before = "";
      for (PriceLine line : total.lines()) {
        String why = line.line().why().in(paper.printer());
        // A plate keeps the name that is on its drawing and its file.
        why = why.startsWith(PLATES) ? why : words.in(why);
        boolean again = why.equals(before) && why.length() > LONG_REASON;
        before = why;
        grid.noted(
            0,
            again ? "for the same as the line above" : why,
            line.line().title(),
            line.how(),
            line.cost().text(),
            line.price().text());
      }
      grid.total("together", "", total.cost().text(), total.price().text());
    }
    return grid;
  }

  private Grid hours() {
    Grid grid =
        new Grid(
            "lrrrrl",
            new int[] {36, 9, 9, 9, 9, 28},
            "operation",
            "low",
            "likely",
            "high",
            "mean",
            "for");
    for (OperationLine line : paper.estimate().hours().lines()) {
      grid.row(
          line.operation().title(),
          Amounts.fixed(line.hours().low(), 1),
          Amounts.fixed(line.hours().likely(), 1),
          Amounts.fixed(line.hours().high(), 1),
          Amounts.fixed(line.hours().mean(), 1),
          line.driverText().in(paper.printer()));
    }
    return grid;
  }
}
