package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The two demo jobs, and jobs made of them, through the commands of an installed copy. */
class DemoJobsIT {
  private static final int STOP = 1;
  private static final int BAD_INPUT = 2;
  private static final int DONE = 0;

  @TempDir static Path shop;

  /**
   * Bands of a rear four-link on a full frame, lift and plasma table at hand: from memory, no
   * source. Notch, air springs and their plumbing are on top of the whole job's 38.5 to 140 h; so
   * are design, readings after tacking, the axle out again, the bed off and on, and an hour for the
   * plates of the air springs' seats and outriggers, beside 2 to 8 for the brackets.
   */
  private static final List<String> HOURS =
      List.of(
          "0.5-2 intake",
          "1-3 safe-set-up",
          "2-8 strip-out",
          "1-4 clean-weld-zones",
          "1.5-5 datum-and-mark",
          "1.5-5 set-axle",
          "2-9 dress-plate cut-plate set-up-table",
          "1-6 design",
          "0.5-2 fit-up-readings",
          "1-5 bench-welding",
          "2-8 bed-off",
          "2.5-8 fit-frame-bracket",
          "2-6 fit-axle-bracket",
          "4-14 box-rail fit-local-boxing",
          "8-22 notch-rail",
          "0.5-4 parking-brake",
          "1.5-5 reassemble",
          "2-6 make-bar saw-tube",
          "1.5-5 fit-lateral-bar",
          "3-8 fit-shock-crossmember",
          "5-18 plumb-air fit-air-spring fit-spring-seat",
          "1-5 cycle-travel",
          "3-10 torch-time",
          "0.5-3 dress-and-inspect-welds",
          "1.5-5 paint",
          "1.5-5 brake-lines",
          "1-8 move-exhaust",
          "1-3 driveshaft",
          "1.5-4 road-test");

  private static InstalledCopy copy;

  @TempDir Path folder;

  @BeforeAll
  static void unpack() throws IOException {
    copy = InstalledCopy.unpackedInto(shop);
  }

  // --- What each demo job is there to show -------------------------------------------------------

  @ParameterizedTest
  @CsvSource({"pickup, slip-room", "sedan, wheelbase-square"})
  void oneCheckOfEachDemoJobSaysStop(String name, String check) throws Exception {
    Tree quote = copy.json(STOP, "quote", copy.demoJob(name));
    List<String> stops = new ArrayList<>();
    for (Tree entry : quote.list("checks")) {
      if (entry.text("verdict").equals("stop")) {
        stops.add(entry.text("check"));
      }
    }
    assertEquals(List.of(check), stops);
    assertEquals(check, quote.list("checks").get(0).text("check"), "the worst comes first");
  }

  /** The two sides were taped as 113 3/4 in and 114 1/16 in; over 1/4 in is a stop. */
  @Test
  void theSedansAxleIsOutOfSquareByTheDifferenceOfTheTwoTapes() throws Exception {
    Tree checks = copy.json(STOP, "check", copy.demoJob("sedan"));
    Tree square = checks.entry("checks", "check", "wheelbase-square");
    assertEquals(5 / 16.0 * 25.4, square.number("value"), 1e-6);
    assertEquals(6.35, square.number("stop_max"), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "check, STOP",
    "plan, HOURS",
    "quote, TOTAL",
    "order, MATERIAL ORDER",
    "compare, SIDE BY SIDE"
  })
  void everyCommandTakesADemoJobInEitherUnits(String command, String holds) throws Exception {
    Launch.Ended us = copy.run(command, copy.demoJob("sedan").toString());
    Launch.Ended metric = copy.run(command, "--units", "metric", copy.demoJob("sedan").toString());
    for (Launch.Ended ended : List.of(us, metric)) {
      assertEquals(STOP, ended.exitCode(), ended.err());
      assertTrue(ended.out().contains(holds), ended.out());
      assertFalse(ended.out().contains("NaN"), ended.out());
      assertFalse(ended.out().contains("Infinity"), ended.out());
    }
    if (!command.equals("order")) {
      assertTrue(metric.out().contains(" mm"), metric.out());
    }
    assertFalse(us.out().contains(" mm"), us.out());
  }

