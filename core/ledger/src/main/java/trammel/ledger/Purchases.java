package trammel.ledger;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import trammel.engine.quantity.Given;
import trammel.trade.money.Money;

/** Orders that were placed with suppliers, and what came of them. */
public final class Purchases {
  /** Orders that were not taken back. */
  private static final String COUNTING =
      "select number, supplier, placed_on, due_on, jobs, currency, id from purchase where"
          + " dropped_at is null";

  private final Sql sql;
  private final Hand hand;

  Purchases(Sql sql, Hand hand) {
    this.sql = sql;
    this.hand = hand;
  }

  /**
   * An order to one supplier.
   *
   * @param number its number, as it stands on the order
   * @param supplier who delivers
   * @param placedOn the day
   * @param dueOn when its slowest line is to be there
   * @param jobs numbers of the jobs it is for
   * @param lines what was ordered
   */
  public record Purchase(
      String number,
      String supplier,
      LocalDate placedOn,
      LocalDate dueOn,
      List<String> jobs,
      List<Line> lines) {
    public Purchase {
      Given.text("number of an order", number, "Give it one.");
      Given.text("supplier of order " + number, supplier, "Say who delivers.");
      jobs = List.copyOf(jobs);
      lines = List.copyOf(lines);
      Given.count("lines of order " + number, lines.size(), 1, 10_000, "Order something.");
    }

    /** True if something of it has not come yet. */
    public boolean isOpen() {
      return lines.stream().anyMatch(line -> line.outstanding().signum() > 0);
    }
  }

  /**
   * A line of an order.
   *
   * @param item its key in the catalog
   * @param title what it is
   * @param quantity how many were ordered
   * @param unit what one of it is
   * @param amount what the line costs
   * @param received how many have come
   */
  public record Line(
      String item,
      String title,
      BigDecimal quantity,
      String unit,
      Money amount,
      BigDecimal received) {
    /** How many are still to come; none where more came than was ordered. */
    public BigDecimal outstanding() {
      return quantity.subtract(received).max(BigDecimal.ZERO);
    }
  }

  /**
   * Goods that came.
   *
   * @param line which line of the order, from 1
   * @param quantity how many, above 0
   * @param note anything to say; may be empty
   */
  public record Receipt(int line, BigDecimal quantity, String note) {
    public Receipt {
      Given.decimal("number of goods received", quantity, 0, 1_000_000, "Count them.");
    }
  }

  /**
   * Goods that came on a day.
   *
   * @param receivedOn the day
   * @param what which line, how many, and what was said of it
   */
  public record Received(LocalDate receivedOn, Receipt what) {}

  /** Writes an order down; its number must be free. */
  public void place(Purchase purchase) {
    sql.change(
        () -> {
          sql.run(
              "insert into purchase (number, supplier, placed_on, due_on, jobs, currency,"
                  + " written_at, written_by) values (?, ?, ?, ?, ?, ?, ?, ?)",
              purchase.number,
              purchase.supplier,
              purchase.placedOn.toString(),
              purchase.dueOn.toString(),
              String.join("\n", purchase.jobs),
              purchase.lines.get(0).amount.currency().getCurrencyCode(),
              hand.at(),
              hand.who());
          long id = sql.number("select last_insert_rowid()");
          for (int i = 0; i < purchase.lines.size(); i++) {
            Line line = purchase.lines.get(i);
            sql.run(
                "insert into purchase_line values (?, ?, ?, ?, ?, ?, ?)",
                id,
                i + 1,
                line.item,
                line.title,
                line.quantity,
                line.unit,
                line.amount.amount());
          }
          return null;
        });
  }

  /** All orders that were not taken back, in the order in which they were placed. */
  public List<Purchase> all() {
    return sql.view(() -> sql.rows(COUNTING + " order by id", this::purchase));
  }

  /** An order by its number. */
  public Optional<Purchase> of(String number) {
    return sql.view(() -> sql.find(COUNTING + " and number = ?", this::purchase, number));
  }

  /** The orders that a job has part in. */
  public List<Purchase> forJob(String job) {
    return all().stream().filter(one -> one.jobs.contains(job)).toList();
  }

  private Purchase purchase(ResultSet row) throws SQLException {
    return new Purchase(
        row.getString(1),
        row.getString(2),
        Sql.day(row, 3),
        Sql.day(row, 4),
        List.of(row.getString(5).split("\n")),
        lines(row.getLong(7), row.getString(6)));
  }

  private List<Line> lines(long purchase, String code) {
    return sql.rows(
        "select line, item, title, quantity, unit, amount from purchase_line where purchase = ?"
            + " order by line",
        row ->
            new Line(
                row.getString(2),
                row.getString(3),
                new BigDecimal(row.getString(4)),
                row.getString(5),
                Money.of(row.getString(6), code),
                received(purchase, row.getInt(1))),
        purchase);
  }

  private BigDecimal received(long purchase, int line) {
    return sql
        .rows(
            "select quantity from receipt where purchase = ? and line = ?",
            row -> new BigDecimal(row.getString(1)),
            purchase,
            line)
        .stream()
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** What came of an order and when and by whom that was written down, the first first. */
  public List<Written<Received>> received(String number) {
    return sql.rows(
        "select received_on, line, quantity, note, written_at, written_by from receipt where"
            + " purchase = (select id from purchase where number = ? and dropped_at is null) order"
            + " by id",
        row ->
            new Written<>(
                row.getString(5),
                row.getString(6),
                new Received(
                    Sql.day(row, 1),
                    new Receipt(
                        row.getInt(2), new BigDecimal(row.getString(3)), row.getString(4)))),
        number);
  }

  /** Writes down what came. */
  public void receive(String number, LocalDate day, List<Receipt> receipts) {
    sql.change(
        () -> {
          long id = id(number);
          for (Receipt receipt : receipts) {
            sql.run(
                "insert into receipt (purchase, line, received_on, quantity, note, written_at,"
                    + " written_by) values (?, ?, ?, ?, ?, ?, ?)",
                id,
                receipt.line,
                day.toString(),
                receipt.quantity,
                receipt.note,
                hand.at(),
                hand.who());
          }
          return null;
        });
  }

  /** Takes an order back; it stays in the file, and its number is free again. */
  public void drop(String number) {
    sql.change(
        () -> {
          sql.run("update purchase set dropped_at = ? where id = ?", hand.at(), id(number));
          return null;
        });
  }

  private long id(String number) {
    return sql.find(
            "select id from purchase where number = ? and dropped_at is null",
            row -> row.getLong(1),
            number)
        .orElseThrow(() -> new IllegalArgumentException("There is no order " + number + "."));
  }
}
