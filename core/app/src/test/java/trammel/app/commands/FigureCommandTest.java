package trammel.app.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trammel.app.CommandRun;
import trammel.planning.figures.Figure;
import trammel.planning.figures.Figures;
import trammel.reading.fields.Field;
import trammel.reading.quantity.UnitSystem;

class FigureCommandTest {

  static List<Figure> figures() {
    return Figures.all();
  }

  private static CommandRun run(String... words) {
    String[] all = new String[words.length + 1];
    all[0] = "figure";
    System.arraycopy(words, 0, all, 1, words.length);
    return CommandRun.of(all);
  }

  /**
   * Values that are known from outside, each with where from. The tolerance is a share of the value
   * where it ends with %, and in the unit of the value where it does not.
   */
  @ParameterizedTest(name = "{0} {1} {2} = {3}")
  @CsvFileSource(resources = "/figures/check-values.csv", delimiter = '|', numLinesToSkip = 1)
  void aFigureGivesTheKnownValue(
      String name, String inputs, String result, String expected, String tolerance, String source) {
    assertFalse(source.isBlank());
    List<String> words = new ArrayList<>(List.of(name));
    words.addAll(List.of(inputs.split(" ")));
    words.add("--json");
    CommandRun run = run(words.toArray(new String[0]));
    assertEquals(0, run.exitCode(), run.err());
    JsonNode value = result(JsonMapper.shared().readTree(run.out()), result);
    if (value.isString()) {
      assertEquals(expected, value.asString());
      return;
    }
    double wanted = Double.parseDouble(expected);
    double allowed =
        tolerance.endsWith("%")
            ? Math.abs(wanted)
                * Double.parseDouble(tolerance.substring(0, tolerance.length() - 1))
                / 100
            : Double.parseDouble(tolerance);
    assertEquals(wanted, value.asDouble(), allowed + 1e-12, source);
  }

  private static JsonNode result(JsonNode document, String key) {
    for (JsonNode result : document.get("results")) {
      if (result.get("key").asString().equals(key)) {
        return result.get("value");
      }
    }
    throw new AssertionError("no result " + key + " in " + document);
  }

  /**
   * AWS A3.0 calls them covered electrodes; a bar is a link of the axle, a stick is for the saw.
   */
  @Test
  void aBarIsNoStockAndAStickNoElectrode() {
    String list = run().out();
    assertTrue(list.contains("covered electrode"), list);
    assertFalse(list.matches("(?is).*\\b(stick electrode|(round|flat|solid) bar)s?\\b.*"), list);
  }

  @Test
  void withoutANameAllFiguresAreListed() {
    CommandRun run = run();
    assertEquals(0, run.exitCode());
    for (Figure figure : figures()) {
      assertTrue(run.out().contains("  " + figure.name() + " "), figure.name());
    }
    assertEquals(
        figures().size(), JsonMapper.shared().readTree(run("--json").out()).get("figures").size());
  }

