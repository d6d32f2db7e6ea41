package trammel.app.ledger;

import java.nio.file.Path;
import java.util.List;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.CsvReader;
import trammel.app.rack.RackFile;
import trammel.ledger.Ledger;
import trammel.ledger.Tacking;
import trammel.ledger.Written;
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
   * What of the ledger is read back, as it is.
   *
   * @param jobs the closed jobs
   * @param rack the rack
   * @param tackings what was read after tacking
   */
  public record Held(List<ClosedJob> jobs, Rack rack, List<Tacking> tackings) {
    /** What a shop without a ledger holds. */
    public static final Held NOTHING = new Held(List.of(), Rack.EMPTY, List.of());

    public Held {
      jobs = List.copyOf(jobs);
      tackings = List.copyOf(tackings);
    }

    /** What a ledger holds. */
    public static Held by(Ledger ledger) {
      return new Held(
          ledger.closedJobs().all(),
          ledger.rackStock().rack(),
          ledger.tackings().all().stream().map(Written::what).toList());
    }
  }

  /**
   * What the table would change.
   *
   * @param now what the ledger holds
   * @throws CommandFailure if it is none of the tables that are read back
   * @throws trammel.reading.tree.BadInputException with every line that is wrong
   */
  public TableChange read(Path file, Held now) {
    return read(file, CsvReader.rows(file), now);
  }

  /**
   * What the rows of a table would change.
   *
   * @param file the name under which it is told what is wrong, and where a movement comes from
   * @param now what the ledger holds
   * @throws CommandFailure if it is none of the tables that are read back
   * @throws trammel.reading.tree.BadInputException with every line that is wrong
   */
  public TableChange read(Path file, List<CsvReader.Row> rows, Held now) {
    List<String> heading = rows.isEmpty() ? List.of() : rows.get(0).cells();
    if (heading.equals(ClosedJobsTable.COLUMNS)) {
      return ClosedJobsTable.change(now.jobs, ClosedJobsTable.read(file, rows));
    }
    if (heading.equals(RackFile.COLUMNS)) {
      return RackTable.change(
          now.rack,
          new RackFile(file, catalog, printer.system()).read(rows),
          file.getFileName().toString(),
          printer);
    }
    if (heading.equals(TackingsTable.COLUMNS)) {
      return TackingsTable.change(file, rows, now.tackings);
    }
    if (heading.equals(MovementsTable.COLUMNS)
        || heading.equals(PricesTable.COLUMNS)
        || heading.contains("replaced_at")) {
      throw CommandFailure.badInput(
          file
              + " tells what happened, and that is not written anew. Give closed-jobs.csv, rack.csv"
              + " or tack-readings.csv.");
    }
    throw CommandFailure.badInput(
        file
            + ": the first line must be that of closed-jobs.csv ("
            + String.join(",", ClosedJobsTable.COLUMNS)
            + "), of rack.csv ("
            + String.join(",", RackFile.COLUMNS)
            + ") or of tack-readings.csv ("
            + String.join(",", TackingsTable.COLUMNS)
            + "). Put it there.");
  }
}
