package trammel.app.commands.book;

import java.util.List;
import java.util.Optional;
import trammel.app.book.Course;
import trammel.app.book.CourseJson;
import trammel.app.book.CourseText;
import trammel.app.book.Invoices;
import trammel.app.commandline.ExitCode;
import trammel.app.documents.AccountDocument;
import trammel.app.documents.InvoiceDocument;
import trammel.app.documents.PaperDocument;
import trammel.app.files.FileSet;
import trammel.app.files.OutFolder;
import trammel.ledger.JobBook;
import trammel.ledger.Ledger;
import trammel.planning.catalog.Shop;

/** {@code invoice}: the invoice of a closed job, made once and printed as often as asked. */
final class WrittenInvoice {
  private WrittenInvoice() {}

  static ExitCode write(BookDesk desk) {
    NamedJob job = desk.job();
    Optional<OutFolder> out = desk.out("invoice");
    try (Ledger ledger = job.shop().openExisting()) {
      Course course = BookShop.course(ledger, job.number());
      JobBook.Invoice asked = course.invoice().orElseGet(() -> Invoices.of(course, desk.day()));
      Course now =
          ledger.asOne(
              () -> {
                if (course.invoice().isEmpty()) {
                  ledger.book().invoice(asked);
                }
                Course invoiced = BookShop.course(ledger, job.number());
                out.ifPresent(
                    into -> desk.write(papers(desk, invoiced), into, List.of(job.number())));
                return invoiced;
              });
      desk.print(CourseText.invoice(now), CourseJson.course(now));
      return ExitCode.DONE;
    }
  }

  private static FileSet papers(BookDesk desk, Course course) {
    Shop shop = desk.bench().catalog().shop();
    PaperDocument invoice = InvoiceDocument.of(shop, course, desk.units());
    PaperDocument account = AccountDocument.of(shop, course, desk.units());
    return new FileSet()
        .add("invoice.pdf", invoice.pdf())
        .add("invoice.html", invoice.html())
        .add("office/account.pdf", account.pdf())
        .add("office/account.html", account.html());
  }
}
