package trammel.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import trammel.trade.money.Money;

/** Invoices with their lines, as they stand in the tables. */
final class InvoiceTable {
  private static final String SELECT =
      "select number, job, given_on, currency, total, paid from invoice";

  private final Sql sql;

  InvoiceTable(Sql sql) {
    this.sql = sql;
  }

  /**
   * Writes an invoice down under the next number.
   *
   * @return the invoice with its number
   */
  JobBook.Invoice add(JobBook.Invoice invoice, Hand hand) {
    return sql.change(
        () -> {
          sql.run(
              "insert into invoice (job, given_on, currency, total, paid, written_at, written_by)"
                  + " values (?, ?, ?, ?, ?, ?, ?)",
              invoice.job(),
              invoice.givenOn().toString(),
              invoice.total().currency().getCurrencyCode(),
              invoice.total().amount(),
              invoice.paid().amount(),
              hand.at(),
              hand.who());
          int number = (int) sql.number("select last_insert_rowid()");
          addLines(number, invoice.lines());
          return new JobBook.Invoice(
              number,
              invoice.job(),
              invoice.givenOn(),
              invoice.lines(),
              invoice.total(),
              invoice.paid());
        });
  }

  private void addLines(int number, List<JobBook.InvoiceLine> lines) {
    for (int i = 0; i < lines.size(); i++) {
      JobBook.InvoiceLine line = lines.get(i);
      sql.run(
          "insert into invoice_line values (?, ?, ?, ?, ?)",
          number,
          i + 1,
          line.title(),
          line.before().amount(),
          line.amount().amount());
    }
  }

  /** The invoice of a job. */
  Optional<JobBook.Invoice> of(String job) {
    return sql.view(() -> sql.find(SELECT + " where job = ?", this::invoice, job));
  }

  /** All invoices, by number. */
  List<JobBook.Invoice> all() {
    return sql.view(() -> sql.rows(SELECT + " order by number", this::invoice));
  }

  private JobBook.Invoice invoice(ResultSet row) throws SQLException {
    String code = row.getString(4);
    return new JobBook.Invoice(
        row.getInt(1),
        row.getString(2),
        Sql.day(row, 3),
        lines(row.getInt(1), code),
        Money.of(row.getString(5), code),
        Money.of(row.getString(6), code));
  }

  private List<JobBook.InvoiceLine> lines(int number, String code) {
    return sql.rows(
        "select title, before_tax, amount from invoice_line where invoice = ? order by line",
        row ->
            new JobBook.InvoiceLine(
                row.getString(1),
                Money.of(row.getString(2), code),
                Money.of(row.getString(3), code)),
        number);
  }
}
