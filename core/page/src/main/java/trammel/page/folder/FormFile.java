package trammel.page.folder;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import trammel.app.files.Csv;
import trammel.app.files.CsvReader;
import trammel.app.files.CsvText;
import trammel.app.files.FormMark;
import trammel.app.files.SafeFile;
import trammel.reading.tree.PlainText;

/**
 * A form beside a job file, filled in cell by cell: the same table that a command writes and reads.
 * Lines are known by their first cells; what is filled in stands in columns of certain names.
 */
public final class FormFile {
  private final Path file;
  private final List<List<String>> empty;
  private final int keys;
  private final Predicate<String> filledIn;

  /**
   * @param file where it is kept, whether or not it is there yet
   * @param emptyForm the form as the job is planned now
   * @param keys how many of the first cells tell a line from all others
   * @param filledIn names of the columns to fill in
   */
  public FormFile(Path file, String emptyForm, int keys, Predicate<String> filledIn) {
    this.file = file;
    this.empty = cells(CsvReader.rows(emptyForm));
    this.keys = keys;
    this.filledIn = filledIn;
  }

  /** A form beside a job file: {@code pickup.fitup.csv} beside {@code pickup.yaml}. */
  public static Path beside(Path job, String ending) {
    String name = job.getFileName().toString();
    return job.resolveSibling(name.substring(0, name.lastIndexOf('.')) + ending);
  }

  private static List<List<String>> cells(List<CsvReader.Row> rows) {
    return rows.stream().map(row -> row.cells().stream().map(CsvText::meant).toList()).toList();
  }

  /** The lines of the empty form below its head. */
  public List<List<String>> lines() {
    return empty.subList(1, empty.size());
  }

  /** Where it is kept. */
  public Path file() {
    return file;
  }

  /** True if it was begun. */
  public boolean isThere() {
    return Files.isRegularFile(file);
  }

  /** True if it was begun for another plan than the job has now. */
  public boolean isOld() {
    return isThere() && !mark(written()).equals(mark(empty));
  }

  private static List<String> mark(List<List<String>> rows) {
    return rows.stream()
        .filter(row -> row.get(0).equalsIgnoreCase(FormMark.LINE))
        .findFirst()
        .map(row -> row.subList(0, Math.min(2, row.size())))
        .orElse(List.of());
  }

  private List<List<String>> written() {
    return cells(CsvReader.rows(file));
  }

  /** What is filled in on a line, from left to right, without empty cells. */
  public List<String> filled(List<String> key) {
    if (!isThere()) {
      return List.of();
    }
    List<List<String>> rows = written();
    for (List<String> row : rows) {
      if (isLine(row, key)) {
        return filled(rows.get(0), row);
      }
    }
    return List.of();
  }

  private List<String> filled(List<String> head, List<String> row) {
    List<String> filled = new ArrayList<>();
    for (int i = 0; i < Math.min(head.size(), row.size()); i++) {
      if (filledIn.test(head.get(i)) && !row.get(i).isBlank()) {
        filled.add(row.get(i).strip());
      }
    }
    return filled;
  }

  private boolean isLine(List<String> row, List<String> key) {
    return row.size() >= keys && row.subList(0, keys).equals(key);
  }

  /**
   * Fills a line in, in place of what stood there.
   *
   * @param from what its user saw there
   * @throws Refused if there is no such line, if somebody else has filled it in meanwhile, if the
   *     form is of an older plan, or if a value could not be read back
   */
  public void fill(List<String> key, List<String> from, List<String> values) {
    for (String value : values) {
      PlainText.troubleOfLine(value)
          .ifPresent(
              trouble -> {
                throw new Refused(
                    422, "A cell holds what shows, in one line, not " + trouble + ".");
              });
    }
    if (isOld()) {
      throw new Refused(409, "The plan has changed since this form was begun: begin a new one.");
    }
    List<List<String>> rows = isThere() ? written() : empty;
    if (!filled(key).equals(from) && !filled(key).equals(values)) {
      throw new Refused(
          409,
          "Somebody else has filled this in: "
              + String.join(", ", filled(key))
              + ". Look at it and enter it again.");
    }
    List<String> head = rows.get(0);
    Csv csv = new Csv();
    boolean found = false;
    for (List<String> row : rows) {
      boolean line = isLine(row, key);
      found |= line;
      csv.row(guarded(line ? with(head, row, values) : row));
    }
    if (!found) {
      throw new Refused(404, "The form has no such line.");
    }
    SafeFile.write(file, csv.text());
  }

  private List<String> with(List<String> head, List<String> row, List<String> values) {
    List<String> changed = new ArrayList<>(row);
    while (changed.size() < head.size()) {
      changed.add("");
    }
    int next = 0;
    for (int i = 0; i < head.size(); i++) {
      if (filledIn.test(head.get(i))) {
        changed.set(i, next < values.size() ? values.get(next) : "");
        next++;
      }
    }
    if (next < values.size()) {
      throw new Refused(422, "The form has room for " + next + " readings of one thing.");
    }
    return changed;
  }

  /** A quantity starts with a minus without being a formula; a space in front keeps it a text. */
  private static Object[] guarded(List<String> row) {
    return row.stream()
        .map(cell -> cell.startsWith("-") ? " " + cell : CsvText.safe(cell))
        .toArray();
  }

  /**
   * Puts what was filled in aside, so that a new form begins.
   *
   * @return the name under which it is kept
   */
  public String beginAnew() {
    return isThere() ? SafeFile.moveAside(file).getFileName().toString() : "";
  }
}
