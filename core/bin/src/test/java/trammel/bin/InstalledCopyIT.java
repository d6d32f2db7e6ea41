package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The copy that a user unpacks from the zip, in a folder whose name is not kind to scripts. */
class InstalledCopyIT {
  private static final String VERSION_LINE = "trammel " + Workbench.version() + "\n";

  @TempDir static Path shop;
  private static Path home;
  private static Path launcher;

  @TempDir Path folder;

  @BeforeAll
  static void unpack() throws IOException {
    home = Workbench.unpack(shop.resolve("Tools & dies (Gérard's)"));
    launcher = home.resolve("bin/trammel");
  }

  private static Launch plain(Path program) {
    return Launch.of(program).with("TRAMMEL_CLASS_ARCHIVE", "off");
  }

  @Test
  void theVersionIsTheOneInTheNameOfTheZip() throws Exception {
    assertEquals(new Launch.Ended(0, VERSION_LINE, ""), plain(launcher).run("--version"));
  }

  @Test
  void theFirstRunPreparesAFasterStartAndTheNextJustRuns() throws Exception {
    Path copy = Workbench.unpack(folder.resolve("Tools & dies (Gérard's)"));
    Launch launch = Launch.of(copy.resolve("bin/trammel")).with("HOME", folder.toString());
    Launch.Ended first = launch.run("--version");
    assertEquals(VERSION_LINE, first.out());
    assertTrue(first.err().startsWith("Preparing Trammel to start faster"), first.err());
    assertEquals(1, first.err().lines().count(), first.err());
    assertEquals(new Launch.Ended(0, VERSION_LINE, ""), launch.run("--version"));
  }

  @Test
  void helpGoesToStandardOutputWithoutColourCodes() throws Exception {
    Launch.Ended help = plain(launcher).run("--help");
    assertEquals(0, help.exitCode());
    assertEquals("", help.err());
    assertTrue(help.out().startsWith("Usage: trammel"), help.out());
    assertFalse(help.out().contains("\u001b"), help.out());
  }

  @Test
  void theExitCodeOfACommandPassesThrough() throws Exception {
    Launch.Ended unknown = plain(launcher).run("no-such-command");
    assertEquals(2, unknown.exitCode());
    assertEquals("", unknown.out());
  }

  @Test
  void itRunsFromAnotherFolderByARelativePath() throws Exception {
    Path relative = folder.toRealPath().relativize(launcher.toRealPath());
    assertEquals(VERSION_LINE, plain(relative).in(folder).run("--version").out());
  }

  @Test
  void itRunsThroughAChainOfRelativeLinks() throws Exception {
    Path bin = Files.createDirectories(folder.resolve("my bin/sub"));
    Path near = Files.createSymbolicLink(folder.resolve("near"), folder.relativize(launcher));
    Path middle =
        Files.createSymbolicLink(
            folder.resolve("my bin/middle"), Path.of("../" + near.getFileName()));
    Path far =
        Files.createSymbolicLink(bin.resolve("trammel"), Path.of("../" + middle.getFileName()));
    assertEquals(VERSION_LINE, plain(far).run("--version").out());
  }

  @Test
  void itRunsByNameFromThePathThroughALinkedFolder() throws Exception {
    Path linked = Files.createSymbolicLink(folder.resolve("bin"), home.resolve("bin"));
    Launch launch =
        Launch.of("sh", "-c", "trammel --version")
            .with("TRAMMEL_CLASS_ARCHIVE", "off")
            .with("PATH", linked + ":" + System.getenv("PATH"));
    assertEquals(VERSION_LINE, launch.run().out());
  }

  @Test
  void withoutJavaItSaysWhatToInstallInOneLine() throws Exception {
    Path path = Workbench.pathWith(folder.resolve("path"), "sh", "readlink", "find", "sed");
    Launch.Ended ended =
        plain(launcher).without("JAVA_HOME").with("PATH", path.toString()).run("--version");
    assertRefused(ended, "Java 17 or newer");
  }

