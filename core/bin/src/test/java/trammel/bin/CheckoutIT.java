package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The launcher of a source checkout: when it builds, and what it says if it cannot. */
class CheckoutIT {
  private static final String VERSION_LINE = "trammel " + Workbench.version() + "\n";
  private static final Launch.Ended NOTHING_BUILT = new Launch.Ended(0, VERSION_LINE, "");

  @TempDir static Path zipContents;
  private static Path ready;

  @TempDir Path folder;
  private Path checkout;
  private Path launcher;
  private Path builds;
  private Path bin;
  private Launch launch;

  @BeforeAll
  static void unpack() throws IOException {
    ready = Workbench.unpack(zipContents);
  }

  @BeforeEach
  void layOutACheckoutWithAMavenThatCopies() throws Exception {
    folder = folder.toRealPath();
    checkout = folder.resolve("source code");
    launcher = checkout.resolve("core/bin/trammel");
    builds = folder.resolve("builds");
    bin = folder.resolve("programs");
    for (String file :
        List.of(
            "pom.xml",
            "README.md",
            "core/pom.xml",
            "core/bin/pom.xml",
            "core/engine/pom.xml",
            "core/engine/src/main/java/Link.java",
            "core/engine/src/test/java/LinkTest.java",
            "plugins/coil-spring/src/main/java/Coil.java",
            "catalogs/standard/tube.json")) {
      write(file);
    }
    copyLauncher();
    maven(
        "rm -rf core/bin/target/distribution",
        "mkdir -p core/bin/target",
        "cp -R '" + ready + "' core/bin/target/distribution");
    launch =
        Launch.of(launcher)
            .with("TRAMMEL_CLASS_ARCHIVE", "off")
            .with("PATH", bin + ":" + System.getenv("PATH"));
  }

  private void copyLauncher() throws IOException {
    Path source = Path.of(System.getProperty("launcher"));
    Files.copy(source, launcher);
    Files.copy(source.resolveSibling("build-and-run"), launcher.resolveSibling("build-and-run"));
    Path parts = Files.createDirectory(launcher.resolveSibling("launcher"));
    try (DirectoryStream<Path> all = Files.newDirectoryStream(source.resolveSibling("launcher"))) {
      for (Path part : all) {
        Files.copy(part, parts.resolve(part.getFileName()));
      }
    }
  }

  private void maven(String... lines) throws IOException {
    Workbench.program(
        bin.resolve("mvn"),
        "echo \"$PWD: $*\" >>'" + builds + "'",
        "echo words of the build",
        String.join("\n", lines));
  }

