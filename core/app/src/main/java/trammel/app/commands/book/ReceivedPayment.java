package trammel.app.commands.book;

import trammel.app.book.Payments;
import trammel.app.commandline.ExitCode;
import trammel.ledger.Ledger;

/** {@code paid}: a payment that came, or was given back. */
final class ReceivedPayment {
  private ReceivedPayment() {}

  static ExitCode pay(BookDesk desk) {
    NamedJob job = desk.job();
    String number = job.number();
    try (Ledger ledger = job.shop().openExisting()) {
      Payments.pay(
          ledger,
          BookShop.course(ledger, number),
          desk.more().orElseThrow(),
          desk.day(),
          desk.why());
      desk.print(BookShop.course(ledger, number));
      return ExitCode.DONE;
    }
  }
}
