package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.HttpURLConnection;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The folder with its own Java that {@code mvn -Pbundle package} makes, copied elsewhere and run
 * with nothing on the PATH and no JAVA_HOME: neither a Java nor any other program can be found.
 * Making it takes time, so this is for the profile alone, and is skipped without it.
 */
@Tag("long")
class BundleIT {
  @TempDir static Path folder;
  private static Path home;

  @BeforeAll
  static void copyElsewhere() throws IOException {
    String made = System.getProperty("bundle.folder");
    assumeTrue(made != null, "only with -Pbundle, which makes the folder");
    home = folder.resolve("the shop's copy");
    copyWithRights(Path.of(made), home);
  }

  private static void copyWithRights(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path copy = to.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(file, copy);
          copy.toFile().setExecutable(Files.isExecutable(file));
        }
      }
    }
  }

  private static Launch bare() {
    return new Launch(List.of(home.resolve("bin/trammel").toString()), folder, Map.of("PATH", ""));
  }

  private static String demo(String name) {
    return home.resolve("catalogs/demo").resolve(name).toString();
  }

  /** Nothing but the kernel and the shell of the first line is needed to start it. */
  @Test
  void itQuotesWithNothingOnThePathAndEndsWithTheExitCodeOfTheChecks() throws Exception {
    Launch.Ended version = bare().run("--version");
    assertEquals(new Launch.Ended(0, "trammel " + Workbench.version() + "\n", ""), version);
    Launch.Ended quote = bare().run("quote", demo("pickup.yaml"));
    assertEquals(1, quote.exitCode(), quote.err());
    assertEquals("", quote.err());
    assertTrue(quote.out().contains("TOTAL"), quote.out());
    assertEquals(2, bare().run("quote", folder.resolve("none.yaml").toString()).exitCode());
  }

  /** The same copy without its own Java finds none: what ran above was its own. */
  @Test
  void withoutItsOwnJavaTheSameCopyFindsNone() throws Exception {
    Path away = Files.move(home.resolve("runtime"), home.resolve("runtime-away"));
    try {
      Launch.Ended ended = bare().run("--version");
      assertEquals(3, ended.exitCode());
      assertTrue(ended.err().contains("needs Java 17"), ended.err());
    } finally {
      Files.move(away, home.resolve("runtime"));
    }
  }

  /** A shop computer may have an old Java set for another program. */
  @Test
  void itsOwnJavaComesBeforeOneThatIsSetForOtherPrograms() throws Exception {
    assertEquals(
        0, bare().with("JAVA_HOME", folder.resolve("gone").toString()).run("--version").exitCode());
  }

  /** Papers draw letters and pictures; the ledger is SQL with a library of its own. */
  @Test
  void papersAndLedgerWorkInIt() throws Exception {
    Path papers = folder.resolve("papers");
    Launch.Ended quote = bare().run("quote", "--out", papers.toString(), demo("sedan.yaml"));
    assertTrue(quote.err().contains("Wrote "), quote.err());
    try (Stream<Path> files = Files.walk(papers)) {
      assertTrue(files.anyMatch(file -> file.toString().endsWith(".pdf")));
    }
    Launch.Ended booked = bare().run("book", "quote", demo("sedan.yaml"));
    assertEquals(1, booked.exitCode(), booked.err());
    Launch.Ended ledger = bare().in(home.resolve("catalogs/demo")).run("ledger", "check");
    assertEquals(0, ledger.exitCode(), ledger.err());
  }

  @Test
  void thePageIsServedByIt() throws Exception {
    Path out = folder.resolve("out");
    Process served =
        bare().start(out, folder.resolve("err"), "page", home + "/catalogs/demo", "--no-browser");
    try {
      while (served.isAlive() && !Files.readString(out).contains("Every change")) {
        Thread.sleep(50);
      }
      String told = Files.readString(out);
      assertTrue(
          told.startsWith("The page is at http://127.0.0.1:"),
          told + Files.readString(folder.resolve("err")));
      String address =
          told.lines().findFirst().orElseThrow().replaceAll("^.*(http\\S+?)[.,]?$", "$1");
      HttpURLConnection asked = (HttpURLConnection) new URL(address).openConnection();
      assertEquals(200, asked.getResponseCode(), address);
    } finally {
      served.descendants().forEach(ProcessHandle::destroy);
      served.destroy();
      served.waitFor();
    }
  }

  /**
   * Every class of every jar, without the descriptions by which a jar leaves some of it optional.
   */
  @Test
  void whatTheJarsAskForIsInIt() throws Exception {
    Path classes = Files.createDirectory(folder.resolve("classes"));
    for (String part : List.of("lib", "plugins")) {
      for (File jar : home.resolve(part).toFile().listFiles()) {
        unpackClasses(jar.toPath(), classes);
      }
    }
    StringWriter said = new StringWriter();
    ToolProvider jdeps = ToolProvider.findFirst("jdeps").orElseThrow();
    jdeps.run(
        new PrintWriter(said),
        new PrintWriter(said),
        "--ignore-missing-deps",
        "--print-module-deps",
        classes.toString());
    Set<String> wanted = new TreeSet<>(Arrays.asList(said.toString().strip().split(",")));
    Set<String> there =
        Launch.of(home.resolve("runtime/bin/java"))
            .run("--list-modules")
            .out()
            .lines()
            .map(line -> line.replaceAll("@.*", ""))
            .collect(Collectors.toCollection(TreeSet::new));
    assertTrue(wanted.contains("jdk.httpserver") && wanted.contains("java.sql"), said.toString());
    List<String> missing = new ArrayList<>(wanted);
    missing.removeAll(there);
    assertEquals(List.of(), missing, "not in " + there);
    assertFalse(there.contains("jdk.compiler"), "small: " + there);
  }

  private static void unpackClasses(Path jar, Path classes) throws IOException {
    try (ZipInputStream zip =
        new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(jar)))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        String name = entry.getName();
        if (name.endsWith(".class")
            && !name.startsWith("META-INF")
            && !name.contains("module-info")) {
          Path file = classes.resolve(name);
          Files.createDirectories(file.getParent());
          Files.write(file, zip.readAllBytes());
        }
      }
    }
  }
}
