package trammel.engine.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.engine.geometry.Point3;
import trammel.engine.motion.AxlePose;

/** An axle tube of radius 38 mm, 350 mm up, under a rail from z = 460 to 560; all by hand. */
class NotchNeedTest {

  private static final Capsule TUBE =
      new Capsule(new Point3(0, -600, 350), new Point3(0, 600, 350), 38);
  private static final Box RAIL = Box.between(-900, 900, 350, 400, 460, 560);

  /** With a gap of 13 mm the arc has radius 51 about the tube's middle at full bump. */
  @ParameterizedTest
  @CsvSource({
    // tube's middle 60 under the rail: out of reach of the arc
    "50, 0, 0, 100",
    // just reaching: 51 under
    "59, 0, 0, 100",
    // 35 under: 51 - 35 deep, chord 2 sqrt(51^2 - 35^2)
    "75, 16, 74.18894796396564, 84",
    // level with the underside: half a circle
    "110, 51, 102, 49",
    // 10 above it: straight flanks, full width
    "120, 61, 102, 39",
    // through the rail: 160 - 110 + 51 = 101
    "160, 101, 102, -1"
  })
  void levelAxleCutsAnArcAboutTheTube(
      double bumpMm, double depthMm, double lengthMm, double leftAboveMm) {
    NotchNeed need = NotchNeed.of(TUBE, RAIL, 13, List.of(AxlePose.atRide(350), heave(bumpMm)));

    assertEquals(depthMm, need.depthMm(), 1e-9);
    assertEquals(lengthMm, need.lengthMm(), 1e-9);
    assertEquals(leftAboveMm, need.leftAboveMm(), 1e-9);
    assertEquals(51, need.arcRadiusMm(), 1e-12);
    assertEquals(depthMm > 0, need.isNeeded());
    assertEquals(depthMm > 0, need.deepestAt().isPresent());
  }

  /** The notched rail leaves the required gap: the arc's radius less the tube's. */
  @Test
  void withoutTheNotchTheGapFallsShortByTheDepth() {
    AxlePose fullBump = heave(60);
    NotchNeed need = NotchNeed.of(TUBE, RAIL, 20, List.of(fullBump));

    double gapMm = Gap.between(TUBE.moved(fullBump), RAIL).gapMm();

    // 460 - 410 - 38
    assertEquals(12, gapMm, 1e-9);
    assertEquals(20 - 12, need.depthMm(), 1e-9);
  }

  /**
   * Roll lifts the left end: at the rail's outer face, y = 400, the tube's middle is 400 tan(roll)
   * higher, and the level section of the leaning arc is radius / cos(roll) high.
   */
  @Test
  void rolledAxleIsHighestAtTheOuterFaceOfTheRail() {
    double rollRad = 0.05;
    AxlePose rolled = new AxlePose(50, rollRad, 0, 0, 0, 0, 350);

    NotchNeed need = NotchNeed.of(TUBE, RAIL, 13, List.of(heave(50), rolled));

    double expectedMm = 350 + 50 + 400 * Math.tan(rollRad) + 51 / Math.cos(rollRad) - 460;
    assertEquals(expectedMm, need.depthMm(), 1e-9);
    assertEquals(rolled, need.deepestAt().orElseThrow());
  }

  /** An axle that swings back 20 mm as it rises: the opening spans both circles. */
  @Test
  void openingCoversThePlacesOfAllPoses() {
    AxlePose forward = heave(75);
    AxlePose back = new AxlePose(110, 0, -20, 0, 0, 0, 350);

    NotchNeed need = NotchNeed.of(TUBE, RAIL, 13, List.of(forward, back));

    assertEquals(51, need.depthMm(), 1e-9);
    // From 51 behind x = -20 to whichever is further ahead: 31, or half of the chord 74.189.
    assertEquals(71 + 37.09447398198282, need.lengthMm(), 1e-9);
    assertEquals((37.09447398198282 - 71) / 2, need.middleForwardMm(), 1e-9);
  }

  /** Turning the rail about the tube's middle changes neither its height over it nor the arc. */
  @ParameterizedTest
  @CsvSource({"0.05", "-0.2"})
  void rakedRailNeedsTheSameNotchMeasuredSquareToIt(double rakeRad) {
    Box raked = RAIL.turnedInSideView(rakeRad, new Point3(0, 0, 425));

    NotchNeed need = NotchNeed.of(TUBE, raked, 13, List.of(heave(75)));

    assertEquals(16, need.depthMm(), 1e-9);
    assertEquals(74.18894796396564, need.lengthMm(), 1e-9);
  }

  @Test
  void rightRailNeedsTheMirrorImage() {
    Box right = Box.between(-900, 900, -400, -350, 460, 560);
    AxlePose leftUp = new AxlePose(60, 0.04, 5, 0, 0.01, 0, 350);
    AxlePose rightUp = new AxlePose(60, -0.04, 5, 0, -0.01, 0, 350);

    NotchNeed leftNeed = NotchNeed.of(TUBE, RAIL, 13, List.of(leftUp));
    NotchNeed rightNeed = NotchNeed.of(TUBE, right, 13, List.of(rightUp));

    assertTrue(leftNeed.isNeeded());
    assertEquals(leftNeed.depthMm(), rightNeed.depthMm(), 1e-9);
    assertEquals(leftNeed.lengthMm(), rightNeed.lengthMm(), 1e-9);
    assertEquals(leftNeed.middleForwardMm(), rightNeed.middleForwardMm(), 1e-9);
  }

  @Test
  void railThatTheTubePassesNeedsNone() {
    Box ahead = Box.between(200, 900, 350, 400, 460, 560);
    Box outside = Box.between(-900, 900, 700, 750, 460, 560);
    Box under = Box.between(-900, 900, 350, 400, 200, 280);

    assertFalse(NotchNeed.of(TUBE, ahead, 13, List.of(heave(120))).isNeeded());
    assertFalse(NotchNeed.of(TUBE, outside, 13, List.of(heave(120))).isNeeded());
    assertFalse(NotchNeed.of(TUBE, under, 13, List.of(heave(120))).isNeeded());
  }

  @Test
  void mistakesAreRefused() {
    List<AxlePose> ride = List.of(AxlePose.atRide(350));
    Capsule lengthwise = new Capsule(new Point3(0, 375, 350), new Point3(900, 375, 350), 38);

    assertRefused("-1.0", () -> NotchNeed.of(TUBE, RAIL, -1, ride));
    assertRefused("0 poses", () -> NotchNeed.of(TUBE, RAIL, 13, List.of()));
    assertRefused("90.0 degrees", () -> NotchNeed.of(lengthwise, RAIL, 13, ride));
  }

  private static void assertRefused(String given, Executable mistake) {
    String message = assertThrows(IllegalArgumentException.class, mistake).getMessage();
    assertTrue(message.contains(given), message);
  }

  private static AxlePose heave(double heaveMm) {
    return new AxlePose(heaveMm, 0, 0, 0, 0, 0, 350);
  }
}