  @Test
  void theSameLayoutIsPrintedInBothUnits() throws Exception {
    String job = copy.demoJob("pickup").toString();
    String us = copy.run("check", job).out();
    String metric = copy.run("check", "--units", "metric", job).out();
    // 24 in from joint to joint of a lower bar.
    assertEquals("24 in", lastCells(lineOf(us, "lower-left")));
    assertEquals("609.6 mm", lastCells(lineOf(metric, "lower-left")));
  }

  @Test
  void theOneNumberForAMachineIsTheSameInEitherUnits() throws Exception {
    Path job = copy.demoJob("sedan");
    Tree us = copy.json(STOP, "quote", job);
    Tree metric = copy.json(STOP, "quote", job, "--units", "metric");
    assertEquals(us.amount("price.total"), metric.amount("price.total"));
    assertEquals(us.number("welds.length_mm"), metric.number("welds.length_mm"));
    assertEquals(us.number("steel_kg"), metric.number("steel_kg"));
  }

  private static String lineOf(String text, String name) {
    return text.lines()
        .filter(line -> line.strip().startsWith(name + " "))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no line of " + name + " in " + text));
  }

  private static String lastCells(String line) {
    String[] cells = line.strip().split(" {2,}");
    return cells[cells.length - 1];
  }

  // --- The order --------------------------------------------------------------------------------

  @ParameterizedTest
  @ValueSource(strings = {"pickup", "sedan"})
  void theOrderBuysWholeSticksAndSheetsAndAddsUp(String name) throws Exception {
    Path job = copy.demoJob(name);
    Tree order = copy.json(STOP, "order", job);
    Tree plan = copy.json(STOP, "plan", job);
    BigDecimal sticks = BigDecimal.ZERO;
    BigDecimal sheets = BigDecimal.ZERO;
    for (Tree supplier : order.list("suppliers")) {
      BigDecimal sum = BigDecimal.ZERO;
      for (Tree line : supplier.list("lines")) {
        sum = sum.add(line.amount("amount"));
        if (line.text("unit").equals("stick")) {
          sticks = sticks.add(whole(line.amount("quantity")));
        } else if (line.text("unit").equals("sheet")) {
          sheets = sheets.add(whole(line.amount("quantity")));
        }
      }
      assertEquals(0, sum.compareTo(supplier.amount("goods")), supplier.text("supplier"));
      for (Tree charge : supplier.list("charges")) {
        sum = sum.add(charge.amount("amount"));
      }
      assertEquals(0, sum.compareTo(supplier.amount("total")), supplier.text("supplier"));
    }
    int planned = 0;
    for (Tree section : plan.list("tubes")) {
      planned += section.list("sticks").size();
    }
    assertEquals(planned, sticks.intValueExact());
    assertTrue(sheets.signum() > 0);
  }

  /** Every piece lies on its stick, none over another, and nothing is longer than the stick. */
  @ParameterizedTest
  @ValueSource(strings = {"pickup", "sedan"})
  void theSticksHoldEveryPieceOfTheCutList(String name) throws Exception {
    for (Tree section : copy.json(STOP, "plan", copy.demoJob(name)).list("tubes")) {
      double wantedMm = 0;
      for (Tree piece : section.list("pieces")) {
        wantedMm += piece.number("cut_length_mm") * piece.number("quantity");
      }
      double cutMm = 0;
      for (Tree stick : section.list("sticks")) {
        double endMm = 0;
        for (Tree piece : stick.list("pieces")) {
          assertTrue(piece.number("at_mm") >= endMm, stick.toString());
          endMm = piece.number("at_mm") + piece.number("length_mm");
          cutMm += piece.number("length_mm");
        }
        assertTrue(endMm <= stick.number("length_mm") + 1e-6, stick.toString());
      }
      // The saw rounds each piece to a thousandth of an inch at most.
      assertEquals(wantedMm, cutMm, 0.5, section.text("section"));
    }
  }

