package trammel.app.ledger;

import trammel.app.files.Csv;
import trammel.app.files.CsvText;
import trammel.app.files.FileSet;
import trammel.ledger.JobBook;
import trammel.ledger.Ledger;
import trammel.ledger.Offer;
import trammel.ledger.Purchases;

/** The course of jobs as comma-separated values, to be read and not to be taken back. */
public final class BookTables {
  private BookTables() {}

  /** Adds a table each of offers, payments, stages, invoices and orders. */
  public static void addTo(FileSet files, Ledger ledger) {
    files
        .add("offers.csv", offers(ledger))
        .add("payments.csv", payments(ledger))
        .add("stages.csv", stages(ledger))
        .add("invoices.csv", invoices(ledger))
        .add("orders.csv", orders(ledger));
  }

  private static String offers(Ledger ledger) {
    Csv csv =
        new Csv()
            .row(
                "job",
                "customer",
                "kind",
                "count",
                "given_on",
                "accepted_on",
                "dropped_on",
                "item",
                "title",
                "class",
                "quantity",
                "price",
                "currency",
                "why");
    for (JobBook.Heading job : ledger.book().jobs()) {
      for (Offer.Kept kept : ledger.book().offers(job.number())) {
        Offer offer = kept.offer();
        for (Offer.Line line : offer.lines()) {
          csv.row(
              CsvText.safe(job.number()),
              CsvText.safe(job.customer()),
              offer.kind().word(),
              offer.count(),
              offer.givenOn().toString(),
              kept.acceptedOn().map(Object::toString).orElse(""),
              kept.droppedOn().map(Object::toString).orElse(""),
              CsvText.safe(line.key()),
              CsvText.safe(line.title()),
              line.costClass(),
              CsvText.safe(line.quantity()),
              line.price().amount(),
              line.price().currency().getCurrencyCode(),
              CsvText.safe(offer.why()));
        }
      }
    }
    return csv.text();
  }

  private static String payments(Ledger ledger) {
    Csv csv = new Csv().row("job", "paid_on", "amount", "currency", "note");
    for (JobBook.Heading job : ledger.book().jobs()) {
      for (JobBook.Paid paid : ledger.book().payments(job.number())) {
        csv.row(
            CsvText.safe(job.number()),
            paid.paidOn().toString(),
            paid.amount().amount(),
            paid.amount().currency().getCurrencyCode(),
            CsvText.safe(paid.note()));
      }
    }
    return csv.text();
  }

  private static String stages(Ledger ledger) {
    Csv csv = new Csv().row("job", "stage", "word", "day", "why");
    for (JobBook.Heading job : ledger.book().jobs()) {
      for (JobBook.Stage stage : ledger.book().stages(job.number())) {
        csv.row(
            CsvText.safe(job.number()),
            CsvText.safe(stage.title()),
            stage.word().word(),
            stage.day().toString(),
            CsvText.safe(stage.why()));
      }
    }
    return csv.text();
  }

  private static String invoices(Ledger ledger) {
    Csv csv = new Csv().row("number", "job", "given_on", "total", "paid", "balance", "currency");
    for (JobBook.Invoice invoice : ledger.book().invoices()) {
      csv.row(
          invoice.number(),
          CsvText.safe(invoice.job()),
          invoice.givenOn().toString(),
          invoice.total().amount(),
          invoice.paid().amount(),
          invoice.balance().amount(),
          invoice.total().currency().getCurrencyCode());
    }
    return csv.text();
  }

  private static String orders(Ledger ledger) {
    Csv csv =
        new Csv()
            .row(
                "order",
                "supplier",
                "placed_on",
                "due_on",
                "jobs",
                "item",
                "title",
                "unit",
                "ordered",
                "received",
                "amount",
                "currency");
    for (Purchases.Purchase purchase : ledger.purchases().all()) {
      for (Purchases.Line line : purchase.lines()) {
        csv.row(
            CsvText.safe(purchase.number()),
            CsvText.safe(purchase.supplier()),
            purchase.placedOn().toString(),
            purchase.dueOn().toString(),
            CsvText.safe(String.join(", ", purchase.jobs())),
            CsvText.safe(line.item()),
            CsvText.safe(line.title()),
            line.unit(),
            line.quantity(),
            line.received(),
            line.amount().amount(),
            line.amount().currency().getCurrencyCode());
      }
    }
    return csv.text();
  }
}
