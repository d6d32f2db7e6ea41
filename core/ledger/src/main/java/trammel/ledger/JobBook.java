package trammel.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trammel.engine.quantity.Given;
import trammel.trade.money.Money;

/**
 * The course of jobs from quote to paid: what was offered, agreed, promised, paid and invoiced.
 * Nothing is written over; what was taken back stays and says so.
 */
public final class JobBook {
  private final Sql sql;
  private final Hand hand;
  private final OfferTable offers;
  private final InvoiceTable invoices;

  JobBook(Sql sql, Hand hand) {
    this.sql = sql;
    this.hand = hand;
    offers = new OfferTable(sql);
    invoices = new InvoiceTable(sql);
  }

  /**
   * Whose job it is.
   *
   * @param number the shop's number
   * @param customer who it is for; empty once forgotten
   * @param vehicle the vehicle; empty once forgotten
   */
  public record Heading(String number, String customer, String vehicle) {
    public Heading {
      Given.text("number of a job", number, "Give the shop's number.");
    }

    /** True if the customer's data was deleted. */
    public boolean isForgotten() {
      return customer.isEmpty();
    }
  }

  /**
   * A payment received, or given back.
   *
   * @param paidOn the day
   * @param amount how much; below 0 was given back
   * @param note how and for what; may be empty
   */
  public record Paid(LocalDate paidOn, Money amount, String note) {
    public Paid {
      if (amount.isZero()) {
        throw new IllegalArgumentException("A payment of nothing was given; allowed is an amount.");
      }
    }
  }

  /** What is said of a stage of a job. */
  public enum StageWord {
    PROMISED,
    DONE;

    /** As it is written in the file and in tables. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * Something said of a stage.
   *
   * @param title the stage, such as frame back on its wheels
   * @param word promised or done
   * @param day for which day, or on which
   * @param why why a promise was moved; may be empty
   */
  public record Stage(String title, StageWord word, LocalDate day, String why) {
    public Stage {
      Given.text("title of a stage", title, "Say what is done by then.");
    }
  }

  /**
   * An invoice.
   *
   * @param number the shop's number of it, one after the other; 0 for one that is to get it
   * @param job the job
   * @param givenOn the day
   * @param lines what was quoted and changed, tax within
   * @param total sum of the lines
   * @param paid what was paid before
   */
  public record Invoice(
      int number, String job, LocalDate givenOn, List<InvoiceLine> lines, Money total, Money paid) {
    public Invoice {
      lines = List.copyOf(lines);
      Money sum = Money.zero(total.currency());
      for (InvoiceLine line : lines) {
        sum = sum.plus(line.amount());
      }
      if (sum.compareTo(total) != 0) {
        throw new IllegalArgumentException(
            "The lines of an invoice come to "
                + sum.text()
                + ", its total is "
                + total.text()
                + ". They must be the same.");
      }
    }

    /** What is left to pay; below 0 is to be given back. */
    public Money balance() {
      return total.minus(paid);
    }
  }

  /**
   * A line of an invoice.
   *
   * @param title what it is
   * @param before what of it is before tax
   * @param amount with tax
   */
  public record InvoiceLine(String title, Money before, Money amount) {}

  /** The jobs in it, in the order in which they came. */
  public List<Heading> jobs() {
    return sql.rows("select number, customer, vehicle from book_job order by id", JobBook::heading);
  }

  /** A job. */
  public Optional<Heading> job(String number) {
    return sql.find(
        "select number, customer, vehicle from book_job where number = ?",
        JobBook::heading,
        number);
  }

  private static Heading heading(ResultSet row) throws SQLException {
    return new Heading(row.getString(1), row.getString(2), row.getString(3));
  }

  // Offers

  /** Writes an offer down; whose job it is counts as given now. */
  public void give(Heading job, Offer offer) {
    sql.change(
        () -> {
          sql.run(
              "insert into book_job (number, customer, vehicle) values (?, ?, ?) on conflict"
                  + " (number) do update set customer = excluded.customer, vehicle ="
                  + " excluded.vehicle",
              job.number,
              job.customer,
              job.vehicle);
          offers.add(job.number, offer, hand);
          return null;
        });
  }

  /** Writes down that the customer agreed. */
  public void accept(String job, Offer.Kind kind, int count, LocalDate day) {
    offers.mark("accepted_on", job, kind, count, day);
  }

  /** Takes an offer back. */
  public void drop(String job, Offer.Kind kind, int count, LocalDate day) {
    offers.mark("dropped_on", job, kind, count, day);
  }

