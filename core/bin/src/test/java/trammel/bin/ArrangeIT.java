package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Verdict;
import trammel.engine.layout.Bar;
import trammel.engine.quantity.Phrase;
import trammel.planning.arrange.ArrangeListener;
import trammel.planning.arrange.ArrangedLayout;
import trammel.planning.arrange.Arrangement;
import trammel.planning.arrange.Arranging;
import trammel.planning.arrange.FirstFit;
import trammel.planning.arrange.LayoutChange;
import trammel.planning.arrange.OptionChanges;
import trammel.planning.arrange.Wishes;
import trammel.planning.arrange.WrittenLayout;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.draft.Extensions;
import trammel.planning.estimate.Estimate;
import trammel.planning.job.Job;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.plugins.airspring.AirSpringMount;
import trammel.plugins.coilspring.CoilSpringMount;
import trammel.plugins.fourlinklateral.FourLinkLateral;
import trammel.plugins.limitingstraps.LimitingStraps;
import trammel.plugins.triangulated.Triangulated;
import trammel.plugins.wattslinkage.WattsLinkage;
import trammel.reading.quantity.UnitSystem;
import trammel.testsupport.Draw;
import trammel.testsupport.vehicle.JobText;
import trammel.testsupport.vehicle.PlausibleVehicle;

/** The demonstration jobs arranged: what is printed is what a written file comes to. */
class ArrangeIT {
  private static final double QUARTER_INCH_MM = 25.4 / 4;
  private static final Path CATALOGS = Path.of("..", "..", "catalogs");
  private static final int EFFORT = 45;

  /** With any spring there are more kinds of layout to begin with. */
  private static final int EFFORT_WITH_ANY_SPRING = 130;

  private static Catalog catalog;
  private static Extensions extensions;

  @BeforeAll
  static void readCatalog() {
    catalog = CatalogReader.read(List.of(CATALOGS.resolve("standard")));
    extensions =
        new Extensions(
            List.of(new FourLinkLateral(), new Triangulated(), new WattsLinkage()),
            List.of(new CoilSpringMount(), new AirSpringMount()));
  }

  private static Path demo(String job) {
    return CATALOGS.resolve("demo").resolve(job + ".yaml");
  }

  private static Function<Draft, Estimate> quoting() {
    return draft -> DraftPrice.of(catalog, draft);
  }

  private static Arrangement arranged(String job, Wishes wishes) {
    return new Arranging(extensions, catalog, quoting())
        .arrange(JobDocument.load(demo(job)), wishes, ArrangeListener.NONE);
  }

  private static Wishes wishes() {
    return Wishes.usual().trying(EFFORT).giving(2);
  }

  /** The pickup on air springs, which it keeps, and both on whatever spring does. */
  @ParameterizedTest
  @CsvSource({"pickup, true", "pickup, false", "sedan, false"})
  void bothDemoJobsReachALayoutWithNothingLeftToArrangeAndCostWhatTheirFilesCost(
      String job, boolean keepsItsSpring) throws IOException {
    Wishes wanted =
        keepsItsSpring
            ? wishes().keeping(List.of("chosen.spring"))
            : wishes().trying(EFFORT_WITH_ANY_SPRING);
    Arrangement found = arranged(job, wanted);
    assertFalse(found.layouts().isEmpty());
    for (ArrangedLayout layout : found.layouts()) {
      String text =
          WrittenLayout.text(job + ".yaml", Files.readString(demo(job)), layout.changes());
      Job written = JobReader.read(job + ".yaml", text);
      Draft draft = new Drafting(extensions, catalog).draft(written, UnitSystem.US);
      for (CheckResult result : draft.judge().verdicts(draft.layout())) {
        assertFalse(
            result instanceof CheckResult.Judged judged && judged.verdict() != Verdict.GOOD,
            () -> layout.kind() + ": " + result);
      }
      assertEquals(
          layout.estimate().price().total(), quoting().apply(draft).price().total(), layout.kind());
      assertTrue(layout.noStopShare() >= 0.9, layout.kind());
      // 1/4 in is the plate for brackets where nothing is set: common practice, no source.
      for (Bar bar : draft.layout().bars()) {
        bar.bracket()
            .ifPresent(
                plate -> assertTrue(plate.thicknessMm() > QUARTER_INCH_MM - 0.1, layout.kind()));
      }
      if (keepsItsSpring) {
        assertEquals("air-spring", written.chosen().spring());
      }
    }
    // Comments are the fabricator's; a search keeps every one of them.
    String first =
        WrittenLayout.text(
            job + ".yaml", Files.readString(demo(job)), found.layouts().get(0).changes());
    assertEquals(comments(Files.readString(demo(job))), comments(first));
  }

