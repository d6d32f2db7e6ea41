package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Verdict;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.estimate.Estimate;
import trammel.planning.estimate.Estimating;
import trammel.planning.job.JobReader;
import trammel.planning.order.OrderedJob;
import trammel.planning.order.Ordering;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;
import trammel.testsupport.vehicle.JobText;
import trammel.testsupport.vehicle.PlausibleVehicle;

/** What cannot be made is said by its check, and by no command after it for the first time. */
class CanBeMadeIT {
  private static final int STOP = 1;
  private static final String CHECK = "can-be-made";
  private static final Path CATALOG = Path.of("..", "..", "catalogs", "standard");

  @TempDir static Path shop;

  private static InstalledCopy copy;
  private static Catalog catalog;
  private static Drafting drafting;

  @BeforeAll
  static void unpack() throws IOException {
    copy = InstalledCopy.unpackedInto(shop);
    catalog = CatalogReader.read(List.of(CATALOG));
    drafting = new Drafting(OwnPlugins.extensions(), catalog);
  }

  private static Path pickupWithTheLateralBarRaised(String rise) throws IOException {
    String plain = "linkage_options: {mounting: inboard, rail_gap: 1 in}";
    String text = Files.readString(copy.demoJob("pickup"));
    assertTrue(text.contains(plain), "the demo's options are written otherwise now");
    Path job = shop.resolve("raised.yaml");
    return Files.writeString(
        job,
        text.replace(
            plain,
            "linkage_options: {mounting: inboard, rail_gap: 1 in, lateral_rise: " + rise + "}"));
  }

  /** The frame end comes so near to the rail's edge that its bracket's sides cross themselves. */
  @ParameterizedTest
  @ValueSource(strings = {"4 in", "6 in"})
  void aBracketThatCannotBeCutIsAStopInTheSameWordsEverywhere(String rise) throws Exception {
    Path job = pickupWithTheLateralBarRaised(rise);

    Tree found = copy.json(STOP, "check", job).entry("checks", "check", CHECK);

    assertEquals("stop", found.text("verdict"));
    String reason = found.text("where");
    assertTrue(reason.startsWith("lateral-bar frame bracket side cannot be made"), reason);
    for (String command : List.of("plan", "quote", "order")) {
      Launch.Ended ended = copy.run(command, job.toString());
      assertEquals(STOP, ended.exitCode(), command + ": " + ended.err());
      String said = ended.err().replaceAll("\\s+", " ");
      assertTrue(said.contains("STOP 1 part that cannot be made"), said);
      assertTrue(said.contains(reason), said);
      assertEquals("", ended.out(), command);
    }
  }

  /** 4 in is too high for this rail and 2 in, the usual, is not. */
  @Test
  void theChangeThatIsOfferedMakesIt() throws Exception {
    Path job = pickupWithTheLateralBarRaised("4 in");
    Tree found = copy.json(STOP, "check", job).entry("checks", "check", CHECK);
    StringBuilder pickups = new StringBuilder("  pickups: {lateral-bar: {");
    for (Tree field : found.list("change")) {
      String path = field.text("field");
      assertTrue(path.startsWith("chosen.pickups.lateral-bar."), path);
      String end = path.contains(".frame.") ? "frame" : "axle";
      pickups.append(end).append(": {up: ").append(field.text("value")).append("}, ");
    }
    pickups.setLength(pickups.length() - 2);
    String text = Files.readString(job);
    Files.writeString(
        job, text.replace("\n  pinion_angle:", "\n" + pickups + "}}\n  pinion_angle:"));

    Tree after = copy.json(STOP, "check", job).entry("checks", "check", CHECK);

    assertEquals("good", after.text("verdict"));
    assertFalse(copy.json(STOP, "plan", job).list("plates").isEmpty());
  }

