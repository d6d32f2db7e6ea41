package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The launcher for Windows, run by the command interpreter of Wine. In place of Java there is a
 * program that prints its arguments and ends with a status that is asked for. A percent sign in a
 * name is not tried: Wine reads it anew in the value of a variable, which Windows does not.
 */
class WindowsLauncherIT {
  private static final String COMPILER = "x86_64-w64-mingw32-gcc";
  private static final Path SOURCE = Path.of("src", "test", "c", "stand_in_java.c");

  @TempDir static Path folder;
  private static InstalledCopy copy;
  private static Path jdk;

  @BeforeAll
  static void prepare() throws Exception {
    assumeTrue(isThere("wine"), "skipped: Wine (Debian: wine, wine64) is not installed");
    assumeTrue(isThere(COMPILER), "skipped: " + COMPILER + " is not installed");
    copy = InstalledCopy.unpackedInto(folder.resolve("copy"));
    jdk = folder.resolve("jdk 17 & co");
    Path java = Files.createDirectories(jdk.resolve("bin")).resolve("java.exe");
    Launch.Ended compiled =
        Launch.of(COMPILER, "-municode", "-Os", "-o", java.toString(), SOURCE.toString()).run();
    assertEquals(0, compiled.exitCode(), compiled.err());
    Launch.Ended booted = wine("wineboot").run("-i");
    assumeTrue(booted.exitCode() == 0, "skipped: Wine does not start: " + booted.err());
  }

  /** Nothing of Wine stays: neither its server for the folder above nor its links out of it. */
  @AfterAll
  static void endWine() throws Exception {
    Path drives = folder.resolve("prefix/dosdevices");
    if (Files.isDirectory(drives)) {
      wine("wineserver").run("-k");
      try (DirectoryStream<Path> links = Files.newDirectoryStream(drives)) {
        for (Path link : links) {
          Files.delete(link);
        }
      }
    }
  }

  private static boolean isThere(String program) {
    for (String place : System.getenv("PATH").split(":")) {
      if (Files.isExecutable(Path.of(place, program))) {
        return true;
      }
    }
    return false;
  }

  private static Launch wine(String... program) {
    return Launch.of(program)
        .without("JAVA_HOME")
        .with("HOME", folder.toString())
        .with("WINEPREFIX", folder.resolve("prefix").toString())
        .with("WINEDEBUG", "-all")
        .with("WINEDLLOVERRIDES", "winemenubuilder.exe=d;mscoree=d;mshtml=d")
        .with("LC_ALL", "C.UTF-8");
  }

  /** Started in its own folder, as whoever opens a window there does. */
  private static Launch launcher(Path home) {
    return wine("wine", "cmd", "/c", "trammel.cmd")
        .in(home.resolve("bin"))
        .with("JAVA_HOME", windows(jdk));
  }

  /** The whole of this machine is drive Z there. */
  private static String windows(Path path) {
    return "Z:" + path.toAbsolutePath().toString().replace('/', '\\');
  }

  /** A folder that holds what the launcher looks for. */
  private static Path home(String name) throws IOException {
    Path home = folder.resolve(name);
    if (!Files.exists(home)) {
      Files.createDirectories(home.resolve("lib"));
      Files.createFile(home.resolve("lib/trammel-app.jar"));
      Path cmd = Files.createDirectory(home.resolve("bin")).resolve("trammel.cmd");
      Files.copy(copy.home().resolve("bin/trammel.cmd"), cmd);
    }
    return home;
  }

