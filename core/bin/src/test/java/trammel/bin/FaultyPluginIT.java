package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Plugins with every kind of fault in one installed copy: a job that does not name them comes out
 * as if they were not there, and one that names them ends with 3 and their name.
 */
class FaultyPluginIT {
  private static final String CLASS = "example.faulty.Faulty";
  private static final Pattern REPORT = Pattern.compile("\\S*trammel-fault-\\S*\\.txt");

  /** Ids begin with an a, so that these stand before every other spring. */
  private static final Map<String, Fault> FAULTS = new LinkedHashMap<>();

  private record Fault(String where, String statement) {}

  static {
    put("a-null-options", "options", "if (true) return null;");
    put("a-null-option", "options", "if (true) return java.util.Collections.singletonList(null);");
    put("a-null-springs", "propose", "if (true) return null;");
    put("a-null-checks", "checks", "if (true) return null;");
    put("a-null-check", "checks", "if (true) return List.of(new LimitedCheck(null, null));");
    put("a-null-plan", "plan", "if (true) return null;");
    put("a-null-part", "plan", "new WorkPlan.Builder().add((WorkPlan) null);");
    put("a-none", "propose", "if (true) return new SpringSet(List.of(), List.of());");
    put("a-nan", "propose", "new trammel.engine.geometry.Point3(Double.NaN, 0, 0);");
    put("a-error", "constructor", "if (true) throw new Error(\"worn out\");");
    put("a-overflow", "propose", "deeper(0);");
    put("a-linkage", "plan", "if (true) throw new NoSuchMethodError(\"gone\");");
    put("a-argument", "propose", "if (true) throw new IllegalArgumentException(\"no room\");");
    put(
        "a-missing",
        "plan",
        "if (true) throw new trammel.brackets.material.MissingEntryException(\"none\");");
    put("a-no-item", "plan", "commission.site().catalog().item(\"no such item\");");
    put("a-sullen", "plan", "if (true) throw new Sullen();");
    put(
        "a-twice",
        "propose",
        "if (true) { var s = SampleVehicle.springs(site.chassis()).get(0);"
            + " return new SpringSet(List.of(s, s), List.of()); }");
  }

  @TempDir static Path shop;
  private static InstalledCopy sound;
  private static InstalledCopy faulty;

  @TempDir Path folder;
  private InstalledCopy copy;

  private static void put(String id, String where, String statement) {
    FAULTS.put(id, new Fault(where, statement));
  }

  @BeforeAll
  static void unpack() throws IOException {
    sound = InstalledCopy.unpackedInto(shop.resolve("sound"));
    faulty = InstalledCopy.unpackedInto(shop.resolve("faulty"));
    for (String id : FAULTS.keySet()) {
      drop(faulty, id, FAULTS.get(id), shop.resolve(id));
    }
  }

  private static void drop(InstalledCopy into, String id, Fault fault, Path work)
      throws IOException {
    String source =
        Files.readString(Path.of("src/test/plugin/faulty/Faulty.java"))
            .replace("ID", id)
            .replace("/* " + fault.where() + " */", fault.statement());
    Path jar = into.home().resolve("plugins").resolve(id + ".jar");
    PluginJar.build(into.home(), "spring", CLASS, source, id, jar, work);
  }

  @BeforeEach
  void choose() {
    copy = faulty;
  }

  private Path jobWith(String spring) throws IOException {
    Tree job =
        copy.demoTree("pickup")
            .with("job.number", spring)
            .with("chosen.spring", spring)
            .with("chosen.spring_options", Map.of());
    return InstalledCopy.write(folder.resolve(spring + ".json"), job);
  }

  @Test
  void aJobThatNamesNoneOfThemIsQuotedAsIfTheyWereNotThere() throws Exception {
    Path job = sound.demoJob("pickup");
    Launch.Ended without = sound.run("quote", job.toString(), "--out", folder + "/without");
    Launch.Ended with = copy.run("quote", job.toString(), "--out", folder + "/with");

    assertEquals(without.exitCode(), with.exitCode(), with.err());
    assertEquals(without.out(), with.out());
    assertEquals(sumsButOfPdfs("without"), sumsButOfPdfs("with"));
    // Those that fail before they have a place among the ways are left out of the quote by name.
    assertTrue(with.err().contains("Left out: a-error. Plugin a-error (a-error.jar)"), with.err());
    assertNoStackTrace(with);
  }

  /** A PDF carries the moment at which it was made; the same page is there as HTML. */
  private List<String> sumsButOfPdfs(String out) throws IOException {
    try (Stream<String> lines = Files.lines(folder.resolve(out).resolve("files.sha256"))) {
      return lines.filter(line -> !line.endsWith(".pdf")).toList();
    }
  }

