package trammel.planning.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.engine.checks.Check;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Reading;
import trammel.engine.checks.Verdict;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.catalog.PlanCheck;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;
import trammel.testsupport.vehicle.JobText;
import trammel.testsupport.vehicle.PlausibleVehicle;

/** Single measurements of the demonstration pickup made wrong, each judged by arithmetic. */
class MeasurementChecksTest {
  private static final JobDocument PICKUP =
      JobDocument.load(Path.of("..", "..", "catalogs", "demo", "pickup.yaml"));
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));

  private static Check check(JobDocument job, PlanCheck wanted) {
    return checks(job).stream()
        .filter(check -> check.id().equals(wanted.id()))
        .findFirst()
        .orElseThrow();
  }

  private static List<Check> checks(JobDocument job) {
    return new MeasurementChecks(JobReader.read(job).measured()).all();
  }

  private static Reading.Value value(JobDocument job, PlanCheck wanted) {
    return (Reading.Value) check(job, wanted).read(null);
  }

  private static Verdict verdict(JobDocument job, PlanCheck wanted) {
    Limit limit = CATALOG.limits().get(wanted.id());
    return limit.verdict(value(job, wanted).value());
  }

  /** Drawn as one piece at ride and turned onto the stands, so each two readings must fit. */
  @Seeds(200)
  void theMeasurementsOfAPlausibleVehicleAgree(Draw draw) {
    String text =
        JobText.of(PlausibleVehicle.draw(draw), "R-" + draw.seed(), "triangulated", "coil-spring");
    JobDocument job = JobDocument.of("drawn.yaml", text);
    for (Check check : checks(job)) {
      if (check.read(null) instanceof Reading.Value value) {
        assertNotEquals(
            Verdict.STOP,
            CATALOG.limits().get(check.id()).verdict(value.value()),
            () -> "seed " + draw.seed() + ": " + check.title());
      }
    }
    assertEquals(Verdict.GOOD, verdict(job, PlanCheck.RAKE), () -> "seed " + draw.seed());
  }

  @Test
  void theMeasurementsOfThePickupAgree() {
    for (Check check : checks(PICKUP)) {
      PlanCheck wanted =
          List.of(PlanCheck.values()).stream()
              .filter(one -> one.id().equals(check.id()))
              .findFirst()
              .orElseThrow();
      assertEquals(Verdict.GOOD, verdict(PICKUP, wanted), check.title());
    }
  }

  /** A rail 1 3/4 in higher at the rear over 96 in slopes 1.0443 deg (atan); here over 26 in. */
  @Test
  void theRakeIsHeldAgainstTheHeightsOfTheRail() {
    JobDocument steeper = PICKUP.withValue("measured.rails.underside_at_axle", "24.22396 in");

    Reading.Value rake = value(steeper, PlanCheck.RAKE);
    assertEquals(1.0443 - 0.6, Math.toDegrees(rake.value()), 1e-3);
    assertTrue(
        rake.where()
            .in(new QuantityPrinter(UnitSystem.US))
            .contains("the rail heights say 1.04 deg, the rake says 0.60 deg: which?"),
        rake.where().in(new QuantityPrinter(UnitSystem.US)));
  }

  /** Heights taken end for end: atan(-0.25/26) is -0.55 deg, 10 in more makes it -21.5 deg. */
  @Test
  void aHeightThatCannotBeTrueIsAStop() {
    JobDocument wrong = PICKUP.withValue("measured.rails.underside_at_axle", "14 in");

    assertEquals(Verdict.STOP, verdict(wrong, PlanCheck.RAKE));
    assertTrue(
        value(wrong, PlanCheck.RAKE)
            .where()
            .in(new QuantityPrinter(UnitSystem.US))
            .contains("-20.5"),
        "plain words");
  }

  @ParameterizedTest(name = "{0} = {1}: {2} {3}")
  @CsvSource({
    "measured.weights.rear_right, 400 lb, WEIGHTS, STOP, (880 - 400)/1280 = 37.5 %",
    "measured.weights.rear_right, 700 lb, WEIGHTS, LOOK_AGAIN, (880 - 700)/1580 = 11.4 %",
    "measured.weights.unsprung_rear, 70 lb, UNSPRUNG, STOP, 70/1750 = 4 %",
    "measured.tyre.loaded_radius, 11 3/4 in, TYRE, STOP, 11.75/15.03 = 78 %",
    "measured.axle.tube_diameter, 5 1/2 in, TUBE, LOOK_AGAIN, 5.5/65 = 8.5 %",
    "measured.tyre.wheel_offset, 8 in, TYRE_AND_RAIL, LOOK_AGAIN, (49 - 10.04)/2 - 18.5 = 0.98 in",
    "measured.axle.flange_to_flange, 56 in, OUTER_LIMIT, LOOK_AGAIN, 28 less 27.5 in",
    "measured.axle.pinion.forward, 30 in, PINION, LOOK_AGAIN, further than any pinion",
    "measured.transmission.joint.forward, 12 in, SHAFT, STOP, 1 in of shaft",
    "measured.transmission.joint.forward, 130 in, SHAFT, STOP, ahead of the front wheels",
    "measured.weights.centre_of_gravity_height, 60 in, GRAVITY, STOP, 60/14.5 = 4.1",
    "measured.rails.steel, heat-treated, RAIL_STEEL, STOP, builders forbid it",
    "measured.rails.rust_depth, 0.05 in, RAIL_RUST, STOP, a third of 0.15 in",
    "measured.rails.flange_hole, 1 1/4 in, RAIL_HOLES, STOP, over half of 2 1/4 in"
  })
  void oneWrongMeasurementIsFound(
      String field, String text, PlanCheck check, Verdict verdict, String why) {
    assertEquals(verdict, verdict(PICKUP.withValue(field, text), check), why);
  }

  @Test
  void aHeatTreatedRailNamesTheBuildersGuide() {
    JobDocument treated = PICKUP.withValue("measured.rails.steel", "heat-treated");

    assertTrue(
        check(treated, PlanCheck.RAIL_STEEL).advice().contains("vehicle builder's guide"),
        "what to do");
  }

  @ParameterizedTest
  @CsvSource({
    "measured.rails.steel, RAIL_STEEL",
    "measured.rails.rust_depth, RAIL_RUST",
    "measured.rails.flange_hole, RAIL_HOLES"
  })
  void whatIsNotKnownOfTheRailsIsSaidWithWhatToMeasure(String field, PlanCheck check) {
    Reading reading = check(PICKUP.withValue(field, ""), check).read(null);

    assertTrue(((Reading.Unknown) reading).reason().mentions(field), reading.toString());
  }
}
