package trammel.app.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import trammel.app.commandline.CommandFailure;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problems;

/**
 * A form that was printed to be filled in, as it comes back: typed in a text editor or saved by a
 * spreadsheet, which may put semicolons or tabs between the cells, move rows and columns and add
 * its own. Columns go by their names. What cannot be told for sure is a problem with its line.
 */
public final class FilledTable {
  private static final char[] BETWEEN_CELLS = {',', ';', '\t'};

  private final Path file;
  private final CsvReader.Row head;
  private final List<Row> rows = new ArrayList<>();
  private final char between;

  private FilledTable(Path file, List<CsvReader.Row> all, char between) {
    this.file = file;
    this.between = between;
    head = all.get(0);
    for (CsvReader.Row row : all.subList(1, all.size())) {
      rows.add(new Row(row));
    }
  }

  /** A line of the form. */
  public final class Row {
    private final CsvReader.Row cells;

    private Row(CsvReader.Row cells) {
      this.cells = cells;
    }

    /** What stands in a column; empty where nothing does. */
    public String cell(String column) {
      int at = head.cells().indexOf(column);
      return at < 0 ? "" : cells.cell(at);
    }

    /** What stands in all columns of such names, from left to right, without the empty ones. */
    public List<String> filled(Predicate<String> columns) {
      List<String> filled = new ArrayList<>();
      for (int i = 0; i < head.cells().size(); i++) {
        if (columns.test(head.cells().get(i)) && !cells.cell(i).isEmpty()) {
          filled.add(cells.cell(i));
        }
      }
      return filled;
    }

    /** Where it stands in the file. */
    public Location where(String name) {
      return new Location(file.toString(), cells.line(), 1, name);
    }
  }

  /**
   * Reads a form.
   *
   * @param columns columns that it must have
   * @param remedy what to do where it has not
   * @param problems takes lines whose cells cannot be told apart
   * @throws CommandFailure if it cannot be read, or is not a table with these columns
   */
  public static FilledTable read(
      Path file, List<String> columns, String remedy, Problems problems) {
    String text = TableText.of(file);
    String broken = "";
    for (char between : BETWEEN_CELLS) {
      try {
        List<CsvReader.Row> all =
            CsvReader.withoutSeparatorLine(CsvReader.onOneLine(CsvReader.rows(text, between)));
        if (!all.isEmpty() && all.get(0).cells().containsAll(columns)) {
          CsvReader.refuseOutOfPlace(file, all);
          FilledTable table = new FilledTable(file, all, between);
          table.check(columns, problems);
          return table;
        }
      } catch (IllegalArgumentException notClosed) {
        // Told only where no other sign between the cells makes it this form.
        broken = broken.isEmpty() ? notClosed.getMessage() : broken;
      }
    }
    if (!broken.isEmpty()) {
      throw CommandFailure.badInput(file + ", " + broken);
    }
    throw CommandFailure.badInput(
        file
            + ": the first line must name the columns "
            + String.join(", ", columns)
            + ". "
            + remedy);
  }

  /** A comma typed into a cell without quotation marks moves all that follows; so it is told. */
  private void check(List<String> columns, Problems problems) {
    for (String column : columns) {
      if (head.cells().indexOf(column) != head.cells().lastIndexOf(column)) {
        problems.error(
            new Location(file.toString(), head.line(), 1, column),
            "two columns '" + column + "'",
            "one of each name",
            "Give the one that you added another name.");
      }
    }
    for (Row row : rows) {
      int cells = row.cells.cells().size();
      int named = head.cells().size();
      if (cells > named) {
        problems.error(
            row.where(row.cells.cell(0)),
            cells + " cells",
            named + " cells, as many as the first line names",
            between == ','
                ? "Put what holds a comma in quotation marks, a number as 9.5; give a column of"
                    + " notes a name."
                : "Give a column of notes a name.");
        continue;
      }
      for (int i = 0; i < cells; i++) {
        if (head.cells().get(i).isEmpty() && !row.cells.cell(i).isEmpty()) {
          problems.error(
              row.where(row.cells.cell(0)),
              "'" + row.cells.cell(i) + "' in a column without a name",
              "cells under a name",
              "Name the column, or take it out.");
        }
      }
    }
  }

  /** The lines below the first. */
  public List<Row> rows() {
    return List.copyOf(rows);
  }

  /** True if a column has such a name. */
  public boolean hasColumn(Predicate<String> columns) {
    return head.cells().stream().anyMatch(columns);
  }

  /** True where the cells are parted in the way of places that write decimals with a comma. */
  public boolean decimalCommas() {
    return between != ',';
  }

  /** Names of columns that hold something and have not such a name. */
  public Set<String> otherColumns(Predicate<String> read) {
    Set<String> others = new LinkedHashSet<>();
    for (String name : head.cells()) {
      if (!name.isEmpty()
          && !read.test(name)
          && rows.stream().anyMatch(row -> !row.cell(name).isEmpty())) {
        others.add(name);
      }
    }
    return others;
  }
}
