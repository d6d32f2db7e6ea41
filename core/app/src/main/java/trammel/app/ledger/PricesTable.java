package trammel.app.ledger;

import java.math.BigDecimal;
import java.util.List;
import trammel.app.files.Csv;
import trammel.app.files.CsvText;
import trammel.ledger.PriceHistory;

/** Every price that changed, as comma-separated values. */
public final class PricesTable {
  /** The heading of the table. */
  public static final List<String> COLUMNS =
      List.of(
          "written_at",
          "item",
          "length_mm",
          "width_mm",
          "price_of",
          "from_number",
          "was",
          "price",
          "currency",
          "priced_on",
          "source",
          "written_by");

  private PricesTable() {}

  /** The table. */
  public static String text(List<PriceHistory.Entry> entries) {
    Csv csv = new Csv().row(COLUMNS.toArray());
    for (PriceHistory.Entry entry : entries) {
      PriceHistory.Change change = entry.change();
      csv.row(
          entry.at(),
          CsvText.safe(change.item()),
          change.lengthMm(),
          change.widthMm(),
          change.of().word(),
          change.from(),
          change.was().map(BigDecimal::toPlainString).orElse(""),
          change.price(),
          change.currency(),
          change.pricedOn().toString(),
          CsvText.safe(change.source()),
          CsvText.safe(entry.who()));
    }
    return csv.text();
  }
}
