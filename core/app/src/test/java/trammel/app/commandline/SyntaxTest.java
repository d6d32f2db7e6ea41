package trammel.app.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which words a command takes, and what it answers to others. */
class SyntaxTest {
  private static final Syntax COMPARE =
      Syntax.of("Variants side by side.")
          .argument("JOB", "The job file.")
          .arguments("MORE", 0, 2, "Further job files.")
          .option("--out", "DIR", "Where to write.")
          .repeatableOption("--vary", "FIELD=A,B", "What to vary.")
          .flag("--json", "For a machine.");

  private static Arguments read(String line) {
    return COMPARE.read(Arrays.asList(line.split(" ")));
  }

  @Test
  void argumentsGoByPlaceAndOptionsByNameInAnyOrder() {
    for (String line :
        List.of(
            "--out here --json a.yaml b.yaml",
            "a.yaml --json b.yaml --out here",
            "a.yaml b.yaml --out=here --json")) {
      Arguments given = read(line);
      assertEquals("a.yaml", given.argument("JOB"), line);
      assertEquals(List.of("b.yaml"), given.arguments("MORE"), line);
      assertEquals(Optional.of("here"), given.value("--out"), line);
      assertTrue(given.has("--json"), line);
    }
  }

  @Test
  void whatIsLeftOutIsEmpty() {
    Arguments given = read("a.yaml");
    assertEquals(List.of(), given.arguments("MORE"));
    assertEquals(Optional.empty(), given.optionalArgument("MORE"));
    assertEquals(Optional.empty(), given.value("--out"));
    assertEquals(List.of(), given.values("--vary"));
    assertFalse(given.has("--json"));
  }

  @Test
  void aRepeatableOptionKeepsItsValuesInOrder() {
    Arguments given = read("a.yaml --vary bars=inboard,outboard --vary=spring=coil,air");
    assertEquals(List.of("bars=inboard,outboard", "spring=coil,air"), given.values("--vary"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-3", "-.5", "-1/2", "-", "key=value", "@file"})
  void numbersBelowZeroAndOtherOddWordsAreArguments(String word) {
    assertEquals(word, read(word).argument("JOB"));
    assertEquals(Optional.of(word), read("a.yaml --out " + word).value("--out"));
  }

  @Test
  void afterTwoDashesEveryWordIsAnArgument() {
    Arguments given = read("--json -- --out -h");
    assertEquals("--out", given.argument("JOB"));
    assertEquals(List.of("-h"), given.arguments("MORE"));
    assertEquals(Optional.empty(), given.value("--out"));
  }

  @Test
  void anEmptyWordIsAWord() {
    assertEquals("", COMPARE.read(List.of("")).argument("JOB"));
    assertEquals(Optional.of(""), COMPARE.read(List.of("a", "--out=")).value("--out"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "--json | JOB is missing: The job file.",
        "a b c d | 'd' is one word too many.",
        "a --oot x | There is no option '--oot'. Did you mean '--out'?",
        "a --colour | There is no option '--colour'.",
        "a -o x | There is no option '-o'.",
        "a --out | --out needs a value: --out DIR.",
        "a --out --json | --out needs a value: --out DIR.",
        "a --out x --out y | --out is given twice; give it once.",
        "a --json --json | --json is given twice; give it once.",
        "a --json=yes | --json takes no value, but '--json=yes' is given."
      })
  void otherWordsAreAnsweredWithWhatToChange(String line, String answer) {
    String message = assertThrows(MisuseException.class, () -> read(line)).getMessage();
    assertEquals(answer, message);
  }

  @Test
  void tooFewOfSeveralAreCounted() {
    Syntax several = Syntax.of("x").arguments("JOB", 2, 5, "The job files.");
    assertEquals(
        "JOB is missing: The job files. At least 2 are needed, 1 given.",
        assertThrows(MisuseException.class, () -> several.read(List.of("a"))).getMessage());
  }

  @ParameterizedTest
  @CsvSource({"a --help, true", "-h, true", "--bad -h, true", "-- --help, false", "help, false"})
  void helpIsAskedForByItsOption(String line, boolean asked) {
    assertEquals(asked, Syntax.asksForHelp(Arrays.asList(line.split(" "))));
  }

  @Test
  void nothingFollowsArgumentsThatVaryInNumber() {
    assertThrows(IllegalArgumentException.class, () -> COMPARE.argument("LAST", "Too late."));
  }

  @Test
  void anOptionIsDeclaredOnce() {
    assertThrows(IllegalArgumentException.class, () -> COMPARE.flag("--out", "Again."));
  }

  @Test
  void aCommandCannotAskForWhatItDoesNotDeclare() {
    Arguments given = read("a.yaml");
    assertThrows(IllegalStateException.class, () -> given.value("--units"));
    assertThrows(IllegalStateException.class, () -> given.argument("FILE"));
  }
}
