package trammel.app.ledger;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.files.Csv;
import trammel.app.files.CsvReader;
import trammel.app.files.CsvText;
import trammel.ledger.Ledger;
import trammel.ledger.Tacking;
import trammel.ledger.Written;
import trammel.planning.fitup.TackVerdict;
import trammel.reading.quantity.DecimalText;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problems;

/**
 * Readings after tacking as comma-separated values: one line for each time that a target was read,
 * with what is said of the entry itself on each of its lines. Lengths are millimetres, angles
 * degrees, each with every digit; a reading that was taken back is an empty cell.
 */
public final class TackingsTable {
  /** The heading of the table. */
  public static final List<String> COLUMNS =
      List.of(
          "job",
          "entry",
          "tacked_on",
          "form",
          "answer",
          "said",
          "target",
          "unit",
          "set_to",
          "within",
          "reading",
          "written_at",
          "written_by");

  /** What is the same on every line of an entry. */
  private static final int ENTRY_CELLS = 6;

  /** Who wrote an entry and when is not read back: whoever takes the table in is the writer. */
  private static final int READ_CELLS = 11;

  private static final int TARGET = 6;
  private static final int UNIT = 7;
  private static final int READING = 10;
  private static final String BETWEEN = " | ";
  private static final String DEGREES = "deg";
  private static final String MILLIMETRES = "mm";

  private TackingsTable() {}

  /** The table. */
  public static String text(List<Written<Tacking>> tackings) {
    Csv csv = new Csv().row(COLUMNS.toArray());
    for (Written<Tacking> written : tackings) {
      for (List<Object> line : lines(written.what())) {
        List<Object> cells = new ArrayList<>(line);
        cells.add(written.at());
        cells.add(CsvText.safe(written.who()));
        csv.row(cells.toArray());
      }
    }
    return csv.text();
  }

  /** An entry in which nothing was read, only the answer became another, has one line. */
  private static List<List<Object>> lines(Tacking tacking) {
    List<Object> head =
        List.of(
            CsvText.safe(tacking.job()),
            tacking.count(),
            tacking.tackedOn().toString(),
            CsvText.safe(tacking.form()),
            tacking.answer().words(),
            CsvText.safe(String.join(BETWEEN, tacking.said())));
    List<List<Object>> lines = new ArrayList<>();
    for (Tacking.Reading reading : tacking.readings()) {
      List<Object> ofTarget = new ArrayList<>(head);
      ofTarget.add(CsvText.safe(reading.target()));
      ofTarget.add(unit(reading.kind()));
      ofTarget.add(outside(reading.kind(), reading.planned()));
      ofTarget.add(outside(reading.kind(), reading.within()));
      List<Object> values = new ArrayList<>();
      reading.values().forEach(value -> values.add(outside(reading.kind(), value)));
      for (Object value : values.isEmpty() ? List.<Object>of("") : values) {
        List<Object> line = new ArrayList<>(ofTarget);
        line.add(value);
        lines.add(line);
      }
    }
    if (lines.isEmpty()) {
      List<Object> line = new ArrayList<>(head);
      line.addAll(List.of("", "", "", "", ""));
      lines.add(line);
    }
    return lines;
  }

  private static String unit(Tacking.Kind kind) {
    return kind == Tacking.Kind.ANGLE ? DEGREES : MILLIMETRES;
  }

  private static double outside(Tacking.Kind kind, double value) {
    return kind == Tacking.Kind.ANGLE ? Math.toDegrees(value) : value;
  }

  /** Which entry of which job. */
  private record Key(String job, String entry) {
    String words() {
      return "job " + job + ", entry " + entry;
    }
  }

  /**
   * What the table would change: it is all of the entries, so one that is not in it goes out.
   *
   * @throws trammel.reading.tree.BadInputException with every line that is wrong
   */
  static TableChange change(Path file, List<CsvReader.Row> rows, List<Tacking> now) {
    Map<Key, Tacking> before = new LinkedHashMap<>();
    now.forEach(
        tacking -> before.put(new Key(tacking.job(), Integer.toString(tacking.count())), tacking));
    Map<Key, Tacking> after = new Reading(file).entries(rows);
    List<String> told = new ArrayList<>();
    after.forEach(
        (key, tacking) -> {
          if (!before.containsKey(key)) {
            told.add(key.words() + ", of " + tacking.tackedOn() + ": is added");
          } else if (!before.get(key).isSame(tacking)) {
            told.add(key.words() + ": " + difference(before.get(key), tacking));
          }
        });
    before.forEach(
        (key, tacking) -> {
          if (!after.containsKey(key)) {
            told.add(key.words() + ", of " + tacking.tackedOn() + ": is taken out");
          }
        });
    return new TableChange(
        "readings after tacking", told, ledger -> carryOut(ledger, before, after));
  }

