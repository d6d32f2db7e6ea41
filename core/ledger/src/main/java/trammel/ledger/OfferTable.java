package trammel.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import trammel.trade.money.Money;

/** Offers with their lines and payments, as they stand in the tables. */
final class OfferTable {
  private final Sql sql;

  OfferTable(Sql sql) {
    this.sql = sql;
  }

  /** Writes an offer down. */
  void add(String job, Offer offer, Hand hand) {
    sql.run(
        "insert into offer (job, kind, count, given_on, why, currency, tax_name, tax, rounding,"
            + " mean_hours, eight_of_ten_hours, written_at, written_by) values (?, ?, ?, ?, ?, ?, ?,"
            + " ?, ?, ?, ?, ?, ?)",
        job,
        offer.kind().word(),
        offer.count(),
        offer.givenOn().toString(),
        offer.why(),
        offer.tax().currency().getCurrencyCode(),
        offer.taxName(),
        offer.tax().amount(),
        offer.rounding().amount(),
        offer.meanHours(),
        offer.eightOfTenHours(),
        hand.at(),
        hand.who());
    long id = sql.number("select last_insert_rowid()");
    for (int i = 0; i < offer.lines().size(); i++) {
      add(id, i + 1, offer.lines().get(i));
    }
    for (int i = 0; i < offer.payments().size(); i++) {
      Offer.Payment payment = offer.payments().get(i);
      sql.run(
          "insert into offer_payment values (?, ?, ?, ?)",
          id,
          i + 1,
          payment.at(),
          payment.amount().amount());
    }
  }

  private void add(long offer, int number, Offer.Line line) {
    sql.run(
        "insert into offer_line values (?, ?, ?, ?, ?, ?, ?)",
        offer,
        number,
        line.key(),
        line.title(),
        line.costClass(),
        line.quantity(),
        line.price().amount());
  }

  /**
   * Writes down what became of an offer.
   *
   * @param column the column of the day
   */
  void mark(String column, String job, Offer.Kind kind, int count, LocalDate day) {
    sql.run(
        "update offer set " + column + " = ? where job = ? and kind = ? and count = ?",
        day.toString(),
        job,
        kind.word(),
        count);
  }

  /** Everything that was offered for a job, the first first. */
  List<Offer.Kept> of(String job) {
    return written(job).stream().map(Written::what).toList();
  }

  /** The same, and when and by whom each was written down. */
  List<Written<Offer.Kept>> written(String job) {
    return sql.view(
        () ->
            sql.rows(
                "select kind, count, given_on, why, tax_name, tax, rounding, mean_hours,"
                    + " eight_of_ten_hours, accepted_on, dropped_on, currency, id, written_at,"
                    + " written_by from offer where job = ? order by id",
                row -> new Written<>(row.getString(14), row.getString(15), kept(row)),
                job));
  }

  private Offer.Kept kept(ResultSet row) throws SQLException {
    String code = row.getString(12);
    long id = row.getLong(13);
    return new Offer.Kept(
        new Offer(
            Sql.word(row, 1, Offer.Kind.class),
            row.getInt(2),
            Sql.day(row, 3),
            row.getString(4),
            lines(id, code),
            row.getString(5),
            Money.of(row.getString(6), code),
            Money.of(row.getString(7), code),
            row.getDouble(8),
            row.getDouble(9),
            payments(id, code)),
        Optional.ofNullable(row.getString(10)).map(LocalDate::parse),
        Optional.ofNullable(row.getString(11)).map(LocalDate::parse));
  }

  private List<Offer.Line> lines(long offer, String code) {
    return sql.rows(
        "select item, title, class, quantity, price from offer_line where offer = ? order by line",
        row ->
            new Offer.Line(
                row.getString(1),
                row.getString(2),
                row.getString(3),
                row.getString(4),
                Money.of(row.getString(5), code)),
        offer);
  }

  private List<Offer.Payment> payments(long offer, String code) {
    return sql.rows(
        "select due_at, amount from offer_payment where offer = ? order by line",
        row -> new Offer.Payment(row.getString(1), Money.of(row.getString(2), code)),
        offer);
  }
}