  private static List<String> comments(String text) {
    return text.lines().filter(line -> line.strip().startsWith("#")).toList();
  }

  /** The same seed gives the same layouts, on one thread and on two. */
  @Test
  void theAnswerIsTheSameOnOneThreadAndOnTwo() {
    Wishes kept = wishes().keeping(List.of("chosen.linkage")).trying(30);
    assertEquals(said(arranged("sedan", kept.on(1))), said(arranged("sedan", kept.on(2))));
  }

  private static List<String> said(Arrangement found) {
    return found.layouts().stream()
        .map(layout -> layout.changes() + " " + layout.estimate().price().total())
        .toList();
  }

  /** A search that is stopped at once still tells the proposals that it has. */
  @Test
  void aSearchThatIsStoppedSaysSoAndGivesTheBestSoFar() {
    ArrangeListener atOnce =
        new ArrangeListener() {
          @Override
          public void progress(Progress progress) {}

          @Override
          public boolean isStopped() {
            return true;
          }
        };
    Arrangement found =
        new Arranging(extensions, catalog, quoting())
            .arrange(
                JobDocument.load(demo("sedan")),
                wishes().keeping(List.of("chosen.linkage", "chosen.spring")),
                atOnce);
    assertTrue(found.cutShort());
    assertFalse(found.layouts().isEmpty());
  }

  /** What is kept is not changed, with all that stands under it. */
  @Test
  void whatIsKeptStaysAsItIs() {
    Arrangement found =
        arranged("sedan", wishes().keeping(List.of("chosen.linkage", "chosen.ride")).trying(30));
    for (ArrangedLayout layout : found.layouts()) {
      for (LayoutChange change : layout.changes()) {
        assertFalse(change.path().startsWith("chosen.ride"), change.toString());
        assertFalse(change.path().equals("chosen.linkage"), change.toString());
      }
    }
  }

  /** What a refusal names was tried: with it, and nothing else changed, the layout fits. */
  @Test
  void whatARefusalNamesFits() {
    int named = 0;
    for (long seed = 1; seed <= 24 && named < 2; seed++) {
      String linkage = seed % 2 == 0 ? "watts-linkage" : "four-link-lateral";
      PlausibleVehicle vehicle = PlausibleVehicle.draw(new Draw(seed));
      String text = JobText.of(vehicle, "R-" + seed, linkage, "air-spring", "inboard");
      JobDocument document = JobDocument.of("drawn.yaml", text);
      Optional<Phrase> refusal = refusal(document);
      if (refusal.isEmpty()) {
        continue;
      }
      String advice = new FirstFit(extensions, catalog).advice(document, refusal.get());
      Matcher tried = Pattern.compile("it fits: ([a-z_.]+): ([^,]+?)(, or |\\.$)").matcher(advice);
      if (tried.find()) {
        named++;
        JobDocument changed = document.withValue(tried.group(1), tried.group(2));
        assertEquals(Optional.empty(), refusal(changed), "seed " + seed + advice);
      }
    }
    assertTrue(named > 0, "no refusal of 24 vehicles named a change");
  }

  private static Optional<Phrase> refusal(JobDocument document) {
    try {
      new Drafting(extensions, catalog).draft(JobReader.read(document), UnitSystem.US);
      return Optional.empty();
    } catch (UnworkableLayoutException noRoom) {
      return Optional.of(noRoom.reason());
    }
  }