  private void write(String file) throws IOException {
    Path path = checkout.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, "x");
  }

  private int builds() throws IOException {
    return Files.exists(builds) ? Files.readAllLines(builds).size() : 0;
  }

  @Test
  void theFirstRunBuildsAndSaysSoInOneLine() throws Exception {
    Launch.Ended first = launch.run("--version");
    assertEquals(VERSION_LINE, first.out());
    assertEquals("Building Trammel from its sources (first use; about a minute)…\n", first.err());
    assertEquals(List.of(checkout + ": -q -B -DskipTests package"), Files.readAllLines(builds));
  }

  @Test
  void theNextRunDoesNotBuild() throws Exception {
    launch.run("--version");
    assertEquals(NOTHING_BUILT, launch.run("--version"));
    assertEquals(1, builds());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "pom.xml",
        "core/pom.xml",
        "core/engine/pom.xml",
        "core/bin/trammel",
        "core/bin/launcher/options.sh",
        "core/engine/src/main/java/Link.java",
        "core/planning/src/main/java/New.java",
        "plugins/coil-spring/src/main/java/Coil.java",
        "catalogs/standard/tube.json"
      })
  void aChangedSourceIsBuiltOnce(String file) throws Exception {
    launch.run("--version");
    Path changed = checkout.resolve(file);
    if (Files.exists(changed)) {
      Files.writeString(changed, Files.readString(changed) + "\n");
    } else {
      write(file);
    }
    assertEquals(
        "Building Trammel from its sources (they changed; about a minute)…\n",
        launch.run("--version").err());
    assertEquals(NOTHING_BUILT, launch.run("--version"));
    assertEquals(2, builds());
  }

  @Test
  void aSourceTakenAwayIsAChangeToo() throws Exception {
    launch.run("--version");
    Files.delete(checkout.resolve("core/engine/src/main/java/Link.java"));
    launch.run("--version");
    assertEquals(2, builds());
  }

  @ParameterizedTest
  @ValueSource(strings = {"README.md", "core/engine/src/test/java/LinkTest.java"})
  void whatIsNotShippedIsNotBuilt(String file) throws Exception {
    launch.run("--version");
    write(file);
    assertEquals(NOTHING_BUILT, launch.run("--version"));
  }

  @Test
  void aSourceChangedWhileItWasBuiltIsBuiltAgain() throws Exception {
    Path mvn = bin.resolve("mvn");
    Files.writeString(mvn, Files.readString(mvn) + "echo y >core/engine/src/main/java/Link.java\n");
    launch.run("--version");
    launch.run("--version");
    assertEquals(2, builds());
  }

  @Test
  void aBuildThatFailsNamesItsLogAndIsTriedAgain() throws Exception {
    maven("echo '[ERROR] Link.java:[1,1] not Java'", "exit 1");
    Path log = checkout.resolve("core/bin/target/build.log");
    for (int attempt = 1; attempt <= 2; attempt++) {
      Launch.Ended failed = launch.run("--version");
      assertEquals(3, failed.exitCode());
      assertEquals("", failed.out());
      assertTrue(failed.err().endsWith("What went wrong is in " + log + "\n"), failed.err());
      assertTrue(Files.readString(log).contains("[ERROR] Link.java:[1,1] not Java"));
      assertEquals(attempt, builds());
    }
  }

  @Test
  void anOlderCopyIsNotRunInPlaceOfOneThatCannotBeBuilt() throws Exception {
    launch.run("--version");
    write("core/engine/src/main/java/Link.java");
    maven("exit 1");
    Launch.Ended failed = launch.run("--version");
    assertEquals(3, failed.exitCode());
    assertEquals("", failed.out());
  }

  @Test
  void withoutMavenItSaysWhatToInstallInOneLine() throws Exception {
    Path path =
        Workbench.pathWith(folder.resolve("path"), "sh", "readlink", "find", "sed", "mkdir", "rm");
    Launch.Ended ended = launch.with("PATH", path.toString()).run("--version");
    assertEquals(3, ended.exitCode());
    assertTrue(ended.err().contains("install Maven"), ended.err());
    assertEquals(1, ended.err().lines().count(), ended.err());
  }

  @Test
  void itRunsFromAnotherFolderThroughAChainOfRelativeLinks() throws Exception {
    Path far = Files.createDirectories(folder.resolve("far away"));
    Files.createSymbolicLink(folder.resolve("near"), Path.of("source code/core/bin/trammel"));
    Files.createSymbolicLink(far.resolve("t"), Path.of("../near"));
    Launch.Ended ended = new Launch(List.of("./t"), far, launch.environment()).run("--version");
    assertEquals(VERSION_LINE, ended.out());
    assertEquals(1, builds());
  }

  @Test
  void twoRunsAtOnceBuildOnce() throws Exception {
    Path mvn = bin.resolve("mvn");
    Files.writeString(mvn, Files.readString(mvn).replace("rm -rf", "sleep 1; rm -rf"));
    Path out = folder.resolve("out");
    Path other = folder.resolve("other");
    Process one = launch.start(out, folder.resolve("err"), "--version");
    Process two = launch.start(other, folder.resolve("err2"), "--version");
    assertEquals(0, Launch.end(one));
    assertEquals(0, Launch.end(two));
    assertEquals(VERSION_LINE, Files.readString(out));
    assertEquals(VERSION_LINE, Files.readString(other));
    assertEquals(1, builds());
  }

  @Test
  void aBuildThatWasKilledDoesNotBlockTheNext() throws Exception {
    Path lock = Files.createDirectories(checkout.resolve("core/bin/target/build.lock"));
    Process gone = new ProcessBuilder("true").start();
    gone.waitFor();
    Files.writeString(lock.resolve("pid"), gone.pid() + "\n");
    assertEquals(VERSION_LINE, launch.run("--version").out());
    assertEquals(1, builds());
  }
}
