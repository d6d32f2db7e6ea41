package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestReporter;
import trammel.assembly.fit.Interference;
import trammel.assembly.fit.Overlap;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.WorkPlan;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.job.JobReader;
import trammel.planning.vehicle.FinishedVehicle;
import trammel.reading.quantity.UnitSystem;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;
import trammel.testsupport.vehicle.JobText;
import trammel.testsupport.vehicle.PlausibleVehicle;

/**
 * The facts of {@link AssemblyFacts} on vehicles drawn at random, each with a linkage, a spring and
 * a mounting. Parts that cut into each other are there: the check of them says so of each.
 */
class DrawnAssemblyIT {
  private static final Path CATALOG = Path.of("..", "..", "catalogs", "standard");
  private static final Catalog STANDARD = CatalogReader.read(List.of(CATALOG));
  private static final Drafting DRAFTING = new Drafting(OwnPlugins.extensions(), STANDARD);
  private static final Map<Outcome, Integer> COUNT = new EnumMap<>(Outcome.class);

  private enum Outcome {
    REFUSED,
    CANNOT_BE_MADE,
    HELD,
    HELD_WITH_PARTS_THAT_MEET
  }

  @Seeds(3)
  void whatADrawnVehicleIsMadeOfHangsTogether(Draw draw) {
    factsHold(draw);
  }

  /** The long run; docs/reliability.md has its command. */
  @Tag("long")
  @Seeds(200)
  void whatHundredsOfVehiclesAreMadeOfHangsTogether(Draw draw) {
    factsHold(draw);
  }

  @AfterAll
  static void tellWhatBecameOfThem(TestReporter reporter) {
    reporter.publishEntry("drawn vehicles", COUNT.toString());
    assertTrue(COUNT.getOrDefault(Outcome.HELD, 0) > 0, "no vehicle could be laid out");
  }

  private static void factsHold(Draw draw) {
    String linkage = draw.oneOf(OwnPlugins.linkages()).id();
    String spring = draw.oneOf("coil-spring", "air-spring");
    String mounting = draw.oneOf("inboard", "outboard");
    PlausibleVehicle vehicle = PlausibleVehicle.draw(draw);
    String text = JobText.of(vehicle, "R-" + draw.seed(), linkage, spring, mounting);
    Optional<AssemblyFacts> finished = finished(text);
    if (finished.isEmpty()) {
      return;
    }
    AssemblyFacts facts = finished.get();
    Set<Set<String>> told = new HashSet<>();
    for (Overlap overlap : Interference.of(facts.assembly())) {
      told.add(Set.of(overlap.one(), overlap.other()));
    }
    Set<Set<String>> cuts = facts.cuts();
    count(told.isEmpty() ? Outcome.HELD : Outcome.HELD_WITH_PARTS_THAT_MEET);
    assertAll(
        () -> assertTrue(told.containsAll(cuts), () -> cuts + " and only " + told),
        facts::everythingHangsTogether,
        facts::aFileOfTheSceneWeighsWhatTheListsSay,
        facts::platesWeighWhatTheirOutlinesSay,
        facts::everyWeldLiesOnWhatItJoins,
        facts::holesOfOneBoltLineUp,
        facts::platesThatCloseARailDoNotOverlap);
  }

  private static Optional<AssemblyFacts> finished(String text) {
    Draft draft;
    try {
      draft = DRAFTING.draft(JobReader.read("drawn.yaml", text), UnitSystem.US);
    } catch (UnworkableLayoutException refused) {
      count(Outcome.REFUSED);
      return Optional.empty();
    }
    try {
      WorkPlan plan = draft.work();
      return Optional.of(
          new AssemblyFacts(
              plan,
              FinishedVehicle.of(draft.layout(), STANDARD, plan),
              draft.layout().chassis().rails(),
              AssemblyFacts.FITTED_MM));
    } catch (UnworkableLayoutException cannotBeMade) {
      count(Outcome.CANNOT_BE_MADE);
      return Optional.empty();
    }
  }

  private static void count(Outcome outcome) {
    COUNT.merge(outcome, 1, Integer::sum);
  }
}