  @Test
  void twoJobsAreBoughtTogetherForNoMoreThanApart() throws Exception {
    String pickup = copy.demoJob("pickup").toString();
    Tree together = copy.json(STOP, "order", copy.demoJob("sedan"), pickup);
    BigDecimal apart =
        steel(copy.json(STOP, "order", copy.demoJob("sedan")))
            .add(steel(copy.json(STOP, "order", copy.demoJob("pickup"))));
    assertEquals(2, together.list("jobs").size());
    assertTrue(steel(together).compareTo(apart) <= 0, together + " against " + apart);
  }

  private static BigDecimal steel(Tree order) {
    BigDecimal sum = BigDecimal.ZERO;
    for (Tree supplier : order.list("suppliers")) {
      for (Tree line : supplier.list("lines")) {
        String unit = line.text("unit");
        if (unit.equals("stick") || unit.equals("sheet")) {
          sum = sum.add(line.amount("amount"));
        }
      }
    }
    return sum;
  }

  private static BigDecimal whole(BigDecimal quantity) {
    return BigDecimal.valueOf(quantity.intValueExact());
  }

  // --- Variants side by side
  // ----------------------------------------------------------------------

  @Test
  void inboardAgainstOutboardIsExplainedDownToTheLine() throws Exception {
    Tree compared = copy.json(STOP, "compare", copy.demoJob("pickup"));
    List<Tree> variants = compared.list("variants");
    assertEquals(
        List.of(
            "spring air-spring, mounting inboard",
            "spring air-spring, mounting outboard",
            "spring coil-spring, mounting inboard",
            "spring coil-spring, mounting outboard"),
        variants.stream().map(variant -> variant.text("variant")).toList());
    Tree inboard = variants.get(0);
    Tree outboard = variants.get(1);
    for (String figure : List.of("mean_h", "weld_length_mm", "steel_kg", "total")) {
      assertNotEquals(inboard.number(figure), outboard.number(figure), figure);
    }
    List<Tree> lines = outboard.list("differences");
    assertEquals(change(inboard, outboard, "mean_h"), sum(lines, "hours"), 1e-6);
    assertEquals(change(inboard, outboard, "weld_length_mm"), sum(lines, "weld"), 0.01);
    for (Tree line : lines) {
      assertFalse(line.text("why").isBlank(), line.toString());
    }
    assertTrue(lines.stream().anyMatch(line -> line.text("kind").equals("plate")));
  }

  /**
   * Rails that taper more stand further from outboard brackets at the front: longer stand-offs,
   * more weld, more hours; the inboard bars follow the rails' narrow end as before.
   */
  @Test
  void theDifferenceGrowsWithTheTaperOfTheRails() throws Exception {
    Tree measured = copy.json(STOP, "compare", railsMoved(37));
    Tree wider = copy.json(STOP, "compare", railsMoved(38));
    for (String figure : List.of("mean_h", "weld_length_mm", "steel_kg", "total")) {
      assertTrue(difference(wider, figure) > difference(measured, figure), figure);
    }
  }

  @Test
  void aFieldVariedByHandIsTheSameAsAJobFileThatSaysIt() throws Exception {
    Path job = copy.demoJob("sedan");
    Tree compared =
        copy.json(
            STOP,
            "compare",
            job,
            "--vary",
            "terms.labour_rate=90,120",
            "--vary",
            "chosen.linkage_options.lower_length=24 in,26 in");
    assertEquals(4, compared.list("variants").size());
    Tree changed =
        copy.demoTree("sedan")
            .with("terms.labour_rate", new BigDecimal("120"))
            .with("chosen.linkage_options.lower_length", "26 in");
    // The shop's own catalog counts only for a job file beside it.
    Workbench.copy(copy.home().resolve("catalogs/demo"), folder.resolve("shop"));
    Tree alone = copy.json(STOP, "quote", write("shop/120.json", changed));
    assertEquals(alone.amount("price.total"), compared.list("variants").get(3).amount("total"));
  }

