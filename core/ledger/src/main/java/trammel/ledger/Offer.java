package trammel.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trammel.engine.quantity.Given;
import trammel.trade.money.Money;

/**
 * What a customer was offered: a quote in one of its revisions, or a change order after it was
 * accepted. It holds the whole price of the job as it then stood, so that any two can be compared.
 *
 * @param kind quote or change order
 * @param count which of its kind for the job, from 1
 * @param givenOn the day
 * @param why what it was given anew for; may be empty
 * @param lines the lines of the price
 * @param taxName what the tax is called
 * @param tax the tax
 * @param rounding what is added so that the total can be paid in cash
 * @param meanHours the hours expected (h)
 * @param eightOfTenHours the hours that eight of ten such jobs stay within (h)
 * @param payments what is to be paid when
 */
public record Offer(
    Kind kind,
    int count,
    LocalDate givenOn,
    String why,
    List<Line> lines,
    String taxName,
    Money tax,
    Money rounding,
    double meanHours,
    double eightOfTenHours,
    List<Payment> payments) {
  public Offer {
    Given.count("number of an offer", count, 1, 10_000, "Count from 1.");
    Given.text("name of the tax", taxName, "For example sales tax.");
    Given.positive("expected hours", meanHours, 100_000, "h", "Give the hours of the quote.");
    Given.positive("hours of eight of ten", eightOfTenHours, 100_000, "h", "Give them.");
    lines = List.copyOf(lines);
    payments = List.copyOf(payments);
    Given.count("lines of an offer", lines.size(), 1, 10_000, "Give what it is made of.");
  }

  /** What was offered. */
  public enum Kind {
    QUOTE,
    CHANGE;

    /** As it is written in the file and in tables. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * A line of the price.
   *
   * @param key its name; lines of one name are told apart by their order
   * @param title what it is
   * @param costClass the class that it is summed up in
   * @param quantity how much, in words
   * @param price what the customer pays for it before tax
   */
  public record Line(String key, String title, String costClass, String quantity, Money price) {}

  /**
   * A payment that was agreed.
   *
   * @param at when it is due, in words
   * @param amount how much
   */
  public record Payment(String at, Money amount) {}

  /**
   * An offer and what became of it.
   *
   * @param acceptedOn when the customer agreed
   * @param droppedOn when it was taken back
   */
  public record Kept(Offer offer, Optional<LocalDate> acceptedOn, Optional<LocalDate> droppedOn) {
    /** True if it is neither agreed nor taken back. */
    public boolean isOpen() {
      return acceptedOn.isEmpty() && droppedOn.isEmpty();
    }
  }

  /** Sum of its lines before tax. */
  public Money subtotal() {
    Money sum = Money.zero(tax.currency());
    for (Line line : lines) {
      sum = sum.plus(line.price());
    }
    return sum;
  }

  /** What the job comes to with tax. */
  public Money total() {
    return subtotal().plus(tax).plus(rounding);
  }

  /** Its name on papers: {@code D-101, revision 2} or {@code D-101-C1}. */
  public String name(String job) {
    return kind == Kind.QUOTE ? job + ", revision " + count : job + "-C" + count;
  }
}
