package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A copy that is started without the shell launcher: by Java alone, and by the text of the launcher
 * for Windows, which {@link WindowsLauncherIT} runs where Wine is.
 */
class AnySystemIT {
  private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");

  @TempDir static Path folder;
  private static InstalledCopy copy;

  @BeforeAll
  static void unpack() throws IOException {
    copy = InstalledCopy.unpackedInto(folder.resolve("shop's copy ½"));
  }

  /** Java alone finds the catalogs beside its own jar, in a folder with blanks and signs. */
  @ParameterizedTest
  @CsvSource({"--version, 0", "layouts, 0", "check, 1", "nonsense, 2"})
  void javaAloneRunsACopyAndEndsWithItsExitCodes(String command, int exitCode) throws Exception {
    List<String> words = new ArrayList<>(List.of(JAVA.toString(), "-jar"));
    words.add(copy.home().resolve("lib/trammel-app.jar").toString());
    words.add(command);
    if (command.equals("check")) {
      words.add(copy.demoJob("pickup").toString());
    }
    File out = folder.resolve("out.txt").toFile();
    ProcessBuilder builder =
        new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(out);
    builder.environment().remove("JAVA_HOME");
    builder.environment().put("PATH", "");
    builder.environment().put("LC_ALL", "C.UTF-8");
    Process process = builder.start();
    assertTrue(process.waitFor(2, TimeUnit.MINUTES));
    assertEquals(exitCode, process.exitValue(), Files.readString(out.toPath()));
  }

  private static String windows() throws IOException {
    return Files.readString(copy.home().resolve("bin/trammel.cmd"));
  }

  @Test
  void theLauncherForWindowsHasItsLineEnds() throws IOException {
    String text = windows();
    assertEquals(text.replace("\r\n", "\n").lines().count(), count(text, "\r\n"));
    assertTrue(text.chars().allMatch(c -> c < 127), "only ASCII: code pages differ");
  }

  private static long count(String text, String part) {
    return (text.length() - text.replace(part, "").length()) / part.length();
  }

  /** What it starts is there, and paths with blanks are in quotation marks. */
  @Test
  void theLauncherForWindowsStartsWhatIsThere() throws IOException {
    String text = windows();
    Matcher jar = Pattern.compile("-jar \"%TRAMMEL_HOME%\\\\(\\S+)\" %\\*").matcher(text);
    assertTrue(jar.find(), text);
    assertTrue(Files.exists(copy.home().resolve(jar.group(1).replace('\\', '/'))));
    assertTrue(text.contains("in (\"%~dp0..\") do set \"TRAMMEL_HOME=%%~fH\""));
    assertTrue(text.contains("-Dtrammel.home=\"%TRAMMEL_HOME%\""));
    assertFalse(
        Pattern.compile("(?<!\")%TRAMMEL_(JAVA|JDK|HOME)%")
            .matcher(text.replace("-Dtrammel.home=\"", "\"").replaceAll("set \"[A-Z_]+=", "\""))
            .find(),
        "unquoted");
  }

  /** Within a block of brackets a name with a bracket in it would end the block. */
  @Test
  void theLauncherForWindowsHasNoBlocksAndJumpsToWhatIsThere() throws IOException {
    List<String> lines = windows().lines().toList();
    assertTrue(lines.stream().noneMatch(line -> line.strip().endsWith("(")), lines.toString());
    Matcher jumps = Pattern.compile("goto (\\w+)").matcher(windows());
    while (jumps.find()) {
      assertTrue(lines.contains(":" + jumps.group(1)), jumps.group());
    }
    assertTrue(windows().contains("DisableDelayedExpansion"), "an exclamation mark stays one");
  }

  /** Trammel ends with 100 and what it says; anything else is 3, never "a check says stop". */
  @Test
  void theLauncherForWindowsTakesTheHundredOffAgain() throws IOException {
    String text = windows();
    assertTrue(text.contains("-Dtrammel.launcher=unwatched"));
    for (int code = 0; code <= 3; code++) {
      assertTrue(
          text.contains("if \"%TRAMMEL_STATUS%\"==\"" + (100 + code) + "\" exit /b " + code), text);
    }
    assertTrue(text.replace("\r", "").contains("-version\nexit /b 3\n"), "whatever else");
    List<String> lines =
        text.lines()
            .filter(line -> line.startsWith("  -D") || line.startsWith("\"%TRAMMEL_JAVA%\" -D"))
            .toList();
    assertTrue(lines.stream().limit(3).allMatch(line -> line.endsWith("^")), lines.toString());
  }

  /** What the launcher passes is what the program reads. */
  @Test
  void aLauncherThatIsNotWatchedGetsTheHundred() throws Exception {
    Process process =
        new ProcessBuilder(
                JAVA.toString(),
                "-Dtrammel.launcher=unwatched",
                "-Dtrammel.home=" + copy.home(),
                "-jar",
                copy.home().resolve("lib/trammel-app.jar").toString(),
                "--version")
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("version.txt").toFile())
            .start();
    assertTrue(process.waitFor(1, TimeUnit.MINUTES));
    assertEquals(100, process.exitValue());
  }
}