  /** A change of options that is named makes its check good and no other verdict worse. */
  @Test
  void aChangeOfOptionsMendsItsCheckAndUpsetsNone() {
    JobDocument document = JobDocument.load(demo("pickup"));
    Draft draft = new Drafting(extensions, catalog).draft(JobReader.read(document), UnitSystem.US);
    Map<String, Verdict> before = verdicts(draft);
    List<String> open =
        before.keySet().stream().filter(id -> before.get(id) != Verdict.GOOD).toList();
    OptionChanges.Found found = new OptionChanges(extensions, catalog, 40).ofChecks(draft, open);
    // The slip yoke's room is the one thing on it that a check must catch.
    assertTrue(found.byCheck().containsKey("slip-room"), () -> found.toString());
    // Stronger bushings are enough for the joints: the frame's ends, which are stronger, stay.
    assertEquals(
        List.of("chosen.linkage_options.axle_end"),
        found.byCheck().get("joint-rating").stream().map(LayoutChange::path).toList());
    for (Map.Entry<String, List<LayoutChange>> one : found.byCheck().entrySet()) {
      JobDocument changed = document;
      for (LayoutChange change : one.getValue()) {
        changed = changed.withValue(change.path(), change.after());
      }
      assertTrue(one.getValue().size() <= 3, one.toString());
      Map<String, Verdict> after =
          verdicts(new Drafting(extensions, catalog).draft(JobReader.read(changed), UnitSystem.US));
      assertEquals(Verdict.GOOD, after.get(one.getKey()), one.toString());
      after.forEach(
          (id, verdict) ->
              assertTrue(
                  verdict.compareTo(before.getOrDefault(id, Verdict.GOOD)) <= 0,
                  () -> one + " upsets " + id));
    }
  }

  /** A tail pipe and a floor that are both struck: with one of them moved the other is as bad. */
  @Test
  void allThatIsStruckIsMovedAtOnce() {
    String text =
        JobText.of(PlausibleVehicle.draw(new Draw(3)), "R-3", "triangulated", "coil-spring");
    Arrangement found =
        new Arranging(extensions, catalog, quoting())
            .arrange(
                JobDocument.of("drawn.yaml", text),
                Wishes.usual()
                    .keeping(List.of("chosen.linkage", "chosen.spring"))
                    .trying(40)
                    .giving(1),
                ArrangeListener.NONE);
    assertTrue(found.passes());
    assertTrue(
        found.layouts().get(0).changes().stream()
            .anyMatch(
                change ->
                    change.path().equals("chosen.moved_away")
                        && change.after().equals("[tail pipe, floor]")),
        () -> found.layouts().get(0).changes().toString());
  }

  /**
   * Where nothing else may be moved, straps end the droop before an air spring leaves the heights
   * of its table: common practice, no source. They are not thought of where additions are kept.
   */
  @Test
  void strapsAreAddedWhereAHangingAxleHasNothingElseToHoldIt() {
    List<String> kept =
        List.of(
            "chosen.linkage",
            "chosen.spring",
            "chosen.linkage_options",
            "chosen.spring_options",
            "chosen.ride",
            "chosen.notch");
    LayoutChange straps =
        added(kept).orElseThrow(() -> new AssertionError("nothing was added to the pickup"));
    assertEquals("{limiting-straps: {per_side: 2}}", straps.after());
    assertTrue(straps.reason().contains("hanging axle"), straps.reason());
    List<String> allKept = new ArrayList<>(kept);
    allKept.add("chosen.additions");
    assertEquals(Optional.empty(), added(allKept));
  }

  private static Optional<LayoutChange> added(List<String> kept) {
    Catalog withStrapsInIt = OwnPlugins.catalog();
    Extensions withStraps =
        new Extensions(extensions.linkages(), extensions.springs(), List.of(new LimitingStraps()));
    ArrangedLayout layout =
        new Arranging(withStraps, withStrapsInIt, draft -> DraftPrice.of(withStrapsInIt, draft))
            .arrange(
                JobDocument.load(demo("pickup")),
                Wishes.usual().keeping(kept).trying(40).giving(1),
                ArrangeListener.NONE)
            .layouts()
            .get(0);
    Optional<LayoutChange> added =
        layout.changes().stream()
            .filter(change -> change.path().equals("chosen.additions"))
            .findFirst();
    boolean falls =
        layout.checks().stream()
            .anyMatch(
                result ->
                    result instanceof CheckResult.Judged judged
                        && judged.id().equals("droop-end")
                        && judged.verdict() != Verdict.GOOD);
    assertEquals(added.isEmpty(), falls, layout.changes().toString());
    return added;
  }

  private static Map<String, Verdict> verdicts(Draft draft) {
    Map<String, Verdict> verdicts = new TreeMap<>();
    for (CheckResult result : draft.judge().verdicts(draft.layout())) {
      if (result instanceof CheckResult.Judged judged) {
        verdicts.put(judged.id(), judged.verdict());
      }
    }
    return verdicts;
  }
}
