package trammel.app.closing;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.Csv;
import trammel.app.files.FilledNumber;
import trammel.app.files.FilledTable;
import trammel.app.files.FormMark;
import trammel.planning.learning.ClosedOperation;
import trammel.planning.order.OrderLine;
import trammel.reading.fields.NearestWord;
import trammel.reading.quantity.DecimalText;
import trammel.reading.quantity.QuantityFormatException;
import trammel.reading.tree.Problems;
import trammel.trade.labour.OperationLine;

/**
 * What a job really took, as a table to fill in: one line that says of which job and plan it is,
 * one for each operation, one for the whole, one for each thing that was ordered. Lines that are
 * left empty say nothing.
 */
public final class ActualsFile {
  private static final List<String> COLUMNS =
      List.of("kind", "item", "what", "planned", "unit", "used");
  private static final String HOURS = "hours";
  private static final String WHOLE = "whole job";
  private static final String MATERIAL = "material";
  private static final double MOST = 100_000;
  private static final String USED = "used";
  private static final String NEW_FORM =
      "Fill in the form that trammel close --out writes for this job.";

  private final String jobNumber;
  private final FormMark mark;
  private final List<OperationLine> standard;
  private final List<OperationLine> quoted;
  private final Map<String, OrderLine> material = new LinkedHashMap<>();
  private final double quotedHours;

  /**
   * @param jobNumber the job's number
   * @param standard hours by the catalog
   * @param quoted hours as quoted, in the same order
   * @param order what was ordered
   */
  public ActualsFile(
      String jobNumber,
      List<OperationLine> standard,
      List<OperationLine> quoted,
      List<OrderLine> order) {
    this.jobNumber = jobNumber;
    this.standard = List.copyOf(standard);
    this.quoted = List.copyOf(quoted);
    double sum = 0;
    for (OperationLine line : quoted) {
      sum += line.hours().mean();
    }
    quotedHours = sum;
    for (OrderLine line : order) {
      material.merge(name(line.key(), line.title()), line, ActualsFile::together);
    }
    mark = FormMark.of(jobNumber, plan());
  }

  /** Two suppliers of the same thing are one line of the form. */
  private static OrderLine together(OrderLine one, OrderLine more) {
    return new OrderLine(
        one.key(),
        one.title(),
        one.quantity().add(more.quantity()),
        one.unit(),
        one.price(),
        one.amount().plus(more.amount()),
        Math.max(one.leadDays(), more.leadDays()),
        one.use());
  }

  /** By key and title: sticks of one tube go by their lengths. */
  private static String name(String key, String title) {
    return key + " " + title;
  }

  /**
   * What the form is made from: the catalog's hours, which do not change when another job is
   * closed, and what was ordered.
   */
  private List<String> plan() {
    List<String> plan = new ArrayList<>();
    for (OperationLine line : standard) {
      plan.add(line.operation().key() + " " + DecimalText.fixed(line.hours().mean(), 2));
    }
    for (OrderLine line : material.values()) {
      plan.add(line.key() + " " + line.quantity().stripTrailingZeros().toPlainString());
    }
    return plan;
  }

  /** The empty form. */
  public String form() {
    Csv csv = new Csv().row(COLUMNS.toArray());
    csv.row(FormMark.LINE, mark.text(), FormMark.note(jobNumber), "", "", "");
    for (OperationLine line : quoted) {
      csv.row(
          HOURS,
          line.operation().key(),
          line.operation().title(),
          hours(line.hours().mean()),
          "h",
          "");
    }
    csv.row(HOURS, WHOLE, "all of the above together", hours(quotedHours), "h", "");
    for (OrderLine line : material.values()) {
      csv.row(
          MATERIAL,
          line.key(),
          line.title(),
          line.quantity().stripTrailingZeros().toPlainString(),
          line.unit(),
          "");
    }
    return csv.text();
  }

  private static String hours(double hours) {
    return DecimalText.fixed(hours, 1);
  }

  /**
   * What was filled in.
   *
   * @param operations the operations with their hours
   * @param whole hours of the whole job
   * @param material what was used other than ordered
   * @param notRead columns of the file that hold something and are not the form's
   */
  public record Actuals(
      List<ClosedOperation> operations,
      OptionalDouble whole,
      List<Difference> material,
      List<String> notRead) {
    public Actuals {
      operations = List.copyOf(operations);
      material = List.copyOf(material);
      notRead = List.copyOf(notRead);
    }
  }

  /**
   * More or less used than ordered.
   *
   * @param line what was ordered
   * @param used how many of its unit were used
   */
  public record Difference(OrderLine line, double used) {}

  /**
   * Reads a filled form.
   *
   * @throws CommandFailure if it cannot be read, is not this job's form, or holds no hours
   * @throws trammel.reading.tree.BadInputException with every line that is wrong
   */
  public Actuals read(Path file) {
    Problems problems = new Problems();
    FilledTable table =
        FilledTable.read(file, List.of("kind", "item", "what", USED), NEW_FORM, problems);
    checkMark(file, table, problems);
    Map<String, Double> used = new HashMap<>();
    Map<String, Double> materialUsed = new LinkedHashMap<>();
    for (FilledTable.Row row : table.rows()) {
      if (row.cell(USED).isEmpty() || isMark(row)) {
        continue;
      }
      switch (row.cell("kind").toLowerCase(Locale.ROOT)) {
        case HOURS -> addHours(row, table, used, problems);
        case MATERIAL -> addMaterial(row, table, materialUsed, problems);
        default ->
            problems.error(
                row.where(row.cell("item")),
                "'" + row.cell(USED) + "' used on a line of kind '" + row.cell("kind") + "'",
                "a line of kind " + HOURS + " or " + MATERIAL,
                "Put it on its line of the form, and notes into a column of their own.");
      }
    }
    problems.throwIfErrors();
    if (used.isEmpty()) {
      throw CommandFailure.badInput(
          file + ": no hours are filled in. Enter those of operations, of the whole job, or both.");
    }
    return actuals(used, materialUsed, List.copyOf(table.otherColumns(COLUMNS::contains)));
  }

