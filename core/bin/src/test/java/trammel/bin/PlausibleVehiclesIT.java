package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.TestReporter;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.checks.Check;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Verdict;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.job.Job;
import trammel.planning.job.JobReader;
import trammel.reading.quantity.UnitSystem;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;
import trammel.testsupport.vehicle.JobText;
import trammel.testsupport.vehicle.PlausibleVehicle;

/** What becomes of vehicles drawn at random, every linkage with every spring, no option set. */
class PlausibleVehiclesIT {
  private static final int ENOUGH_FOR_A_SHARE = 60;

  /** Held from here on: a change that lays out fewer, or more with a STOP, is a loss. */
  private static final double LAID_OUT_SHARE = 0.85;

  private static final double NO_STOP_SHARE = 0.70;

  private static final Path CATALOG = Path.of("..", "..", "catalogs", "standard");
  private static final Drafting DRAFTING = drafting();
  private static final Map<Outcome, Integer> COUNT = new EnumMap<>(Outcome.class);

  private enum Outcome {
    REFUSED,
    STOP,
    LOOK_AGAIN,
    GOOD
  }

  @Seeds(60)
  void aPlausibleVehicleIsLaidOutOrRefusedWithWhatToChange(Draw draw) {
    AxleLinkage linkage = draw.oneOf(OwnPlugins.linkages());
    String spring = draw.oneOf("coil-spring", "air-spring");
    PlausibleVehicle vehicle = PlausibleVehicle.draw(draw);
    String text = JobText.of(vehicle, "R-" + draw.seed(), linkage.id(), spring);

    Outcome outcome = outcome(JobReader.read("drawn.yaml", text));

    COUNT.merge(outcome, 1, Integer::sum);
  }

  @AfterAll
  static void noSmallerShareIsLaidOutAndWithoutAStopThanBefore(TestReporter reporter) {
    int drawn = COUNT.values().stream().mapToInt(Integer::intValue).sum();
    reporter.publishEntry("of " + drawn + " plausible vehicles", COUNT.toString());
    if (drawn >= ENOUGH_FOR_A_SHARE) {
      int refused = COUNT.getOrDefault(Outcome.REFUSED, 0);
      int stops = COUNT.getOrDefault(Outcome.STOP, 0);
      assertTrue(drawn - refused >= LAID_OUT_SHARE * drawn, () -> "laid out: " + COUNT);
      assertTrue(drawn - refused - stops >= NO_STOP_SHARE * drawn, () -> "no STOP: " + COUNT);
    }
  }

  private static Outcome outcome(Job job) {
    try {
      return worst(DRAFTING.draft(job, UnitSystem.US));
    } catch (UnworkableLayoutException refused) {
      String message = refused.getMessage();
      assertTrue(message.startsWith("drawn.yaml: this layout does not fit the vehicle."), message);
      assertTrue(message.strip().endsWith("."), message);
      return Outcome.REFUSED;
    }
  }

  /** The worst verdict of all checks; changes are not searched for, which would take minutes. */
  private static Outcome worst(Draft draft) {
    LayoutAnalysis analysis = new LayoutAnalysis(draft.layout(), draft.judge().settings());
    Outcome worst = Outcome.GOOD;
    for (Check check : draft.judge().checks()) {
      Verdict verdict =
          draft.judge().find(check, analysis).map(found -> found.verdict()).orElse(Verdict.GOOD);
      if (verdict == Verdict.STOP) {
        return Outcome.STOP;
      }
      worst = verdict == Verdict.LOOK_AGAIN ? Outcome.LOOK_AGAIN : worst;
    }
    return worst;
  }

  private static Drafting drafting() {
    Catalog catalog = CatalogReader.read(List.of(CATALOG));
    return new Drafting(OwnPlugins.extensions(), catalog);
  }
}
