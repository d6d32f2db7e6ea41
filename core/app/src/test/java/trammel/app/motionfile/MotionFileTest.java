package trammel.app.motionfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trammel.app.CommandRun;

/** Motion files as they are written, and as they should not be. */
class MotionFileTest {
  /** Four equal level bars and a level lateral bar; invented. */
  private static final String GOOD =
      """
      {
        "format": "trammel-linkage/1",
        "name": "level bars",
        "layout": {
          "track_mm": 1500, "tyre_loaded_radius_mm": 320,
          "wheelbase_mm": 2800, "sprung_cg_height_mm": 550,
          "front_brake_share": 0.7, "sprung_mass_per_corner_kg": 300,
          "wheel_centres": {"left": [0, 750, 320], "right": [0, -750, 320]},
          "links": [
            {"name": "lower_left", "kind": "longitudinal",
             "frame": [600, 450, 250], "axle": [0, 450, 250], "stiffness_N_per_mm": 10000},
            {"name": "lower_right", "kind": "longitudinal",
             "frame": [600, -450, 250], "axle": [0, -450, 250], "stiffness_N_per_mm": 10000},
            {"name": "upper_left", "kind": "longitudinal",
             "frame": [600, 450, 410], "axle": [0, 450, 410], "stiffness_N_per_mm": 10000},
            {"name": "upper_right", "kind": "longitudinal",
             "frame": [600, -450, 410], "axle": [0, -450, 410], "stiffness_N_per_mm": 10000},
            {"name": "lateral_bar", "kind": "lateral",
             "frame": [-150, 400, 330], "axle": [-150, -400, 330], "stiffness_N_per_mm": 10000}
          ],
          "springs": [
            {"name": "coil_left", "kind": "coil",
             "frame": [0, 400, 600], "axle": [0, 400, 320], "rate_N_per_mm": 30},
            {"name": "coil_right", "kind": "coil",
             "frame": [0, -400, 600], "axle": [0, -400, 320], "rate_N_per_mm": 30}
          ],
          "shocks": [{"name": "shock", "frame": [60, 300, 600], "axle": [60, 400, 250]}],
          "pinion": {"joint": [260, 0, 320], "axis": [1, 0, 0]},
          "transmission": {"joint": [1400, 0, 320], "axis": [1, 0, 0]}
        },
        "poses": [{"heave_mm": 50, "roll_deg": 0}, {"set": "mine", "heave_mm": 0, "roll_deg": 2}]
      }
      """;

  @TempDir private Path folder;

  private CommandRun run(String text, String... words) throws IOException {
    Path file = Files.writeString(folder.resolve("bars.json"), text);
    String[] all = new String[words.length + 2];
    all[0] = "motion";
    all[1] = file.toString();
    System.arraycopy(words, 0, all, 2, words.length);
    return CommandRun.of(all);
  }

  private JsonNode json(String text) throws IOException {
    CommandRun run = run(text, "--json");
    assertEquals(0, run.exitCode(), run.err());
    return JsonMapper.builder().build().readTree(run.out());
  }

  /**
   * Closed form: equal level bars keep the housing's angle, and every bar keeps its length. With
   * the axle risen by h, forward by x and left by y that is (600 - x)² + y² + h² = 600² for the
   * four bars, and x² + (800 - y)² + h² = 800² for the lateral bar.
   */
  @Test
  void equalLevelBarsFollowTheClosedForm() throws IOException {
    JsonNode pose = json(GOOD).get("poses").get(0);
    assertEquals("heave", pose.get("set").asString());
    double x = pose.get("centre_displacement_mm").get(0).asDouble();
    double y = pose.get("centre_displacement_mm").get(1).asDouble();
    assertEquals(600, Math.sqrt((600 - x) * (600 - x) + y * y + 50 * 50), 1e-7);
    assertEquals(800, Math.sqrt(x * x + (800 - y) * (800 - y) + 50 * 50), 1e-7);
    assertTrue(x > 0 && x < 10 && y > 0 && y < 10, pose.toString());
    assertEquals(0, pose.get("pinion_angle_deg").asDouble(), 1e-6);
  }

  /** The reference vectors and what users wrote before have this name. */
  @Test
  void theFormerNameOfTheFormatIsStillRead() throws IOException {
    String former = GOOD.replace("trammel-linkage/1", "rigid-axle-motion-vectors/1");
    assertEquals(json(GOOD).get("poses"), json(former).get("poses"));
  }