  @ParameterizedTest
  @CsvSource({"11.0.22, 11.0.22", "1.8.0_392, 1.8.0_392", "9, 9"})
  void anOlderJavaIsRefusedWithItsVersion(String release, String said) throws Exception {
    Path jdk = javaThatPrintsItsArguments(release);
    Launch.Ended ended = plain(launcher).with("JAVA_HOME", jdk.toString()).run("--version");
    assertRefused(ended, "is Java " + said + ":");
  }

  @Test
  void anOlderJavaThatKeepsNoReleaseFileIsAsked() throws Exception {
    Workbench.program(
        folder.resolve("jdk/bin/java"), "echo 'openjdk version \"11.0.22\" 2024-01-16' >&2");
    Launch launch = plain(launcher).with("JAVA_HOME", folder.resolve("jdk").toString());
    assertRefused(launch.run("--version"), "is Java 11.0.22:");
  }

  @Test
  void aWrongJavaHomeIsNamed() throws Exception {
    Launch launch = plain(launcher).with("JAVA_HOME", folder.resolve("gone").toString());
    assertRefused(launch.run("--version"), "JAVA_HOME is " + folder.resolve("gone"));
  }

  @Test
  void theJavaOfJavaHomeIsTheOneThatRuns() throws Exception {
    Path jdk = javaThatPrintsItsArguments("21.0.1");
    Launch.Ended ended =
        plain(launcher).with("JAVA_HOME", jdk.toString()).run("quote", "job 7.yaml", "");
    List<String> arguments = ended.out().lines().toList();
    assertEquals(
        List.of("-jar", home.resolve("lib/trammel-app.jar").toString(), "quote", "job 7.yaml", ""),
        arguments.subList(arguments.size() - 5, arguments.size()));
    assertTrue(arguments.contains("-Dtrammel.home=" + home), ended.out());
  }

  @Test
  void lettersBeyondAsciiSurviveAMachineWithoutALocale() throws Exception {
    Launch.Ended ended = plain(launcher).with("LC_ALL", "C").run("Größe-Ω");
    assertTrue(ended.err().contains("'Größe-Ω'"), ended.err());
  }

  /** Locales that may or may not be installed; one that is not counts as C. */
  @ParameterizedTest
  @ValueSource(strings = {"", "C", "POSIX", "en_US.ISO-8859-1", "de_DE", "xx_YY.UTF-8"})
  void filesWithLettersBeyondAsciiAreReadAndWrittenWhateverTheLocale(String locale)
      throws Exception {
    Path job =
        Files.copy(home.resolve("catalogs/demo/pickup.yaml"), folder.resolve("Größe 🔧 Ω.yaml"));
    Path out = folder.resolve("Angebote Ñ 🔩");
    Launch.Ended ended =
        plain(launcher)
            .with("LC_ALL", locale)
            .run("fitup", job.toString(), "--out", out.toString());
    assertEquals(1, ended.exitCode(), ended.err());
    assertTrue(Files.isRegularFile(out.resolve("fitup.csv")), ended.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"Werkstatt 🔧", "工具 (𝄞)"})
  void itRunsInAFolderWhoseNameHasSignsBeyondThePlane(String name) throws Exception {
    Path copy = Workbench.unpack(folder.resolve(name));
    Launch launch = plain(copy.resolve("bin/trammel"));
    assertEquals(new Launch.Ended(0, VERSION_LINE, ""), launch.run("--version"));
    String job = copy.resolve("catalogs/demo/pickup.yaml").toString();
    assertEquals(
        plain(launcher).run("quote", job), launch.with("LC_ALL", "de_DE").run("quote", job));
  }

