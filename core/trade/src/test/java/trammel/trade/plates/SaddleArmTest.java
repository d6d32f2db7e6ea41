package trammel.trade.plates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SaddleArmTest {
  private static final double RADIUS_MM = 38.1;
  private static final double PLATE_MM = 6.35;
  private static final double WRAP_RAD = Math.toRadians(120);

  private static SaddleArm arm(double reachMm, double halfMm) {
    return new SaddleArm("arm", PLATE_MM, 2 * RADIUS_MM, WRAP_RAD, reachMm, -halfMm, halfMm);
  }

  @Test
  void areaIsThatOfItsCornersLessTheSaddle() {
    // Upper half by trapezia: (19.05, 32.996) to the foot (22.225, 38.495) to the end (120, 28).
    // The saddle takes the segment r2 (w - sin w) / 2 of a circle (closed form).
    double x0 = RADIUS_MM * Math.cos(WRAP_RAD / 2);
    double y0 = RADIUS_MM * Math.sin(WRAP_RAD / 2);
    double x1 = (RADIUS_MM + PLATE_MM) * Math.cos(WRAP_RAD / 2);
    double y1 = (RADIUS_MM + PLATE_MM) * Math.sin(WRAP_RAD / 2);
    double half = (x1 - x0) * (y0 + y1) / 2 + (120 - x1) * (y1 + 28) / 2;
    double segment = RADIUS_MM * RADIUS_MM * (WRAP_RAD - Math.sin(WRAP_RAD)) / 2;
    assertEquals(2 * half - segment, arm(120, 28).outline().areaMm2(), 1e-6);
  }

  @Test
  void saddleIsAThirdOfTheTubesRound() {
    assertEquals(2 * Math.PI * RADIUS_MM / 3, arm(120, 28).saddleLengthMm(), 1e-9);
  }

  @Test
  void endStandsUprightAtItsReach() {
    Bounds bounds = arm(120, 45).outline().bounds();
    assertEquals(120, bounds.maxXMm(), 1e-9);
    assertEquals(90, bounds.heightMm(), 1e-9);
  }

  @Test
  void refusesAnEndInsideTheTube() {
    String message = assertThrows(IllegalArgumentException.class, () -> arm(40, 28)).getMessage();
    assertTrue(message.contains("44.45 mm"), message);
  }
}
