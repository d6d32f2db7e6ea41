package trammel.app.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.files.Csv;
import trammel.app.files.CsvReader;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.planning.start.Answers;
import trammel.planning.start.Question;
import trammel.planning.start.Questions;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentReader;

class InterviewTest {
  private static final Path DEMO = Path.of("..", "..", "catalogs", "demo", "sedan.yaml");

  @TempDir Path folder;
  private final StringWriter shown = new StringWriter();

  private boolean ask(Answers answers, String typed) {
    return new Interview(
            new BufferedReader(new StringReader(typed)),
            new PrintWriter(shown),
            folder.resolve("job.yaml"),
            answers,
            question ->
                question.path().equals("chosen.linkage")
                    ? List.of("triangulated", "four-link-lateral")
                    : List.of())
        .ask();
  }

  /** All answers of the demo job typed one after the other make a job that is read. */
  @Test
  void aWholeJobCanBeTyped() throws IOException {
    Answers demo = Answers.of(DocumentReader.read(DEMO));
    StringBuilder typed = new StringBuilder();
    for (Question question : demo.questions()) {
      typed.append(demo.of(question).orElse("")).append('\n');
    }
    assertTrue(ask(new Answers(), typed.toString()), shown.toString());
    assertEquals(
        JobReader.read(JobDocument.load(DEMO)).measured().obstacles(),
        JobReader.read(JobDocument.load(folder.resolve("job.yaml"))).measured().obstacles());
    assertFalse(Files.readString(folder.resolve("job.yaml")).contains(Answers.OPEN));
  }

  @Test
  void aWrongAnswerIsToldAndAskedAgain() {
    assertFalse(ask(new Answers(), "D-1\nnext week\n2026-11-28\nstop\n"));
    assertTrue(shown.toString().contains("next week"), shown.toString());
    assertTrue(
        Answers.of(DocumentReader.read(folder.resolve("job.yaml")))
            .of(Questions.byPath().get("job.date"))
            .isPresent());
  }

  @Test
  void goingBackChangesAnAnswerAndEnterKeepsIt() {
    assertFalse(ask(new Answers(), "D-1\nback\nD-2\n2026-11-28\nback\n\nstop\n"));
    Answers kept = Answers.of(DocumentReader.read(folder.resolve("job.yaml")));
    assertEquals("D-2", kept.of(Questions.byPath().get("job.number")).orElseThrow());
    assertEquals("2026-11-28", kept.of(Questions.byPath().get("job.date")).orElseThrow());
  }

  /** What was answered before is not asked again. */
  @Test
  void theAskingGoesOnWhereItStopped() {
    ask(new Answers(), "D-1\nstop\n");
    Answers earlier = Answers.of(DocumentReader.read(folder.resolve("job.yaml")));
    shown.getBuffer().setLength(0);
    ask(earlier, "stop\n");
    assertTrue(shown.toString().contains("day of the job"), shown.toString());
    assertFalse(shown.toString().contains("the shop's number"), shown.toString());
  }

  @Test
  void everyQuestionSaysWhyItIsAsked() {
    ask(new Answers(), "?\nstop\n");
    String once = "  why: quote, orders, floor sheets and the ledger go by it\n";
    assertEquals(2, shown.toString().split(once, -1).length - 1, "asked again: " + shown);
    assertTrue(shown.toString().contains("a text of 1 to 40 printable characters\n"));
    for (Question question : Questions.ofSheet()) {
      assertFalse(question.reason().isBlank(), question.path());
    }
  }

  /** A car of 114 in is nearer to the invented car of 112 in than to trucks of 122 and 137 in. */
  @Test
  void examplesFitTheVehicleAndItsOtherSide() {
    Answers demo = Answers.of(DocumentReader.read(DEMO));
    Answers begun = new Answers();
    for (Question question : Questions.all()) {
      if (question.path().startsWith("job.")) {
        demo.of(question).ifPresent(answer -> begun.give(question, answer));
      }
    }
    ask(begun, "\n\n\n114 in\nstop\n");
    assertTrue(shown.toString().contains("such as 112 in (a car on a frame)"), shown.toString());
    assertTrue(shown.toString().contains("such as 114 in\n"), shown.toString());
  }