  /** Arithmetic: 80 % down by the job and 30 % at tacking by the shop are 110 % of the price. */
  @Test
  void paymentsOfJobAndShopOverTheWholePriceAreRefused() throws Exception {
    Tree job = copy.demoTree("sedan").with("terms.deposit", "80 %");
    Files.createDirectories(folder.resolve("paid/catalog"));
    Path file = write("paid/sedan.json", job);
    Files.writeString(
        folder.resolve("paid/catalog/shop.json"),
        """
        {"format": "trammel-catalog/1",
         "shop": {"progress": [{"at": "bars tacked", "share": "30 %"}]}}
        """);
    Launch.Ended ended = copy.run("quote", file.toString());
    assertEquals(2, ended.exitCode(), ended.err());
    assertTrue(ended.err().contains("110 %"), ended.err());
    assertTrue(ended.err().contains(job.text("job.number")), ended.err());
  }

  /** The pickup, its rails of 2 1/4 in width moved at the axle; as measured they are 37 in wide. */
  private Path railsMoved(int outsideIn) throws IOException {
    Tree job =
        copy.demoTree("pickup")
            .with("measured.rails.outside_at_axle", outsideIn + " in")
            .with("measured.rails.between_at_axle", outsideIn - 2 * 2.25 + " in")
            // So that the shocks stand the same between rails of any width.
            .with("chosen.spring_options.shock_lean", "15 deg")
            .with("chosen.spring_options.lower_height", "-3 in");
    return write("rails-" + outsideIn + ".json", job);
  }

  private static double change(Tree first, Tree other, String figure) {
    return other.number(figure) - first.number(figure);
  }

  private static double difference(Tree compared, String figure) {
    List<Tree> variants = compared.list("variants");
    return change(variants.get(0), variants.get(1), figure);
  }

  private static double sum(List<Tree> lines, String kind) {
    double sum = 0;
    for (Tree line : lines) {
      if (line.text("kind").equals(kind)) {
        sum += line.number("other") - line.number("first");
      }
    }
    return sum;
  }

  // --- Changes
  // ------------------------------------------------------------------------------------

  /** A pinion 3 deg too high, lower bars 2 in and the lateral bar 3 in too high on the frame. */
  @Test
  void everySuggestedChangeWrittenIntoTheJobFileMakesItsCheckGood() throws Exception {
    Tree wrong =
        copy.demoTree("pickup")
            .with("chosen.pinion_angle", "6 deg from level")
            .with("chosen.pickups.lower-left.frame.up", "13.92 in")
            .with("chosen.pickups.lower-right.frame.up", "13.92 in")
            .with("chosen.pickups.lateral-bar.frame.up", "19 1/2 in");
    Tree judged = copy.json(STOP, "check", write("wrong.json", wrong));
    List<String> changed = new ArrayList<>();
    for (Tree entry : judged.list("checks")) {
      if (entry.has("change")) {
        assertNotEquals("good", entry.text("verdict"));
        changed.add(entry.text("check"));
        assertCured(wrong, entry);
      }
    }
    assertTrue(
        changed.containsAll(List.of("pinion-parallel", "lower-bar-angle", "lateral-bar-angle")),
        changed.toString());
  }

  private void assertCured(Tree wrong, Tree entry) throws Exception {
    Tree mended = wrong;
    for (Tree field : entry.list("change")) {
      mended = mended.with(field.text("field"), field.text("value"));
    }
    String check = entry.text("check");
    Tree again = copy.json(STOP, "check", write(check + ".json", mended));
    assertEquals("good", again.entry("checks", "check", check).text("verdict"), entry.toString());
  }

