package trammel.planning.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Obstacle;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.reading.tree.BadInputException;

/** What a job chooses to change on the demonstration pickup itself, by arithmetic. */
class ChosenOnTheVehicleTest {
  private static final double INCH_MM = 25.4;
  private static final JobDocument PICKUP =
      JobDocument.load(Path.of("..", "..", "catalogs", "demo", "pickup.yaml"));

  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));

  private static Chassis chassis(JobDocument document) {
    return new MeasuredChassis(JobReader.read(document)).chassis();
  }

  /** Measured: 1/8 in of room, 3 1/4 in engaged. What the yoke gains in room it loses in spline. */
  @Test
  void aShorterShaftGivesItsYokeRoomAndTakesSpline() {
    Driveline driveline = chassis(PICKUP.withValue("chosen.shaft_longer", "-1 1/8 in")).driveline();
    assertEquals(1.25, driveline.slipRoomMm().orElseThrow() / INCH_MM, 1e-9);
    assertEquals(2.125, driveline.slipEngagementMm().orElseThrow() / INCH_MM, 1e-9);
  }

  /** Left out, the pinion follows the transmission; its joint stays where its mount holds it. */
  @Test
  void aShimmedTransmissionTurnsThePinionWithIt() {
    JobDocument unset = PICKUP.withValue("chosen.pinion_angle", "");
    Driveline driveline =
        chassis(unset.withValue("chosen.transmission_angle", "1.5 deg from level")).driveline();
    assertEquals(Math.toRadians(1.5), driveline.transmissionAngleRad(), 1e-9);
    assertEquals(Math.toRadians(1.5), driveline.pinionAngleRad(), 1e-9);
    assertEquals(chassis(unset).driveline().transmissionJoint(), driveline.transmissionJoint());
  }

  /**
   * The shaft rises to the front by 5 degrees. Were the transmission read at 1 degree in place of
   * 2.9, its joint would work at 4, more than the 3.2 to 3.7 degrees that the table allows between
   * 4500 and 5000 rpm (installation manual J3311-1): both ends are turned up in quarters of a
   * degree, by no more than brings them under 3 degrees.
   */
  @Test
  void aJointThatCannotStandItsAngleIsShimmedByNoMoreThanItTakes() {
    JobDocument low =
        PICKUP
            .withValue("chosen.pinion_angle", "")
            .withValue("measured.transmission.angle", "1 deg from level");
    Chassis found = chassis(low);
    Chassis shimmed = TransmissionShim.shimmed(found, CATALOG.limits(), CATALOG.analysis());

    assertTrue(jointDeg(found) > 3.7, "" + jointDeg(found));
    assertTrue(jointDeg(shimmed) <= 3 && jointDeg(shimmed) > 2.6, "" + jointDeg(shimmed));
    double turnedDeg = Math.toDegrees(shimmed.driveline().transmissionAngleRad());
    assertEquals(Math.rint(4 * turnedDeg), 4 * turnedDeg, 1e-9, "a quarter of a degree");
    assertEquals(
        shimmed.driveline().transmissionAngleRad(), shimmed.driveline().pinionAngleRad(), 1e-9);
    assertEquals(
        chassis(PICKUP),
        TransmissionShim.shimmed(chassis(PICKUP), CATALOG.limits(), CATALOG.analysis()));
  }

  private static double jointDeg(Chassis chassis) {
    Driveline driveline = chassis.driveline();
    return Math.toDegrees(
        driveline
            .pinionJoint()
            .to(driveline.transmissionJoint())
            .angleToLineRad(driveline.transmissionAxis()));
  }

  @Test
  void anAxleThatIsSetHasOneWheelbase() {
    Chassis set = chassis(PICKUP.withValue("chosen.wheelbase", "118 1/8 in"));
    assertEquals(118.125, set.wheelbaseLeftMm() / INCH_MM, 1e-9);
    assertEquals(118.125, set.wheelbaseRightMm() / INCH_MM, 1e-9);
  }

  @Test
  void whatIsMovedAwayIsNoLongerInTheWay() {
    Chassis moved = chassis(PICKUP.withValue("chosen.moved_away", "[tail pipe]"));
    assertEquals(chassis(PICKUP).obstacles().size() - 1, moved.obstacles().size());
    assertTrue(moved.obstacles().stream().map(Obstacle::name).noneMatch("tail pipe"::equals));
  }

  @Test
  void aSupportThatCannotBeMovedIsRefusedByName() {
    JobDocument wrong =
        PICKUP.withValue("chosen.moved_away", "[tail pipe, running-board support left]");
    String message =
        assertThrows(BadInputException.class, () -> JobReader.read(wrong)).getMessage();
    assertTrue(message.contains("running-board support left"), message);
    assertTrue(message.contains("tail pipe, fuel tank, bed floor"), message);
  }
}