  /** Everything that was offered for a job, the first first. */
  public List<Offer.Kept> offers(String job) {
    return offers.of(job);
  }

  /** The same, and when and by whom each was written down. */
  public List<Written<Offer.Kept>> writtenOffers(String job) {
    return offers.written(job);
  }

  // Payments

  /** Writes a payment down. */
  public void pay(String job, Paid paid) {
    sql.run(
        "insert into payment (job, paid_on, amount, currency, note, written_at, written_by) values"
            + " (?, ?, ?, ?, ?, ?, ?)",
        job,
        paid.paidOn.toString(),
        paid.amount.amount(),
        paid.amount.currency().getCurrencyCode(),
        paid.note,
        hand.at(),
        hand.who());
  }

  /** What was paid for a job, the first first. */
  public List<Paid> payments(String job) {
    return writtenPayments(job).stream().map(Written::what).toList();
  }

  /** What was paid for a job and when and by whom that was written down, the first first. */
  public List<Written<Paid>> writtenPayments(String job) {
    return sql.rows(
        "select paid_on, amount, currency, note, written_at, written_by from payment where job = ?"
            + " order by id",
        row ->
            new Written<>(
                row.getString(5),
                row.getString(6),
                new Paid(
                    Sql.day(row, 1),
                    Money.of(row.getString(2), row.getString(3)),
                    row.getString(4))),
        job);
  }

  // Stages

  /** Writes down what is said of a stage. */
  public void say(String job, Stage stage) {
    sql.run(
        "insert into stage (job, title, word, day, why, written_at, written_by) values (?, ?, ?, ?,"
            + " ?, ?, ?)",
        job,
        stage.title,
        stage.word.word(),
        stage.day.toString(),
        stage.why,
        hand.at(),
        hand.who());
  }

  /** Everything that was said of a job's stages, the first first. */
  public List<Stage> stages(String job) {
    return writtenStages(job).stream().map(Written::what).toList();
  }

  /** Everything that was said of a job's stages and when and by whom that was written down. */
  public List<Written<Stage>> writtenStages(String job) {
    return sql.rows(
        "select title, word, day, why, written_at, written_by from stage where job = ? order by id",
        row ->
            new Written<>(
                row.getString(5),
                row.getString(6),
                new Stage(
                    row.getString(1),
                    Sql.word(row, 2, StageWord.class),
                    Sql.day(row, 3),
                    row.getString(4))),
        job);
  }

  // Invoices

  /**
   * Writes an invoice down under the next number.
   *
   * @return the invoice with its number
   */
  public Invoice invoice(Invoice invoice) {
    return invoices.add(invoice, hand);
  }

  /** The invoice of a job. */
  public Optional<Invoice> invoice(String job) {
    return invoices.of(job);
  }

  /** All invoices, by number. */
  public List<Invoice> invoices() {
    return invoices.all();
  }

  /**
   * Deletes whom a job was for, its vehicle, every word that was written about it, and what was
   * read off the vehicle after tacking. Days, amounts and numbers stay, as books and the shop's
   * hours need them. What is deleted is overwritten in the file.
   */
  public void forget(String job) {
    sql.run("pragma secure_delete = on");
    sql.change(
        () -> {
          sql.run("update book_job set customer = '', vehicle = '' where number = ?", job);
          sql.run("update offer set why = '' where job = ?", job);
          sql.run(
              "update offer_line set title = item where offer in (select id from offer where job ="
                  + " ?)",
              job);
          sql.run("update payment set note = '' where job = ?", job);
          sql.run("delete from stage where job = ?", job);
          sql.run(
              "delete from tack_reading where tacking in (select id from tacking where job = ?)",
              job);
          sql.run("delete from tacking where job = ?", job);
          // What a change order was for stands behind its number.
          sql.run(
              "update invoice_line set title = substr(title, 1, instr(title, ': ') - 1) where"
                  + " instr(title, ': ') > 0 and invoice in (select number from invoice where job ="
                  + " ?)",
              job);
          sql.run(
              "update receipt set note = '' where purchase in (select id from purchase where"
                  + " instr(char(10) || jobs || char(10), char(10) || ? || char(10)) > 0)",
              job);
          return null;
        });
  }

  /** Everything read once, for a check of what is in it; amounts that cannot be are thrown. */
  void readAll() {
    for (Heading job : jobs()) {
      offers(job.number);
      payments(job.number);
      stages(job.number);
    }
    invoices();
  }
}
