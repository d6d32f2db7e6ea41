package trammel.app.cutfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trammel.app.CommandRun;

/** Cut files as they are written, and as they should not be; all lists and prices invented. */
class CutFileTest {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private static final String JOB =
      """
      {
        "format": "trammel-cut-job/1", "name": "two tubes", "unit": "inch",
        "sections": [
          {"section": "round", "kerf": 0.125,
           "stock": [
             {"id": "long", "length": 40.25, "price": 30.5, "available": null},
             {"id": "rest", "length": 20, "price": 0, "available": 1, "remnant": true}],
           "pieces": [{"length": 20, "qty": 3}]},
          {"section": "square", "kerf": 0,
           "stock": [{"id": "bar", "length": 10, "price": 7, "available": 2}],
           "pieces": [{"length": 5, "qty": 3}]}
        ]
      }
      """;

  private static final String PLATES =
      """
      {
        "format": "trammel-cut-rectangles/1", "name": "plates", "unit": "inch", "problem": "bin",
        "rotation": true, "guillotine": false, "kerf": 0.5, "margin": 1,
        "sheets": [{"id": "small", "width": 12, "height": 6.5, "price": 31, "available": null}],
        "parts": [{"w": 4, "h": 2, "qty": 4}]
      }
      """;

  private static final String COIL =
      """
      {
        "format": "trammel-cut-rectangles/1", "name": "coil", "unit": "mm", "problem": "strip",
        "rotation": false, "guillotine": false, "kerf": 0, "margin": 0,
        "strip": {"width": 10}, "parts": [{"w": 5, "h": 3, "qty": 4}]
      }
      """;

  private static final String CLEVISES =
      """
      {
        "format": "trammel-cut-outlines/1", "name": "wedges", "unit": "inch", "problem": "bin",
        "kerf": 0, "margin": 0,
        "sheets": [{"id": "square", "width": 4, "height": 4, "price": 9, "available": null}],
        "parts": [{"id": "wedge", "qty": 2, "rotations": [0, 180],
                   "polygon": [[0, 0], [3, 0], [0, 3]]}]
      }
      """;

  @TempDir private Path folder;

  private CommandRun run(String text, String... words) throws IOException {
    Path file = Files.writeString(folder.resolve("list.json"), text);
    String[] all = new String[words.length + 4];
    all[0] = "cut";
    all[1] = file.toString();
    all[2] = "--time";
    all[3] = "0.3";
    System.arraycopy(words, 0, all, 4, words.length);
    return CommandRun.of(all);
  }

  private JsonNode plan(String text) throws IOException {
    CommandRun run = run(text, "--json");
    assertEquals(0, run.exitCode(), run.err());
    JsonNode plan = JSON.readTree(run.out());
    CutPlanChecker.check(JSON.readTree(text), plan);
    return plan;
  }

  /**
   * By hand: two pieces of 20 and a cut of 0.125 need 40.125 of the 40.25; the third is the
   * remnant. Two bars of 10 hold three pieces of 5.
   */
  @Test
  void aJobOfTwoSectionsIsCutAsByHand() throws IOException {
    JsonNode plan = plan(JOB);
    assertEquals(44.5, plan.get("objective").asDouble());
    assertEquals("proven-optimal", plan.get("status").asString());
    assertEquals(30.5, plan.get("sections").get(0).get("objective").asDouble());
    assertEquals(14, plan.get("sections").get(1).get("objective").asDouble());
  }

  /** The reference sets and what users wrote before have these names. */
  @ParameterizedTest
  @CsvSource({
    "trammel-cut-job/1, cutjob1d/1",
    "trammel-cut-rectangles/1, rect2d/1",
    "trammel-cut-outlines/1, poly2d/1"
  })
  void formerNamesOfTheFormatsAreStillRead(String name, String former) throws IOException {
    String text =
        Stream.of(JOB, PLATES, CLEVISES)
            .filter(one -> one.contains(name))
            .findFirst()
            .orElseThrow();
    JsonNode now = plan(text);
    JsonNode before = plan(text.replace(name, former));
    assertEquals(now.get("objective"), before.get("objective"));
    assertEquals(now.get("status"), before.get("status"));
  }

  /** By hand: 2 x 2 parts with margins and kerf fill 10.5 x 6.5 and no sheet is free. */
  @Test
  void platesLieWithMarginAndKerf() throws IOException {
    JsonNode plan = plan(PLATES);
    assertEquals(31, plan.get("objective").asDouble());
    assertEquals(4, plan.get("plan").get(0).get("pieces").size());
  }

