package trammel.page.shop;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.app.files.Csv;
import trammel.app.files.CsvReader;
import trammel.app.files.CsvText;
import trammel.app.ledger.ShopLedger;
import trammel.app.ledger.TableReader;
import trammel.app.rack.RackFile;
import trammel.ledger.Ledger;
import trammel.page.bench.Bench;
import trammel.page.folder.Edit;
import trammel.page.folder.Refused;
import trammel.planning.rack.Rack;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problem;
import trammel.reading.tree.TextNode;

/**
 * What is on the rack, as the table that {@code ledger tables} writes and {@code ledger take}
 * reads: it is counted anew as a whole.
 */
final class StockTable implements ShopTable {
  /** The path of the one cell that the table is. */
  static final String PATH = "stock";

  /** Where a movement of the rack comes from, in the ledger. */
  private static final Path SOURCE = Path.of("the page");

  private static final Location NOWHERE = new Location("change", 0, 0, "");

  private final Bench bench;

  StockTable(Bench bench) {
    this.bench = bench;
  }

  private ShopLedger ledger() {
    return bench.with(workbench -> workbench.shopLedger(UnitSystem.US));
  }

  /** The lines of the table, without its head. */
  List<List<String>> lines() {
    return lines(ledger().rack());
  }

  private static List<List<String>> lines(Rack rack) {
    List<CsvReader.Row> rows = CsvReader.rows(RackFile.text(rack, UnitSystem.US));
    return rows.subList(1, rows.size()).stream().map(StockTable::cells).toList();
  }

  private static List<String> cells(CsvReader.Row row) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < RackFile.COLUMNS.size(); i++) {
      cells.add(CsvText.meant(row.cell(i)));
    }
    return cells;
  }

  private static Optional<DocumentNode> node(List<List<String>> lines) {
    List<DocumentNode> rows = new ArrayList<>();
    for (List<String> line : lines) {
      rows.add(
          new ListNode(
              NOWHERE,
              line.stream().<DocumentNode>map(cell -> new TextNode(NOWHERE, cell)).toList()));
    }
    return Optional.of(new ListNode(NOWHERE, rows));
  }

  private static boolean is(Optional<DocumentNode> lines, List<List<String>> now) {
    return Cells.lines(lines).equals(now);
  }

  @Override
  public List<Conflict> conflicts(List<Edit> asked) {
    for (Edit edit : asked) {
      if (!edit.path().equals(PATH)) {
        throw new Refused(422, "There is no cell '" + edit.path() + "': the stock is one.");
      }
    }
    List<List<String>> now = lines();
    return asked.stream()
        .filter(edit -> !is(edit.from(), now) && !is(edit.to(), now))
        .map(edit -> new Conflict(edit.path(), now))
        .toList();
  }

  @Override
  public List<Edit> make(List<Edit> asked) {
    List<Edit> noted = new ArrayList<>();
    for (Edit edit : asked) {
      List<List<String>> before = lines();
      take(Cells.lines(edit.to()), before);
      noted.add(new Edit(PATH, node(before), node(lines())));
    }
    return noted;
  }

  @Override
  public void repeat(List<Edit> noted) {
    for (Edit edit : noted) {
      List<List<String>> now = lines();
      if (is(edit.from(), now)) {
        take(Cells.lines(edit.to()), now);
      }
    }
  }

  private void take(List<List<String>> lines, List<List<String>> seen) {
    Csv csv = new Csv().row(RackFile.COLUMNS.toArray());
    lines.forEach(line -> csv.row(line.stream().map(CsvText::safe).toArray()));
    TableReader tables = new TableReader(bench.catalog(), new QuantityPrinter(UnitSystem.US));
    List<CsvReader.Row> rows;
    try {
      rows = CsvReader.rows(SOURCE, csv.text());
      // Read once before a ledger is made: a table that is refused leaves none behind.
      tables.read(SOURCE, rows, TableReader.Held.NOTHING);
    } catch (BadInputException wrong) {
      throw new BadInputException(wrong.problems().stream().map(StockTable::inTable).toList());
    }
    try (Ledger ledger = ledger().open(remark -> {})) {
      ledger.asOne(
          () -> {
            Rack now = ledger.rackStock().rack();
            if (!lines(now).equals(seen)) {
              throw new Refused(
                  409, "The rack was changed at this moment; look at it and enter it again.");
            }
            tables.read(SOURCE, rows, TableReader.Held.by(ledger)).carryOut().accept(ledger);
            return null;
          });
    }
  }

  /** A problem of a line by the cell of the table: {@code stock[2].length}. */
  private static Problem inTable(Problem problem) {
    return new Problem(
        PATH,
        0,
        PATH + "[" + (problem.line() - 2) + "]." + problem.field(),
        problem.given(),
        problem.allowed(),
        problem.remedy(),
        problem.severity());
  }
}
