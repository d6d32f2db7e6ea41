package trammel.app.closing;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.Csv;
import trammel.app.files.CsvReader;
import trammel.planning.learning.ClosedOperation;
import trammel.planning.order.MaterialOrder;
import trammel.planning.order.OrderLine;
import trammel.planning.order.SupplierOrder;
import trammel.reading.fields.NearestWord;
import trammel.reading.quantity.DecimalText;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problems;
import trammel.trade.labour.OperationLine;

/**
 * What a job really took, as a table to fill in: one line for each operation, one for the whole,
 * one for each thing that was ordered. Lines that are left empty say nothing.
 */
public final class ActualsFile {
  private static final List<String> COLUMNS =
      List.of("kind", "item", "what", "planned", "unit", "used");
  private static final String HOURS = "hours";
  private static final String WHOLE = "whole job";
  private static final String MATERIAL = "material";
  private static final double MOST = 100_000;
  private static final int USED = 5;

  private final List<OperationLine> standard;
  private final List<OperationLine> quoted;
  private final Map<String, OrderLine> material = new LinkedHashMap<>();
  private final double quotedHours;

  /**
   * @param standard hours by the catalog
   * @param quoted hours as quoted, in the same order
   * @param order what was ordered
   */
  public ActualsFile(
      List<OperationLine> standard, List<OperationLine> quoted, MaterialOrder order) {
    this.standard = List.copyOf(standard);
    this.quoted = List.copyOf(quoted);
    double sum = 0;
    for (OperationLine line : quoted) {
      sum += line.hours().mean();
    }
    quotedHours = sum;
    for (SupplierOrder supplier : order.suppliers()) {
      for (OrderLine line : supplier.lines()) {
        material.put(line.title(), line);
      }
    }
  }

  /** The empty form. */
  public String form() {
    Csv csv = new Csv().row(COLUMNS.toArray());
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
   */
  public record Actuals(
      List<ClosedOperation> operations, OptionalDouble whole, List<Difference> material) {
    public Actuals {
      operations = List.copyOf(operations);
      material = List.copyOf(material);
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
   * @throws CommandFailure if it cannot be read, is not this form, or holds no hours
   * @throws trammel.reading.tree.BadInputException with every line that is wrong
   */
  public Actuals read(Path file) {
    List<CsvReader.Row> rows = CsvReader.rows(file);
    if (rows.isEmpty() || !rows.get(0).cells().equals(COLUMNS)) {
      throw CommandFailure.badInput(
          file
              + ": the first line must be "
              + String.join(",", COLUMNS)
              + ". Fill in the form that trammel close --out writes.");
    }
    Problems problems = new Problems();
    Map<String, Double> used = new HashMap<>();
    Map<String, Double> materialUsed = new LinkedHashMap<>();
    for (CsvReader.Row row : rows.subList(1, rows.size())) {
      if (!row.cell(USED).isEmpty()) {
        add(file, row, used, materialUsed, problems);
      }
    }
    problems.throwIfErrors();
    if (used.isEmpty()) {
      throw CommandFailure.badInput(
          file + ": no hours are filled in. Enter those of operations, of the whole job, or both.");
    }
    return actuals(used, materialUsed);
  }

  private void add(
      Path file,
      CsvReader.Row row,
      Map<String, Double> used,
      Map<String, Double> materialUsed,
      Problems problems) {
    boolean hours = row.cell(0).equals(HOURS);
    String name = hours ? row.cell(1) : row.cell(2);
    List<String> known = hours ? keys() : List.copyOf(material.keySet());
    Location where = new Location(file.toString(), row.line(), 1, name);
    if (!known.contains(name)) {
      problems.error(
          where,
          "'" + name + "'",
          hours ? "an operation of this job, or " + WHOLE : "something that this job ordered",
          NearestWord.to(name, known)
              .map(word -> "Did you mean " + word + "?")
              .orElse("Use the form that trammel close --out writes for this job."));
      return;
    }
    double value = number(row.cell(USED));
    if (Double.isNaN(value) || hours && value == 0) {
      problems.error(
          where,
          "'" + row.cell(USED) + "'",
          hours ? "hours above 0, such as 9.5" : "a count of 0 or more, such as 2",
          "Enter a plain number, or leave it empty.");
      return;
    }
    if ((hours ? used : materialUsed).put(name, value) != null) {
      problems.error(where, "a second line", "one line each", "Add the two up.");
    }
  }

  private static double number(String text) {
    boolean plain = text.length() <= 9 && text.matches("\\d+(\\.\\d+)?");
    double value = plain ? Double.parseDouble(text) : Double.NaN;
    return value <= MOST ? value : Double.NaN;
  }

  private List<String> keys() {
    List<String> keys = new ArrayList<>();
    for (OperationLine line : standard) {
      keys.add(line.operation().key());
    }
    keys.add(WHOLE);
    return keys;
  }

  private Actuals actuals(Map<String, Double> used, Map<String, Double> materialUsed) {
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
        (title, count) -> {
          OrderLine line = material.get(title);
          if (Math.abs(line.quantity().doubleValue() - count) > 1e-9) {
            differences.add(new Difference(line, count));
          }
        });
    Double whole = used.get(WHOLE);
    return new Actuals(
        operations, whole == null ? OptionalDouble.empty() : OptionalDouble.of(whole), differences);
  }
}