  @Test
  void aJobThatAsksForNoOtherWayDoesNotEvenRunThem() throws Exception {
    Path job = sound.demoJob("pickup");
    assertEquals(sound.run("check", job.toString()), copy.run("check", job.toString()));
  }

  @Test
  void aComparisonLeavesThemOutByNameAndComesToTheSame() throws Exception {
    Path job = sound.demoJob("pickup");
    Launch.Ended without = sound.run("compare", job.toString());
    Launch.Ended with = copy.run("compare", job.toString());

    assertEquals(without.exitCode(), with.exitCode(), with.err());
    assertEquals(without.out(), with.out());
    for (String id : FAULTS.keySet()) {
      assertTrue(
          with.err().contains("Left out: spring " + id + ", mounting inboard. Plugin " + id),
          with.err());
    }
    assertNoStackTrace(with);
  }

  @Test
  void theListNamesThoseThatCannotTellWhatTheyAre() throws Exception {
    Fault blank = new Fault("title", "if (true) return null;");
    drop(copy, "z-null-title", blank, folder.resolve("classes"));
    Launch.Ended layouts = copy.run("layouts");
    Files.delete(copy.home().resolve("plugins/z-null-title.jar"));

    assertEquals(0, layouts.exitCode(), layouts.err());
    for (String id : List.of("z-null-title", "a-null-options", "a-null-option", "a-error")) {
      assertTrue(layouts.err().contains("Left out: Plugin " + id + " (" + id + ".jar)"));
      assertFalse(layouts.out().contains(id), layouts.out());
    }
    assertTrue(layouts.out().contains("four-link-lateral:"), layouts.out());
    assertNoStackTrace(layouts);
  }

  @Test
  void jobsThatNameThemEndWithThreeAndTheOthersOfTheRunGoOn() throws Exception {
    List<String> words = new ArrayList<>(List.of("quote", "--out", folder + "/out"));
    for (String id : FAULTS.keySet()) {
      words.add(jobWith(id).toString());
    }
    // Beside the others: one run has one shop's catalog.
    words.add(
        InstalledCopy.write(folder.resolve("pickup.json"), copy.demoTree("pickup")).toString());

    Launch.Ended ended = copy.run(words.toArray(new String[0]));

    assertEquals(3, ended.exitCode(), ended.err());
    assertNoStackTrace(ended);
    for (String id : FAULTS.keySet()) {
      assertTrue(
          ended.err().contains(id + ".json: Plugin " + id + " (" + id + ".jar) failed"),
          id + " in " + ended.err());
      assertFalse(Files.exists(folder.resolve("out").resolve(id)), id);
    }
    assertFalse(ended.err().contains("does not fit the vehicle"), ended.err());
    assertTrue(ended.out().contains("TOTAL"), ended.out());
    assertReports(ended, FAULTS.size());
  }

  @ParameterizedTest
  @CsvSource({
    "constructor, System.exit(0);, it ends the program when it is made",
    "propose, System.exit(1);, it ends the program when it proposes",
    "plan, new Thread(() -> System.exit(0)).start(); while (id() != null);, by a thread of its own",
    "propose, Runtime.getRuntime().halt(0);, it halts Java",
    "plan, while (id() != null);, it never comes back"
  })
  void onesThatEndTheProgramOrNeverComeBackAreNamed(String where, String statement, String how)
      throws Exception {
    copy = sound;
    drop(copy, "z-ending", new Fault(where, statement), folder.resolve("classes"));
    try {
      Launch.Ended ended =
          copy.launcher()
              .with("TRAMMEL_PLUGIN_SECONDS", "3")
              .run("quote", jobWith("z-ending").toString(), "--out", folder + "/out");

      assertEquals(3, ended.exitCode(), how + ": " + ended.err());
      assertEquals("", ended.out(), how);
      assertTrue(ended.err().contains("z-ending (z-ending.jar)"), how + ": " + ended.err());
      assertNoStackTrace(ended);
      assertEquals(List.of(), filesIn(folder.resolve("out")), how);
    } finally {
      Files.delete(copy.home().resolve("plugins/z-ending.jar"));
    }
  }

  private static List<Path> filesIn(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).toList();
    }
  }

  private static void assertReports(Launch.Ended ended, int reports) throws IOException {
    Matcher matcher = REPORT.matcher(ended.err());
    int found = 0;
    while (matcher.find()) {
      Path report = Path.of(matcher.group());
      assertTrue(Files.readString(report).contains("PluginFaultException"), report.toString());
      Files.delete(report);
      found++;
    }
    assertEquals(reports, found, ended.err());
  }

  private static void assertNoStackTrace(Launch.Ended ended) {
    assertFalse(ended.err().contains("\tat "), ended.err());
    assertFalse(ended.err().contains("Exception in thread"), ended.err());
  }
}
