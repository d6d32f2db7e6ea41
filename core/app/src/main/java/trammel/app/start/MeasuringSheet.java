package trammel.app.start;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.Csv;
import trammel.app.files.CsvReader;
import trammel.planning.start.Answers;
import trammel.planning.start.Question;
import trammel.planning.start.Questions;
import trammel.reading.fields.NearestWord;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problems;

/** The measuring sheet as a table to fill in by the vehicle, and read back. */
public final class MeasuringSheet {
  private static final String FIELD = "field";
  private static final String READING = "reading";
  private static final List<String> COLUMNS =
      List.of(FIELD, "about", "what and from where", "how to write it", "needed", READING, "again");
  private static final int FIRST_READING = 5;

  private MeasuringSheet() {}

  /** The empty sheet. */
  public static String csv(UnitSystem units) {
    Csv csv = new Csv().row(COLUMNS.toArray());
    for (Question question : Questions.all()) {
      csv.row(
          question.path(),
          question.section(),
          question.what(),
          question.how(units),
          question.needed() ? "yes" : "if you have it",
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
  public static Answers read(Path file) {
    List<CsvReader.Row> rows = CsvReader.rows(file);
    if (rows.isEmpty() || !rows.get(0).cells().equals(COLUMNS)) {
      throw CommandFailure.badInput(
          file
              + ": this is not a measuring sheet. Fill in the one that trammel start --sheet prints.");
    }
    Map<String, Question> questions = Questions.byPath();
    Answers answers = new Answers();
    Problems problems = new Problems();
    List<CsvReader.Row> filled = rows.subList(1, rows.size());
    for (CsvReader.Row row : filled) {
      take(file, row, questions, answers, problems);
    }
    for (CsvReader.Row row : filled) {
      Question question = questions.get(row.cell(0));
      if (question != null && answers.of(question).isPresent()) {
        check(file, row, question, answers, problems);
      }
    }
    problems.throwIfErrors();
    return answers;
  }

  private static void take(
      Path file,
      CsvReader.Row row,
      Map<String, Question> questions,
      Answers answers,
      Problems problems) {
    List<String> readings = new ArrayList<>();
    for (int i = FIRST_READING; i < row.cells().size(); i++) {
      if (!row.cell(i).isEmpty()) {
        readings.add(row.cell(i));
      }
    }
    Question question = questions.get(row.cell(0));
    if (question == null) {
      problems.error(
          new Location(file.toString(), row.line(), 1, FIELD),
          "'" + row.cell(0) + "'",
          "a field of the measuring sheet",
          NearestWord.to(row.cell(0), List.copyOf(questions.keySet()))
              .map(word -> "Did you mean " + word + "?")
              .orElse("Take the line out."));
    } else if (!readings.isEmpty()) {
      answers.give(question, String.join("; ", readings));
    }
  }

  /** After all are taken, because the sheet says further up which units bare numbers have. */
  private static void check(
      Path file, CsvReader.Row row, Question question, Answers answers, Problems problems) {
    String answer = answers.of(question).orElseThrow();
    Optional<String> problem = question.problem(answer, answers.units());
    if (problem.isPresent()) {
      problems.error(
          new Location(file.toString(), row.line(), 1, question.path()),
          "'" + answer + "'",
          question.how(answers.units()),
          "Measure or write it again.");
    }
  }
}
