package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trammel.assembly.fit.Interference;
import trammel.assembly.fit.Overlap;
import trammel.brackets.work.WorkPlan;
import trammel.planning.catalog.Catalog;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.draft.Extensions;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.planning.vehicle.FinishedVehicle;
import trammel.plugins.airspring.AirSpringMount;
import trammel.plugins.antirollbar.AxleAntiRollBar;
import trammel.plugins.coilspring.CoilSpringMount;
import trammel.plugins.limitingstraps.LimitingStraps;
import trammel.reading.quantity.UnitSystem;

/**
 * The facts of {@link AssemblyFacts} on the demo jobs with limiting straps added: one a side on the
 * pickup, two a side on the sedan.
 */
class AssemblyIT {
  private static final Path CATALOGS = Path.of("..", "..", "catalogs");
  private static final Catalog CATALOG = OwnPlugins.catalog();

  /**
   * The pickup with a Watt's linkage, on coils: its rear arms take the place of the air springs.
   */
  private static final String ON_COILS = "pickup on watts-linkage";

  private static final Map<String, AssemblyFacts> FINISHED = new HashMap<>();

  /** Both demo jobs, and one of them on each further linkage. */
  static Stream<String> jobs() {
    return Stream.of(
        "pickup", "sedan", "pickup on three-link-lateral", "sedan on torque-arm", ON_COILS);
  }

  private static JobDocument document(String job) {
    String[] words = job.split(" on ");
    String perSide = words[0].equals("sedan") ? "2" : "1";
    JobDocument demo =
        JobDocument.load(CATALOGS.resolve("demo").resolve(words[0] + ".yaml"))
            .withValue("chosen.additions.limiting-straps.per_side", perSide);
    if (job.equals("pickup")) {
      return demo.withValue("chosen.additions.anti-roll-bar", "{}");
    }
    if (words.length == 1) {
      return demo;
    }
    JobDocument other =
        demo.withValue("chosen.linkage", words[1]).withValue("chosen.linkage_options", "{}");
    return job.equals(ON_COILS)
        ? other
            .withValue("chosen.spring", "coil-spring")
            .withValue("chosen.spring_options.crossmember", "box-2x2x0.188")
        : other;
  }

  private static AssemblyFacts finished(String job) {
    return FINISHED.computeIfAbsent(job, AssemblyIT::finish);
  }

  private static AssemblyFacts finish(String job) {
    return finish(document(job));
  }

  private static AssemblyFacts finish(JobDocument document) {
    Extensions extensions =
        new Extensions(
            OwnPlugins.linkages(),
            List.of(new AirSpringMount(), new CoilSpringMount()),
            List.of(new LimitingStraps(), new AxleAntiRollBar()));
    Draft draft = new Drafting(extensions, CATALOG).draft(JobReader.read(document), UnitSystem.US);
    WorkPlan plan = draft.work();
    return new AssemblyFacts(
        plan,
        FinishedVehicle.of(draft.layout(), CATALOG, plan),
        draft.layout().chassis().rails(),
        AssemblyFacts.ROOT_MM);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everythingHangsTogether(String job) {
    finished(job).everythingHangsTogether();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void aFileOfTheSceneWeighsWhatTheListsSay(String job) throws IOException {
    finished(job).aFileOfTheSceneWeighsWhatTheListsSay();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void platesWeighWhatTheirOutlinesSay(String job) {
    finished(job).platesWeighWhatTheirOutlinesSay();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyWeldLiesOnWhatItJoins(String job) {
    finished(job).everyWeldLiesOnWhatItJoins();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void edgesOnTheRailSheetAreThoseOfTheWelds(String job) {
    finished(job).edgesOnTheRailSheetAreThoseOfTheWelds();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void holesOfOneBoltLineUp(String job) {
    finished(job).holesOfOneBoltLineUp();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void platesThatCloseARailDoNotOverlap(String job) {
    finished(job).platesThatCloseARailDoNotOverlap();
  }

  /** Nothing stands in the same place as something else, but for what a bolt or press fit holds. */
  @ParameterizedTest
  @MethodSource("jobs")
  void nothingCutsIntoAnything(String job) {
    AssemblyFacts finished = finished(job);
    Set<Set<String>> cuts = finished.cuts();
    assertTrue(cuts.isEmpty(), cuts::toString);
    assertEquals(List.of(), Interference.of(finished.assembly()));
  }

  /** What points all over the surfaces of parts find, the check of them finds too. */
  @Test
  void partsThatCutIntoEachOtherAreFoundByTheCheck() {
    JobDocument inboard =
        JobDocument.load(CATALOGS.resolve("demo/pickup.yaml"))
            .withValue("chosen.spring_options", "{across: inboard, bracket_plate: plate-0.250}");
    AssemblyFacts finished = finish(inboard);
    Set<Set<String>> found = new HashSet<>();
    for (Overlap overlap : Interference.of(finished.assembly())) {
      found.add(Set.of(overlap.one(), overlap.other()));
    }
    Set<Set<String>> cuts = finished.cuts();
    assertFalse(cuts.isEmpty());
    assertTrue(found.containsAll(cuts), () -> cuts + " and only " + found);
  }
}