  // --- Broken job files
  // -----------------------------------------------------------------------------

  /** What stands in the demo job, what is put in its place, and what the message must name. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "format: trammel-job/1 | format: trammel-job/9 | trammel-job/9",
        "left: 118 in, | left: 118 kg, | 118 kg",
        "left: 118 in, | left: 11 in, | 60 in",
        "left: 118 in, | left: .nan, | wheelbase",
        "left: 118 in, | left: [], | wheelbase",
        "left: 118 in, | left: 118 in, left: 117 in, | left",
        "loaded_radius: | loaded_radus: | loaded_radius",
        "pinion_angle: [2.5 deg from level, 2.5 deg from level] | # none | pinion_angle",
        "angle: 2.9 deg from level | angle: 2.9 deg | from level",
        "between_at_axle: 32 1/2 in | between_at_axle: 38 in | between",
        "between_at_axle: 32 1/2 in | between_at_axle: 1/2/3 in | 1/2/3 in",
        "size: 255/70R16 | size: two feet | two feet",
        "date: 2026-11-25 | date: 2026-02-30 | 2026-02-30",
        "linkage: four-link-lateral | linkage: five-link | five-link",
        "mounting: inboard | mounting: sideways | sideways",
        "mounting: inboard | mountin: inboard | mounting",
        "bump: 3 1/2 in | bump: -1 in | -1 in",
        "left: [-13 in, 13 in] | left: [13 in, -13 in] | the smaller first",
        "up: [23 1/2 in, 27 in] | up: [23 1/2 in, 1e999 in] | 1e999",
        "hours: { | limits: [{check: no-such, good: at most 1 in, reason: none}] # | no-such",
        "hours: { | limits: [{check: anti-squat, good: at most 150 %}] # | reason",
        "measured: | measured: *nowhere # | line",
        "measured: | measured: { # | line",
        "tube_diameter: 3 in | tube_diameter: 1000000000000 in | 6 in",
      })
  void aBrokenJobFileIsRefusedWithAMessage(String good, String broken, String named)
      throws Exception {
    String text = Files.readString(copy.demoJob("pickup"));
    assertTrue(text.contains(good), good);
    Path job = folder.resolve("job.yaml");
    int at = text.indexOf(good);
    Files.writeString(job, text.substring(0, at) + broken + text.substring(at + good.length()));
    assertRefused(job, named);
  }

  @Test
  void aFileThatIsNoJobIsRefusedToo() throws Exception {
    assertRefused(folder.resolve("gone.yaml"), "gone.yaml");
    assertRefused(Files.createDirectory(folder.resolve("folder.yaml")), "folder.yaml");
    assertRefused(Files.writeString(folder.resolve("empty.yaml"), ""), "empty.yaml");
    assertRefused(Files.write(folder.resolve("photo.yaml"), new byte[] {-1, -40, 0, 16}), "photo");
    assertRefused(Files.writeString(folder.resolve("list.json"), "[1, 2]"), "list.json");
    assertRefused(Files.writeString(folder.resolve("deep.json"), "[".repeat(100_000)), "deep.json");
    assertRefused(Files.writeString(folder.resolve("job.txt"), "job: 1"), "job.txt");
  }

  /** Two bars, their brackets and the housing do not go side by side between rails 14 in apart. */
  @Test
  void aVehicleWithoutRoomIsRefusedWithWhatIsMissing() throws Exception {
    Tree tight =
        copy.demoTree("pickup")
            .with("measured.rails.outside_at_axle", "22 in")
            .with("measured.rails.between_at_axle", "17 1/2 in");
    assertRefused(write("tight.json", tight), "is missing");
  }

