package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plugins from outside, dropped into the plugins folder of an installed copy. */
class ThirdPartyPluginIT {
  private static final String CLASS = "example.threelink.ThreeLink";

  @TempDir Path folder;
  private Path home;

  @BeforeEach
  void unpack() throws IOException {
    home = Workbench.unpack(folder.resolve("copy"));
  }

  private Launch trammel() {
    return Launch.of(home.resolve("bin/trammel")).with("TRAMMEL_CLASS_ARCHIVE", "off");
  }

  private String threeLink() throws IOException {
    return Files.readString(Path.of("src/test/plugin/three-link/ThreeLink.java"))
        .replace("\"TUBE\"", "\"dom-1.75x0.120\"")
        .replace("\"BOLT\"", "\"bolt-0.500-20\"");
  }

  private void drop(String jar, String source, String id) throws IOException {
    Path work = folder.resolve("classes-" + jar);
    PluginJar.build(home, "linkage", CLASS, source, id, home.resolve("plugins").resolve(jar), work);
  }

  private Path job() throws IOException {
    String pickup = Files.readString(home.resolve("catalogs/demo/pickup.yaml"));
    Path job = folder.resolve("job.yaml");
    return Files.writeString(
        job,
        pickup
            .replace("linkage: four-link-lateral", "linkage: three-link")
            .replace(
                "linkage_options: {mounting: inboard, rail_gap: 1 in}", "linkage_options: {}"));
  }

  @Test
  void aPluginFromOutsideIsListedAndQuotesAJob() throws Exception {
    drop("three-link.jar", threeLink(), "three-link");

    Launch.Ended layouts = trammel().run("layouts");
    assertEquals(0, layouts.exitCode(), layouts.err());
    assertTrue(layouts.out().contains("three-link: Three links and a lateral bar"), layouts.out());
    assertTrue(layouts.out().contains("four-link-lateral:"), layouts.out());

    Launch.Ended quote = trammel().run("quote", "--full", job().toString());
    assertTrue(quote.exitCode() <= 1, quote.err());
    assertTrue(quote.out().contains("both ends of lower-left"), quote.out());
    assertTrue(quote.out().contains("TOTAL"), quote.out());
  }

  @Test
  void aJarThatIsNoJarIsNamedAndTheRestGoOn() throws Exception {
    Files.writeString(home.resolve("plugins/broken.jar"), "this is no jar");

    Launch.Ended layouts = trammel().run("layouts");

    assertEquals(0, layouts.exitCode(), layouts.err());
    assertTrue(layouts.err().contains("broken.jar"), layouts.err());
    assertFalse(layouts.err().contains("\tat "), layouts.err());
    assertTrue(layouts.out().contains("four-link-lateral:"), layouts.out());
  }

  @Test
  void aPluginThatFailsToStartIsNamedAndTheRestGoOn() throws Exception {
    String failing =
        threeLink()
            .replace(
                "public String title() {",
                "public String title() {\n if (true) throw new IllegalStateException(\"no title today\");");
    drop("failing.jar", failing, "failing");

    Launch.Ended layouts = trammel().run("layouts");

    assertEquals(0, layouts.exitCode(), layouts.err());
    assertTrue(layouts.err().contains("failing.jar"), layouts.err());
    assertTrue(layouts.err().contains("no title today"), layouts.err());
    assertTrue(layouts.out().contains("triangulated:"), layouts.out());
  }

  @Test
  void aJarWithoutAListOfWhatIsInItIsNamedAndTheRestGoOn() throws Exception {
    Path classes = Files.createDirectories(folder.resolve("no classes"));
    PluginJar.pack("", "unlisted", home.resolve("plugins/unlisted.jar"), classes);
    PluginJar.pack(
        "linkage gone example.Gone\n", "gone", home.resolve("plugins/gone.jar"), classes);

    Launch.Ended layouts = trammel().run("layouts");

    assertEquals(0, layouts.exitCode(), layouts.err());
    assertTrue(
        layouts.err().contains("unlisted.jar was left out: it has no META-INF/trammel.idx"),
        layouts.err());
    assertTrue(layouts.err().contains("lists example.Gone, which is not in it"), layouts.err());
    assertTrue(layouts.out().contains("triangulated:"), layouts.out());
  }

  @Test
  void twoPluginsOfOneNameAreReportedByName() throws Exception {
    drop("zz-twin.jar", threeLink(), "triangulated");

    Launch.Ended layouts = trammel().run("layouts");

    assertEquals(0, layouts.exitCode(), layouts.err());
    assertTrue(layouts.err().contains("'triangulated' of plugin zz-twin.jar"), layouts.err());
    assertTrue(layouts.out().contains("triangulated:"), layouts.out());
  }
}