  @Test
  void aCurrentFolderThatWasDeletedIsSaidPlainly() throws Exception {
    Path gone = Files.createDirectory(folder.resolve("gone"));
    Launch.Ended ended =
        Launch.of("sh", "-c", "rmdir \"$PWD\"; exec \"$0\" --version", launcher.toString())
            .with("TRAMMEL_CLASS_ARCHIVE", "off")
            .in(gone)
            .run();
    assertEquals(3, ended.exitCode(), ended.err());
    assertTrue(ended.err().contains("The current folder was deleted"), ended.err());
    assertFalse(ended.err().contains("java"), ended.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"-Xmx1k", "-Xmxoops", "-agentlib:none-such"})
  void aJavaThatCannotStartIsThreeAndNotOne(String options) throws Exception {
    Launch.Ended ended = plain(launcher).with("JAVA_TOOL_OPTIONS", options).run("--version");
    assertEquals(3, ended.exitCode(), ended.err());
    assertTrue(ended.err().contains("before Trammel was done"), ended.err());
  }

  @ParameterizedTest
  @CsvSource({
    "exit 0, 3",
    "exit 1, 3",
    "exit 2, 3",
    "exit 101, 1",
    "kill -ABRT $$, 3",
    "kill -9 $$, 3"
  })
  void whatEndsJavaIsToldFromWhatTrammelSays(String end, int exitCode) throws Exception {
    Path jdk = folder.resolve("jdk");
    Workbench.program(jdk.resolve("bin/java"), end);
    Files.writeString(jdk.resolve("release"), "JAVA_VERSION=\"17.0.1\"\n");
    Launch.Ended ended = plain(launcher).with("JAVA_HOME", jdk.toString()).run("--version");
    assertEquals(exitCode, ended.exitCode(), ended.err());
    assertEquals(exitCode == 3, ended.err().contains("before Trammel was done"), ended.err());
  }

  @Test
  void aCopyWithAJarCutShortIsThreeAndNotOne() throws Exception {
    Path copy = Workbench.unpack(folder.resolve("copy"));
    Path jar = copy.resolve("lib/trammel-app.jar");
    Files.write(jar, Arrays.copyOf(Files.readAllBytes(jar), 1000));
    Launch.Ended ended = plain(copy.resolve("bin/trammel")).run("--version");
    assertEquals(3, ended.exitCode(), ended.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"lib/trammel-app.jar", "bin/launcher/java.sh", "bin/launcher/options.sh"})
  void aCopyThatIsNotWholeIsSaidPlainly(String missing) throws Exception {
    Path copy = Workbench.unpack(folder.resolve("copy"));
    Files.delete(copy.resolve(missing));
    assertRefused(plain(copy.resolve("bin/trammel")).run("--version"), missing + " is missing");
  }

  /** What a shop has of it, a reader takes in at a glance: no build, no long function. */
  @Test
  void theLauncherOfACopyIsShortAndKnowsNoBuild() throws IOException {
    try (Stream<String> lines = Files.lines(launcher)) {
      assertTrue(lines.count() <= 110);
    }
    assertFalse(Files.readString(launcher).contains("mvn"));
    assertFalse(Files.exists(launcher.resolveSibling("build-and-run")));
  }

  @Test
  void javaEndsWithTheLauncherThatIsKilled() throws Exception {
    Path jdk = folder.resolve("jdk");
    Path pid = folder.resolve("pid");
    Workbench.program(
        jdk.resolve("bin/java"),
        "echo $$ >'" + pid + "'",
        "exec '" + System.getProperty("java.home") + "/bin/java' \"$@\"");
    Files.writeString(jdk.resolve("release"), "JAVA_VERSION=\"17.0.1\"\n");
    Path out = folder.resolve("out");
    Process shell =
        Launch.of(
                "sh",
                "-c",
                "exec \"$0\" start '" + folder + "/job.yaml' <'" + waiting() + "'",
                launcher.toString())
            .with("TRAMMEL_CLASS_ARCHIVE", "off")
            .with("JAVA_HOME", jdk.toString())
            .start(out, folder.resolve("err"));
    while (!Files.exists(out) || Files.size(out) == 0) {
      assertTrue(shell.isAlive(), () -> "ended by itself: " + text(folder.resolve("err")));
      Thread.sleep(20);
    }
    ProcessHandle java =
        ProcessHandle.of(Long.parseLong(Files.readString(pid).strip())).orElseThrow();
    shell.destroyForcibly().waitFor();
    java.onExit().get(20, TimeUnit.SECONDS);
    assertFalse(java.isAlive());
  }