  @ParameterizedTest
  @MethodSource("figures")
  void withANameAloneItsInputsAreListed(Figure figure) {
    CommandRun run = run(figure.name());
    assertEquals(0, run.exitCode(), run.err());
    for (Field<?> input : figure.inputs()) {
      assertTrue(run.out().contains("  " + input.key() + ": "), input.key());
    }
    assertTrue(run.out().contains("Source: "), run.out());
    JsonNode json = JsonMapper.shared().readTree(run(figure.name(), "--json").out());
    assertEquals(figure.inputs().size(), json.get("inputs").size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "tube-weight outside=1.75 wall=0.120 | 2.0912 lb/ft",
        "tube-weight outside=44.45 wall=3.048 length=1000 --units metric | 3.1121 kg/m",
        "tube-weight outside=44.45mm wall=0.3048cm --units us | 2.0912 lb/ft",
        "sales-tax rate=7.25 amounts=123.45 | 8.95",
        "column outside=1.75 wall=.12 length=24 yield=60ksi | johnson",
        "critical-speed outside=3 wall=0.083 length=50 | 7923.7 rpm"
      })
  void aResultIsPrintedWithItsUnit(String words, String text) {
    CommandRun run = run(words.split(" "));
    assertEquals(0, run.exitCode(), run.err());
    assertTrue(run.out().contains(text), run.out());
    assertTrue(run.out().contains("Formula: ") && run.out().contains("Source: "), run.out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "tube-wieght | tube-weight",
        "no-such-thing | trammel figure",
        "tube-weight outside | no input",
        "tube-weight =3 | no input",
        "tube-weight outside=1.75 | wall",
        "tube-weight outside=1.75 wal=0.120 | Did you mean wall",
        "tube-weight outside=1.75 wall=0.120 colour=red | colour",
        "tube-weight outside=1.75 outside=2 wall=0.120 | twice",
        "tube-weight outside=1.75 wall=wide | wall",
        "tube-weight outside=1.75 wall= | wall",
        "tube-weight outside=1.75 wall=-0.120 | wall",
        "tube-weight outside=1.75 wall=1 | wall",
        "tube-weight outside=1.75 wall=0.120lb | wall",
        "tube-weight outside=NaN wall=0.120 | outside",
        "tube-weight outside=1e999 wall=0.120 | outside",
        "bolt-strength thread=thick | thread",
        "bolt-strength thread=M12x1.75 | inch thread",
        "bolt-strength thread=1/2-20 grade=9 | grade",
        "stick-cut stick=240 pieces=60y4 | pieces",
        "stick-cut stick=240 pieces=60x0 | 0 times",
        "stick-cut stick=240 pieces=300x1 | longer stock",
        "pert low=4 likely=3 high=14 | low",
        "pert-sum tasks=3,4 | tasks",
        "pert-sum tasks=5,4,3 | tasks",
        "sales-tax rate=7.25 amounts=1.2.3 | amounts",
        "sales-tax rate=7.25 amounts=0.005 | decimals",
        "groove-weld groove=vee thickness=1/4 | angle",
        "lateral-bar-arc across=2 travel=3 | longer bar",
        "isolation natural_cpm=100 forcing_cpm=110 | softer spring",
        "tube-weight outside=1.75 wall=0.120 --units feet | us or metric"
      })
  void nonsenseIsRefusedWithWhatToDo(String words, String message) {
    CommandRun run = run(words.split(" "));
    assertEquals(2, run.exitCode(), run.err());
    assertEquals("", run.out());
    assertTrue(run.err().contains(message), run.err());
    assertFalse(run.err().contains("Exception"), run.err());
  }

  /** Whatever stands behind a key, there is an answer or a refusal, never a fault or no number. */
  @ParameterizedTest
  @MethodSource("figures")
  void noInputBringsAFigureDown(Figure figure) {
    String[] example = figure.example().split(" ");
    for (int i = 0; i < example.length; i++) {
      String key = example[i].substring(0, example[i].indexOf('=') + 1);
      for (String nonsense :
          List.of("", "x", "-1", "0", "1e9", "1/0", "NaN", "1,,2", "true", "+")) {
        String[] words = example.clone();
        words[i] = key + nonsense;
        assertAnswered(figure, words);
      }
    }
  }

  /** The ends of every range, one after the other and all at once. */
  @ParameterizedTest
  @MethodSource("figures")
  void theEndsOfEveryRangeAreAnswered(Figure figure) {
    String[] example = figure.example().split(" ");
    String[] least = example.clone();
    String[] greatest = example.clone();
    for (int i = 0; i < example.length; i++) {
      String key = example[i].substring(0, example[i].indexOf('='));
      for (Field<?> input : figure.inputs()) {
        if (input.key().equals(key) && input.min().isPresent()) {
          String[] ends = ends(input);
          least[i] = key + "=" + ends[0];
          greatest[i] = key + "=" + ends[1];
          String[] one = example.clone();
          one[i] = least[i];
          assertAnswered(figure, one);
          one[i] = greatest[i];
          assertAnswered(figure, one);
        }
      }
    }
    assertAnswered(figure, least);
    assertAnswered(figure, greatest);
  }

  /** Both ends as the listing of the inputs prints them: "a length from 1/8 in to 19 in". */
  private static String[] ends(Field<?> input) {
    String allowed = input.allowed(UnitSystem.US);
    int from = allowed.indexOf(" from ");
    int to = allowed.indexOf(" to ", from);
    return new String[] {allowed.substring(from + 6, to), allowed.substring(to + 4)};
  }

  private static void assertAnswered(Figure figure, String[] inputs) {
    String[] words = new String[inputs.length + 1];
    words[0] = figure.name();
    System.arraycopy(inputs, 0, words, 1, inputs.length);
    CommandRun run = run(words);
    String what = String.join(" ", words) + "\n" + run.err();
    assertTrue(run.exitCode() == 0 || run.exitCode() == 2, what);
    assertTrue(run.exitCode() == 0 || !run.err().isBlank(), what);
    assertFalse(run.out().contains("NaN") || run.out().contains("Infinity"), what);
  }
}
