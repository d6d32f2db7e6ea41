package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.draft.Drafting;
import trammel.planning.job.JobReader;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/** A job is drawn once, and its reasons are read in inches by one and in millimetres by another. */
class ReasonsIT {
  private static final Path CATALOGS = Path.of("..", "..", "catalogs");
  private static final QuantityPrinter US = new QuantityPrinter(UnitSystem.US);
  private static final QuantityPrinter METRIC = new QuantityPrinter(UnitSystem.METRIC);
  private static final Pattern INCHES = Pattern.compile("\\d in\\b");
  private static final Pattern MILLIMETRES = Pattern.compile("\\d mm\\b");

  @ParameterizedTest
  @ValueSource(strings = {"pickup", "sedan"})
  void aDraftIsReadInTheUnitsOfEachReader(String name) throws Exception {
    Path file = CATALOGS.resolve("demo").resolve(name + ".yaml");
    Drafting drafting =
        new Drafting(
            OwnPlugins.extensions(), CatalogReader.read(List.of(CATALOGS.resolve("standard"))));

    WorkPlan plan =
        drafting
            .draft(JobReader.read(file.toString(), Files.readString(file)), UnitSystem.US)
            .work();

    int measured = 0;
    for (Phrase reason : reasons(plan)) {
      assertFalse(INCHES.matcher(reason.in(METRIC)).find(), reason.in(METRIC));
      assertFalse(MILLIMETRES.matcher(reason.in(US)).find(), reason.in(US));
      measured += INCHES.matcher(reason.in(US)).find() ? 1 : 0;
    }
    assertTrue(measured > 20, measured + " reasons with a length");
  }

  /** Two feet are 609.6 mm: the inch is 25.4 mm by its definition of 1959. */
  @ParameterizedTest
  @ValueSource(strings = {"pickup"})
  void aBarOfTwoFeetIsTwoFeetToBoth(String name) throws Exception {
    Path file = CATALOGS.resolve("demo").resolve(name + ".yaml");
    Drafting drafting =
        new Drafting(
            OwnPlugins.extensions(), CatalogReader.read(List.of(CATALOGS.resolve("standard"))));
    TubeNeed lower =
        drafting
            .draft(JobReader.read(file.toString(), Files.readString(file)), UnitSystem.METRIC)
            .work()
            .tubes()
            .stream()
            .filter(tube -> tube.name().equals("lower-left"))
            .findFirst()
            .orElseThrow();

    assertEquals("24 in from joint to joint", first(lower.why().in(US)));
    assertEquals("609.6 mm from joint to joint", first(lower.why().in(METRIC)));
  }

  private static String first(String reason) {
    return reason.substring(0, reason.indexOf(','));
  }

  private static List<Phrase> reasons(WorkPlan plan) {
    List<Phrase> reasons = new ArrayList<>();
    plan.parts().forEach(part -> reasons.add(part.why()));
    plan.bolts().forEach(bolt -> reasons.add(bolt.why()));
    plan.plates().forEach(plate -> reasons.add(plate.why()));
    plan.tubes().forEach(tube -> reasons.addAll(List.of(tube.why(), tube.ends())));
    plan.welds().forEach(weld -> reasons.add(weld.why()));
    plan.operations().forEach(operation -> reasons.add(operation.why()));
    return reasons;
  }
}
