package trammel.app.fitup;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.CsvReader;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.TackReading;
import trammel.planning.fitup.Target;
import trammel.reading.fields.NearestWord;
import trammel.reading.quantity.Quantities;
import trammel.reading.quantity.QuantityFormatException;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problems;

/** Reads a filled fit-up form. All that is wrong with it is told at once. */
public final class ReadingsFile {
  private final Path file;
  private final UnitSystem units;
  private final Map<String, Target> targets = new HashMap<>();
  private final Problems problems = new Problems();

  /**
   * @param file the filled form
   * @param sheet the sheet that it was made from
   * @param units the unit system of bare numbers
   */
  public ReadingsFile(Path file, FitUpSheet sheet, UnitSystem units) {
    this.file = file;
    this.units = units;
    for (Target target : sheet.targets()) {
      targets.put(target.id(), target);
    }
  }

  /**
   * The readings; targets whose readings are empty are left out.
   *
   * @throws CommandFailure if the file cannot be read or has no column of readings
   * @throws trammel.reading.tree.BadInputException with every line that is wrong
   */
  public List<TackReading> read() {
    List<CsvReader.Row> rows = CsvReader.rows(file);
    if (rows.isEmpty()) {
      throw CommandFailure.badInput(
          file + " is empty. Fill in the form that trammel fitup --out writes.");
    }
    CsvReader.Row head = rows.get(0);
    int id = head.cells().indexOf(FitUpForm.ID);
    List<Integer> columns = readingColumns(head);
    if (id < 0 || columns.isEmpty()) {
      throw CommandFailure.badInput(
          file
              + ", line "
              + head.line()
              + ": the first line must name a column '"
              + FitUpForm.ID
              + "' and a column '"
              + FitUpForm.READING
              + "'. Fill in the form that trammel fitup --out writes.");
    }
    Map<String, List<Double>> values = new HashMap<>();
    List<TackReading> readings = new ArrayList<>();
    for (CsvReader.Row row : rows.subList(1, rows.size())) {
      addRow(row, id, columns, values, readings);
    }
    problems.throwIfErrors();
    if (readings.isEmpty()) {
      throw CommandFailure.badInput(
          file + ": no reading is filled in. Enter what was measured after tacking.");
    }
    return readings;
  }

  private static List<Integer> readingColumns(CsvReader.Row head) {
    List<Integer> columns = new ArrayList<>();
    for (int i = 0; i < head.cells().size(); i++) {
      if (head.cells().get(i).startsWith(FitUpForm.READING)) {
        columns.add(i);
      }
    }
    return columns;
  }

  private void addRow(
      CsvReader.Row row,
      int id,
      List<Integer> columns,
      Map<String, List<Double>> seen,
      List<TackReading> readings) {
    String name = row.cell(id);
    Location where = new Location(file.toString(), row.line(), 1, name);
    Target target = targets.get(name);
    if (target == null) {
      problems.error(where, "'" + name + "'", "a target of the fit-up sheet", nearest(name));
      return;
    }
    List<Double> values = new ArrayList<>();
    for (int column : columns) {
      if (!row.cell(column).isEmpty()) {
        parse(where, target, row.cell(column), values);
      }
    }
    if (values.isEmpty()) {
      return;
    }
    if (seen.put(name, values) != null) {
      problems.error(
          where,
          "a second line of readings",
          "one line a target",
          "Put repeats side by side in columns that start with " + FitUpForm.READING + ".");
      return;
    }
    readings.add(new TackReading(name, values));
  }

  private void parse(Location where, Target target, String text, List<Double> values) {
    try {
      double value = Quantities.parse(text, target.kind(), units);
      double most = target.kind() == QuantityKind.ANGLE ? FARTHEST_RAD : FARTHEST_MM;
      if (Math.abs(value - target.plan()) > most) {
        problems.error(
            where,
            "'" + text + "'",
            "a reading near what was to be set",
            "Check the sign, the unit and the datum it was measured from.");
        return;
      }
      values.add(value);
    } catch (QuantityFormatException refused) {
      problems.error(where, refused.given(), refused.allowed(), refused.remedy());
    }
  }

  private String nearest(String name) {
    return NearestWord.to(name, List.copyOf(targets.keySet()))
        .map(word -> "Did you mean " + word + "?")
        .orElse("Use the names of the form.");
  }

  /** Further off than this, a reading is a slip of the pen and no slip of a bracket. */
  private static final double FARTHEST_MM = 6 * 25.4;

  private static final double FARTHEST_RAD = Math.toRadians(20);
}
