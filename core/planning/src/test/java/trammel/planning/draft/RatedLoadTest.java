package trammel.planning.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Reading;
import trammel.engine.checks.Verdict;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.catalog.PlanCheck;
import trammel.planning.extension.kit.SampleVehicle;
import trammel.planning.job.Job;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;

/**
 * The demonstration pickup's rear: 880 and 870 lb on the scales; 360 lb 44 in ahead of the rear
 * axle and 500 lb 6 in ahead, on a wheelbase of 118 in. By the lever rule 360 (1 - 44/118) + 500 (1
 * - 6/118) = 225.8 + 474.6 = 700.3 lb come on the rear, half a side.
 */
class RatedLoadTest {
  private static final double POUND_KG = 0.45359237;
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));
  private static final JobDocument PICKUP =
      JobDocument.load(Path.of("..", "..", "catalogs", "demo", "pickup.yaml"));

  private static Reading read(JobDocument document, PlanCheck check) {
    Job job = JobReader.read(document);
    Chassis chassis = new MeasuredChassis(job).chassis();
    LayoutAnalysis analysis =
        new LayoutAnalysis(
            new Layout(
                chassis,
                SampleVehicle.bars(chassis),
                SampleVehicle.springs(chassis),
                SampleVehicle.shocks(chassis)),
            CATALOG.analysis());
    return check == PlanCheck.TYRE_LOAD
        ? RatedLoad.ofTyre(job.measured().tyre()).read(analysis)
        : RatedLoad.ofAxle(job.measured().axle()).read(analysis);
  }

  /** Load index 111 is 1,090 kg (ETRTO list); a passenger tyre on a truck carries a tenth less. */
  @Test
  void theHeavierTyreIsHeldAgainstItsLoadIndex() {
    Reading.Value value = (Reading.Value) read(PICKUP, PlanCheck.TYRE_LOAD);
    double carriedKg = (880 + 700.3 / 2) * POUND_KG;

    assertEquals(carriedKg / (1_090 / 1.10), value.value(), 0.001);
    assertTrue(value.where().toString().startsWith("left"), value.where().toString());
  }

  /** 1,750 + 700.3 lb on an axle for 3,200 lb: 76.6 %; for 2,400 lb it is a STOP. */
  @Test
  void theAxleIsHeldAgainstItsRating() {
    Reading.Value value = (Reading.Value) read(PICKUP, PlanCheck.AXLE_RATING);
    assertEquals(2_450.3 / 3_200, value.value(), 0.001);

    Reading.Value weak =
        (Reading.Value)
            read(PICKUP.withValue("measured.axle.rating", "2400 lb"), PlanCheck.AXLE_RATING);
    assertEquals(
        Verdict.STOP, CATALOG.limits().get(PlanCheck.AXLE_RATING.id()).verdict(weak.value()));
  }

  @Test
  void whatIsNotKnownSaysWhatToMeasure() throws IOException {
    String text =
        Files.readString(Path.of("..", "..", "catalogs", "demo", "pickup.yaml"))
            .replaceAll("(?m)^.*load_index:.*\\R", "");
    Reading.Unknown unknown =
        (Reading.Unknown) read(JobDocument.of("pickup.yaml", text), PlanCheck.TYRE_LOAD);

    assertTrue(
        unknown.reason().toString().contains("measured.tyre.load_index"),
        unknown.reason().toString());
  }
}
