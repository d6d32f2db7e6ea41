package trammel.ledger;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trammel.engine.quantity.Given;

/**
 * What prices were, in the ledger: every change that a supplier's list brought, with its day and
 * its source. The prices that count stand in the shop's catalog.
 */
public final class PriceHistory {
  private final Sql sql;
  private final Hand hand;

  PriceHistory(Sql sql, Hand hand) {
    this.sql = sql;
    this.hand = hand;
  }

  /** What a price is of. */
  public enum Of {
    /** One of what is bought by the piece, the foot or the job; a stick, a sheet, a bolt. */
    ONE,
    /** A whole pack. */
    PACK,
    /** The lock nut of a bolt. */
    NUT,
    /** A washer of a bolt. */
    WASHER;

    /** As it is written in the file and in tables. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * A price that changed.
   *
   * @param item name of the entry in the catalog
   * @param lengthMm length of a stick, a bolt or a sheet (mm); 0 for anything else
   * @param widthMm width of a sheet (mm); 0 for anything else
   * @param of what of the entry it is the price of
   * @param from from how many on it is the price; 1 for any number
   * @param was what it was; empty if there was none
   * @param price what it is, 0 or more
   * @param currency the code of its currency
   * @param pricedOn the day of the price
   * @param source where it comes from
   */
  public record Change(
      String item,
      double lengthMm,
      double widthMm,
      Of of,
      int from,
      Optional<BigDecimal> was,
      BigDecimal price,
      String currency,
      LocalDate pricedOn,
      String source) {
    public Change {
      Given.text("item of a price", item, "Name an entry of the catalog.");
      Given.within("length of a priced size in mm", lengthMm, 0, 20_000, "", "Give its length.");
      Given.within("width of a priced size in mm", widthMm, 0, 10_000, "", "Give its width.");
      Given.count("number from which a price counts", from, 1, 1_000_000, "1 for any number.");
      Given.decimal("price of " + item, price, 0, 1_000_000_000, "Give the price of one.");
      Given.text("source of a price", source, "Say where it comes from.");
    }
  }

  /**
   * A change as it was written down.
   *
   * @param at when, UTC
   * @param who by whom; empty for what was written before ledgers kept it
   */
  public record Entry(String at, String who, Change change) {}

  /** Writes changes down, all or none. */
  public void add(List<Change> changes) {
    sql.change(
        () -> {
          String at = hand.at();
          changes.forEach(change -> insert(at, change));
          return null;
        });
  }

  private void insert(String at, Change change) {
    sql.run(
        "insert into price_change (written_at, item, length_mm, width_mm, price_of, from_number,"
            + " was, price, currency, priced_on, source, written_by) values (?, ?, ?, ?, ?, ?, ?, ?,"
            + " ?, ?, ?, ?)",
        at,
        change.item,
        change.lengthMm,
        change.widthMm,
        change.of.word(),
        change.from,
        change.was.map(BigDecimal::toPlainString).orElse(null),
        change.price,
        change.currency,
        change.pricedOn.toString(),
        change.source,
        hand.who());
  }

  /** How many changes there are. */
  public int count() {
    return (int) sql.number("select count(*) from price_change");
  }

  /** Everything that ever changed, the first first. */
  public List<Entry> all() {
    return entries("");
  }

  /** What ever changed of one entry of the catalog, the first first. */
  public List<Entry> of(String item) {
    return entries(" where item = ?", item);
  }

  private List<Entry> entries(String where, Object... values) {
    return sql.rows(
        "select written_at, item, length_mm, width_mm, price_of, from_number, was, price,"
            + " currency, priced_on, source, written_by from price_change"
            + where
            + " order by id",
        PriceHistory::entry,
        values);
  }

  private static Entry entry(ResultSet row) throws SQLException {
    return new Entry(
        row.getString(1),
        row.getString(12),
        new Change(
            row.getString(2),
            row.getDouble(3),
            row.getDouble(4),
            Sql.word(row, 5, Of.class),
            row.getInt(6),
            Optional.ofNullable(row.getString(7)).map(BigDecimal::new),
            new BigDecimal(row.getString(8)),
            row.getString(9),
            Sql.day(row, 10),
            row.getString(11)));
  }
}