  private static void carryOut(Ledger ledger, Map<Key, Tacking> before, Map<Key, Tacking> after) {
    after.forEach(
        (key, tacking) -> {
          if (!before.containsKey(key) || !before.get(key).isSame(tacking)) {
            ledger.tackings().put(tacking);
          }
        });
    before.forEach(
        (key, tacking) -> {
          if (!after.containsKey(key)) {
            ledger.tackings().takeOut(tacking.job(), tacking.count());
          }
        });
  }

  private static String difference(Tacking before, Tacking after) {
    List<String> parts = new ArrayList<>();
    note(parts, "day", before.tackedOn().toString(), after.tackedOn().toString());
    note(parts, "form", before.form(), after.form());
    note(parts, "answer", before.answer().words(), after.answer().words());
    note(parts, "words", String.join(BETWEEN, before.said()), String.join(BETWEEN, after.said()));
    Map<String, Tacking.Reading> old = new LinkedHashMap<>();
    before.readings().forEach(reading -> old.put(reading.target(), reading));
    for (Tacking.Reading reading : after.readings()) {
      Tacking.Reading was = old.remove(reading.target());
      if (was == null) {
        parts.add(reading.target() + " is added, " + words(reading));
      } else if (!was.isSame(reading)) {
        note(parts, reading.target(), words(was), words(reading));
      }
    }
    old.keySet().forEach(target -> parts.add(target + " is taken out"));
    return parts.isEmpty() ? "its lines in another order" : String.join("; ", parts);
  }

  private static void note(List<String> parts, String what, String before, String after) {
    if (!before.equals(after)) {
      parts.add(what + " " + before + " to " + after);
    }
  }

  private static String words(Tacking.Reading reading) {
    List<String> values = new ArrayList<>();
    reading.values().forEach(value -> values.add(words(reading, value)));
    return (values.isEmpty() ? "taken back" : String.join(" and ", values))
        + " (for "
        + words(reading, reading.planned())
        + " within "
        + words(reading, reading.within())
        + ")";
  }

  private static String words(Tacking.Reading reading, double value) {
    return DecimalText.trimmed(outside(reading.kind(), value), 4) + " " + unit(reading.kind());
  }

  /** Reads the lines of a table whose heading is known to be right. */
  private static final class Reading {
    private final Path file;
    private final Problems problems = new Problems();

    Reading(Path file) {
      this.file = file;
    }

    Map<Key, Tacking> entries(List<CsvReader.Row> rows) {
      Map<Key, List<CsvReader.Row>> byKey = new LinkedHashMap<>();
      for (CsvReader.Row row : rows.subList(1, rows.size())) {
        Key key = new Key(CsvText.meant(row.cell(0)), row.cell(1));
        byKey.computeIfAbsent(key, any -> new ArrayList<>()).add(row);
      }
      Map<Key, Tacking> entries = new LinkedHashMap<>();
      byKey.forEach((key, lines) -> add(entries, key, lines));
      problems.throwIfErrors();
      return entries;
    }

    private void add(Map<Key, Tacking> entries, Key key, List<CsvReader.Row> lines) {
      int before = problems.errors().size();
      CsvReader.Row first = lines.get(0);
      for (CsvReader.Row line : lines) {
        if (!cells(line).subList(0, ENTRY_CELLS).equals(cells(first).subList(0, ENTRY_CELLS))) {
          problems.error(
              where(line, 0),
              key.words() + " with another day, form or answer than on line " + first.line(),
              "the same on every line of an entry",
              "Make them alike.");
        }
      }
      int count = count(first);
      LocalDate day = day(first);
      Optional<TackVerdict> answer = answer(first);
      List<Tacking.Reading> readings = readings(lines);
      if (problems.errors().size() > before) {
        return;
      }
      String said = cells(first).get(ENTRY_CELLS - 1);
      try {
        entries.put(
            key,
            new Tacking(
                key.job,
                count,
                day,
                cells(first).get(3),
                answer.orElseThrow(),
                said.isEmpty() ? List.of() : List.of(said.split(" \\| ")),
                readings));
      } catch (IllegalArgumentException refused) {
        problems.error(
            where(first, 0), "this entry", "what was read after tacking", refused.getMessage());
      }
    }

