package trammel.app.fitup;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.FilledNumber;
import trammel.app.files.FilledTable;
import trammel.app.files.FormMark;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.TackReading;
import trammel.planning.fitup.Target;
import trammel.reading.fields.NearestWord;
import trammel.reading.quantity.Quantities;
import trammel.reading.quantity.QuantityFormatException;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problems;

/** Reads a filled fit-up form. All that is wrong with it is told at once. */
public final class ReadingsFile {
  private static final String NEW_FORM = "Fill in the form that trammel fitup --out writes.";

  private final Path file;
  private final UnitSystem units;
  private final String jobNumber;
  private final FormMark mark;
  private final List<String> remarks = new ArrayList<>();
  private final Map<String, Target> targets = new HashMap<>();
  private final Problems problems = new Problems();
  private boolean decimalCommas;

  /**
   * @param file the filled form
   * @param sheet the sheet that it was made from
   * @param units the unit system of bare numbers
   * @param jobNumber the job's number
   */
  public ReadingsFile(Path file, FitUpSheet sheet, UnitSystem units, String jobNumber) {
    this.file = file;
    this.jobNumber = jobNumber;
    mark = FitUpForm.mark(jobNumber, sheet);
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
    FilledTable table =
        FilledTable.read(file, List.of(FitUpForm.ID, FitUpForm.READING), NEW_FORM, problems);
    decimalCommas = table.decimalCommas();
    checkMark(table);
    Map<String, List<Double>> values = new HashMap<>();
    List<TackReading> readings = new ArrayList<>();
    for (FilledTable.Row row : table.rows()) {
      if (!isMark(row)) {
        addRow(row, values, readings);
      }
    }
    problems.throwIfErrors();
    if (readings.isEmpty()) {
      throw CommandFailure.badInput(
          file + ": no reading is filled in. Enter what was measured after tacking.");
    }
    for (String other : table.otherColumns(ReadingsFile::isRead)) {
      remarks.add("the column '" + other + "' of " + file + " is not read.");
    }
    return readings;
  }

  /** What is to be told of the file though it can be used. */
  public List<String> remarks() {
    return List.copyOf(remarks);
  }

  private static boolean isReading(String column) {
    return column.startsWith(FitUpForm.READING);
  }

  private static boolean isRead(String column) {
    return FitUpForm.COLUMNS.contains(column) || isReading(column);
  }

  private static boolean isMark(FilledTable.Row row) {
    return row.cell(FitUpForm.ID).equalsIgnoreCase(FormMark.LINE);
  }

  /** The brackets of two jobs have the same names, and their places are alike. */
  private void checkMark(FilledTable table) {
    List<FilledTable.Row> marks = table.rows().stream().filter(ReadingsFile::isMark).toList();
    if (marks.isEmpty()) {
      remarks.add(
          file
              + " has no line '"
              + FormMark.LINE
              + "' that says of which job it is; it is taken for job "
              + jobNumber
              + ".");
    }
    for (FilledTable.Row row : marks) {
      String found = row.cell("bracket");
      if (!mark.is(found)) {
        problems.error(
            row.where(FormMark.LINE),
            "form " + found + " (" + row.cell("what") + ")",
            "form " + mark.text() + ", of job " + jobNumber + " as it is planned now",
            mark.isOfThisJob(found)
                ? "The plan has changed since the form was written: write a new one and look at"
                    + " what is to be set now."
                : "It is the form of another job, or this job's number has changed. " + NEW_FORM);
      }
    }
  }

  private void addRow(
      FilledTable.Row row, Map<String, List<Double>> seen, List<TackReading> readings) {
    String name = row.cell(FitUpForm.ID);
    Location where = row.where(name);
    Target target = targets.get(name);
    if (target == null) {
      problems.error(where, "'" + name + "'", "a target of the fit-up sheet", nearest(name));
      return;
    }
    checkSetTo(where, target, row.cell(FitUpForm.SET_TO));
    List<Double> values = new ArrayList<>();
    for (String reading : row.filled(ReadingsFile::isReading)) {
      parse(where, target, reading, values);
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

  /** A reading that was written over what was to be set would be taken for none. */
  private void checkSetTo(Location where, Target target, String text) {
    if (text.isEmpty()) {
      return;
    }
    boolean angle = target.kind() == QuantityKind.ANGLE;
    String plain = FilledNumber.plain(text);
    boolean same;
    try {
      double value = Quantities.parse(plain, target.kind(), units);
      same = Math.abs(value - target.plan()) <= (angle ? PRINTED_RAD : PRINTED_MM);
    } catch (QuantityFormatException changed) {
      same = false;
    }
    if (!same) {
      QuantityPrinter printer = new QuantityPrinter(units);
      problems.error(
          where,
          "'" + text + "' under '" + FitUpForm.SET_TO + "'",
          FitUpForm.value(target, target.plan(), printer) + ", as the form has it",
          "What was read goes under '" + FitUpForm.READING + "'.");
    }
  }

  private void parse(Location where, Target target, String text, List<Double> values) {
    String reading = FilledNumber.quantity(text, decimalCommas);
    try {
      double value = Quantities.parse(reading, target.kind(), units);
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

  /** Half of the last figure that the form prints: 1/32 in, 0.1 deg. */
  private static final double PRINTED_MM = 25.4 / 64 + 0.01;

  private static final double PRINTED_RAD = Math.toRadians(0.051);
}