  @Test
  void posesOfTheFileAreAnsweredInItsOrder() throws IOException {
    JsonNode poses = json(GOOD).get("poses");
    assertEquals(2, poses.size());
    assertEquals("mine", poses.get(1).get("set").asString());
    assertEquals(2, poses.get(1).get("roll_deg").asDouble());
  }

  @Test
  void withoutPosesHeaveGoesByTenAndRollByOne() throws IOException {
    JsonNode document = json(GOOD.replaceFirst("(?s),\\s*\"poses\".*\\]\\s*\\}\\s*$", "}"));
    JsonNode poses = document.get("poses");
    assertEquals(21 + 13, poses.size());
    assertEquals(-100, poses.get(0).get("heave_mm").asDouble());
    assertEquals(-90, poses.get(1).get("heave_mm").asDouble());
    assertEquals(6, poses.get(33).get("roll_deg").asDouble());
    assertEquals(21, document.get("lateral_shift_curve_mm").size());
  }

  @Test
  void resultsOfAnEarlierRunAreComputedAnew() throws IOException {
    CommandRun first = run(GOOD, "--json");
    String spoilt = first.out().replace("\"reachable\" : true", "\"reachable\" : false");
    assertEquals(first.out(), run(spoilt, "--json").out());
  }

  @Test
  void whatIsNotUsedIsPassedOnAndRemarkedOn() throws IOException {
    CommandRun run = run(GOOD.replace("\"name\": \"level bars\"", "\"auther\": 1.50"), "--json");
    assertEquals(0, run.exitCode(), run.err());
    assertTrue(run.out().contains("\"auther\" : 1.50"), run.out());
    assertTrue(run.err().contains("auther"), run.err());
  }

  @Test
  void aLinkageAloneNeedsNoSpringsShocksOrShaft() throws IOException {
    JsonNode bare = json(GOOD.replaceFirst("(?s),\\s*\"springs\".*(?=\\},\\s*\"poses\")", "\n"));
    assertTrue(bare.get("poses").get(0).get("springs").isEmpty());
    assertFalse(bare.get("poses").get(0).has("driveshaft"));
  }

  @Test
  void theSameLinkageInYamlMovesAlike() throws IOException {
    Path file = Files.writeString(folder.resolve("bars.yaml"), GOOD);
    CommandRun yaml = CommandRun.of("motion", file.toString(), "--json");
    assertEquals(0, yaml.exitCode(), yaml.err());
    assertEquals(run(GOOD, "--json").out(), yaml.out());
  }

  @ParameterizedTest
  @CsvSource({"metric, 50.00 mm", "us, 1.969 in"})
  void theTableIsPrintedInTheUnitsAskedFor(String units, String heave) throws IOException {
    CommandRun run = run(GOOD, "--units", units);
    assertEquals(0, run.exitCode(), run.err());
    assertTrue(run.out().contains(heave), run.out());
    assertTrue(run.out().contains("lateral_bar"), run.out());
  }