  /** The torch's room counts with the kerf: 1/4 and 1/4 in fit as 1/2 in did, 0.7 in all do not. */
  @Test
  void platesKeepRoomForTheTorchToRunIn() throws IOException {
    String quarter = PLATES.replace("\"kerf\": 0.5", "\"kerf\": 0.25, \"leadIn\": 0.25");
    assertEquals(31, plan(quarter).get("objective").asDouble());
    String more = PLATES.replace("\"kerf\": 0.5", "\"kerf\": 0.25, \"leadIn\": 0.45");
    assertEquals(62, plan(more).get("objective").asDouble());
  }

  /** By hand: two side by side, two rows of 3. */
  @Test
  void aStripIsUsedUpToItsLeastLength() throws IOException {
    JsonNode plan = plan(COIL);
    assertEquals(6, plan.get("objective").asDouble());
    assertEquals(6, plan.get("lowerBound").asDouble());
  }

  /** Two right triangles of side 3 make one square of side 3; two squares of 3 need two sheets. */
  @Test
  void outlinesShareASheetThatTheirRectanglesCannot() throws IOException {
    JsonNode plan = plan(CLEVISES);
    assertEquals(9, plan.get("objective").asDouble());
    assertEquals("wedge", plan.get("plan").get(0).get("pieces").get(0).get("id").asString());
  }

  @Test
  void theScreenSaysSectionBarPlaceAndProof() throws IOException {
    CommandRun run = run(JOB);
    assertEquals(0, run.exitCode(), run.err());
    for (String words :
        new String[] {
          "CUT two tubes  sizes in inch",
          "2 sections, together 44.5",
          "SECTION round",
          "price 30.5, lower bound 30.5: nothing cheaper is possible (proven)",
          "long, 40.25; left over 0",
          "20.125  40.125"
        }) {
      assertTrue(run.out().contains(words), words + "\n" + run.out());
    }
  }

  @Test
  void theScreenSaysSheetPlaceAndTurn() throws IOException {
    CommandRun run = run(PLATES);
    assertTrue(run.out().contains("Sheet 1: small, 12 x 6.5"), run.out());
    assertTrue(run.out().contains("4 x 2"), run.out());
    assertTrue(run.out().contains(" deg"), run.out());
  }

