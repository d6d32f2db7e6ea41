package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is added to a linkage and its springs by plugins dropped into an installed copy. */
class AdditionPluginIT {
  private static final String CLASS = "example.chock.Chock";

  @TempDir static Path shop;
  private static InstalledCopy copy;

  @TempDir Path folder;

  @BeforeAll
  static void unpack() throws IOException {
    copy = InstalledCopy.unpackedInto(shop.resolve("copy"));
    drop("chock", "", "");
    drop("null-checks", "/* checks */", "if (true) return null;");
    drop("sum-short", "/* plan */", "if (true) throw new IllegalArgumentException(\"no sum\");");
  }

  private static void drop(String id, String where, String statement) throws IOException {
    String source = Files.readString(Path.of("src/test/plugin/chock/Chock.java")).replace("ID", id);
    Path jar = copy.home().resolve("plugins").resolve(id + ".jar");
    Path work = Files.createDirectories(shop.resolve("classes-" + id));
    if (id.equals("sum-short")) {
      Path catalog = Files.createDirectories(work.resolve("META-INF"));
      Files.writeString(
          catalog.resolve("trammel-catalog.yaml"),
          "format: trammel-catalog/1\noperations: {paint: {title: paint it red}}\n");
    }
    PluginJar.build(
        copy.home(),
        "addition",
        CLASS,
        where.isEmpty() ? source : source.replace(where, statement),
        id,
        jar,
        work);
  }

  private Path jobWith(Map<String, Object> additions) throws IOException {
    String name = String.join("-", additions.keySet());
    Tree job = copy.demoTree("pickup").with("job.number", name).with("chosen.additions", additions);
    return InstalledCopy.write(folder.resolve(name + ".json"), job);
  }

  @Test
  void itIsListedWithItsOptionsAndWhereTheyStand() throws Exception {
    Launch.Ended text = copy.run("layouts");
    assertTrue(text.out().contains("chock: Chocks for the stands"), text.out());
    assertTrue(text.out().contains("options, under chosen.additions.chock:"), text.out());
    assertTrue(text.out().contains("pairs (1 unless set)"), text.out());

    // What it brings to the catalog is there already, so all of that is left out by its name.
    assertTrue(text.err().contains("the catalog that plugin sum-short.jar brings"), text.err());
    assertTrue(text.out().contains("sum-short: Chocks for the stands"), text.out());

    String json = copy.run("layouts", "--json").out();
    int additions = json.indexOf("\"additions\"");
    assertTrue(additions > 0 && json.indexOf("\"chock\"") > additions, json);
  }

  @Test
  void itsWorkIsPartOfThePlanAndOfAComparison() throws Exception {
    Path job = jobWith(Map.of("chock", Map.of("pairs", 2)));
    Launch.Ended quote = copy.run("quote", "--full", job.toString());
    assertTrue(quote.exitCode() <= 1, quote.err());
    // The table cuts the holes of all other plates with them.
    assertTrue(quote.out().contains("drill a hole in plate"), quote.out());

    Launch.Ended compared =
        copy.run("compare", "--full", "--vary", "chosen.additions={},{chock: {}}", job.toString());
    assertTrue(compared.exitCode() <= 1, compared.err());
    // Holes more than the same job without: the operation is named in the difference.
    assertTrue(compared.out().contains("drill"), compared.out());
  }

  @Test
  void whatIsNotInstalledIsNamedWithWhereItBelongs() throws Exception {
    Launch.Ended ended = copy.run("check", jobWith(Map.of("tow-hook", Map.of())).toString());
    assertEquals(2, ended.exitCode(), ended.err());
    assertTrue(ended.err().contains("tow-hook"), ended.err());
    assertTrue(ended.err().contains("chosen.additions.tow-hook"), ended.err());
    assertTrue(ended.err().contains("plugins folder"), ended.err());
  }

  @Test
  void aFaultyOneEndsWithThreeAndItsNameWhereItIsUsed() throws Exception {
    Path checks = jobWith(Map.of("null-checks", Map.of()));
    Path plan = jobWith(Map.of("sum-short", Map.of()));
    Launch.Ended ended = copy.run("quote", checks.toString(), plan.toString());
    assertEquals(3, ended.exitCode(), ended.err());
    for (String id : new String[] {"null-checks", "sum-short"}) {
      assertTrue(ended.err().contains("Plugin " + id + " (" + id + ".jar) failed"), ended.err());
    }
    assertFalse(ended.err().contains("does not fit the vehicle"), ended.err());
    assertFalse(ended.err().contains("\tat "), ended.err());
  }
}
