package trammel.planning.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import trammel.reading.fields.Field;
import trammel.reading.quantity.UnitSystem;

/** The figures as data: complete, each with a name, a source and an example that works. */
class FiguresTest {
  private static final Path FORMULAS = Path.of("..", "..", "docs", "formulas.md");

  static List<Figure> figures() {
    return Figures.all();
  }

  @Test
  void everyNameStandsOnceAndIsFound() {
    Set<String> names = new HashSet<>();
    for (Figure figure : figures()) {
      assertTrue(names.add(figure.name()), figure.name());
      assertTrue(figure.name().matches("[a-z]+(-[a-z]+)*"), figure.name());
      assertEquals(figure.title(), Figures.find(figure.name()).orElseThrow().title());
    }
    assertTrue(Figures.find("no-such-figure").isEmpty());
  }

  @ParameterizedTest
  @MethodSource("figures")
  void everyFigureSaysHowAndAfterWhom(Figure figure) {
    assertFalse(figure.source().isBlank());
    assertFalse(figure.formula().isBlank());
    Set<String> keys = new HashSet<>();
    for (Field<?> input : figure.inputs()) {
      assertTrue(keys.add(input.key()), figure.name() + " " + input.key());
    }
    Set<String> results = new HashSet<>();
    for (FigureOutput output : figure.outputs()) {
      assertTrue(results.add(output.key()), figure.name() + " " + output.key());
    }
  }

  @ParameterizedTest
  @MethodSource("figures")
  void everyExampleGivesResults(Figure figure) {
    List<FigureAnswer> answers = figure.answers(words(figure.example()), UnitSystem.US);
    assertFalse(answers.isEmpty());
    for (FigureAnswer answer : answers) {
      assertTrue(figure.outputs().contains(answer.output()));
      assertFalse(answer.text(UnitSystem.US).isBlank());
    }
  }

  /** What is said to be taken when an input is left out is taken when it is written. */
  @ParameterizedTest
  @MethodSource("figures")
  void aDefaultIsWhatItSays(Figure figure) {
    Map<String, String> words = words(figure.example());
    List<FigureAnswer> left = figure.answers(words, UnitSystem.US);
    for (Field<?> input : figure.inputs()) {
      if (!words.containsKey(input.key())) {
        Figure.standard(input, UnitSystem.US).ifPresent(text -> words.put(input.key(), text));
      }
    }
    List<FigureAnswer> written = figure.answers(words, UnitSystem.US);
    assertEquals(left.size(), written.size());
    for (int i = 0; i < left.size(); i++) {
      if (left.get(i) instanceof FigureAnswer.Quantity quantity) {
        double other = ((FigureAnswer.Quantity) written.get(i)).inside();
        assertEquals(quantity.inside(), other, 1e-4 * Math.abs(other) + 1e-12, figure.name());
      } else {
        assertEquals(left.get(i), written.get(i));
      }
    }
  }

  /** NIST SP 811, appendix B: 1 in is 25.4 mm, 1 lb 0.45359237 kg, 1 lbf 4.4482216152605 N. */
  @Test
  void resultsAreShownInTheUnitsAskedFor() {
    assertEquals(1, FigureUnit.LENGTH.shown(25.4, UnitSystem.US), 1e-12);
    assertEquals(1, FigureUnit.SECOND_MOMENT.shown(Math.pow(25.4, 4), UnitSystem.US), 1e-12);
    assertEquals(1, FigureUnit.MASS_PER_LENGTH.shown(0.45359237 / 0.3048, UnitSystem.US), 1e-12);
    assertEquals(1, FigureUnit.MASS_PER_AREA.shown(0.45359237 / 0.09290304, UnitSystem.US), 1e-12);
    assertEquals(1, FigureUnit.RATE.shown(4.4482216152605 / 25.4, UnitSystem.US), 1e-12);
    assertEquals(1, FigureUnit.TORQUE.shown(4.4482216152605 * 304.8, UnitSystem.US), 1e-12);
    assertEquals(1000, FigureUnit.STRESS.shown(6.894757293168361, UnitSystem.US), 1e-9);
    assertEquals(
        1, FigureUnit.ROLL_STIFFNESS.shown(Math.toDegrees(1000), UnitSystem.METRIC), 1e-12);
    assertEquals(60, FigureUnit.CYCLES.shown(1, UnitSystem.US), 1e-12);
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void aPrintedResultIsRoundedToFiveFigures(UnitSystem units) {
    FigureOutput ratio = new FigureOutput("ratio", "ratio", FigureUnit.RATIO);
    assertEquals("1.2346", new FigureAnswer.Quantity(ratio, 1.23456).text(units));
    assertEquals("0.000012346", new FigureAnswer.Quantity(ratio, 1.23456e-5).text(units));
    assertEquals("1234567", new FigureAnswer.Quantity(ratio, 1234567.4).text(units));
    assertEquals("0", new FigureAnswer.Quantity(ratio, -0.0).text(units));
  }

  /** Run with {@code -Dtrammel.docs.write=true} to write the document anew. */
  @Test
  void theDocumentInTheRepositoryIsThatOfTheFigures() throws IOException {
    String wanted = FigureDocumentation.markdown();
    if (Boolean.getBoolean("trammel.docs.write")) {
      Files.createDirectories(FORMULAS.getParent());
      Files.writeString(FORMULAS, wanted);
    }
    assertEquals(
        wanted,
        Files.readString(FORMULAS),
        "docs/formulas.md is out of date: run the tests once with -Dtrammel.docs.write=true");
  }

  private static Map<String, String> words(String example) {
    Map<String, String> words = new LinkedHashMap<>();
    for (String word : example.split(" ")) {
      int equals = word.indexOf('=');
      words.put(word.substring(0, equals), word.substring(equals + 1));
    }
    return words;
  }
}