  /** The shock would stand in what carries the air spring beside it. */
  @Test
  void partsThatCutIntoEachOtherAreAStopThatNamesBoth() throws Exception {
    String plain = "spring_options: {legs: tube}";
    String text = Files.readString(copy.demoJob("pickup"));
    assertTrue(text.contains(plain), "the demo's options are written otherwise now");
    Path job = shop.resolve("inboard-air.yaml");
    Files.writeString(
        job,
        text.replace(plain, "spring_options: {across: inboard}")
            .replace("rail_gap: 1 in", "rail_gap: 1/2 in"));

    Tree found = copy.json(STOP, "check", job).entry("checks", "check", "parts-apart");

    assertEquals("stop", found.text("verdict"));
    String where = found.text("where");
    assertTrue(where.contains("shock"), where);
    assertTrue(where.contains("air spring"), where);
    Launch.Ended plan = copy.run("plan", job.toString());
    assertEquals(STOP, plan.exitCode());
    assertTrue(plan.out().contains(" pairs of parts that cut into each other"), plan.out());
    assertTrue(plan.out().contains("TUBES to saw"), plan.out());
  }

  @Seeds(8)
  void whatIsNotStoppedCanBePlannedQuotedAndOrdered(Draw draw) {
    isMadeOrStopped(draw);
  }

  /** The long run; docs/reliability.md has its command. */
  @Tag("long")
  @Seeds(400)
  void whatIsNotStoppedOfHundredsCanBePlannedQuotedAndOrdered(Draw draw) {
    isMadeOrStopped(draw);
  }

  private static void isMadeOrStopped(Draw draw) {
    String linkage =
        draw.oneOf(
            "four-link-lateral",
            "three-link-lateral",
            "torque-arm",
            "triangulated",
            "watts-linkage");
    String spring = draw.oneOf("coil-spring", "air-spring");
    String mounting = draw.oneOf("inboard", "outboard");
    PlausibleVehicle vehicle = PlausibleVehicle.draw(draw);
    String text =
        JobText.of(vehicle, "R-" + draw.seed(), linkage, spring, mounting)
            .replace("{mounting: " + mounting + "}", options(linkage, mounting, draw));
    Optional<Draft> draft = laidOut(text);
    if (draft.isPresent() && canBeMade(draft.get())) {
      Estimate estimate =
          new Estimating(
                  catalog,
                  catalog.shop().termsFor(draft.get().job().terms()),
                  catalog.shop().hoursCorrelation())
              .estimate(draft.get(), draft.get().work());
      new Ordering(catalog, new QuantityPrinter(UnitSystem.US))
          .order(List.of(OrderedJob.of(estimate)));
    }
  }

  /** Half of the options that set brackets high and low are left as they are. */
  private static String options(String linkage, String mounting, Draw draw) {
    StringBuilder options = new StringBuilder("{mounting: ").append(mounting);
    if (draw.either()) {
      options.append(", lower_drop: ").append(draw.whole(2, 8)).append(" in");
    }
    if (!linkage.equals("torque-arm") && draw.either()) {
      options.append(", upper_rise: ").append(draw.whole(4, 12)).append(" in");
    }
    if (linkage.endsWith("-lateral") || linkage.equals("torque-arm")) {
      options.append(", lateral_rise: ").append(draw.whole(-6, 12)).append(" in");
      options.append(", lateral_side: ").append(draw.oneOf("left", "right"));
    }
    return options.append("}").toString();
  }

  private static Optional<Draft> laidOut(String text) {
    try {
      return Optional.of(drafting.draft(JobReader.read("drawn.yaml", text), UnitSystem.US));
    } catch (UnworkableLayoutException refused) {
      // Said by check as well, which ends with 2 then.
      return Optional.empty();
    }
  }

  private static boolean canBeMade(Draft draft) {
    LayoutAnalysis analysis = new LayoutAnalysis(draft.layout(), draft.judge().settings());
    return draft.judge().checks().stream()
        .filter(check -> check.id().equals(CHECK))
        .flatMap(check -> draft.judge().find(check, analysis).stream())
        .allMatch(found -> found.verdict() != Verdict.STOP);
  }
}
