package trammel.plugins.airspring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trammel.trade.plates.Point2;
import trammel.trade.plates.SeatArm;

class SeatArmTest {
  private static SeatArm arm(double xMm, double yMm) {
    return new SeatArm("arm", 6, 76, Math.toRadians(120), new Point2(xMm, yMm), 100, 38);
  }

  /** Arc length is radius times angle: 38 mm x 2 pi/3. */
  @Test
  void weldsAlongAThirdOfTheTube() {
    assertEquals(38 * 2 * Math.PI / 3, arm(-110, 0).saddleLengthMm(), 1e-9);
  }

  @Test
  void carriesTheSeatLevelAndStaysOutOfTheTube() {
    var outline = arm(-110, 0).outline();
    assertEquals(-160, outline.bounds().minXMm(), 1e-6);
    assertTrue(outline.outer().distanceMm(new Point2(0, 0)) >= 38 - 1e-6);
    assertTrue(outline.outer().distanceMm(new Point2(-110, 0)) < 1e-6);
  }

  @Test
  void refusesASeatOverTheTube() {
    assertThrows(IllegalArgumentException.class, () -> arm(0, 20));
  }
}
