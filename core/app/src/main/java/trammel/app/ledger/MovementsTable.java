package trammel.app.ledger;

import java.math.BigDecimal;
import java.util.List;
import trammel.app.files.Csv;
import trammel.app.files.CsvText;
import trammel.ledger.RackStock;

/** Everything that went on the rack or came off it, as comma-separated values. */
public final class MovementsTable {
  /** The heading of the table. */
  public static final List<String> COLUMNS =
      List.of(
          "moved_at",
          "reason",
          "kind",
          "item",
          "name",
          "length_mm",
          "width_mm",
          "change",
          "moved_by");

  private MovementsTable() {}

  /** The table. */
  public static String text(List<RackStock.Movement> movements) {
    Csv csv = new Csv().row(COLUMNS.toArray());
    for (RackStock.Movement movement : movements) {
      RackStock.Article article = movement.article();
      csv.row(
          movement.at(),
          CsvText.safe(movement.reason()),
          article.kind().word(),
          CsvText.safe(article.item()),
          CsvText.safe(article.name()),
          article.lengthMm(),
          article.widthMm(),
          new BigDecimal(movement.change().toPlainString()),
          CsvText.safe(movement.who()));
    }
    return csv.text();
  }
}