  /** A pipe from which nothing ever comes. */
  private Path waiting() throws Exception {
    Path pipe = folder.resolve("pipe");
    assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
    new ProcessBuilder("sh", "-c", "exec sleep 60 >'" + pipe + "'").start();
    return pipe;
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException none) {
      return none.toString();
    }
  }

  @Test
  void outputThatCannotBeWrittenIsAFault() throws Exception {
    Launch.Ended ended =
        Launch.of("sh", "-c", "\"$0\" --help >/dev/full", launcher.toString())
            .with("TRAMMEL_CLASS_ARCHIVE", "off")
            .run();
    assertRefused(ended, "Cannot write the whole output: No space left on device");
  }

  @Test
  void aReaderThatHasSeenEnoughIsNoFault() throws Exception {
    Launch.Ended ended =
        Launch.of("sh", "-c", "\"$0\" --help | true", launcher.toString())
            .with("TRAMMEL_CLASS_ARCHIVE", "off")
            .run();
    assertEquals(new Launch.Ended(0, "", ""), ended);
  }

  @Test
  void everyJarThatTheApplicationNamesIsThere() throws IOException {
    try (JarFile jar = new JarFile(home.resolve("lib/trammel-app.jar").toFile())) {
      String classPath = jar.getManifest().getMainAttributes().getValue(Attributes.Name.CLASS_PATH);
      for (String name : classPath.split(" ")) {
        assertTrue(Files.isRegularFile(home.resolve("lib").resolve(name)), name);
      }
    }
  }

  @Test
  void eachPluginJarHoldsOnlyItsOwnPackageAndSaysWhatItIs() throws IOException {
    List<Path> jars;
    try (Stream<Path> files = Files.list(home.resolve("plugins"))) {
      jars = files.toList();
    }
    try (Stream<Path> modules = Files.list(Path.of("..", "..", "plugins"))) {
      assertEquals(
          modules.filter(module -> Files.isRegularFile(module.resolve("pom.xml"))).count(),
          jars.size());
    }
    for (Path file : jars) {
      try (JarFile jar = new JarFile(file.toFile())) {
        Attributes manifest = jar.getManifest().getMainAttributes();
        assertEquals(file.getFileName().toString(), manifest.getValue("Plugin-Id") + ".jar");
        assertEquals(Workbench.version(), manifest.getValue("Plugin-Version"));
        assertTrue(
            jar.stream()
                .map(entry -> entry.getName())
                .filter(name -> name.endsWith(".class"))
                .allMatch(name -> name.startsWith("trammel/plugins/")),
            file.toString());
      }
    }
  }

  @Test
  void versionAndHelpLoadNeitherThePluginFrameworkNorTheFileReaders() throws Exception {
    String java = System.getProperty("java.home") + "/bin/java";
    for (String argument : List.of("--version", "--help")) {
      Launch.Ended ended =
          Launch.of(
                  java, "-Xlog:class+load", "-jar", home.resolve("lib/trammel-app.jar").toString())
              .with("LC_ALL", "C.UTF-8")
              .run(argument);
      assertTrue(ended.out().contains("trammel.app.Main"), ended.out());
      assertFalse(ended.out().contains("org.pf4j."), argument);
      assertFalse(ended.out().contains("tools.jackson."), argument);
    }
  }

  private Path javaThatPrintsItsArguments(String release) throws IOException {
    Path jdk = folder.resolve("jdk");
    Workbench.program(jdk.resolve("bin/java"), "printf '%s\\n' \"$@\"");
    Files.writeString(
        jdk.resolve("release"), "IMPLEMENTOR=\"x\"\nJAVA_VERSION=\"" + release + "\"\n");
    return jdk;
  }

  private static void assertRefused(Launch.Ended ended, String because) {
    assertEquals(3, ended.exitCode(), ended.err());
    assertEquals("", ended.out());
    assertTrue(ended.err().contains(because), ended.err());
    assertEquals(1, ended.err().lines().count(), ended.err());
  }
}
