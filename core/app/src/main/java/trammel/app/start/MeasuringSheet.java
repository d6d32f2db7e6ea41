package trammel.app.start;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.Csv;
import trammel.app.files.FilledNumber;
import trammel.app.files.FilledTable;
import trammel.planning.start.Answers;
import trammel.planning.start.Examples;
import trammel.planning.start.Question;
import trammel.planning.start.Questions;
import trammel.reading.fields.NearestWord;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.Problems;

/** The measuring sheet as a table to fill in by the vehicle, and read back. */
public final class MeasuringSheet {
  private static final String FIELD = "field";
  private static final String READING = "reading";
  private static final String AGAIN = "again";
  private static final List<String> COLUMNS =
      List.of(
          FIELD,
          "about",
          "what and from where",
          "why",
          "how to write it",
          "needed",
          READING,
          AGAIN);

  private MeasuringSheet() {}

  /** The empty sheet. */
  public static String csv(UnitSystem units) {
    Csv csv = new Csv().row(COLUMNS.toArray());
    Answers none = new Answers();
    none.give(Questions.byPath().get("job.units"), units.word());
    Examples examples = new Examples();
    for (Question question : Questions.ofSheet()) {
      csv.row(
          question.path(),
          question.section(),
          question.what(),
          question.reason(),
          question.how(units, examples.of(question, none)),
          question.needed() && !question.isOfObstacle() ? "yes" : "if you have it",
          "",
          "");
    }
    return csv.text();
  }

  /**
   * The answers of a filled sheet; readings beside each other are repeats of one measurement.
   *
   * @throws CommandFailure if it cannot be read or is not this sheet
   * @throws trammel.reading.tree.BadInputException with every line that is wrong
   */
  public static Filled read(Path file) {
    Problems problems = new Problems();
    FilledTable table =
        FilledTable.read(
            file,
            List.of(FIELD, READING),
            "Fill in the sheet that trammel start --sheet prints.",
            problems);
    Answers answers = new Answers();
    for (FilledTable.Row row : table.rows()) {
      take(row, table.decimalCommas(), answers, problems);
    }
    for (FilledTable.Row row : table.rows()) {
      Questions.at(row.cell(FIELD))
          .filter(question -> answers.of(question).isPresent())
          .ifPresent(question -> check(row, question, answers, problems));
    }
    answers.sayShapes();
    problems.throwIfErrors();
    return new Filled(
        answers,
        List.copyOf(table.otherColumns(name -> COLUMNS.contains(name) || isReading(name))));
  }

  /**
   * A sheet that came back.
   *
   * @param answers what was filled in
   * @param notRead columns that hold something and are not the sheet's
   */
  public record Filled(Answers answers, List<String> notRead) {
    public Filled {
      notRead = List.copyOf(notRead);
    }
  }

  private static boolean isReading(String column) {
    return column.startsWith(READING) || column.startsWith(AGAIN);
  }

  private static void take(
      FilledTable.Row row, boolean decimalCommas, Answers answers, Problems problems) {
    List<String> readings = row.filled(MeasuringSheet::isReading);
    Question question = Questions.at(row.cell(FIELD)).orElse(null);
    if (question == null) {
      problems.error(
          row.where(FIELD),
          "'" + row.cell(FIELD) + "'",
          "a field of the measuring sheet",
          NearestWord.to(row.cell(FIELD), fields())
              .map(word -> "Did you mean " + word + "?")
              .orElse("Take the line out."));
      return;
    }
    if (readings.isEmpty()) {
      return;
    }
    if (answers.of(question).isPresent()) {
      problems.error(
          row.where(question.path()),
          "a second line for it",
          "one line a field",
          "Put repeats side by side in columns that start with " + READING + ".");
      return;
    }
    List<String> plain =
        readings.stream().map(reading -> plain(question, reading, decimalCommas)).toList();
    if (question.takesRepeats()) {
      answers.give(question, String.join("; ", plain));
    } else if (plain.stream().distinct().count() == 1) {
      answers.give(question, plain.get(0));
    } else {
      problems.error(
          row.where(question.path()),
          "'" + String.join("' and '", plain) + "'",
          "one answer: only measurements are repeated",
          "Leave the one that holds.");
    }
  }

  private static List<String> fields() {
    return Questions.ofSheet().stream().map(Question::path).toList();
  }

  /** An answer without what spreadsheets do to it: marks before numbers, TRUE for true. */
  private static String plain(Question question, String reading, boolean decimalCommas) {
    return switch (question.field().kind()) {
      case TEXT -> FilledNumber.withoutFormulaMark(reading);
      case CHOICE, FLAG -> reading.toLowerCase(Locale.ROOT);
      case MEASURED_LENGTH,
          MEASURED_ANGLE,
          MEASURED_LEVEL_ANGLE,
          MEASURED_MASS,
          LENGTH,
          ANGLE,
          MASS,
          FORCE,
          RATE,
          TORQUE,
          SPEED,
          ROTATION,
          PERCENT,
          NUMBER ->
          FilledNumber.quantity(reading, decimalCommas);
      // Among them those with commas between several values, which could be decimal commas.
      default -> FilledNumber.plain(reading);
    };
  }

  /** After all are taken, because the sheet says further up which units bare numbers have. */
  private static void check(
      FilledTable.Row row, Question question, Answers answers, Problems problems) {
    String answer = answers.of(question).orElseThrow();
    Optional<String> problem = question.problem(answer, answers.units());
    if (problem.isPresent()) {
      problems.error(
          row.where(question.path()),
          "'" + answer + "'",
          question.how(answers.units(), new Examples().of(question, answers)),
          "Measure or write it again.");
    }
  }
}
