package trammel.app.prices;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.CsvReader;
import trammel.app.files.CsvText;

/** The headings of a supplier's list: which column is what. */
final class PriceListHead {
  /** Above the headings a list may have its title, its day and so on. */
  private static final int MOST_ROWS_ABOVE = 30;

  private final CsvReader.Row row;
  private final int index;
  private final Map<PriceColumn, Integer> at;

  private PriceListHead(CsvReader.Row row, int index, Map<PriceColumn, Integer> at) {
    this.row = row;
    this.index = index;
    this.at = at;
  }

  /**
   * Finds the headings of a list.
   *
   * @param told headings that were told to be a column
   * @param currency of the prices, which a heading may name
   * @throws CommandFailure if there are none, or two that can be the same column
   */
  static PriceListHead of(
      Path file, List<CsvReader.Row> rows, Map<PriceColumn, String> told, Currency currency) {
    Finder finder = new Finder(file, told, currency.getCurrencyCode());
    for (int i = 0; i < Math.min(rows.size(), MOST_ROWS_ABOVE); i++) {
      Map<PriceColumn, Integer> found = finder.columns(rows.get(i));
      if (found.containsKey(PriceColumn.PRICE)
          && (found.containsKey(PriceColumn.ITEM) || found.containsKey(PriceColumn.TITLE))) {
        return new PriceListHead(rows.get(i), i, found);
      }
    }
    throw CommandFailure.badInput(
        file
            + ": no line names a column with prices and one with item numbers or titles. The first"
            + " line is: "
            + (rows.isEmpty() ? "nothing" : String.join(" | ", rows.get(0).cells()))
            + ". Call them item and price, or say which is which: --column price=HEADING"
            + " --column item=HEADING.");
  }

  /** Finds the columns of a line. */
  private record Finder(Path file, Map<PriceColumn, String> told, String currency) {
    Map<PriceColumn, Integer> columns(CsvReader.Row row) {
      Map<PriceColumn, Integer> found = new EnumMap<>(PriceColumn.class);
      for (PriceColumn column : PriceColumn.values()) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < row.cells().size(); i++) {
          if (isColumn(column, row.cell(i))) {
            places.add(i);
          }
        }
        if (places.size() > 1 && looksLikeHeadings(row)) {
          throw twice(column, row, places);
        }
        if (!places.isEmpty()) {
          found.put(column, places.get(0));
        }
      }
      return found;
    }

    private boolean isColumn(PriceColumn column, String heading) {
      String asTold = told.get(column);
      return asTold != null
          ? heading.equalsIgnoreCase(asTold.strip())
          : !told.containsValue(heading) && column.isCalled(heading, currency);
    }

    private boolean looksLikeHeadings(CsvReader.Row row) {
      return row.cells().stream().anyMatch(cell -> isColumn(PriceColumn.PRICE, cell));
    }

    private CommandFailure twice(PriceColumn column, CsvReader.Row row, List<Integer> places) {
      return CommandFailure.badInput(
          file
              + ", line "
              + row.line()
              + ": "
              + row.cell(places.get(0))
              + " and "
              + row.cell(places.get(1))
              + " can both be the column "
              + column.word()
              + ". Say which: --column "
              + column.word()
              + "="
              + quoted(row.cell(places.get(0)))
              + ".");
    }

    private static String quoted(String heading) {
      return heading.indexOf(' ') >= 0 ? "'" + heading + "'" : heading;
    }
  }

  /** The lines of the list below its headings. */
  List<CsvReader.Row> below(List<CsvReader.Row> rows) {
    return rows.subList(index + 1, rows.size());
  }

  /** True if the list has such a column. */
  boolean has(PriceColumn column) {
    return at.containsKey(column);
  }

  /** The heading of a column; its own name where the list has none. */
  String heading(PriceColumn column) {
    return has(column) ? row.cell(at.get(column)) : column.word();
  }

  /** What a line says in a column; empty where the list has no such column. */
  String cell(CsvReader.Row line, PriceColumn column) {
    return has(column) ? CsvText.meant(line.cell(at.get(column))) : "";
  }

  /** The headings that are read, by what they are taken for. */
  Map<PriceColumn, String> columns() {
    Map<PriceColumn, String> columns = new EnumMap<>(PriceColumn.class);
    at.forEach((column, place) -> columns.put(column, row.cell(place)));
    return columns;
  }

  /** The headings that are not read. */
  List<String> others() {
    List<String> others = new ArrayList<>();
    for (int i = 0; i < row.cells().size(); i++) {
      if (!at.containsValue(i) && !row.cell(i).isEmpty()) {
        others.add(row.cell(i));
      }
    }
    return others;
  }
}
