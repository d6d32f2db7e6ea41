package trammel.app.ledger;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import trammel.app.files.Csv;
import trammel.app.files.CsvReader;
import trammel.app.files.CsvText;
import trammel.ledger.ClosedJobs;
import trammel.ledger.Ledger;
import trammel.planning.learning.ClosedJob;
import trammel.planning.learning.ClosedOperation;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problems;

/**
 * The closed jobs as comma-separated values: one line for each operation of a job, with what is
 * said of the job itself on each of its lines. Hours are written with every digit.
 */
public final class ClosedJobsTable {
  /** The heading of the table. */
  public static final List<String> COLUMNS =
      List.of(
          "job",
          "closed_on",
          "quoted_hours",
          "quoted_eight_of_ten_hours",
          "job_used_hours",
          "operation",
          "standard_hours",
          "deviation_hours",
          "used_hours");

  private static final String REPLACED = "replaced_at";
  private static final int JOB_CELLS = 5;

  private ClosedJobsTable() {}

  /** The jobs that count. */
  public static String text(List<ClosedJob> jobs) {
    Csv csv = new Csv().row(COLUMNS.toArray());
    for (ClosedJob job : jobs) {
      for (ClosedOperation operation : job.operations()) {
        csv.row(cells(job, operation).toArray());
      }
    }
    return csv.text();
  }

  /** The closings that count no more, each with when it was replaced. */
  public static String earlierText(List<ClosedJobs.Earlier> closings) {
    List<String> columns = new ArrayList<>(COLUMNS);
    columns.add(REPLACED);
    Csv csv = new Csv().row(columns.toArray());
    for (ClosedJobs.Earlier closing : closings) {
      for (ClosedOperation operation : closing.job().operations()) {
        List<Object> cells = cells(closing.job(), operation);
        cells.add(closing.replacedAt());
        csv.row(cells.toArray());
      }
    }
    return csv.text();
  }

  private static List<Object> cells(ClosedJob job, ClosedOperation operation) {
    List<Object> cells = new ArrayList<>();
    cells.add(CsvText.safe(job.number()));
    cells.add(job.closed().toString());
    cells.add(job.quotedHours());
    cells.add(job.quotedEightOfTen());
    cells.add(cell(job.usedHours()));
    cells.add(CsvText.safe(operation.key()));
    cells.add(operation.standardHours());
    cells.add(operation.deviationHours());
    cells.add(cell(operation.usedHours()));
    return cells;
  }

  private static Object cell(OptionalDouble hours) {
    return hours.isPresent() ? (Object) hours.getAsDouble() : "";
  }

  /**
   * Reads the jobs of a table whose heading is known to be right.
   *
   * @throws trammel.reading.tree.BadInputException with every line that is wrong
   */
  static List<ClosedJob> read(Path file, List<CsvReader.Row> rows) {
    Problems problems = new Problems();
    Map<String, List<CsvReader.Row>> byJob = new LinkedHashMap<>();
    for (CsvReader.Row row : rows.subList(1, rows.size())) {
      byJob.computeIfAbsent(CsvText.meant(row.cell(0)), number -> new ArrayList<>()).add(row);
    }
    List<ClosedJob> jobs = new ArrayList<>();
    byJob.forEach((number, lines) -> add(jobs, file, number, lines, problems));
    problems.throwIfErrors();
    return jobs;
  }

  private static void add(
      List<ClosedJob> jobs,
      Path file,
      String number,
      List<CsvReader.Row> lines,
      Problems problems) {
    int before = problems.errors().size();
    CsvReader.Row first = lines.get(0);
    List<ClosedOperation> operations = new ArrayList<>();
    for (CsvReader.Row line : lines) {
      if (!head(line).equals(head(first))) {
        problems.error(
            where(file, line, 0),
            "job '" + number + "' with another day or other hours than on line " + first.line(),
            "the same on every line of a job",
            "Make them alike.");
      }
      double standard = number(file, line, 6, problems);
      double deviation = number(file, line, 7, problems);
      OptionalDouble used = hours(file, line, 8, problems);
      if (problems.errors().size() == before) {
        try {
          operations.add(
              new ClosedOperation(CsvText.meant(line.cell(5)), standard, deviation, used));
        } catch (IllegalArgumentException refused) {
          problems.error(
              where(file, line, 5), "this line", "what an operation can be", refused.getMessage());
        }
      }
    }
    LocalDate closed = day(file, first, problems);
    double quoted = number(file, first, 2, problems);
    double eightOfTen = number(file, first, 3, problems);
    OptionalDouble whole = hours(file, first, 4, problems);
    if (problems.errors().size() == before) {
      try {
        jobs.add(new ClosedJob(number, closed, quoted, eightOfTen, operations, whole));
      } catch (IllegalArgumentException refused) {
        problems.error(
            where(file, first, 0), "this job", "what a closed job can be", refused.getMessage());
      }
    }
  }

