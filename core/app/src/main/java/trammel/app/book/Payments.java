package trammel.app.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import trammel.app.commandline.CommandFailure;
import trammel.ledger.JobBook;
import trammel.ledger.Ledger;
import trammel.ledger.Offer;
import trammel.trade.money.Money;

/** Writes down payments of jobs whose quote was accepted. */
public final class Payments {
  private Payments() {}

  /**
   * Writes a payment down.
   *
   * @param course the job as the ledger has it
   * @param amount as it was typed; with a minus for what was given back
   * @throws CommandFailure if nothing is owed, or the amount is none
   */
  public static void pay(Ledger ledger, Course course, String amount, LocalDate day, String note) {
    String number = course.job().number();
    Offer agreed =
        course
            .agreed()
            .orElseThrow(
                () ->
                    CommandFailure.badInput(
                        "No quote of job "
                            + number
                            + " was accepted yet, so nothing is owed: trammel book accept "
                            + number
                            + "."));
    Money paid = amount(amount, agreed.tax().currency());
    ledger.book().pay(number, new JobBook.Paid(day, paid, note));
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