  private static boolean isMark(FilledTable.Row row) {
    return row.cell("kind").equalsIgnoreCase(FormMark.LINE);
  }

  /** The form of another job has the same operations, and its hours would teach the wrong thing. */
  private void checkMark(Path file, FilledTable table, Problems problems) {
    List<FilledTable.Row> marks = table.rows().stream().filter(ActualsFile::isMark).toList();
    if (marks.isEmpty()) {
      throw CommandFailure.badInput(
          file
              + ": the line that starts with "
              + FormMark.LINE
              + " is missing, so it cannot be told of which job it is. "
              + NEW_FORM);
    }
    for (FilledTable.Row row : marks) {
      String found = row.cell("item");
      if (!mark.is(found)) {
        boolean ofThisJob = mark.isOfThisJob(found);
        problems.error(
            row.where(FormMark.LINE),
            "form " + found + " (" + row.cell("what") + ")",
            "form " + mark.text() + ", of job " + jobNumber + " as it is planned now",
            ofThisJob
                ? "What is planned for this job has changed since the form was written: take the job"
                    + " file as it was quoted, or copy the hours into a new form."
                : "It is the form of another job, or this job's number has changed: " + NEW_FORM);
      }
    }
  }

  private void addHours(
      FilledTable.Row row, FilledTable table, Map<String, Double> used, Problems problems) {
    String name = known(FilledNumber.withoutFormulaMark(row.cell("item")), keys());
    if (name.isEmpty()) {
      problems.error(
          row.where(row.cell("item")),
          "'" + row.cell("item") + "'",
          "an operation of this job, or " + WHOLE,
          remedy(row.cell("item"), keys()));
      return;
    }
    try {
      double hours = FilledNumber.hours(row.cell(USED), table.decimalCommas());
      if (!(hours > 0 && hours <= MOST)) {
        throw new QuantityFormatException("'" + row.cell(USED) + "'", "", "");
      }
      add(row, name, hours, used, problems);
    } catch (QuantityFormatException refused) {
      problems.error(
          row.where(name),
          "'" + row.cell(USED) + "'",
          "hours above 0, such as 9.5",
          (refused.remedy() + " Enter hours as 9.5, or leave it empty.").strip());
    }
  }

  private void addMaterial(
      FilledTable.Row row, FilledTable table, Map<String, Double> used, Problems problems) {
    String title = FilledNumber.withoutFormulaMark(row.cell("what"));
    String key = FilledNumber.withoutFormulaMark(row.cell("item"));
    String name = known(name(key, title), List.copyOf(material.keySet()));
    if (name.isEmpty()) {
      problems.error(
          row.where(title),
          "'" + title + "'",
          "something that this job ordered",
          remedy(title, material.values().stream().map(OrderLine::title).toList()));
      return;
    }
    try {
      double count =
          FilledNumber.count(row.cell(USED), material.get(name).unit(), table.decimalCommas());
      if (count > MOST) {
        throw new QuantityFormatException("'" + row.cell(USED) + "'", "", "");
      }
      add(row, name, count, used, problems);
    } catch (QuantityFormatException refused) {
      problems.error(
          row.where(title),
          "'" + row.cell(USED) + "'",
          "a count of 0 or more, such as 2",
          (refused.remedy() + " Enter a count as 2, or leave it empty.").strip());
    }
  }

  private static void add(
      FilledTable.Row row, String name, double value, Map<String, Double> used, Problems problems) {
    if (used.put(name, value) != null) {
      problems.error(row.where(name), "a second line", "one line each", "Add the two up.");
    }
  }

  /** The name in the form's own writing; empty if it is none of the form's. */
  private static String known(String name, List<String> known) {
    return known.stream().filter(one -> one.equalsIgnoreCase(name)).findFirst().orElse("");
  }

  private static String remedy(String name, List<String> known) {
    return NearestWord.to(name, known).map(word -> "Did you mean " + word + "?").orElse(NEW_FORM);
  }

  private List<String> keys() {
    List<String> keys = new ArrayList<>();
    for (OperationLine line : standard) {
      keys.add(line.operation().key());
    }
    keys.add(WHOLE);
    return keys;
  }

  private Actuals actuals(
      Map<String, Double> used, Map<String, Double> materialUsed, List<String> notRead) {
    List<ClosedOperation> operations = new ArrayList<>();
    for (OperationLine line : standard) {
      if (line.hours().mean() > 0) {
        Double hours = used.get(line.operation().key());
        operations.add(
            new ClosedOperation(
                line.operation().key(),
                line.hours().mean(),
                line.hours().standardDeviation(),
                hours == null ? OptionalDouble.empty() : OptionalDouble.of(hours)));
      }
    }
    List<Difference> differences = new ArrayList<>();
    materialUsed.forEach(
        (name, count) -> {
          OrderLine line = material.get(name);
          if (Math.abs(line.quantity().doubleValue() - count) > 1e-9) {
            differences.add(new Difference(line, count));
          }
        });
    Double whole = used.get(WHOLE);
    return new Actuals(
        operations,
        whole == null ? OptionalDouble.empty() : OptionalDouble.of(whole),
        differences,
        notRead);
  }
}
