package trammel.trade.plates;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoleRulesTest {
  private static Outline strip(double edgeMm, double holeMm, double pitchMm) {
    double length = 200.0;
    Loop outer =
        Loop.through(
            List.of(
                new Point2(0.0, -edgeMm),
                new Point2(length, -edgeMm),
                new Point2(length, edgeMm),
                new Point2(0.0, edgeMm)));
    return new Outline(
        outer,
        List.of(
            new RoundHole(new Point2(100.0, 0.0), holeMm),
            new RoundHole(new Point2(100.0 + pitchMm, 0.0), holeMm)));
  }

  @ParameterizedTest
  // Edge distance 1.5 diameters, ligament half a diameter: common practice, no source.
  @CsvSource({"24.0, 24.0", "30.0, 40.0"})
  void enoughMetalIsAccepted(double edgeMm, double pitchMm) {
    assertDoesNotThrow(() -> HoleRules.SHOP.check("strip", strip(edgeMm, 16.0, pitchMm)));
  }

  @ParameterizedTest
  @CsvSource({"23.9, 40.0, to the edge of strip", "30.0, 23.9, metal between holes 1 and 2"})
  void tooLittleMetalIsRefusedWithTheAmountMissing(double edgeMm, double pitchMm, String says) {
    Outline outline = strip(edgeMm, 16.0, pitchMm);
    String message =
        assertThrows(IllegalArgumentException.class, () -> HoleRules.SHOP.check("strip", outline))
            .getMessage();
    assertTrue(message.contains(says), message);
    assertTrue(message.contains("by 0.1 mm"), message);
  }

  @Test
  void slotIsJudgedByItsWidth() {
    Loop outer = strip(20.0, 5.0, 20.0).outer();
    SlotHole slot = new SlotHole(new Point2(100.0, 0.0), 16.0, 30.0, 0.0);
    Outline outline = new Outline(outer, List.of(slot));
    assertThrows(IllegalArgumentException.class, () -> HoleRules.SHOP.check("strip", outline));
  }

  @ParameterizedTest
  @CsvSource({
    // AISC 360-10 Table J3.4, least edge distance in inches for bolts in inches, from memory.
    "0.5, 0.75",
    "0.625, 0.875",
    "0.75, 1.0",
  })
  void shopEdgeRuleIsNoLessThanTheBuildingCode(double boltIn, double codeEdgeIn) {
    assertTrue(HoleRules.SHOP.edgeFactor() * boltIn >= codeEdgeIn);
  }
}
