package trammel.app.cutfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trammel.app.CommandRun;
import trammel.testsupport.ReferenceVectors;

/**
 * The {@code cut} command against the benchmark instances that come with the tests. Each file names
 * its own source and the proven best that is expected here.
 */
class CutReferenceTest {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private static Path file(String name) {
    return ReferenceVectors.folder("cutting").resolve(name + ".json");
  }

  private static JsonNode checked(String name, String seconds) {
    Path path = file(name);
    CommandRun run = CommandRun.of("cut", path.toString(), "--time", seconds, "--json");
    assertEquals(0, run.exitCode(), run.err());
    assertEquals("", run.err());
    JsonNode plan = JSON.readTree(run.out());
    CutPlanChecker.check(JSON.readTree(path.toFile()), plan);
    return plan;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cut1d/falkenauer-t60-00",
        "cut1d/falkenauer-u250-05",
        "cut1d/scholl-n1w2b3r9",
        "cut1d/schwerin1-bpp40",
        "cut1d/waescher-test0022",
        "rect2d/P1-brackets-3-16"
      })
  void theProvenBestIsMet(String name) {
    JsonNode best = JSON.readTree(file(name).toFile()).get("best");
    JsonNode plan = checked(name, "10");
    assertEquals(best.get("objective").asDouble(), plan.get("objective").asDouble(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "jobs1d/J1-fourlink",
        "jobs1d/J2-fourlink-remnants",
        "jobs1d/J3-frame-and-links",
        "jobs1d/J4-cage",
        "jobs1d/s-job05"
      })
  void everySectionOfAShopJobMeetsItsProvenBest(String name) {
    JsonNode sections = JSON.readTree(file(name).toFile()).get("sections");
    JsonNode plan = checked(name, "10");
    for (int i = 0; i < sections.size(); i++) {
      JsonNode best = sections.get(i).get("best");
      JsonNode met = plan.get("sections").get(i);
      assertEquals(best.get("objective").asDouble(), met.get("objective").asDouble(), 1e-9);
      assertEquals("proven-optimal", met.get("status").asString());
    }
  }

  /** No plan may be better than the best that is proven, nor worse than the part given here. */
  @ParameterizedTest
  @CsvSource({
    "rect2d/hopper-n1a, 1.05",
    "rect2d/hopper-t3a, 1.08",
    "rect2d/vsbpp-class1-1, 1.10",
    "poly2d/shapes0, 1.40",
    "poly2d/fu, 1.40"
  })
  void hardOnesAreSoundAndNear(String name, double most) {
    double best = JSON.readTree(file(name).toFile()).get("best").get("objective").asDouble();
    JsonNode plan = checked(name, "0.7");
    assertTrue(plan.get("objective").asDouble() <= most * best, plan.get("objective")::toString);
    assertTrue(plan.get("lowerBound").asDouble() <= best + 1e-6);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"rect2d/s-plate01", "rect2d/gcutbin1", "poly2d/s-poly01", "poly2d/s-poly02"})
  void plansWithoutAKnownBestAreSound(String name) {
    checked(name, "0.5");
  }
}
