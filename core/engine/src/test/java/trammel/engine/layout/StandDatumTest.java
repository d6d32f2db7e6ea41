package trammel.engine.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import trammel.engine.geometry.Point3;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class StandDatumTest {
  private static final double INCH = 25.4;

  @Test
  void aFrameThatSitsAsItWillRideOnlyMovesUpright() {
    StandDatum datum = new StandDatum(Math.toRadians(1), Math.toRadians(1), 22 * INCH, 17.5 * INCH);

    Point3 ride = datum.toRide(new Point3(30 * INCH, 10 * INCH, 25 * INCH));

    assertEquals(30 * INCH, ride.xMm(), 1e-9);
    assertEquals(10 * INCH, ride.yMm(), 1e-9);
    assertEquals(20.5 * INCH, ride.zMm(), 1e-9);
  }

  /** Plane rotation by hand: 30 in ahead of the mark falls 30 sin 1 deg = 0.5236 in. */
  @Test
  void moreRakeAtRideLowersWhatLiesAheadOfTheAxleMark() {
    StandDatum datum = new StandDatum(0, Math.toRadians(1), 22 * INCH, 22 * INCH);

    Point3 ride = datum.toRide(new Point3(30 * INCH, 0, 22 * INCH));

    assertEquals(22 - 0.523572, ride.zMm() / INCH, 1e-6);
    assertEquals(29.995431, ride.xMm() / INCH, 1e-6);
    assertEquals(Math.toRadians(2), datum.toRideRad(Math.toRadians(3)), 1e-12);
  }

  @Test
  void anAngleReadFromTheFrameLosesTheRakeItSitsWith() {
    StandDatum datum = new StandDatum(Math.toRadians(0.5), Math.toRadians(1), 500, 400);

    assertEquals(Math.toRadians(2.5), datum.fromFrameRad(Math.toRadians(3)), 1e-12);
  }

  /**
   * Rail heights of 10.25 and 8.5 in over 96: the nose is down by atan(1.75/96) = 1.0443 deg. A
   * pinion that is 4.5 deg nose up from level is 5.5443 from such a frame.
   */
  @Test
  void aNoseDownFrameAddsItsRakeToAPinionReadFromIt() {
    double rakeRad = Math.atan((10.25 - 8.5) / 96);
    assertEquals(1.0443, Math.toDegrees(rakeRad), 1e-4);
    StandDatum datum = new StandDatum(rakeRad, rakeRad, 500, 500);

    assertEquals(4.5, Math.toDegrees(datum.fromFrameRad(Math.toRadians(5.5443))), 1e-4);
  }

  @Seeds(1000)
  void theFrameIsRigid(Draw draw) {
    double stands = draw.between(-0.1, 0.1);
    double ride = draw.between(-0.1, 0.1);
    double x = draw.between(-2000, 2000);
    double z = draw.between(0, 1500);
    StandDatum datum = new StandDatum(stands, ride, 550, 450);
    Point3 a = new Point3(x, 300, z);
    Point3 b = new Point3(200, -250, 600);

    assertEquals(a.distanceMm(b), datum.toRide(a).distanceMm(datum.toRide(b)), 1e-9);
  }

  @Test
  void aRakeThatNoFrameHasIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class, () -> new StandDatum(Math.PI / 4, 0, 500, 400));
    assertEquals(true, refusal.getMessage().contains("rake on the stands"));
  }
}
