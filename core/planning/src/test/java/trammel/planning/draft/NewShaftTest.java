package trammel.planning.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.catalog.ShaftTube;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.reading.tree.BadInputException;

/** A driveshaft that would whirl is made anew of the slenderest tube that does not. */
class NewShaftTest {
  private static final double INCH_MM = 25.4;
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));
  private static final JobDocument PICKUP =
      JobDocument.load(Path.of("..", "..", "catalogs", "demo", "pickup.yaml"));

  private static Driveline fitted(JobDocument document) {
    var job = JobReader.read(document);
    Chassis found = new MeasuredChassis(job).chassis();
    return NewShaft.fitted(
            job,
            found,
            CATALOG,
            job.chosen()
                .topSpeedMPerS()
                .map(CATALOG.analysis()::atSpeed)
                .orElse(CATALOG.analysis()))
        .driveline();
  }

  private static JobDocument longer(String forward, String tube, String wall) {
    return PICKUP
        .withValue("measured.transmission.joint.forward", forward)
        .withValue("measured.driveshaft.tube_diameter", tube)
        .withValue("measured.driveshaft.tube_wall", wall);
  }

  /**
   * 100 mph on a loaded radius of 14 1/2 in behind 3.62 is 100 x 336.1 x 3.62 / 29 = 4,196 rpm (336
   * common in the trade: revolutions in a mile and an hour). The joint selection graph (SAE) allows
   * 0.7 x 4.8e6 x root(D2 + d2)/L2 rpm, in inches. By hand: 2 1/2 x 0.065 is a STOP beyond 55.4 in;
   * 3, 3 1/2 and 4 in of 0.083 are good to 57.5, 62.2 and 66.6 in; beyond that none of them is.
   */
  @ParameterizedTest
  @CsvSource({
    "65 in, 54.0, 2.5",
    "67 in, 56.9, 3.0",
    "71 in, 60.9, 3.5",
    "75 in, 64.9, 4.0",
    "79 in, 68.9, 2.5"
  })
  void theSlenderestThatDoesNotWhirlIsTaken(String forward, double lengthIn, double tubeIn) {
    Driveline driveline = fitted(longer(forward, "2 1/2 in", "0.065 in"));

    assertEquals(lengthIn, lengthIn(driveline), 1.0);
    assertEquals(tubeIn, driveline.shaftDiameterMm().orElseThrow() / INCH_MM, 1e-9);
  }

  private static double lengthIn(Driveline driveline) {
    return driveline.pinionJoint().distanceMm(driveline.transmissionJoint()) / INCH_MM;
  }

  /** What is slow enough for its shaft keeps it: 67 in forward at 90 mph is 3,777 rpm. */
  @Test
  void aSlowerVehicleKeepsItsShaft() {
    JobDocument slow =
        longer("67 in", "2 1/2 in", "0.065 in").withValue("chosen.top_speed", "90 mph");

    assertEquals(2.5, fitted(slow).shaftDiameterMm().orElseThrow() / INCH_MM, 1e-9);
  }

  @Test
  void theShaftThatTheJobNamesIsTakenWhateverIsMeasured() {
    Driveline driveline = fitted(PICKUP.withValue("chosen.shaft_tube", "shaft-4.0"));

    assertEquals(4, driveline.shaftDiameterMm().orElseThrow() / INCH_MM, 1e-9);
    assertEquals(0.083, driveline.shaftWallMm().orElseThrow() / INCH_MM, 1e-9);
  }

  @Test
  void aShaftThatTheCatalogHasNotIsRefusedWithThoseThatItHas() {
    JobDocument wrong = PICKUP.withValue("chosen.shaft_tube", "shaft-5.0");

    String message = assertThrows(BadInputException.class, () -> fitted(wrong)).getMessage();

    assertTrue(message.contains("'shaft-5.0'") && message.contains("shaft-3.5"), message);
  }

  /** A shaft of two pieces is never replaced by one of one, and cannot be asked for. */
  @Test
  void aShaftOfTwoPiecesStaysAsItIs() {
    JobDocument two =
        longer("75 in", "2 1/2 in", "0.065 in")
            .withValue("measured.driveshaft.centre_joint.forward", "70 in")
            .withValue("measured.driveshaft.centre_joint.left", "0 in")
            .withValue("measured.driveshaft.centre_joint.up", "23 in");

    assertEquals(2.5, fitted(two).shaftDiameterMm().orElseThrow() / INCH_MM, 1e-9);
    JobDocument asked = two.withValue("chosen.shaft_tube", "shaft-4.0");
    String message = assertThrows(BadInputException.class, () -> fitted(asked)).getMessage();
    assertTrue(message.contains("two pieces"), message);
  }

  @Test
  void withoutSuchShaftsInTheCatalogNoneIsFound() {
    Chassis found = new MeasuredChassis(JobReader.read(PICKUP)).chassis();

    assertEquals(Optional.empty(), NewShaft.slenderest(found, List.of(), CATALOG.analysis(), 1));
    ShaftTube stout = new ShaftTube("s", "stout", 100, 2);
    assertEquals(
        Optional.of(stout), NewShaft.slenderest(found, List.of(stout), CATALOG.analysis(), 1));
  }
}
