package trammel.planning.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.reading.fields.FieldKind;
import trammel.reading.quantity.UnitSystem;

/** Examples of answers: they can be typed as they stand, and fit the vehicle. */
class ExamplesTest {
  private static final Examples EXAMPLES = new Examples();
  private static final Set<FieldKind> WORDS =
      Set.of(FieldKind.TEXT, FieldKind.CHOICE, FieldKind.FLAG);

  private static Answers of(String... pathsAndAnswers) {
    Answers answers = new Answers();
    for (int i = 0; i < pathsAndAnswers.length; i += 2) {
      answers.give(Questions.at(pathsAndAnswers[i]).orElseThrow(), pathsAndAnswers[i + 1]);
    }
    return answers;
  }

  private static String example(String path, Answers answers) {
    return EXAMPLES.of(Questions.at(path).orElseThrow(), answers).orElseThrow();
  }

  /** Whoever types an example as it is printed is not told that it is wrong. */
  @ParameterizedTest
  @CsvSource({
    "pickup, us",
    "sedan, us",
    "one-ton van, us",
    "pickup, metric",
    "sedan, metric",
    "van, metric"
  })
  void everyExampleIsAnAnswer(String vehicle, String units) {
    Answers answers = of("job.vehicle", vehicle, "job.units", units);
    for (Question question : Questions.ofSheet()) {
      Optional<String> example = EXAMPLES.of(question, answers);
      if (WORDS.contains(question.field().kind())) {
        assertTrue(example.isEmpty(), question.path());
        continue;
      }
      String typed = example.orElseThrow().replaceFirst(" \\([a-z -]+\\)$", "");
      assertEquals(
          Optional.empty(),
          question.problem(typed, answers.units()),
          question.path() + " " + typed);
      boolean foreign = answers.units() == UnitSystem.METRIC && typed.matches(".*\\d (in|lb)\\b.*");
      assertFalse(foreign, question.path() + " " + typed);
    }
  }

  /** By the words first, and by the tape as soon as there are figures. */
  @Test
  void theVehicleIsKnownByItsWordsUntilThereAreFigures() {
    String rails = "measured.rails.depth";
    assertTrue(example(rails, of("job.vehicle", "Old sedan")).endsWith("(a car on a frame)"));
    assertTrue(example(rails, of("job.vehicle", "Delivery van")).endsWith("(a one-ton truck)"));
    assertTrue(
        example(rails, of("job.vehicle", "Old sedan", "measured.wheelbase.left", "136 in"))
            .endsWith("(a one-ton truck)"));
  }

  @Test
  void theOtherSideIsTheExampleForASide() {
    Answers answers =
        of("measured.wheelbase.left", "118 1/4 in; 118 in", "measured.weights.rear_left", "905 lb");
    assertEquals("118 1/4 in", example("measured.wheelbase.right", answers));
    assertEquals("905 lb", example("measured.weights.rear_right", answers));
  }

  /** A pipe's example is a pipe's, whichever thing in the way it is. */
  @Test
  void thingsInTheWayHaveExamplesOfTheirShape() {
    String end = "34 in, -10 in, 24 in (a half-ton pickup)";
    assertEquals(end, example("measured.obstacles[0].cylinder.from", of()));
    assertEquals(end, example("measured.obstacles[4].cylinder.from", of()));
  }

  /** 122 in are 3,098.8 mm at 25.4 mm an inch. */
  @Test
  void aMetricJobHasMetricExamples() {
    Answers answers = of("job.units", "metric", "job.vehicle", "pickup");
    assertTrue(
        example("measured.wheelbase.left", answers).startsWith("3098.8 mm")
            || example("measured.wheelbase.left", answers).startsWith("3099 mm"));
  }
}
