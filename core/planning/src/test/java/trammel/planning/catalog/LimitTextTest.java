package trammel.planning.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.engine.checks.Measure;
import trammel.reading.quantity.UnitSystem;

class LimitTextTest {
  /** 1 in = 25.4 mm, 1 deg = pi/180 rad. */
  @ParameterizedTest
  @CsvSource({
    "FREQUENCY, 1.0 to 2.0 Hz, 1, 2",
    "FREQUENCY, 0.8 Hz to 2.8 Hz, 0.8, 2.8",
    "ANGLE, at most 2 deg, -Infinity, 0.034906585",
    "ANGLE, 0.5 to 3 deg, 0.0087266463, 0.052359878",
    "LENGTH, at least 3 in, 76.2, Infinity",
    "LENGTH, at most 1/16 in, -Infinity, 1.5875",
    "LENGTH, 10 mm to 1 in, 10, 25.4",
    "SHARE, 20 % to 140 %, 0.2, 1.4",
    "SHARE, -5 % to 8 %, -0.05, 0.08",
    "FACTOR, at least 2.0, 2, Infinity",
    "LENGTH, any, -Infinity, Infinity"
  })
  void rangeIsReadInEngineUnits(Measure measure, String text, double min, double max) {
    LimitText.Range range = new LimitText(measure, UnitSystem.US).range(text);
    assertEquals(min, range.min(), 1e-8);
    assertEquals(max, range.max(), 1e-8);
  }

  @Test
  void bareAmountMovesTheOneEndThatLimits() {
    LimitText text = new LimitText(Measure.ANGLE, UnitSystem.US);
    LimitText.Range range = text.range("3 deg", text.range("at most 2 deg"));
    assertEquals(Math.toRadians(3), range.max(), 1e-12);
    assertEquals(Double.NEGATIVE_INFINITY, range.min());
  }

  @Test
  void bareAmountIsRefusedWhereTwoEndsLimitOrNone() {
    LimitText text = new LimitText(Measure.SHARE, UnitSystem.US);
    for (String replaced : new String[] {"20 % to 140 %", "any"}) {
      IllegalArgumentException refused =
          assertThrows(
              IllegalArgumentException.class, () -> text.range("30 %", text.range(replaced)));
      assertTrue(refused.getMessage().contains("which end"), refused.getMessage());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "ANGLE, 2 deg", "ANGLE, at most 2 in", "LENGTH, 3 in to 2 in", "FREQUENCY, at most two Hz",
    "FACTOR, about 2", "LENGTH, at least", "LENGTH, ' to 3 in'", "SHARE, at most NaN"
  })
  void anythingElseIsRefusedInWords(Measure measure, String text) {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () -> new LimitText(measure, UnitSystem.US).range(text));
    assertTrue(refused.getMessage().length() > 20, refused.getMessage());
  }
}
