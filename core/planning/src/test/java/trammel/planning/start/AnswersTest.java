package trammel.planning.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentReader;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class AnswersTest {
  private static final Map<String, Question> QUESTIONS = Questions.byPath();

  private static Path demo(String name) {
    return Path.of("..", "..", "catalogs", "demo", name + ".yaml");
  }

  /** The answers taken from a demo job make a job file that reads the same measurements. */
  @ParameterizedTest
  @ValueSource(strings = {"pickup", "sedan"})
  void theAnswersOfAJobMakeItsFileAgain(String name) {
    Answers answers = Answers.of(DocumentReader.read(demo(name)));
    assertTrue(answers.open().isEmpty(), answers.open().toString());
    String yaml = answers.yaml();
    Answers again = Answers.of(DocumentReader.read("again.yaml", yaml));
    for (Question question : QUESTIONS.values()) {
      assertEquals(answers.of(question), again.of(question), question.path());
    }
    var measured = JobReader.read(JobDocument.of("again.yaml", yaml)).measured();
    var original = JobReader.read(JobDocument.load(demo(name))).measured();
    assertEquals(original.axle(), measured.axle());
    assertEquals(original.rails(), measured.rails());
    assertEquals(original.weights(), measured.weights());
    assertEquals(original.tyre(), measured.tyre());
  }

  @Test
  void anUnfinishedFileSaysSoAndKeepsWhatThereIs() {
    Answers answers = new Answers();
    answers.give(QUESTIONS.get("job.number"), "D-7");
    answers.give(QUESTIONS.get("measured.rails.depth"), "6 in; 6 1/16 in");
    String yaml = answers.yaml();
    assertTrue(yaml.startsWith(Answers.OPEN), yaml);
    Answers again = Answers.of(DocumentReader.read("again.yaml", yaml));
    assertEquals("6 in; 6 1/16 in", again.of(QUESTIONS.get("measured.rails.depth")).orElseThrow());
    assertFalse(again.open().isEmpty());
  }

  @ParameterizedTest
  @CsvSource({
    "measured.rails.depth, 6 in, true",
    "measured.rails.depth, 60 in, false",
    "measured.rails.depth, deep, false",
    "measured.rails.depth, '6 in; 6 1/16 in', true",
    "measured.axle.pinion, '11 in, 0 in, -1 1/2 in', true",
    "measured.axle.pinion, '11 in, 0 in', false",
    "measured.axle.pinion, '11 in, 0 in, 1 in, 2 in', false",
    "job.date, 2026-11-28, true",
    "job.date, tomorrow, false",
    "measured.rails.shape, box, true",
    "measured.rails.shape, round, false",
    "measured.tyre.passenger_on_truck, true, true",
    "measured.tyre.passenger_on_truck, no, true",
    "measured.tyre.passenger_on_truck, perhaps, false"
  })
  void everyAnswerIsCheckedAtOnce(String path, String answer, boolean good) {
    assertEquals(
        good, QUESTIONS.get(path).problem(answer, UnitSystem.US).isEmpty(), path + " " + answer);
  }

  @Test
  void bareNumbersTakeTheUnitsThatTheJobNames() {
    Answers answers = new Answers();
    assertEquals(UnitSystem.US, answers.units());
    answers.give(QUESTIONS.get("job.units"), "metric");
    assertEquals(UnitSystem.METRIC, answers.units());
    assertTrue(QUESTIONS.get("measured.rails.depth").problem("152", answers.units()).isEmpty());
    assertFalse(QUESTIONS.get("measured.rails.depth").problem("152", UnitSystem.US).isEmpty());
  }

  /** Whatever is typed as a name, the file that holds it can be read, and holds it. */
  @Seeds(500)
  void noNameBreaksTheFile(Draw draw) {
    String typed = draw.text(0, 60);
    String name =
        typed.replaceAll("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}\\p{Cs}\\p{Cn}\\p{Co}]", " ").strip();
    Answers answers = new Answers();
    answers.give(QUESTIONS.get("job.customer"), name);
    Answers again = Answers.of(DocumentReader.read("again.yaml", answers.yaml()));
    assertEquals(name, again.of(QUESTIONS.get("job.customer")).orElseThrow());
  }
}