  private void assertRefused(Path job, String named) throws Exception {
    List<String> before = files();
    Launch.Ended ended = copy.run("quote", job.toString());
    assertEquals(2, ended.exitCode(), ended.err());
    assertEquals("", ended.out());
    assertTrue(ended.err().contains(named), ended.err());
    assertFalse(ended.err().contains("Exception"), ended.err());
    assertFalse(ended.err().contains("\tat "), ended.err());
    assertEquals(before, files());
  }

  private List<String> files() throws IOException {
    try (Stream<Path> here = Files.walk(folder);
        Stream<Path> there = Files.walk(copy.home())) {
      return Stream.concat(here, there).map(Path::toString).sorted().toList();
    }
  }

  private Path write(String name, Tree job) throws IOException {
    return InstalledCopy.write(folder.resolve(name), job);
  }

  // --- Commands without a job
  // ---------------------------------------------------------------------

  @Test
  void layoutsNamesWhatTheDemoJobsChoose() throws Exception {
    Launch.Ended ended = copy.run("layouts");
    assertEquals(DONE, ended.exitCode(), ended.err());
    for (String id :
        List.of(
            "four-link-lateral",
            "three-link-lateral",
            "torque-arm",
            "triangulated",
            "watts-linkage",
            "coil-spring",
            "air-spring")) {
      assertTrue(ended.out().contains(id), ended.out());
    }
  }

  // --- Hours of the trade
  // -------------------------------------------------------------------------

  @Test
  void thePickupTakesTheHoursThatTheTradeTakes() throws Exception {
    Tree hours = copy.json(STOP, "plan", copy.demoJob("pickup")).at("hours");
    for (String line : HOURS) {
      String[] words = line.split(" ");
      String[] band = words[0].split("-");
      List<String> operations = List.of(words).subList(1, words.length);
      double likely = 0;
      for (Tree operation : hours.list("operations")) {
        likely +=
            operations.contains(operation.text("operation")) ? operation.number("likely_h") : 0;
      }
      assertTrue(likely >= Double.parseDouble(band[0]), line + ": " + likely);
      assertTrue(likely <= Double.parseDouble(band[1]), line + ": " + likely);
    }
    double mean = hours.number("mean_h");
    assertTrue(mean > 38.5 + 8 + 5 && mean < 140 + 22 + 18, "mean " + mean);
  }

  /** The other tests here run their commands in one process, for their time's sake. */
  @ParameterizedTest
  @ValueSource(strings = {"check", "plan", "quote", "order"})
  void theLauncherSaysTheSame(String command) throws Exception {
    for (String job : List.of("pickup", "no-such-job")) {
      String file = copy.demoJob(job).toString();
      assertEquals(copy.run(command, file), copy.launch(command, file), job);
    }
  }

  /** The demonstration's shop has a catalog of its own beside its jobs. */
  @Test
  void anArrangedJobIsWrittenWhereItsPriceHolds() throws Exception {
    String job = copy.demoJob("pickup").toString();
    Path elsewhere = shop.resolve("better.yaml");
    Launch.Ended refused = copy.run("arrange", job, "--write", elsewhere.toString());
    assertEquals(BAD_INPUT, refused.exitCode(), refused.err());
    assertTrue(refused.err().contains("in another folder than the job"), refused.err());
    assertTrue(refused.err().contains(copy.demoJob("better").toString()), refused.err());
    assertFalse(Files.exists(elsewhere));
    Path beside = copy.demoJob("better");
    Launch.Ended written =
        copy.run("arrange", job, "--effort", "30", "--json", "--write", beside.toString());
    assertTrue(written.exitCode() < BAD_INPUT, written.err());
    BigDecimal shown = Tree.ofJson(written.out()).list("layouts").get(0).amount("total");
    BigDecimal quoted = copy.json(anyExit(beside), "quote", beside).amount("price.total");
    assertEquals(0, shown.compareTo(quoted), shown + " and " + quoted);
    Files.delete(beside);
  }

  private static int anyExit(Path job) {
    return copy.run("check", job.toString()).exitCode();
  }
}
