package trammel.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;

/** How a run ends, and what it says, for everything that can be typed after {@code trammel}. */
class InvocationTest {
  private final SampleCommands commands = new SampleCommands();
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    Screen screen = new Screen(new PrintWriter(out), new PrintWriter(err), false, false);
    return new Invocation(commands, screen).run(arguments).code();
  }

  @ParameterizedTest
  @EnumSource(ExitCode.class)
  void aCommandDecidesTheExitCode(ExitCode exitCode) {
    assertEquals(exitCode.code(), run("judge", exitCode.name()));
    assertEquals("judged\n", out.toString());
    assertEquals("", err.toString());
  }

  @ParameterizedTest
  @CsvSource({"DONE, 0", "CHECK_SAYS_STOP, 1", "BAD_INPUT, 2", "FAULT, 3"})
  void exitCodesKeepTheNumbersThatScriptsRelyOn(ExitCode exitCode, int number) {
    assertEquals(number, exitCode.code());
  }

  @Test
  void onlyTheCommandThatIsAskedForIsCreated() {
    run("judge", "DONE");
    assertEquals(List.of("judge"), commands.created);
  }

  @ParameterizedTest
  @ValueSource(strings = {"--help", "-h", "help", "--version", "-V"})
  void helpAndVersionCreateNoCommand(String argument) {
    assertEquals(0, run(argument));
    assertEquals(List.of(), commands.created);
    assertEquals("", err.toString());
  }

  @Test
  void theHelpListsEveryCommandAndEveryExitCode() {
    run("--help");
    for (CommandTable.Entry entry : commands.entries()) {
      assertTrue(
          Pattern.compile("(?m)^  " + entry.name() + " +" + Pattern.quote(entry.summary()) + "$")
              .matcher(out.toString())
              .find(),
          out.toString());
    }
    for (ExitCode exitCode : ExitCode.values()) {
      assertTrue(out.toString().contains("  " + exitCode.code() + "  " + exitCode.meaning()));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"--help", "write --help", "write -h", "help write"})
  void helpFitsIntoAHundredColumns(String line) {
    assertEquals(0, run(line.split(" ")));
    assertTrue(out.toString().contains("Usage: trammel"));
    assertTrue(out.toString().lines().allMatch(text -> text.length() <= 100), out.toString());
  }

  @Test
  void theHelpOfACommandNamesItsOptionsAndTheExitCodes() {
    run("write", "--help");
    for (String expected :
        List.of("trammel write", "word by word", "--units", "--json", "--out", "--help", "Exit")) {
      assertTrue(out.toString().contains(expected), expected + " in " + out);
    }
  }

  @Test
  void noArgumentsIsBadUsageAnsweredWithTheHelp() {
    assertEquals(2, run());
    assertEquals("", out.toString());
    assertTrue(err.toString().contains("Commands:"));
  }

  @ParameterizedTest
  @CsvSource({"jugde, judge", "wirte, write", "refus, refuse", "WRITE, write"})
  void aMistypedCommandIsAnsweredWithTheOneMeant(String typed, String meant) {
    assertEquals(2, run(typed));
    assertTrue(err.toString().contains("There is no command '" + typed + "'"), err.toString());
    assertTrue(err.toString().contains("Did you mean '" + meant + "'?"), err.toString());
  }

  @Test
  void aWordThatIsNearNoCommandGetsNoGuess() {
    assertEquals(2, run("spreadsheet"));
    assertFalse(err.toString().contains("Did you mean"));
    assertTrue(err.toString().contains("'trammel --help' lists the commands."));
  }

  @Test
  void anOptionBeforeTheCommandIsExplained() {
    assertEquals(2, run("--units", "us", "write"));
    assertTrue(err.toString().contains("give the command first"), err.toString());
  }

  @Test
  void aMistypedOptionIsAnsweredWithTheOneMeant() {
    assertEquals(2, run("write", "--unit", "us"));
    assertTrue(err.toString().contains("--unit"), err.toString());
    assertTrue(err.toString().contains("Did you mean '--units'?"), err.toString());
    assertTrue(err.toString().contains("'trammel write --help'"), err.toString());
  }

  @Test
  void aMissingArgumentIsBadUsage() {
    assertEquals(2, run("judge"));
    assertTrue(err.toString().contains("CODE"), err.toString());
  }

  @Test
  void helpIsGivenEvenIfArgumentsAreMissing() {
    assertEquals(0, run("judge", "--help"));
  }

  @ParameterizedTest
  @CsvSource({"us, US", "metric, METRIC"})
  void unitsAreRead(String word, String units) {
    assertEquals(0, run("write", "--units", word));
    assertTrue(out.toString().contains("units Optional[" + units + "]"), out.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"imperial", "US", "mm", ""})
  void anyOtherUnitSystemIsRefusedWithWhatIsAllowed(String word) {
    assertEquals(2, run("write", "--units", word));
    assertTrue(err.toString().contains("us or metric"), err.toString());
    assertEquals("", out.toString());
  }

  @Test
  void withoutOptionsTheUnitsAreTheJobsAndNothingIsFiled() {
    assertEquals(0, run("write"));
    assertTrue(out.toString().startsWith("units Optional.empty, json false"), out.toString());
    assertTrue(out.toString().contains("folder Optional.empty"), out.toString());
  }

  @Test
  void anArgumentThatStartsWithAnAtSignIsNoFileOfArguments(@TempDir Path folder)
      throws IOException {
    Path file = Files.writeString(folder.resolve("words"), "one two");
    assertEquals(0, run("write", "@" + file));
    assertTrue(out.toString().contains("[@" + file + "]"), out.toString());
  }

  @Test
  void theFolderForFilesNeedNotBeThereAndIsMadeWithItsFiles(@TempDir Path folder) {
    Path wanted = folder.resolve("jobs/2041 pickup");
    assertEquals(0, run("write", "--out", wanted.toString()));
    assertFalse(Files.exists(wanted), "no file was written");
    assertTrue(out.toString().contains("folder Optional[" + wanted + "]"), out.toString());
  }

  @Test
  void aFileIsNotTakenForTheFolderOfFiles(@TempDir Path folder) throws IOException {
    Path file = Files.createFile(folder.resolve("quote"));
    assertEquals(2, run("write", "--out", file.toString()));
    assertTrue(err.toString().contains(file + ", which is a file"), err.toString());
  }

  @Test
  void aFolderWithinAFileIsRefusedByTheNameOfTheFile(@TempDir Path folder) throws IOException {
    Path file = Files.createFile(folder.resolve("quote"));
    assertEquals(2, run("write", "--out", file.resolve("inside").toString()));
    assertTrue(err.toString().contains(file + " is a file"), err.toString());
  }

  @Test
  void replacingWithoutAFolderIsRefused() {
    assertEquals(2, run("write", "--replace"));
    assertTrue(err.toString().contains("--replace goes with --out"), err.toString());
  }

  @ParameterizedTest
  @CsvSource({
    "own-type, 2, The track (-3 mm) must be above 0 mm.",
    "input, 2, The job has no tyre: give measured.tyre.",
    "no-permission, 3, Cannot write quotes: permission denied.",
    "disk, 3, No space left on device"
  })
  void whatGoesWrongIsSaidWithoutAStackTrace(String how, int exitCode, String message) {
    assertEquals(exitCode, run("refuse", how));
    assertTrue(err.toString().contains(message), err.toString());
    assertNoStackTrace();
  }

  @ParameterizedTest
  @CsvSource({
    "defect, IllegalStateException",
    "library, NumberFormatException",
    "endless, StackOverflowError"
  })
  void aFaultInsideLeavesAReportAndNoStackTraceOnScreen(String how, String kind)
      throws IOException {
    assertEquals(3, run("refuse", how));
    assertNoStackTrace();
    Matcher path = Pattern.compile("\\S*trammel-fault-\\S*\\.txt").matcher(err.toString());
    assertTrue(path.find(), err.toString());
    Path report = Path.of(path.group());
    String text = Files.readString(report);
    Files.delete(report);
    assertTrue(text.contains(kind), text);
    assertTrue(text.contains("at trammel.app.SampleCommands$Refuse"), text);
    assertTrue(text.contains("  refuse\n  " + how), text);
  }

  private void assertNoStackTrace() {
    assertFalse(err.toString().contains("\tat "), err.toString());
    assertEquals("", out.toString());
  }
}
