package trammel.page;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.files.Csv;
import trammel.app.files.CsvReader;
import trammel.app.files.CsvText;
import trammel.app.files.SafeFile;
import trammel.page.folder.FormFile;
import trammel.page.folder.Refused;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.TackReport;
import trammel.planning.fitup.Target;
import trammel.reading.tree.PlainText;

/**
 * Who has signed which bracket off after tacking, and on what readings, in a table beside the job
 * file. Readings that change afterwards are no longer those that were signed for.
 */
final class SignOffs {
  private static final List<String> COLUMNS =
      List.of("bracket", "signed_by", "signed_on", "readings");
  private static final int LONGEST_NAME = 60;

  private final Path file;

  /**
   * @param file where they are kept, whether or not it is there yet
   */
  SignOffs(Path file) {
    this.file = file;
  }

  /**
   * A signature.
   *
   * @param by who signed
   * @param on the day, year-month-day
   * @param readings the readings of the bracket then
   */
  record SignOff(String by, String on, String readings) {}

  /**
   * A bracket of the sheet.
   *
   * @param name what the sheet calls it
   * @param targets what is read of it
   * @param missing how many of these are not read yet
   * @param readings the readings so far
   */
  record Bracket(String name, List<Target> targets, int missing, String readings) {
    Bracket {
      targets = List.copyOf(targets);
    }

    /** Why it cannot be signed off yet; empty if it can. */
    Optional<String> notYet(Optional<TackReport> report) {
      if (missing > 0 || report.isEmpty()) {
        return Optional.of(missing + (missing == 1 ? " reading is" : " readings are") + " missing");
      }
      for (TackReport.Again again : report.get().again()) {
        if (targets.stream().anyMatch(target -> target.id().equals(again.id()))) {
          return Optional.of("measure again: " + again.why());
        }
      }
      for (TackReport.Move move : report.get().moves()) {
        String start = move.mount().key() + ".";
        if (targets.stream().anyMatch(target -> target.id().startsWith(start))) {
          return Optional.of("it is out of place; set it again first");
        }
      }
      return report.get().stops().isEmpty()
          ? Optional.empty()
          : Optional.of("as tacked, STOP: " + String.join("; ", report.get().stops()));
    }
  }

  /** The brackets of a sheet in the order of work, with the readings of a form. */
  static List<Bracket> brackets(FitUpSheet sheet, FormFile form) {
    Map<String, List<Target>> byName = new LinkedHashMap<>();
    for (Target target : sheet.targets()) {
      byName.computeIfAbsent(target.group(), any -> new ArrayList<>()).add(target);
    }
    List<Bracket> brackets = new ArrayList<>();
    byName.forEach(
        (name, targets) -> {
          int missing = 0;
          List<String> readings = new ArrayList<>();
          for (Target target : targets) {
            List<String> read = form.filled(List.of(target.id()));
            missing += read.isEmpty() ? 1 : 0;
            readings.add(target.id() + ": " + String.join("; ", read));
          }
          brackets.add(new Bracket(name, targets, missing, String.join(", ", readings)));
        });
    return brackets;
  }

  /** The signatures, by the name of the bracket. */
  Map<String, SignOff> byBracket() {
    Map<String, SignOff> all = new LinkedHashMap<>();
    if (Files.isRegularFile(file)) {
      List<CsvReader.Row> rows = CsvReader.rows(file);
      for (CsvReader.Row row : rows.subList(Math.min(1, rows.size()), rows.size())) {
        all.put(
            CsvText.meant(row.cell(0)),
            new SignOff(CsvText.meant(row.cell(1)), row.cell(2), CsvText.meant(row.cell(3))));
      }
    }
    return all;
  }

  /**
   * Signs a bracket off on its readings as they are.
   *
   * @param by who signs; empty to take a signature back
   */
  void sign(Bracket bracket, String by) {
    if (by.length() > LONGEST_NAME || PlainText.troubleOfLine(by).isPresent()) {
      throw new Refused(
          422, "A name has up to " + LONGEST_NAME + " letters that show, in one line.");
    }
    Map<String, SignOff> all = byBracket();
    if (by.isEmpty()) {
      all.remove(bracket.name());
    } else {
      all.put(bracket.name(), new SignOff(by, LocalDate.now().toString(), bracket.readings()));
    }
    Csv csv = new Csv().row(COLUMNS.toArray());
    all.forEach(
        (name, signed) ->
            csv.row(
                CsvText.safe(name),
                CsvText.safe(signed.by()),
                signed.on(),
                CsvText.safe(signed.readings())));
    SafeFile.write(file, csv.text());
  }
}