  private static List<String> lines(String text) {
    return text.lines().map(String::strip).toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"plain", "Tools & dies (Gerard's)", "wow! ^ you!", "Größe Ωmega; a=b, c", "a  b"})
  void aCopyRunsInAFolderWhateverItsNameHas(String name) throws Exception {
    Path home = home(name);
    Launch.Ended ended = launcher(home).run("quote", "job.yaml", "--full");
    assertEquals(0, ended.exitCode(), ended.err());
    List<String> arguments = lines(ended.out());
    assertEquals(
        List.of("-jar", windows(home) + "\\lib\\trammel-app.jar", "quote", "job.yaml", "--full"),
        arguments.subList(arguments.size() - 5, arguments.size()));
    assertTrue(arguments.contains("-Dtrammel.home=" + windows(home)), ended.out());
    assertTrue(arguments.contains("-Dtrammel.launcher=unwatched"), ended.out());
    assertFalse(ended.out().contains("colour"), "a window may not show them");
  }

  @Test
  void wordsWithBlanksAndSignsArriveAsTheyWereGiven() throws Exception {
    Path asked = folder.resolve("asked.cmd");
    Files.writeString(
        asked,
        "@echo off\r\ncall \""
            + windows(home("Tools & dies (Gerard's)"))
            + "\\bin\\trammel.cmd\" quote \"job 7 & co (2).yaml\" \"wow!.yaml\" \"\" --x=1\r\n");
    Launch.Ended ended =
        wine("wine", "cmd", "/c", windows(asked)).with("JAVA_HOME", windows(jdk)).run();
    List<String> arguments = lines(ended.out());
    assertEquals(
        List.of("quote", "job 7 & co (2).yaml", "wow!.yaml", "", "--x=1"),
        arguments.subList(arguments.size() - 5, arguments.size()));
  }

  /** Trammel ends with 100 and what it says; whatever else ends Java is 3. */
  @ParameterizedTest
  @CsvSource({"100, 0", "101, 1", "102, 2", "103, 3", "0, 3", "1, 3", "2, 3", "99, 3", "255, 3"})
  void whatEndsJavaIsToldFromWhatTrammelSays(String status, int exitCode) throws Exception {
    Launch.Ended ended = launcher(home("plain")).with("STAND_IN_STATUS", status).run("check");
    assertEquals(exitCode, ended.exitCode(), ended.err());
    boolean ours = status.startsWith("10");
    assertEquals(!ours, ended.err().contains("Java ended with status " + status), ended.err());
    assertEquals(!ours, lines(ended.err()).contains("-version"), "it is asked what it is");
  }

  @ParameterizedTest
  @CsvSource({"11.0.22, 2", "1.8.0_392, 2", "9, 2", "17, 0", "17.0.15, 0", "21.0.1, 0", "25, 0"})
  void aJavaThatIsTooOldIsRefusedWithItsVersion(String version, int refused) throws Exception {
    Path other = javaOf(version);
    Launch.Ended ended =
        launcher(home("wow! ^ you!")).with("JAVA_HOME", windows(other)).run("--version");
    assertEquals(refused == 0 ? 0 : 3, ended.exitCode(), ended.err());
    assertEquals(refused != 0, ended.err().contains("is Java " + version + ":"), ended.err());
    assertEquals(refused != 0, ended.out().isEmpty(), ended.out());
  }

  private static Path javaOf(String version) throws IOException {
    Path other = folder.resolve("jdk (" + version + ")");
    if (!Files.exists(other)) {
      Files.createDirectories(other.resolve("bin"));
      Files.copy(jdk.resolve("bin/java.exe"), other.resolve("bin/java.exe"));
      Files.writeString(
          other.resolve("release"),
          "IMPLEMENTOR=\"some one\"\nJAVA_VERSION=\"" + version + "\"\nOS_ARCH=\"x86_64\"\n");
    }
    return other;
  }

  @Test
  void withoutJavaHomeTheOneOnThePathRuns() throws Exception {
    Launch bare = launcher(home("plain")).without("JAVA_HOME");
    Launch.Ended none = bare.run("--version");
    assertEquals(3, none.exitCode(), none.out());
    assertTrue(none.err().contains("there is none"), none.err());
    Map<String, String> ends = Map.of("17.0.15", "--version", "11.0.22", "");
    for (Map.Entry<String, String> end : ends.entrySet()) {
      String bin = windows(javaOf(end.getKey()).resolve("bin"));
      Launch.Ended found = bare.with("WINEPATH", bin).run("--version");
      List<String> said = new ArrayList<>(lines(found.out()));
      said.add(0, "");
      assertEquals(end.getValue(), said.get(said.size() - 1), found.err());
    }
  }

  @Test
  void aWrongJavaHomeIsNamedAndQuotationMarksAboutItAreTakenOff() throws Exception {
    Launch launcher = launcher(home("plain"));
    Path gone = folder.resolve("gone (x86)");
    Launch.Ended wrong = launcher.with("JAVA_HOME", windows(gone)).run("--version");
    assertEquals(3, wrong.exitCode());
    assertTrue(wrong.err().contains("JAVA_HOME is \"" + windows(gone) + "\""), wrong.err());
    Launch.Ended quoted = launcher.with("JAVA_HOME", '"' + windows(jdk) + '"').run("--version");
    assertEquals(0, quoted.exitCode(), quoted.err());
  }

  @Test
  void aCopyWithAJavaOfItsOwnTakesThatAndOneThatIsNotWholeSaysSo() throws Exception {
    Path bundled = home("bundled & whole");
    Path own = Files.createDirectories(bundled.resolve("runtime/bin")).resolve("java.exe");
    Files.copy(jdk.resolve("bin/java.exe"), own);
    Launch launcher = launcher(bundled).with("JAVA_HOME", windows(folder.resolve("gone")));
    assertEquals(0, launcher.run("--version").exitCode());
    Files.delete(bundled.resolve("lib/trammel-app.jar"));
    Launch.Ended broken = launcher.run("--version");
    assertEquals(3, broken.exitCode());
    assertTrue(broken.err().contains("trammel-app.jar\" is missing"), broken.err());
  }
}
