package trammel.app.documents;

import trammel.app.book.Course;
import trammel.app.book.CourseText;
import trammel.app.text.Amounts;
import trammel.app.text.Stops;
import trammel.ledger.JobBook;
import trammel.ledger.Purchases;
import trammel.planning.catalog.Shop;
import trammel.planning.learning.ClosedJob;
import trammel.planning.learning.ClosedOperation;
import trammel.reading.quantity.UnitSystem;

/** What came of a job, for the shop alone: quoted, changed and used, side by side. */
public final class AccountDocument {
  private AccountDocument() {}

  /**
   * The document.
   *
   * @param shop whose paper it is
   * @param course the job, closed and invoiced
   * @param units which paper to print it on
   */
  public static PaperDocument of(Shop shop, Course course, UnitSystem units) {
    JobBook.Invoice invoice = course.invoice().orElseThrow();
    DocumentModel model =
        JobHead.model(shop, course.job(), invoice.givenOn(), "What came of the job", Stops.NONE);
    Grid lines = new Grid("lr", new int[] {70, 30}, "", "with tax");
    invoice.lines().forEach(line -> lines.row(line.title(), line.amount().text()));
    lines.total("invoice " + CourseText.number(invoice), invoice.total().text());
    model.put("lines", lines);
    model.put("hours", hours(course.closed().orElseThrow()));
    model.put("stages", stages(course));
    model.put("goods", goods(course));
    return new PaperDocument("account", model, units);
  }

  private static Grid hours(ClosedJob closed) {
    Grid grid = new Grid("lrr", new int[] {60, 20, 20}, "", "standard", "used");
    for (ClosedOperation operation : closed.operations()) {
      if (operation.usedHours().isPresent()) {
        grid.row(
            operation.key(),
            hours(operation.standardHours()),
            hours(operation.usedHours().getAsDouble()));
      }
    }
    grid.total(
        "whole job, quoted and used",
        hours(closed.quotedHours()),
        closed.wholeHours().isPresent() ? hours(closed.wholeHours().getAsDouble()) : "in parts");
    return grid;
  }

  private static String hours(double hours) {
    return Amounts.fixed(hours, 1) + " h";
  }

  private static Grid stages(Course course) {
    Grid grid = new Grid("lll", new int[] {50, 25, 25}, "stage", "promised", "done");
    for (Course.StageState stage : course.stages()) {
      grid.row(
          stage.title(),
          stage.promised().map(Object::toString).orElse(""),
          stage.done().map(Object::toString).orElse(""));
    }
    return grid;
  }

  private static Grid goods(Course course) {
    Grid grid = new Grid("llrr", new int[] {20, 48, 16, 16}, "order", "what", "ordered", "there");
    for (Purchases.Purchase purchase : course.purchases()) {
      for (Purchases.Line line : purchase.lines()) {
        grid.row(
            purchase.number(),
            line.title(),
            Amounts.plain(line.quantity().doubleValue()),
            Amounts.plain(line.received().doubleValue()));
      }
    }
    return grid;
  }
}
