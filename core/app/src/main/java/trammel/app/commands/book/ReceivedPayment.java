package trammel.app.commands.book;

import java.math.BigDecimal;
import java.util.Currency;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.ledger.JobBook;
import trammel.ledger.Ledger;
import trammel.ledger.Offer;
import trammel.trade.money.Money;

/** {@code paid}: a payment that came, or was given back. */
final class ReceivedPayment {
  private ReceivedPayment() {}

  static ExitCode pay(BookDesk desk) {
    NamedJob job = desk.job();
    String number = job.number();
    try (Ledger ledger = job.shop().openExisting()) {
      Offer agreed =
          BookShop.course(ledger, number)
              .agreed()
              .orElseThrow(
                  () ->
                      CommandFailure.badInput(
                          "No quote of job "
                              + number
                              + " was accepted yet, so nothing is owed: trammel book accept "
                              + number
                              + "."));
      Money amount = amount(desk.more().orElseThrow(), agreed.tax().currency());
      ledger.book().pay(number, new JobBook.Paid(desk.day(), amount, desk.why()));
      desk.print(BookShop.course(ledger, number));
      return ExitCode.DONE;
    }
  }

  /** What is no whole number of coins, or could be two amounts, is refused. */
  private static Money amount(String word, Currency currency) {
    String plain = word.replace("$", "").replace(",", "").strip();
    boolean whole = plain.matches("-?\\d{1,9}(\\.\\d{1,4})?") && !word.matches(".*,\\d{1,2}$");
    Money amount = whole ? Money.of(plain, currency.getCurrencyCode()) : Money.zero(currency);
    if (amount.isZero() || amount.amount().compareTo(new BigDecimal(plain)) != 0) {
      throw CommandFailure.badInput(
          "AMOUNT was given '"
              + word
              + "'; give what was paid in "
              + currency.getCurrencyCode()
              + ", such as 9970.03; with a minus for what was given back.");
    }
    return amount;
  }
}
