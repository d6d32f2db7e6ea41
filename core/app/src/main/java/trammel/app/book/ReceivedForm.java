package trammel.app.book;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import trammel.app.files.Csv;
import trammel.app.files.CsvText;
import trammel.app.files.FilledNumber;
import trammel.app.files.FilledTable;
import trammel.ledger.Purchases;
import trammel.reading.quantity.QuantityFormatException;
import trammel.reading.tree.Problems;

/** The form on which is written what came of an order: a line a line of the order. */
public final class ReceivedForm {
  /** Its name. */
  public static final String NAME = "received.csv";

  private static final String ORDER = "order";
  private static final String LINE = "line";
  private static final String RECEIVED = "received";
  private static final String NOTE = "note";
  private static final List<String> COLUMNS =
      List.of(ORDER, LINE, "item", "title", "unit", "ordered", "there_before", RECEIVED, NOTE);

  private final Purchases.Purchase purchase;

  /**
   * @param purchase the order
   */
  public ReceivedForm(Purchases.Purchase purchase) {
    this.purchase = purchase;
  }

  /** The form to fill in. */
  public String form() {
    Csv csv = new Csv().row(COLUMNS.toArray());
    for (int i = 0; i < purchase.lines().size(); i++) {
      Purchases.Line line = purchase.lines().get(i);
      csv.row(
          CsvText.safe(purchase.number()),
          i + 1,
          CsvText.safe(line.item()),
          CsvText.safe(line.title()),
          line.unit(),
          new BigDecimal(CourseText.plain(line.quantity())),
          new BigDecimal(CourseText.plain(line.received())),
          "",
          "");
    }
    return csv.text();
  }

  /** All of it that has not come yet, as if it had come. */
  public List<Purchases.Receipt> rest() {
    List<Purchases.Receipt> receipts = new ArrayList<>();
    for (int i = 0; i < purchase.lines().size(); i++) {
      BigDecimal outstanding = purchase.lines().get(i).outstanding();
      if (outstanding.signum() > 0) {
        receipts.add(new Purchases.Receipt(i + 1, outstanding, ""));
      }
    }
    return receipts;
  }

  /**
   * What a filled form says.
   *
   * @throws trammel.app.commandline.CommandFailure if it is no such form
   * @throws trammel.reading.tree.BadInputException with every line that is wrong
   */
  public List<Purchases.Receipt> read(Path file) {
    Problems problems = new Problems();
    FilledTable table =
        FilledTable.read(
            file,
            List.of(ORDER, LINE, RECEIVED),
            "Give the form of trammel book received, filled in.",
            problems);
    List<Purchases.Receipt> receipts = new ArrayList<>();
    Set<Integer> seen = new HashSet<>();
    for (FilledTable.Row row : table.rows()) {
      if (!row.cell(RECEIVED).isEmpty()) {
        read(row, table.decimalCommas(), seen, receipts, problems);
      }
    }
    problems.throwIfErrors();
    return receipts;
  }

  private void read(
      FilledTable.Row row,
      boolean decimalCommas,
      Set<Integer> seen,
      List<Purchases.Receipt> receipts,
      Problems problems) {
    String order = CsvText.meant(row.cell(ORDER));
    String number = row.cell(LINE);
    if (!order.equals(purchase.number())) {
      problems.error(
          row.where(ORDER),
          "'" + order + "'",
          "the order that was named, " + purchase.number(),
          "Take the form of this order.");
      return;
    }
    if (!number.matches("\\d{1,5}")
        || Integer.parseInt(number) < 1
        || Integer.parseInt(number) > purchase.lines().size()) {
      problems.error(
          row.where(LINE),
          "'" + number + "'",
          "a line of the order, from 1 to " + purchase.lines().size(),
          "Leave the column as it was printed.");
      return;
    }
    int line = Integer.parseInt(number);
    if (!seen.add(line)) {
      problems.error(
          row.where(LINE),
          "line " + number + " a second time",
          "each line of the order once",
          "Put both together.");
      return;
    }
    try {
      Purchases.Line ordered = purchase.lines().get(line - 1);
      double count = FilledNumber.count(row.cell(RECEIVED), ordered.unit(), decimalCommas);
      if (count > 0) {
        receipts.add(
            new Purchases.Receipt(
                line, BigDecimal.valueOf(count).stripTrailingZeros(), row.cell(NOTE)));
      }
    } catch (QuantityFormatException refused) {
      problems.error(row.where(RECEIVED), refused.given(), refused.allowed(), refused.remedy());
    }
  }
}
