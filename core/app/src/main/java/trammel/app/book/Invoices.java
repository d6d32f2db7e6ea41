package trammel.app.book;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;
import trammel.ledger.JobBook;
import trammel.ledger.Offer;
import trammel.trade.money.Money;

/** Makes the invoice of a job that is closed: what was quoted, each change, what was paid. */
public final class Invoices {
  private Invoices() {}

  /**
   * The invoice, without its number yet.
   *
   * @param givenOn the day; what is paid later is not on it
   * @throws CommandFailure if the job is not closed or not agreed, or a change order is open
   */
  public static JobBook.Invoice of(Course course, LocalDate givenOn) {
    String number = course.job().number();
    Offer.Kept quote = quote(course);
    Money total = course.agreed().orElseThrow().total();
    return new JobBook.Invoice(
        0, number, givenOn, lines(course, quote), total, paid(course, givenOn));
  }

  private static Offer.Kept quote(Course course) {
    String number = course.job().number();
    if (course.closed().isEmpty()) {
      throw CommandFailure.badInput(
          "Job " + number + " is not closed yet: trammel close JOB ACTUALS first.");
    }
    Optional<Offer.Kept> open = course.openChange();
    if (open.isPresent()) {
      throw CommandFailure.badInput(
          "Change order " + open.get().offer().name(number) + " is open: accept or drop it first.");
    }
    return course
        .accepted()
        .orElseThrow(
            () ->
                CommandFailure.badInput(
                    "No quote of job "
                        + number
                        + " was accepted, so there is nothing to invoice: trammel book accept "
                        + number
                        + "."));
  }

  private static List<JobBook.InvoiceLine> lines(Course course, Offer.Kept accepted) {
    Offer quote = accepted.offer();
    List<JobBook.InvoiceLine> lines = new ArrayList<>();
    lines.add(
        new JobBook.InvoiceLine(
            "As quoted, revision "
                + quote.count()
                + " of "
                + quote.givenOn()
                + ", agreed "
                + accepted.acceptedOn().orElseThrow(),
            quote.subtotal(),
            quote.total()));
    for (OfferDifference change : course.changeDifferences()) {
      Offer after = change.after();
      lines.add(
          new JobBook.InvoiceLine(
              "Change order "
                  + after.name(course.job().number())
                  + (after.why().isEmpty() ? "" : ": " + after.why()),
              change.subtotal(),
              change.total()));
    }
    return lines;
  }

  private static Money paid(Course course, LocalDate until) {
    Money paid = Money.zero(course.agreed().orElseThrow().tax().currency());
    for (JobBook.Paid one : course.paid()) {
      paid = one.paidOn().isAfter(until) ? paid : paid.plus(one.amount());
    }
    return paid;
  }
}
