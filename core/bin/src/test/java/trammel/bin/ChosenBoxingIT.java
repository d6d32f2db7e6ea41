package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.RailClosing;
import trammel.engine.checks.Check;
import trammel.engine.checks.Judge;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Verdict;
import trammel.planning.arrange.LayoutChange;
import trammel.planning.arrange.OptionChanges;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;

/** Open rails that mounts twist are closed as far as the job says, and the tool says how far. */
class ChosenBoxingIT {
  private static final double INCH_MM = 25.4;
  private static final Path CATALOGS = Path.of("..", "..", "catalogs");
  private static final Catalog CATALOG = CatalogReader.read(List.of(CATALOGS.resolve("standard")));
  private static final String BEHIND = "chosen.boxing.behind";
  private static final String AHEAD = "chosen.boxing.ahead";

  /** The demo pickup with the frame's own crossmembers 40 in ahead and 22 in behind the axle. */
  private static JobDocument pickup() {
    return JobDocument.load(CATALOGS.resolve("demo").resolve("pickup.yaml"))
        .withValue("measured.rails.crossmember_ahead", "40 in")
        .withValue("measured.rails.crossmember_behind", "22 in");
  }

  private static Draft draft(JobDocument job) {
    return new Drafting(OwnPlugins.extensions(), CATALOG).draft(JobReader.read(job), UnitSystem.US);
  }

  private static Judge.Finding found(Draft draft, String id) {
    Check check =
        draft.judge().checks().stream()
            .filter(one -> one.id().equals(id))
            .findFirst()
            .orElseThrow();
    return draft
        .judge()
        .find(check, new LayoutAnalysis(draft.layout(), draft.judge().settings()))
        .orElseThrow();
  }

  private static List<PlateNeed> plates(Draft draft) {
    return draft.work().plates().stream()
        .filter(need -> need.plate().name().endsWith("boxing plate"))
        .toList();
  }

  @Test
  void eachRailHasOnePlateOverTheStretchThatIsChosen() {
    Draft draft = draft(pickup().withValue(BEHIND, "20 in").withValue(AHEAD, "38 in"));

    List<PlateNeed> plates = plates(draft);
    assertEquals(2, plates.size(), plates.toString());
    for (PlateNeed need : plates) {
      // 58 in of a rail that tapers by 1 in over 26 and climbs by 0.2 in: 58.044 in along it.
      assertEquals(58.044 * INCH_MM, need.plate().outline().bounds().widthMm(), 0.5);
      // Its thickness stands square to the taper, which moves its corner by a fraction of it.
      assertEquals(-20 * INCH_MM, need.places().get(0).place().origin().xMm(), 0.5);
    }
    double feet =
        draft.work().operations().stream()
            .filter(need -> need.operationKey().equals("box-rail"))
            .mapToDouble(need -> need.quantity())
            .sum();
    assertEquals(2 * 58.044 / 12, feet, 0.005);
  }

  /** The plate does not end within the notch, whatever is chosen. */
  @Test
  void aPlateGoesOnOverTheWholeNotch() {
    Draft draft = draft(pickup().withValue(BEHIND, "0 in").withValue(AHEAD, "38 in"));

    for (RailClosing asked : draft.work().closings()) {
      if (asked.name().endsWith("chosen boxing plate")) {
        // Cut 3 1/8 in deep on a radius of 3 1/8 in, a half circle, and plated on beyond that.
        assertTrue(asked.rearMm() < -3.125 * INCH_MM, "from " + asked.rearMm());
        assertEquals(38 * INCH_MM, asked.frontMm(), 1e-6);
      }
    }
  }

  /** What is named was tried: with it the rail is good at full load, and it was a STOP. */
  @Test
  void theChangeThatIsNamedEndsTheStop() {
    JobDocument pickup = pickup();
    Draft draft = draft(pickup);
    String check = "rail-twist-loaded";
    assertEquals(Verdict.STOP, found(draft, check).verdict());

    OptionChanges.Found changes =
        new OptionChanges(OwnPlugins.extensions(), CATALOG, 30).ofChecks(draft, List.of(check));

    List<LayoutChange> named = changes.byCheck().get(check);
    assertEquals(List.of(BEHIND, AHEAD), named.stream().map(LayoutChange::path).toList());
    JobDocument changed = pickup;
    for (LayoutChange change : named) {
      changed = changed.withValue(change.path(), change.after());
    }
    assertEquals(Verdict.GOOD, found(draft(changed), check).verdict());
  }

  @Test
  void aPlateLongerThanItsSheetsCannotBeMade() {
    Draft draft = draft(pickup().withValue(BEHIND, "20 in").withValue(AHEAD, "90 in"));

    assertEquals(Verdict.STOP, found(draft, "can-be-made").verdict());
    String why = assertThrows(UnworkableLayoutException.class, draft::work).getMessage();
    assertTrue(why.contains("chosen.boxing") && why.contains("boxing plate is 2796"), why);
  }

  @Test
  void railsThatAreBoxesAreNotClosedAgain() {
    JobDocument job =
        pickup()
            .withValue("measured.rails.shape", "box")
            .withValue(BEHIND, "20 in")
            .withValue(AHEAD, "38 in");

    String problem = assertThrows(BadInputException.class, () -> JobReader.read(job)).getMessage();
    assertTrue(problem.contains("chosen.boxing") && problem.contains("box"), problem);
  }
}