  @Test
  void whatIsInTheWayIsAskedUntilThereIsNoMore() {
    Answers demo = Answers.of(DocumentReader.read(DEMO));
    Answers begun = new Answers();
    for (Question question : Questions.all()) {
      begun.give(question, demo.of(question).orElse("us"));
    }
    assertTrue(
        ask(
            begun,
            "tail pipe\nexhaust\ncylinder\n34 in, -10 in, 24 in\n-34 in, -12 in, 25 in\n2 1/2 in\n"
                + "tank\ntank\nbox\n-22 in, -46 in\n-46 in, -22 in\n-13 in, 13 in\n18 in, 27 in\n\n"),
        shown.toString());
    assertTrue(shown.toString().contains("the smaller distance first"), shown.toString());
    Answers kept = Answers.of(DocumentReader.read(folder.resolve("job.yaml")));
    assertEquals(
        "-34 in, -12 in, 25 in",
        kept.of(Questions.at("measured.obstacles[0].cylinder.to").orElseThrow()).orElseThrow());
    assertEquals(
        "-46 in, -22 in",
        kept.of(Questions.at("measured.obstacles[1].box.forward").orElseThrow()).orElseThrow());
  }

  /** Also on the way back: a linkage without that choice is not asked for it. */
  @Test
  void whatMeansNothingToTheChosenLinkageIsPassedOver() {
    Answers begun = Answers.of(DocumentReader.read(DEMO));
    Question height = Questions.at("chosen.ride.rail_underside_at_axle").orElseThrow();
    for (Question question : Questions.all()) {
      if (question != height && begun.of(question).isEmpty()) {
        begun.give(question, "us");
      }
    }
    begun.take(height);
    begun.take(Questions.at(Questions.MOUNTING).orElseThrow());
    Interview.Choices without =
        new Interview.Choices() {
          @Override
          public List<String> of(Question question) {
            return List.of();
          }

          @Override
          public boolean isAsked(Question question, Answers answers) {
            return !question.path().equals(Questions.MOUNTING);
          }
        };
    new Interview(
            new BufferedReader(new StringReader("\nback\nstop\n")),
            new PrintWriter(shown),
            folder.resolve("job.yaml"),
            begun,
            without)
        .ask();
    String side = "side of the frame rails on which the bars run";
    assertFalse(shown.toString().contains(side), shown.toString());
    assertTrue(shown.toString().contains("id of the spring"), shown.toString());
  }

  @Test
  void aThingInTheWayThatIsBegunIsOpenUntilItsSpaceIsKnown() {
    Answers answers = new Answers();
    answers.give(Questions.at("measured.obstacles[0].name").orElseThrow(), "tail pipe");
    List<String> open = answers.open().stream().map(Question::path).toList();
    assertTrue(open.contains("measured.obstacles[0].shape"), open.toString());
    assertFalse(open.contains("measured.obstacles[1].name"), open.toString());
  }

  @Test
  void aNeededAnswerIsNotPassedOver() {
    ask(new Answers(), "\nD-1\nstop\n");
    assertTrue(shown.toString().contains("this one is needed"));
  }

  private Path sheet(Answers demo, String path, String reading) throws IOException {
    Csv csv = new Csv();
    for (CsvReader.Row row : CsvReader.rows(MeasuringSheet.csv(UnitSystem.US))) {
      Object[] cells = row.cells().toArray();
      Question question = Questions.at(row.cell(0)).orElse(null);
      if (question != null) {
        // A space in front keeps a minus from being taken for a formula.
        cells[6] = " " + (row.cell(0).equals(path) ? reading : demo.of(question).orElse(""));
      }
      csv.row(cells);
    }
    return Files.writeString(folder.resolve("sheet.csv"), csv.text());
  }

  @Test
  void aFilledSheetIsTheSameJob() throws IOException {
    Answers demo = Answers.of(DocumentReader.read(DEMO));
    Answers read = MeasuringSheet.read(sheet(demo, "none", "")).answers();
    assertEquals(demo.yaml(), read.yaml());
  }

  @Test
  void aWrongLineOfTheSheetIsNamedWithItsField() throws IOException {
    Answers demo = Answers.of(DocumentReader.read(DEMO));
    Path sheet = sheet(demo, "measured.rails.depth", "40 ft");
    String told =
        assertThrows(BadInputException.class, () -> MeasuringSheet.read(sheet))
            .problems()
            .toString();
    assertTrue(told.contains("measured.rails.depth") && told.contains("40 ft"), told);
  }
}
