package trammel.ledger;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.planning.rack.Rack;

/** Looks for what is wrong with a ledger: by SQLite's own check, and by what must hold in it. */
final class LedgerCheck {
  private final Sql sql;
  private final ClosedJobs jobs;
  private final RackStock stock;
  private final Runnable books;
  private final List<String> found = new ArrayList<>();

  LedgerCheck(Sql sql, ClosedJobs jobs, RackStock stock, Runnable books) {
    this.sql = sql;
    this.jobs = jobs;
    this.stock = stock;
    this.books = books;
  }

  /** Everything that is wrong, in words; empty if nothing is. */
  List<String> findings() {
    return sql.view(
        () -> {
          for (String line : sql.rows("pragma integrity_check", row -> row.getString(1))) {
            if (!line.equals("ok")) {
              found.add("the file itself: " + line);
            }
          }
          // What is torn inside cannot be counted on to be read any further.
          if (found.isEmpty()) {
            references();
            closings();
            rack();
            books();
          }
          return List.copyOf(found);
        });
  }

  private void references() {
    for (String table : sql.rows("pragma foreign_key_check", row -> row.getString(1))) {
      found.add("a line of the table " + table + " belongs to nothing");
    }
    for (String number :
        sql.rows(
            "select number from closing where id not in (select closing from closing_operation)",
            row -> row.getString(1))) {
      found.add("job " + number + " is closed without a single operation");
    }
  }

  private void closings() {
    try {
      jobs.all();
      jobs.earlier();
    } catch (IllegalArgumentException | java.time.DateTimeException refused) {
      found.add("a closed job holds what no job can: " + refused.getMessage());
    }
  }

  private void books() {
    try {
      books.run();
    } catch (IllegalArgumentException | java.time.DateTimeException refused) {
      found.add(
          "a price, an offer, a payment, a stage, an invoice, an order or a reading holds what none"
              + " can: "
              + refused.getMessage());
    }
  }

  private void rack() {
    Map<RackStock.Article, BigDecimal> sums = new LinkedHashMap<>();
    Rack rack;
    try {
      rack = stock.rack();
      for (RackStock.Movement movement : stock.movements()) {
        sums.merge(movement.article(), movement.change(), BigDecimal::add);
      }
    } catch (IllegalArgumentException refused) {
      found.add("the rack holds what no rack can: " + refused.getMessage());
      return;
    }
    for (RackStock.Article piece : RackStock.pieces(rack)) {
      sums.merge(piece, BigDecimal.ONE.negate(), BigDecimal::add);
    }
    RackStock.counts(rack)
        .forEach((bin, count) -> sums.merge(bin, count.negate(), BigDecimal::add));
    sums.forEach(
        (article, left) -> {
          if (left.signum() != 0) {
            found.add(difference(article, left));
          }
        });
  }

  private static String difference(RackStock.Article article, BigDecimal left) {
    String what =
        article.kind() == RackStock.Kind.BIN
            ? "bin " + article.item()
            : article.kind().word() + " " + article.name();
    return what
        + ": its movements come to "
        + left.abs().stripTrailingZeros().toPlainString()
        + (left.signum() > 0 ? " more" : " fewer")
        + " than what is on the rack";
  }
}
