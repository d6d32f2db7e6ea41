package trammel.planning.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.Problem;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/**
 * Every broken file is refused with a message that says where, what, what is allowed, what to do.
 */
class BrokenJobFilesTest {
  private static final List<String> NASTY =
      List.of(
          "",
          "\n",
          "\t",
          ":",
          ": ",
          "- ",
          "[",
          "]",
          "{",
          "}",
          "\"",
          "'",
          ",",
          "&a ",
          "*a",
          "!!int ",
          "#",
          "| ",
          "> ",
          "%",
          "---\n",
          "...\n",
          "null",
          "true",
          "NaN",
          "-",
          "1e999",
          "9".repeat(400),
          "\u0000",
          "\ud800",
          "\u2028",
          "<<: ",
          "? ",
          "in",
          "deg",
          "lb");

  private static final List<String> PATHS =
      List.of(
          "format",
          "job",
          "job.number",
          "job.units",
          "measured",
          "measured.rails.flange",
          "chosen.pickups",
          "measured.obstacles",
          "measured.obstacles[0]",
          "measured.obstacles[0].box.left[1]",
          "terms.limits",
          "terms.tax.rate",
          "measured.axle.pinion_angle",
          "measured.tolerance.tape");

  /** Passage, replacement, field that is named, part of the message. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "trammel-job/1 | trammel-job/2 | format | trammel-job/1",
        "format: trammel-job/1 | | format | Add format",
        "format: | fromat: | fromat | Did you mean format?",
        "2026-11-25 | 2026-02-30 | job.date | year, month and day",
        "2026-11-25 | 25/11/2026 | job.date | year, month and day",
        "2026-11-25 | 2026-1-5 | job.date | 2026-11-25",
        "customer: Example Customer | customer: true | job.customer | quotes",
        "customer: Example Customer | customer: [a, b] | job.customer | a list of 2",
        "customer: Example Customer | customer: null | job.customer | given nothing",
        "customer: Example Customer | customer: '   ' | job.customer | fill it in",
        "customer: Example Customer | costumer: Example | job.costumer | Did you mean customer?",
        "units: us | units: imperial | job.units | us or metric",
        "units: us | units: Us | job.units | Did you mean us?",
        "job: | jobs: | jobs | Did you mean job?",
        "measured: | measurd: | measurd | Did you mean measured?",
        "chosen: | selected: | selected | format, job, measured",
        "{left: 118 1/2 in, right: 118 1/2 in} | 118 1/2 in | measured.wheelbase | a group with the"
            + " keys left and right",
        "{left: 118 1/2 in, right | {left: 118 1/2, rihgt | measured.wheelbase.rihgt | Did you mean"
            + " right?",
        "{left: 118 1/2 in, right | {left: 118 1/2 mm, right | measured.wheelbase.left | Fractions"
            + " are for inches",
        "{left: 118 1/2 in, right | {left: 118 mm, right | measured.wheelbase.left | from 60 in to"
            + " 280 in",
        "1.0 deg from level | 1.0 deg from frame | measured.rake.on_stands | from level",
        "1.0 deg from level | 100 deg | measured.rake.on_stands | -10 deg to 10 deg",
        "at_ride: 0.5 deg | at_ride: 0.5 in | measured.rake.at_ride | in is for a length",
        "at_ride: 0.5 deg | at_ride: 0.5 deg from the frame | measured.rake.at_ride | from level",
        "shape: channel | shape: chanel | measured.rails.shape | Did you mean channel?",
        "shape: channel | shape: round | measured.rails.shape | channel or box",
        "[38 in, 38 1/16 in] | [] | measured.rails.outside_at_axle | one reading",
        "[38 in, 38 1/16 in] | [38 in, [38 in]] | measured.rails.outside_at_axle[1] | a list of 1",
        "[38 in, 38 1/16 in] | [38 in, wide] | measured.rails.outside_at_axle[1] | start with a"
            + " number",
        "between_at_axle: 32 in | between_at_axle: 30 in | measured.rails.outside_at_axle | Measure"
            + " outside_at_axle, between_at_axle and flange again",
        "between_at_front_mounts: 30 in | between_at_front_mounts: 36 in |"
            + " measured.rails.outside_at_front_mounts | within 1/4 in",
        "depth: 6 in | depth: 6 lb | measured.rails.depth | lb is for a weight",
        "depth: 6 in | depth: 6,5 | measured.rails.depth | comma",
        "depth: 6 in | depth: 1/2/3 | measured.rails.depth | more than one number",
        "depth: 6 in | depth: -6 in | measured.rails.depth | 2 in to 14 in",
        "depth: 6 in | depth: true | measured.rails.depth | given true",
        "depth: 6 in | depth: | measured.rails.depth | given nothing",
        "depth: 6 in | depth: .nan | measured.rails.depth | given .nan",
        "depth: 6 in | depth: .inf | measured.rails.depth | given .inf",
        "depth: 6 in | depth: 1e1 | measured.rails.depth | unit e",
        "depth: 6 in | depth: {in: 6} | measured.rails.depth | a group of 1 keys",
        "wall: 3/16 in | wall: 3 /16 in | measured.rails.wall | more than one number",
        "wall: 3/16 in | wall: 16/3 in | measured.rails.wall | halves, quarters",
        "wall: 3/16 in | wall: 3 | measured.rails.wall | 0.05 in to 3/4 in",
        "tube_wall: 1/4 in | tube_wall: 4 in | measured.axle.tube_wall | to 1 in",
        "inner_limit: 7 in | inner_limit: 27 in | measured.axle.inner_limit | less than"
            + " outer_limit",
        "outer_limit: 26 in | outer_limit: 40 in | measured.axle.outer_limit | half of"
            + " flange_to_flange",
        "{forward: 11 in, left: 0, up: -1 1/2 in} | {forward: 11 in, left: 0} |"
            + " measured.axle.pinion.up | Add up",
        "{forward: 11 in, left: 0, up: -1 1/2 in} | [11 in, 0, -1 1/2 in] | measured.axle.pinion |"
            + " forward, left and up",
        "[2.5 deg from level, 2.6 deg from level] | 2.5 deg | measured.axle.pinion_angle | 2.5 deg"
            + " from level, or 2.5 deg from frame",
        "[2.5 deg from level, 2.6 deg from level] | 2.5 | measured.axle.pinion_angle | Say what it"
            + " was read against",
        "[2.5 deg from level, 2.6 deg from level] | 2.5 deg from floor | measured.axle.pinion_angle"
            + " | level or frame",
        "2.6 deg from level] | 2.6 deg from frame] | measured.axle.pinion_angle | same datum",
        "2.6 deg from level] | 26 in from level] | measured.axle.pinion_angle[1] | in is for a"
            + " length",
        "size: 255/70R16 | size: 31x10.50R15 | measured.tyre.size | diameter and width instead",
        "size: 255/70R16 | diameter: 30 in | measured.tyre.size | diameter without width",
        "size: 255/70R16 | {} | measured.tyre | not YAML",
        "~    size: 255/70R16\\n~ | | measured.tyre.size | either size, or diameter and width",
        "size: 255/70R16 | size: 255/70R16\\n"
            + "    width: 10 in | measured.tyre.width | Take one of them out",
        "loaded_radius: 14 1/4 in | loaded_radius: 16 in | measured.tyre.loaded_radius | half the"
            + " unloaded diameter",
        "angle: 3.0 deg from frame | angle: 3.0 deg | measured.transmission.angle | from level or"
            + " from frame",
        "slip_room: 1 1/4 in | slip_rom: 1 1/4 in | measured.driveshaft.slip_rom | Did you mean"
            + " slip_room?",
        "tube_wall: 0.083 in | tube_wall: 83 in | measured.driveshaft.tube_wall | 0.03 in to 1/2"
            + " in",
        "rear_left: 820 | rear_left: 820 in | measured.weights.rear_left | in is for a length",
        "rear_left: 820 | rear_left: 20 | measured.weights.rear_left | 50 lb to 15000 lb",
        "unsprung_rear: 380 lb | unsprung_rear: 1700 lb | measured.weights.unsprung_rear | less"
            + " than both rear wheels",
        "from: estimated | from: guess | measured.weights.centre_of_gravity_from | measured or"
            + " estimated",
        "first_gear: 3.06 | first_gear: 3.06:1 | measured.drive.first_gear | plain number",
        "first_gear: 3.06 | first_gear: 306 | measured.drive.first_gear | 0.5 to 25",
        "330 lb-ft | 330 lb | measured.drive.engine_torque | lb is for a weight",
        "tyre_grip: 0.9 | tyre_grip: 90 % | measured.tyre_grip | plain number",
        "tyre_grip: 0.9 | tyre_grip: 9 | measured.tyre_grip | 0.3 to 1.8",
        "tyre_grip: 0.9 | brakes: {front_share: 0.65} | measured.brakes.front_share | write 65 %",
        "kind: tank | kind: fuel | measured.obstacles[0].kind | tank, fuel-line, exhaust",
        "[20 in, 52 in] | [52 in, 20 in] | measured.obstacles[0].box.forward | swap",
        "[20 in, 52 in] | [20 in] | measured.obstacles[0].box.forward | a list of two lengths",
        "name: tail pipe | name: fuel tank | measured.obstacles[1].name | a second time",
        "cylinder: | tube: | measured.obstacles[1].tube | name, kind, box and cylinder",
        "diameter: 2 1/2 in | radius: 1 1/4 in | measured.obstacles[1].cylinder.radius | from, to"
            + " and diameter",
        "{forward: 60 in, left: -14 in, up: 16 in} | {forward: -20 in, left: -18 in, up: 20 in} |"
            + " measured.obstacles[1].cylinder.to | the same place as from",
        "{mounting: inboard} | inboard | chosen.linkage_options | a group of keys",
        "~  ride:~ | ~  additions: [straps]\n"
            + "  ride:~ | chosen.additions | names, each with a group",
        "~  ride:~ | ~  additions: {straps: 2}\n"
            + "  ride:~ | chosen.additions.straps | {} to leave each",
        "bump: 3 1/2 in | bump: 35 in | chosen.ride.bump | 1/2 in to 14 in",
        "pinion_angle: 3 deg from level | pinion_angle: 3 deg from frame | chosen.pinion_angle |"
            + " from level",
        "{up: 12 1/4 in} | {high: 12 1/4 in} | chosen.pickups.lower-left.frame.high | forward, left"
            + " and up",
        "{up: 12 1/4 in} | {} | chosen.pickups.lower-left | changes nothing",
        "{axle: {left: -20 in, up: 14 in}} | {} | chosen.pickups.lateral | changes nothing",
        "labour_rate: 95.00 | labour_rate: $95 | terms.labour_rate | 95.00",
        "labour_rate: 95.00 | labour_rate: 1,095 | terms.labour_rate | digits with a point",
        "labour_rate: 95.00 | labour_rate: -95 | terms.labour_rate | digits with a point",
        "labour_rate: 95.00 | labour_rate: 95.00001 | terms.labour_rate | 4 decimals",
        "labour_rate: 95.00 | labour_rate: 1e9 | terms.labour_rate | digits with a point",
        "parts: 25 % | parts: 0.25 | terms.markup.parts | write 65 % for 0.65",
        "contingency: 80 | contingency: 99 | terms.contingency | 50 to 95",
        "contingency: 80 | contingency: 80.5 | terms.contingency | whole number",
        "[parts, steel] | [parts, stel] | terms.tax.taxable[1] | Did you mean steel?",
        "[parts, steel] | [parts, parts] | terms.tax.taxable | once",
        "[parts, steel] | parts | terms.tax.taxable | a list of words",
        "by: invoice | by: month | terms.tax.by | invoice or item",
        "currency: USD | currency: ZZZ | terms.currency | ISO 4217",
        "currency: USD | currency: usd | terms.currency | three capital letters",
        "good: 3 deg | check: other | terms.limits[0].check | a second time",
        "~      good: 3 deg\\n~ | | terms.limits[0].good | neither good nor stop",
        "~      reason: Bed floor dictates the front mount.\\n"
            + "~ | | terms.limits[0].reason | why this job may differ",
        "note: | \\tnote: | job.units | not YAML",
        "note: Air | note: 'Air | job.note | not YAML",
        "flange: 3 in | flange: *three | measured.rails.flange | anchor or alias",
        "{left: 118 1/2 in, right | &both {left: 118 1/2 in, right | measured.wheelbase | anchor or"
            + " alias",
        "flange: 3 in | flange: !!str 3 in | measured.rails.flange | YAML tag",
        "flange: 3 in | flange: 3 in\\n"
            + "    flange: 3 in | measured.rails.flange | stands first in line 23",
        "flange: 3 in | <<: {flange: 3 in} | measured.rails.<< | unknown key",
        "terms: | ~---\\nterms:~ | whole file | more than one document"
      })
  void brokenFileIsRefused(String passage, String replacement, String field, String words) {
    String with = replacement == null ? "" : unescaped(replacement);
    String text = JobFiles.pickupWith(unescaped(passage), with);
    BadInputException refused =
        assertThrows(BadInputException.class, () -> JobReader.read("pickup.yaml", text));
    assertEveryProblemIsClear(refused, "pickup.yaml");
    Problem named =
        refused.problems().stream()
            .filter(problem -> problem.field().equals(field))
            .findFirst()
            .orElseThrow(() -> new AssertionError(refused.getMessage()));
    assertTrue(named.text().contains(words), named.text());
  }

  private static String unescaped(String cell) {
    return cell.replace("\\n", "\n").replace("\\t", "\t");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "\n",
        "# nothing\n",
        "---\n",
        "~",
        "text",
        "3",
        "[]",
        "- a",
        "{",
        "}",
        "[[[[",
        "a: b: c",
        "\u0000",
        "a: \"\\q\"",
        "? [a]\n: b",
        "*a : b",
        "%YAML 9.9\n---\na: b",
        "!",
        "&",
        "@a",
        "`",
        "|",
        ">",
        "\ud800",
        "a: \ud83d\ude00",
        "? ",
        ": ",
        "- - - - -",
        "{a: {b: {c: [",
        "--- a\n--- b",
        "...",
        "a:\n\tb: c"
      })
  void textThatIsNoJobIsRefusedInEitherFormat(String text) {
    for (String name : new String[] {"job.yaml", "job.json"}) {
      BadInputException refused =
          assertThrows(BadInputException.class, () -> JobReader.read(name, text));
      assertEveryProblemIsClear(refused, name);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"a\": 1,}", "{\"a\": NaN}", "{'a': 1}", "{\"a\": 01}", "{\"a\": 1} {\"b\": 2}",
            "{\"a\": 1, \"a\": 2}",
        "{\"a\": tru}", "{\"a\" 1}", "{\"a\": \"\n\"}", "// c\n{}", "nul", "{\"a\": 1e99999999999}"
      })
  void malformedJsonIsRefused(String text) {
    BadInputException refused =
        assertThrows(BadInputException.class, () -> JobReader.read("job.json", text));
    assertEveryProblemIsClear(refused, "job.json");
  }

  @ParameterizedTest
  @ValueSource(strings = {"[", "{\"a\":", "- ", "{a: "})
  void deepNestingIsRefused(String step) {
    for (String name : new String[] {"job.yaml", "job.json"}) {
      BadInputException refused =
          assertThrows(BadInputException.class, () -> JobReader.read(name, step.repeat(5000)));
      assertEveryProblemIsClear(refused, name);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"job.txt", "job", "yaml", "job.json.bak"})
  void otherFileNamesAreRefused(String name) {
    BadInputException refused =
        assertThrows(BadInputException.class, () -> JobReader.read(name, JobFiles.PICKUP));
    assertEveryProblemIsClear(refused, name);
  }

  @Seeds(400)
  void fileCutOffAnywhereIsReadOrRefusedClearly(Draw draw) {
    int length = draw.whole(0, 3400);
    boolean json = draw.either();
    String name = json ? "pickup.json" : "pickup.yaml";
    String whole = json ? JobFiles.text("pickup.json") : JobFiles.PICKUP;
    readOrRefuse(name, whole.substring(0, Math.min(length, whole.length())));
  }

  @Seeds(400)
  void fileWithOnePieceChangedIsReadOrRefusedClearly(Draw draw) {
    int at = draw.whole(0, 3400);
    int removed = draw.whole(0, 12);
    String piece = piece(draw);
    boolean json = draw.either();
    String name = json ? "pickup.json" : "pickup.yaml";
    String whole = json ? JobFiles.text("pickup.json") : JobFiles.PICKUP;
    int start = Math.min(at, whole.length());
    int end = Math.min(start + removed, whole.length());
    readOrRefuse(name, whole.substring(0, start) + piece + whole.substring(end));
  }

  private static String piece(Draw draw) {
    return draw.either() ? draw.oneOf(NASTY) : draw.text(1, 4);
  }

  @Seeds(150)
  void anyValueOfAVariedFieldIsReadOrRefusedClearly(Draw draw) {
    String path = path(draw);
    String value = piece(draw);
    JobDocument document = JobDocument.of("pickup.yaml", JobFiles.PICKUP);
    try {
      JobReader.read(document.withValue(path, value));
    } catch (BadInputException refused) {
      assertFalse(refused.problems().isEmpty());
    }
  }

  private static String path(Draw draw) {
    return draw.either() ? draw.oneOf(PATHS) : draw.textOf("ab.[]0", 0, 6);
  }

  private static void readOrRefuse(String name, String text) {
    try {
      JobReader.read(name, text);
    } catch (BadInputException refused) {
      assertEveryProblemIsClear(refused, name);
    }
  }

  private static void assertEveryProblemIsClear(BadInputException refused, String file) {
    assertFalse(refused.problems().isEmpty());
    assertEquals(refused.problems().size(), refused.getMessage().lines().count());
    for (Problem problem : refused.problems()) {
      String text = problem.text();
      assertEquals(file, problem.file());
      assertTrue(problem.line() > 0, text);
      assertTrue(text.startsWith(file + ", line " + problem.line() + ", "), text);
      assertTrue(text.contains(": given ") && text.contains("; allowed: "), text);
      assertFalse(problem.field().isBlank() || problem.remedy().isBlank(), text);
      assertFalse(text.contains("Exception") || text.contains("tools.jackson"), text);
    }
  }
}