  @Test
  void anUnknownKeyIsRemarkedAndNotUsed() throws IOException {
    CommandRun run = run(JOB.replace("\"name\"", "\"nmae\": 3, \"name\""));
    assertEquals(0, run.exitCode(), run.err());
    assertTrue(run.err().startsWith("Note: "), run.err());
    assertTrue(run.err().contains("nmae"), run.err());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"trammel-cut-job/1\" | \"trammel-cut-job/9\" | format",
        "\"name\": \"two tubes\", | `` | name",
        "\"unit\": \"inch\" | \"unit\": 7 | unit",
        "\"section\": \"square\" | \"section\": \"round\" | sections[1].section",
        "\"kerf\": 0.125, | `` | sections[0].kerf",
        "\"kerf\": 0.125 | \"kerf\": -0.125 | sections[0].kerf",
        "\"kerf\": 0.125 | \"kerf\": \"1/8\" | sections[0].kerf",
        "\"length\": 40.25 | \"length\": 1e999999999 | sections[0].stock[0].length",
        "\"length\": 40.25 | \"length\": 40.25000001 | sections[0].stock[0].length",
        "\"price\": 30.5 | \"price\": null | sections[0].stock[0].price",
        "\"available\": null | \"available\": 1.5 | sections[0].stock[0].available",
        ", \"available\": null | `` | sections[0].stock[0].available",
        "\"price\": 0, | \"price\": 4, | sections[0].stock[1].price",
        "\"remnant\": true | \"remnant\": \"yes\" | sections[0].stock[1].remnant",
        "\"id\": \"rest\" | \"id\": \"long\" | sections[0].stock[1].id",
        "\"qty\": 3 | \"qty\": 0 | sections[0].pieces[0].qty",
        "\"qty\": 3 | \"qty\": 2.5 | sections[0].pieces[0].qty",
        "{\"length\": 20, \"qty\": 3} | `` | sections[0].pieces",
        "{\"length\": 20, \"qty\": 3} | 20 | sections[0].pieces[0]",
        "{\"length\": 20, \"qty\": 3} | {\"length\": 41, \"qty\": 3} |"
            + " sections[0].pieces[0].length",
        "\"available\": 2 | \"available\": 1 | sections[1].stock",
        "\"sections\": [ | \"sections\": 5, \"other\": [ | sections"
      })
  void aBrokenJobIsNamed(String good, String broken, String field) throws IOException {
    assertRefused(JOB, good, broken, field);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"problem\": \"bin\" | \"problem\": \"box\" | problem",
        "\"problem\": \"bin\" | \"problem\": \"strip\" | strip",
        "\"rotation\": true, | `` | rotation",
        "\"guillotine\": false | \"guillotine\": 0 | guillotine",
        "\"margin\": 1, | `` | margin",
        "\"margin\": 1, | \"margin\": 4, | parts[0]",
        "\"margin\": 1, | \"margin\": 1, \"leadIn\": -1, | leadIn",
        "\"kerf\": 0.5 | \"kerf\": -0.5 | kerf",
        "\"height\": 6.5 | \"height\": 0 | sheets[0].height",
        "\"w\": 4 | \"w\": 40 | parts[0]",
        "\"available\": null | \"available\": 0 | parts[0]",
        "\"qty\": 4 | \"qty\": 100001 | parts[0].qty",
        "\"qty\": 4 | \"qty\": 20000 | parts"
      })
  void aBrokenPlateListIsNamed(String good, String broken, String field) throws IOException {
    assertRefused(PLATES, good, broken, field);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"guillotine\": false | \"guillotine\": true | guillotine",
        "{\"width\": 10} | {\"width\": 4} | parts[0]",
        "{\"width\": 10} | 10 | strip",
        "\"h\": 3, \"qty\": 4 | \"h\": 1000, \"qty\": 10000 | strip"
      })
  void aBrokenStripListIsNamed(String good, String broken, String field) throws IOException {
    assertRefused(COIL, good, broken, field);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "[[0, 0], [3, 0], [0, 3]] | [[0, 0], [3, 0]] | parts[0].polygon",
        "[[0, 0], [3, 0], [0, 3]] | [[0, 0], [3, 3], [3, 0], [0, 3]] | parts[0].polygon",
        "[[0, 0], [3, 0], [0, 3]] | [[0, 0], [1, 1], [2, 2]] | parts[0].polygon",
        "[3, 0], [0, 3] | [3, 0, 0], [0, 3] | parts[0].polygon[1]",
        "[3, 0], [0, 3] | [\"3\", 0], [0, 3] | parts[0].polygon[1][0]",
        "[3, 0], [0, 3] | [5, 0], [0, 3] | parts[0]",
        "[0, 180] | [] | parts[0].rotations",
        "[0, 180] | [0, 1800] | parts[0].rotations[1]",
        "\"id\": \"wedge\" | \"id\": -1 | parts[0].id",
        "\"kerf\": 0 | \"guillotine\": true, \"kerf\": 0 | guillotine"
      })
  void aBrokenOutlineIsNamed(String good, String broken, String field) throws IOException {
    assertRefused(CLEVISES, good, broken, field);
  }

  private void assertRefused(String file, String good, String broken, String field)
      throws IOException {
    assertTrue(file.contains(good), good);
    CommandRun run = run(file.replaceFirst(Pattern.quote(good), broken));
    assertEquals(2, run.exitCode(), run.err() + run.out());
    assertEquals("", run.out());
    assertTrue(run.err().contains("list.json, line "), run.err());
    assertTrue(run.err().contains(", " + field + ": given "), run.err());
    assertTrue(run.err().contains("; allowed: "), run.err());
    assertFalse(run.err().contains("Exception"), run.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1", "soon", "1e9", "NaN", "99999999999999"})
  void anImpossibleTimeIsRefused(String seconds) throws IOException {
    Path file = Files.writeString(folder.resolve("list.json"), COIL);
    CommandRun run = CommandRun.of("cut", file.toString(), "--time", seconds);
    assertEquals(2, run.exitCode());
    assertTrue(run.err().contains("from 0.01 to 3600"), run.err());
  }

  /** Whatever is cut off or knocked out of a good file, it is read or refused, never a fault. */
  @Test
  void aDamagedFileIsNeverAFault() throws IOException {
    for (int at = 0; at < JOB.length(); at += 7) {
      assertAnswered(JOB.substring(0, at));
      assertAnswered(JOB.substring(0, at) + JOB.substring(at + 1));
      assertAnswered(JOB.substring(0, at) + "9" + JOB.substring(at));
    }
  }

  private void assertAnswered(String text) throws IOException {
    CommandRun run = run(text, "--json");
    assertTrue(run.exitCode() == 0 || run.exitCode() == 2, run.err() + "\n" + text);
  }
}