  /** Each row breaks one thing; the message must name the field and say what is allowed. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"trammel-linkage/1\" | \"trammel-linkage/9\" | format",
        "\"format\": \"trammel-linkage/1\", | `` | format",
        "\"track_mm\": 1500 | \"track_mm\": \"1500\" | layout.track_mm",
        "\"track_mm\": 1500 | \"track_mm\": -1500 | layout.track_mm",
        "\"track_mm\": 1500 | \"track_mm\": 0 | layout.track_mm",
        "\"track_mm\": 1500 | \"track_mm\": 1e999 | layout.track_mm",
        "\"track_mm\": 1500 | \"track_mm\": null | layout.track_mm",
        "\"track_mm\": 1500 | \"track_mm\": [1500] | layout.track_mm",
        "\"track_mm\": 1500 | \"track_mm\": true | layout.track_mm",
        "\"track_mm\": 1500 | \"track\": 1500 | layout.track",
        "\"tyre_loaded_radius_mm\": 320, | `` | layout.tyre_loaded_radius_mm",
        "\"wheelbase_mm\": 2800 | \"wheelbase_mm\": 2800000 | layout.wheelbase_mm",
        "\"sprung_cg_height_mm\": 550 | \"sprung_cg_height_mm\": {} | layout.sprung_cg_height_mm",
        "\"front_brake_share\": 0.7 | \"front_brake_share\": 70 | layout.front_brake_share",
        "\"sprung_mass_per_corner_kg\": 300 | \"sprung_mass_per_corner_kg\": 0"
            + " | layout.sprung_mass_per_corner_kg",
        "\"left\": [0, 750, 320] | \"left\": [0, 740, 320] | layout.wheel_centres.left",
        "\"name\": \"lower_left\" | \"name\": \"\" | layout.links[0].name",
        "\"name\": \"lower_left\", | `` | layout.links[0].name",
        "\"name\": \"lower_right\" | \"name\": \"lower_left\" | layout.links[1].name",
        "\"kind\": \"lateral\" | \"kind\": \"sideways\" | layout.links[4].kind",
        "[600, 450, 250] | [600, 450] | layout.links[0].frame",
        "[600, 450, 250] | [600, 450, \"250\"] | layout.links[0].frame[2]",
        "[600, 450, 250] | [0, 450, 250] | lower_left",
        "[600, 450, 250] | [600, 450, 2500000] | layout.links[0].frame[2]",
        "\"stiffness_N_per_mm\": 10000} | \"stiffness_N_per_mm\": 0} | stiffness_N_per_mm",
        "\"stiffness_N_per_mm\": 10000} | \"stiffnes_N_per_mm\": 10000} | stiffness_N_per_mm",
        "\"rate_N_per_mm\": 30 | \"rate_N_per_mm\": -30 | layout.springs[0].rate_N_per_mm",
        "\"frame\": [0, 400, 600] | \"frame\": [0, 400, 320] | coil_left",
        "\"springs\": [ | \"springs\": 5, \"shock\": [ | layout.springs",
        "\"frame\": [60, 300, 600] | \"frame\": [60, 400, 250] | layout.shocks[0]",
        "\"axis\": [1, 0, 0]}, | \"axis\": [2, 0, 0]}, | layout.pinion.axis",
        "\"axis\": [1, 0, 0]}, | \"axis\": [-1, 0, 0]}, | layout.pinion.axis",
        "[1400, 0, 320] | [260, 0, 320] | layout.transmission.joint",
        "\"pinion\" | \"pinoin\" | layout.pinion",
        "\"heave_mm\": 50 | \"heave_mm\": \"up\" | poses[0].heave_mm",
        "\"heave_mm\": 50, | `` | poses[0].heave_mm",
        "\"roll_deg\": 2 | \"roll_deg\": 90 | poses[1].roll_deg",
        "\"set\": \"mine\" | \"set\": 7 | poses[1].set",
        "\"poses\": [ | \"poses\": 7, \"name2\": [ | poses",
        "\"layout\": { | \"layout\": 5, \"lay\": { | layout"
      })
  void aBrokenFieldIsNamed(String good, String broken, String field) throws IOException {
    assertTrue(GOOD.contains(good), good);
    CommandRun run = run(GOOD.replaceFirst(java.util.regex.Pattern.quote(good), broken));
    assertEquals(2, run.exitCode(), run.err());
    assertEquals("", run.out());
    assertTrue(run.err().contains("bars.json, line "), run.err());
    assertTrue(run.err().contains(field), run.err());
    assertTrue(run.err().contains("allowed"), run.err());
    assertFalse(run.err().contains("Exception"), run.err());
  }

  /** A linkage that would leave the axle loose cannot be solved and is said so in shop words. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lateral_bar | at least 4 are needed | 3",
        "lateral_bar | holds the axle sideways | 4"
      })
  void linksThatLeaveTheAxleLooseAreRefused(String bar, String words, int links)
      throws IOException {
    String without = GOOD.replaceFirst("(?s),\\s*\\{\"name\": \"" + bar + "\".*?\\}\\s*\\]", "]");
    if (links == 3) {
      without = without.replaceFirst("(?s),\\s*\\{\"name\": \"upper_right\".*?\\}", "");
    }
    CommandRun run = run(without);
    assertEquals(2, run.exitCode(), run.err());
    assertTrue(run.err().contains(words), run.err());
  }

  /** Whatever is cut off or knocked out of a good file, it is read or refused, never a fault. */
  @Test
  void aDamagedFileIsNeverAFault() throws IOException {
    for (int at = 0; at < GOOD.length(); at += 7) {
      assertAnswered(GOOD.substring(0, at));
      assertAnswered(GOOD.substring(0, at) + GOOD.substring(at + 1));
      assertAnswered(GOOD.substring(0, at) + "9" + GOOD.substring(at));
    }
  }

  private void assertAnswered(String text) throws IOException {
    CommandRun run = run(text, "--json");
    assertTrue(run.exitCode() == 0 || run.exitCode() == 2, run.err() + "\n" + text);
    assertFalse(run.out().contains("NaN"), text);
  }

  @Test
  void aFileThatIsNotThereIsBadInput() {
    CommandRun run = CommandRun.of("motion", folder.resolve("none.json").toString());
    assertEquals(2, run.exitCode());
    assertTrue(run.err().contains("no such file"), run.err());
  }
}