  private static List<String> head(CsvReader.Row row) {
    List<String> head = new ArrayList<>();
    for (int i = 0; i < JOB_CELLS; i++) {
      head.add(row.cell(i));
    }
    return head;
  }

  private static LocalDate day(Path file, CsvReader.Row row, Problems problems) {
    try {
      return LocalDate.parse(row.cell(1));
    } catch (DateTimeParseException noDay) {
      problems.error(
          where(file, row, 1), "'" + row.cell(1) + "'", "a day such as 2026-12-01", "Write it so.");
      return LocalDate.EPOCH;
    }
  }

  private static OptionalDouble hours(Path file, CsvReader.Row row, int column, Problems problems) {
    return row.cell(column).isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(number(file, row, column, problems));
  }

  private static double number(Path file, CsvReader.Row row, int column, Problems problems) {
    String text = row.number(column);
    if (text.length() <= 25 && text.matches("\\d+(\\.\\d+)?([eE]-?\\d{1,3})?")) {
      return Double.parseDouble(text);
    }
    problems.error(
        where(file, row, column), "'" + text + "'", "hours such as 9.5", "Enter a plain number.");
    return 1;
  }

  private static Location where(Path file, CsvReader.Row row, int column) {
    return new Location(file.toString(), row.line(), 1, COLUMNS.get(column));
  }

  /**
   * What the table would change: it is all of the closed jobs, so a job that is not in it goes out.
   */
  static TableChange change(List<ClosedJob> now, List<ClosedJob> then) {
    Map<String, ClosedJob> before = byNumber(now);
    Map<String, ClosedJob> after = byNumber(then);
    List<String> lines = new ArrayList<>();
    after.forEach(
        (number, job) -> {
          if (!before.containsKey(number)) {
            lines.add("job " + number + ", closed " + job.closed() + ": is added");
          } else if (!before.get(number).equals(job)) {
            lines.add("job " + number + ": " + difference(before.get(number), job));
          }
        });
    before.forEach(
        (number, job) -> {
          if (!after.containsKey(number)) {
            lines.add("job " + number + ", closed " + job.closed() + ": is taken out");
          }
        });
    return new TableChange("closed jobs", lines, ledger -> carryOut(ledger, before, after));
  }

  private static Map<String, ClosedJob> byNumber(List<ClosedJob> jobs) {
    Map<String, ClosedJob> byNumber = new LinkedHashMap<>();
    jobs.forEach(job -> byNumber.put(job.number(), job));
    return byNumber;
  }

  private static void carryOut(
      Ledger ledger, Map<String, ClosedJob> before, Map<String, ClosedJob> after) {
    after.forEach(
        (number, job) -> {
          if (!before.containsKey(number)) {
            ledger.closedJobs().close(job);
          } else if (!before.get(number).equals(job)) {
            ledger.closedJobs().correct(job);
          }
        });
    before.keySet().stream()
        .filter(number -> !after.containsKey(number))
        .forEach(ledger.closedJobs()::takeOut);
  }

  private static String difference(ClosedJob before, ClosedJob after) {
    List<String> parts = new ArrayList<>();
    note(parts, "closed on", before.closed(), after.closed());
    note(parts, "quoted hours", before.quotedHours(), after.quotedHours());
    note(parts, "quoted eight-of-ten hours", before.quotedEightOfTen(), after.quotedEightOfTen());
    note(parts, "hours of the whole job", said(before.usedHours()), said(after.usedHours()));
    Map<String, ClosedOperation> old = new LinkedHashMap<>();
    before.operations().forEach(operation -> old.put(operation.key(), operation));
    for (ClosedOperation operation : after.operations()) {
      ClosedOperation was = old.remove(operation.key());
      if (was == null) {
        parts.add(operation.key() + " is added");
      } else {
        note(
            parts,
            "hours of " + operation.key(),
            said(was.usedHours()),
            said(operation.usedHours()));
        note(
            parts,
            "standard hours of " + operation.key(),
            was.standardHours() + " ± " + was.deviationHours(),
            operation.standardHours() + " ± " + operation.deviationHours());
      }
    }
    old.keySet().forEach(key -> parts.add(key + " is taken out"));
    return parts.isEmpty() ? "its operations in another order" : String.join("; ", parts);
  }

  private static void note(List<String> parts, String what, Object before, Object after) {
    if (!before.equals(after)) {
      parts.add(what + " " + before + " to " + after);
    }
  }

  private static String said(OptionalDouble hours) {
    return hours.isPresent() ? Double.toString(hours.getAsDouble()) : "none";
  }
}
