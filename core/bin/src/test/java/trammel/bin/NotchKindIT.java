package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.checks.Check;
import trammel.engine.checks.Judge;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Verdict;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.estimate.Estimate;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.reading.quantity.UnitSystem;
import trammel.testsupport.Draw;
import trammel.testsupport.vehicle.JobText;
import trammel.testsupport.vehicle.PlausibleVehicle;

/** The side plates of a notch end with the rail or rise above it, so that its section is kept. */
class NotchKindIT {
  private static final Path CATALOGS = Path.of("..", "..", "catalogs");
  private static final Catalog CATALOG = CatalogReader.read(List.of(CATALOGS.resolve("standard")));
  private static final String KIND = "chosen.notch";

  private static Draft draft(JobDocument job) {
    return new Drafting(OwnPlugins.extensions(), CATALOG).draft(JobReader.read(job), UnitSystem.US);
  }

  private static Optional<Judge.Finding> found(Draft draft, String id) {
    LayoutAnalysis analysis = new LayoutAnalysis(draft.layout(), draft.judge().settings());
    Check check =
        draft.judge().checks().stream()
            .filter(one -> one.id().equals(id))
            .findFirst()
            .orElseThrow();
    return draft.judge().find(check, analysis);
  }

  private static Verdict verdict(Draft draft, String id) {
    return found(draft, id).orElseThrow().verdict();
  }

  private static double riseMm(Draft draft) {
    return draft.layout().chassis().rails().notchRiseMm();
  }

  private static Estimate estimate(Draft draft) {
    return DraftPrice.of(CATALOG, draft);
  }

  /** Plates, seams and hours that are more cost more; nothing else of the job changes. */
  @Test
  void raisedPlatesKeepTheSectionOfThePickupsRailsForTheirOwnPrice() {
    JobDocument pickup = JobDocument.load(CATALOGS.resolve("demo").resolve("pickup.yaml"));
    Draft flush = draft(pickup);
    Draft raised = draft(pickup.withValue(KIND, "raised"));

    assertEquals(0, riseMm(flush));
    assertEquals(Verdict.LOOK_AGAIN, verdict(flush, "rail-modulus"));
    assertTrue(riseMm(raised) > 0, "" + riseMm(raised));
    assertEquals(Verdict.GOOD, verdict(raised, "rail-modulus"));
    assertEquals(Verdict.GOOD, verdict(raised, "rail-shear"));
    assertEquals(Verdict.GOOD, verdict(raised, "can-be-made"));
    assertEquals(
        found(flush, "parts-apart").orElseThrow().value(),
        found(raised, "parts-apart").orElseThrow().value());
    Estimate was = estimate(flush);
    Estimate is = estimate(raised);
    assertTrue(
        is.price().total().amount().compareTo(was.price().total().amount()) > 0,
        was.price().total() + " then " + is.price().total());
    assertTrue(is.hours().meanHours() > was.hours().meanHours(), "hours");
  }

  /** A shallow cut leaves no room for a strip over the rail, and whoever asks for it is told. */
  @Test
  void platesOfAShallowNotchCannotRise() {
    JobDocument job =
        JobDocument.of(
            "drawn.yaml",
            JobText.of(
                PlausibleVehicle.draw(new Draw(2)),
                "R-2",
                "triangulated",
                "coil-spring",
                "outboard"));
    assertTrue(draft(job).layout().chassis().rails().notchDepthMm() > 0, "no notch");
    JobDocument raised = job.withValue(KIND, "raised");

    UnworkableLayoutException refused =
        assertThrows(UnworkableLayoutException.class, () -> draft(raised));

    assertTrue(refused.getMessage().contains("'flush'"), refused.getMessage());
  }

  /** Left to the vehicle, plates rise where they would be a STOP as high as the rail. */
  @Test
  void theKindIsChosenSoThatTheSectionOfTheRailIsKept() {
    int raised = 0;
    for (long seed = 1; seed <= 12; seed++) {
      JobDocument job =
          JobDocument.of(
              "drawn.yaml",
              JobText.of(
                  PlausibleVehicle.draw(new Draw(seed)),
                  "R-" + seed,
                  "triangulated",
                  "coil-spring",
                  "outboard"));
      Draft left = draft(job);
      if (left.layout().chassis().rails().notchDepthMm() == 0) {
        continue;
      }
      Draft flush = draft(job.withValue(KIND, "flush"));
      boolean stops =
          verdict(flush, "rail-modulus") == Verdict.STOP
              || verdict(flush, "rail-shear") == Verdict.STOP;
      assertEquals(0, riseMm(flush), "seed " + seed);
      assertEquals(stops, riseMm(left) > 0, "seed " + seed);
      raised += stops ? 1 : 0;
      assertTrue(verdict(left, "rail-modulus") != Verdict.STOP, "seed " + seed);
    }
    assertTrue(raised > 0, "no rail of these asks for it");
  }
}
