package trammel.app.ledger;

import java.nio.file.Path;
import java.util.List;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.CsvReader;
import trammel.app.rack.RackFile;
import trammel.planning.catalog.Catalog;
import trammel.planning.learning.ClosedJob;
import trammel.planning.rack.Rack;
import trammel.reading.quantity.QuantityPrinter;

/** Reads one table back, known by its heading, and says what it would change. */
public final class TableReader {
  private final Catalog catalog;
  private final QuantityPrinter printer;

  /**
   * @param catalog gives the keys of what is on the rack
   * @param printer prints lengths, and gives the unit of bare numbers
   */
  public TableReader(Catalog catalog, QuantityPrinter printer) {
    this.catalog = catalog;
    this.printer = printer;
  }

  /**
   * What the table would change.
   *
   * @param jobs the closed jobs as they are
   * @param rack the rack as it is
   * @throws CommandFailure if it is none of the tables that are read back
   * @throws trammel.reading.tree.BadInputException with every line that is wrong
   */
  public TableChange read(Path file, List<ClosedJob> jobs, Rack rack) {
    return read(file, CsvReader.rows(file), jobs, rack);
  }

  /**
   * What the rows of a table would change.
   *
   * @param file the name under which it is told what is wrong, and where a movement comes from
   * @param jobs the closed jobs as they are
   * @param rack the rack as it is
   * @throws CommandFailure if it is none of the tables that are read back
   * @throws trammel.reading.tree.BadInputException with every line that is wrong
   */
  public TableChange read(Path file, List<CsvReader.Row> rows, List<ClosedJob> jobs, Rack rack) {
    List<String> heading = rows.isEmpty() ? List.of() : rows.get(0).cells();
    if (heading.equals(ClosedJobsTable.COLUMNS)) {
      return ClosedJobsTable.change(jobs, ClosedJobsTable.read(file, rows));
    }
    if (heading.equals(RackFile.COLUMNS)) {
      return RackTable.change(
          rack,
          new RackFile(file, catalog, printer.system()).read(rows),
          file.getFileName().toString(),
          printer);
    }
    if (heading.equals(MovementsTable.COLUMNS)
        || heading.equals(PricesTable.COLUMNS)
        || heading.contains("replaced_at")) {
      throw CommandFailure.badInput(
          file
              + " tells what happened, and that is not written anew. Give closed-jobs.csv or"
              + " rack.csv.");
    }
    throw CommandFailure.badInput(
        file
            + ": the first line must be that of closed-jobs.csv ("
            + String.join(",", ClosedJobsTable.COLUMNS)
            + ") or of rack.csv ("
            + String.join(",", RackFile.COLUMNS)
            + "). Put it there.");
  }
}
