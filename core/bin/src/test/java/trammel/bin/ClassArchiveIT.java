package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The class-data archive of an installed copy: made once, used, made again when it must be. */
class ClassArchiveIT {
  private static final String VERSION_LINE = "trammel " + Workbench.version() + "\n";

  @TempDir Path folder;
  private Path home;
  private Launch launch;

  @BeforeEach
  void unpack() throws IOException {
    home = Workbench.unpack(folder.resolve("shop")).toRealPath();
    launch = Launch.of(home.resolve("bin/trammel")).with("HOME", folder + "/me");
  }

  @Test
  void itIsMadeAtTheFirstRunAndAgainOnlyAfterTheJarsChanged() throws Exception {
    Launch.Ended first = launch.run("--version");
    assertEquals(VERSION_LINE, first.out());
    assertEquals(1, first.err().lines().count(), first.err());
    assertTrue(first.err().startsWith("Preparing Trammel to start faster"), first.err());

    Path archive = onlyArchiveIn(home.resolve("cds"));
    assertEquals(new Launch.Ended(0, VERSION_LINE, ""), launch.run("--version"));
    assertTrue(isAccepted(archive), "Java takes no class from the archive");

    // Unpacking again leaves size and modification time as they were, as a changed jar might.
    Path jar = home.resolve("lib/trammel-engine.jar");
    Files.setLastModifiedTime(jar, Files.getLastModifiedTime(jar));
    assertTrue(launch.run("--version").err().startsWith("Preparing"));
    assertEquals(new Launch.Ended(0, VERSION_LINE, ""), launch.run("--version"));
    assertEquals(archive, onlyArchiveIn(home.resolve("cds")));
  }

  /** The number of this very process stands for one that was given out again: it started later. */
  @Test
  void whatAKilledRunLeftIsTakenAwayAndThatOfALivingOneStays() throws Exception {
    launch.run("--version");
    long living = ProcessHandle.current().pid();
    Path dead = Files.createDirectories(home.resolve("cds/new-1999999999"));
    Path at = Files.createDirectories(home.resolve("cds/new-" + living));
    assertEquals(new Launch.Ended(0, VERSION_LINE, ""), launch.run("--version"));
    assertFalse(Files.exists(dead), "its maker is gone");
    assertTrue(Files.exists(at), "its maker lives, for all that is known");
    Files.writeString(at.resolve("started"), "1\n");
    assertEquals(new Launch.Ended(0, VERSION_LINE, ""), launch.run("--version"));
    assertFalse(Files.exists(at), "another process has its maker's number now");
  }

  @Test
  void itIsKeptInTheUsersCacheIfTheCopyCannotBeWritten() throws Exception {
    // A file in the way refuses everybody, even a user who may write anywhere.
    Files.createFile(home.resolve("cds"));
    assertEquals(VERSION_LINE, launch.run("--version").out());
    assertTrue(isAccepted(onlyArchiveIn(Path.of(folder + "/me/.cache/trammel" + home))));
    assertEquals(new Launch.Ended(0, VERSION_LINE, ""), launch.run("--version"));
  }

  @Test
  void aCopyThatCanKeepItNowhereRunsWithoutAWord() throws Exception {
    Files.createFile(home.resolve("cds"));
    Files.createFile(folder.resolve("me"));
    assertEquals(new Launch.Ended(0, VERSION_LINE, ""), launch.run("--version"));
  }

  @Test
  void aJavaThatMakesNoneIsAskedOnceAndRunsAllTheSame() throws Exception {
    Path jdk = folder.resolve("jdk");
    Path asked = folder.resolve("asked");
    Workbench.program(
        jdk.resolve("bin/java"),
        "case $1 in -Xshare:dump) echo once >>'" + asked + "'; exit 1 ;; esac",
        "exec '" + System.getProperty("java.home") + "/bin/java' \"$@\"");
    Files.writeString(jdk.resolve("release"), "JAVA_VERSION=\"17.0.1\"\n");
    Launch other = launch.with("JAVA_HOME", jdk.toString());

    assertEquals(VERSION_LINE, other.run("--version").out());
    assertEquals(new Launch.Ended(0, VERSION_LINE, ""), other.run("--version"));
    assertEquals(List.of("once"), Files.readAllLines(asked));
  }

  @Test
  void aMovedCopyMakesItsOwn() throws Exception {
    Files.createDirectory(home.resolve("cds"));
    Path archive = home.resolve("cds/classes-" + build() + ".jsa");
    Files.writeString(archive, "made elsewhere");
    Files.writeString(Path.of(archive + ".key"), "/opt/elsewhere|/opt/jdk|" + build() + "\n");
    assertTrue(launch.run("--version").err().startsWith("Preparing"));
    assertTrue(isAccepted(archive));
    assertFalse(Files.size(archive) < 1_000_000);
  }

  private static String build() {
    return System.getProperty("java.runtime.version");
  }

  /** Java ends with an error if it is told that it must use an archive and that does not fit. */
  private boolean isAccepted(Path archive) throws Exception {
    Launch.Ended ended =
        Launch.of(
                System.getProperty("java.home") + "/bin/java",
                "-Xshare:on",
                "-XX:SharedArchiveFile=" + archive,
                "-Xlog:class+load",
                "-jar",
                home.resolve("lib/trammel-app.jar").toString())
            .run("--version");
    return ended.exitCode() == 0
        && ended.out().contains("trammel.app.Main source: shared objects file");
  }

  private static Path onlyArchiveIn(Path cds) throws IOException {
    try (Stream<Path> files = Files.list(cds)) {
      List<Path> names = files.sorted().toList();
      assertEquals(2, names.size(), names.toString());
      assertTrue(names.get(0).toString().endsWith(".jsa"), names.toString());
      assertEquals(names.get(0) + ".key", names.get(1).toString());
      return names.get(0);
    }
  }
}
