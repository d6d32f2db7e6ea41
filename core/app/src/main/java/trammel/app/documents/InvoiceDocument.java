package trammel.app.documents;

import trammel.app.book.Course;
import trammel.app.book.CourseText;
import trammel.app.text.Stops;
import trammel.ledger.JobBook;
import trammel.ledger.Offer;
import trammel.planning.catalog.Shop;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.money.Money;

/** The invoice of a job that is closed: what was quoted, what was changed, what was paid. */
public final class InvoiceDocument {
  private InvoiceDocument() {}

  /**
   * The document.
   *
   * @param shop whose paper it is
   * @param course the job, which has its invoice
   * @param units which paper to print it on
   */
  public static PaperDocument of(Shop shop, Course course, UnitSystem units) {
    JobBook.Invoice invoice = course.invoice().orElseThrow();
    DocumentModel model =
        JobHead.model(
            shop,
            course.job(),
            invoice.givenOn(),
            "Invoice " + CourseText.number(invoice),
            Stops.NONE);
    Money balance = invoice.balance();
    model.put("balance", abs(balance).text());
    model.put(
        "balanceWords",
        balance.isZero()
            ? "left to pay; all is paid"
            : balance.amount().signum() < 0
                ? "paid too much; it is given back"
                : "left to pay, with tax");
    model.put("lines", lines(invoice, course.agreed().orElseThrow().taxName()));
    model.put("classes", classes(course.agreed().orElseThrow()));
    model.put("payments", payments(course, invoice));
    return new PaperDocument("invoice", model, units);
  }

  private static Money abs(Money amount) {
    return new Money(amount.amount().abs(), amount.currency());
  }

  private static Grid lines(JobBook.Invoice invoice, String taxName) {
    Grid grid = new Grid("lrrr", new int[] {46, 18, 18, 18}, "", "before tax", taxName, "with tax");
    Money before = Money.zero(invoice.total().currency());
    for (JobBook.InvoiceLine line : invoice.lines()) {
      grid.row(
          line.title(),
          line.before().text(),
          line.amount().minus(line.before()).text(),
          line.amount().text());
      before = before.plus(line.before());
    }
    grid.total(
        "together", before.text(), invoice.total().minus(before).text(), invoice.total().text());
    return grid;
  }

  private static Grid classes(Offer agreed) {
    Grid grid = new Grid("lr", new int[] {70, 30}, "", "before tax");
    for (String title : CustomerClasses.of(agreed)) {
      grid.row(title, CustomerClasses.sum(agreed, title).text());
    }
    grid.total("together", agreed.subtotal().text());
    return grid;
  }

  private static Grid payments(Course course, JobBook.Invoice invoice) {
    Grid grid = new Grid("llr", new int[] {22, 54, 24}, "on", "", "amount");
    for (JobBook.Paid paid : course.paid()) {
      if (!paid.paidOn().isAfter(invoice.givenOn())) {
        grid.row(paid.paidOn().toString(), paid.note(), paid.amount().text());
      }
    }
    return grid;
  }
}