    private static List<String> cells(CsvReader.Row row) {
      List<String> cells = new ArrayList<>();
      for (int i = 0; i < READ_CELLS; i++) {
        cells.add(i > UNIT ? row.number(i) : CsvText.meant(row.cell(i)));
      }
      return cells;
    }

    private List<Tacking.Reading> readings(List<CsvReader.Row> lines) {
      Map<String, List<CsvReader.Row>> byTarget = new LinkedHashMap<>();
      for (CsvReader.Row line : lines) {
        if (!line.cell(TARGET).isEmpty()) {
          byTarget
              .computeIfAbsent(CsvText.meant(line.cell(TARGET)), any -> new ArrayList<>())
              .add(line);
        }
      }
      List<Tacking.Reading> readings = new ArrayList<>();
      byTarget.forEach((target, same) -> add(readings, target, same));
      return readings;
    }

    private void add(List<Tacking.Reading> readings, String target, List<CsvReader.Row> lines) {
      int before = problems.errors().size();
      CsvReader.Row first = lines.get(0);
      Tacking.Kind kind = kind(first);
      double planned = number(first, UNIT + 1, kind);
      double within = number(first, UNIT + 2, kind);
      List<Double> values = new ArrayList<>();
      for (CsvReader.Row line : lines) {
        if (!cells(line).subList(UNIT, READING).equals(cells(first).subList(UNIT, READING))) {
          problems.error(
              where(line, TARGET),
              target + " with another plan than on line " + first.line(),
              "the same on every line of a target",
              "Make them alike.");
        }
        if (!line.cell(READING).isEmpty()) {
          values.add(number(line, READING, kind));
        }
      }
      if (problems.errors().size() > before) {
        return;
      }
      try {
        readings.add(new Tacking.Reading(target, kind, planned, within, values));
      } catch (IllegalArgumentException refused) {
        problems.error(
            where(first, TARGET), "this line", "what a reading can be", refused.getMessage());
      }
    }

    private int count(CsvReader.Row row) {
      if (row.cell(1).matches("[1-9]\\d{0,5}")) {
        return Integer.parseInt(row.cell(1));
      }
      problems.error(
          where(row, 1), "'" + row.cell(1) + "'", "1, 2, 3 and on", "Count the job's entries.");
      return 1;
    }

    private LocalDate day(CsvReader.Row row) {
      try {
        return LocalDate.parse(row.cell(2));
      } catch (DateTimeParseException noDay) {
        problems.error(
            where(row, 2), "'" + row.cell(2) + "'", "a day such as 2026-12-01", "Write it so.");
        return LocalDate.EPOCH;
      }
    }

    private Optional<TackVerdict> answer(CsvReader.Row row) {
      Optional<TackVerdict> answer = TackVerdict.named(row.cell(4));
      if (answer.isEmpty()) {
        problems.error(
            where(row, 4),
            "'" + row.cell(4) + "'",
            String.join(", ", Arrays.stream(TackVerdict.values()).map(TackVerdict::words).toList()),
            "Take one of these.");
      }
      return answer;
    }

    private Tacking.Kind kind(CsvReader.Row row) {
      if (row.cell(UNIT).equals(DEGREES)) {
        return Tacking.Kind.ANGLE;
      }
      if (!row.cell(UNIT).equals(MILLIMETRES)) {
        problems.error(
            where(row, UNIT),
            "'" + row.cell(UNIT) + "'",
            MILLIMETRES + " or " + DEGREES,
            "Take one of these.");
      }
      return Tacking.Kind.LENGTH;
    }

    private double number(CsvReader.Row row, int column, Tacking.Kind kind) {
      String text = row.number(column);
      if (text.length() <= 25 && text.matches("-?\\d+(\\.\\d+)?([eE]-?\\d{1,3})?")) {
        double value = Double.parseDouble(text);
        return kind == Tacking.Kind.ANGLE ? Math.toRadians(value) : value;
      }
      problems.error(
          where(row, column), "'" + text + "'", "a number such as 9.5", "Enter a plain number.");
      return 1;
    }

    private Location where(CsvReader.Row row, int column) {
      return new Location(file.toString(), row.line(), 1, COLUMNS.get(column));
    }
  }
}
