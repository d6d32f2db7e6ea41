package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitTest {
  private static final Limit RIDE_FREQUENCY = new Limit(1.0, 2.0, 0.8, 2.8, "common practice");

  @ParameterizedTest
  @CsvSource({
    "1.5, GOOD",
    "1.0, GOOD",
    "2.0, GOOD",
    "0.9, LOOK_AGAIN",
    "2.8, LOOK_AGAIN",
    "0.79, STOP",
    "2.81, STOP",
    "NaN, STOP"
  })
  void aBandIsGoodInsideAndStopsOutside(double hertz, Verdict verdict) {
    assertEquals(verdict, RIDE_FREQUENCY.verdict(hertz));
  }

  @Test
  void theMarginIsTheDistanceToTheNearerGoodLimit() {
    assertEquals(0.25, RIDE_FREQUENCY.margin(1.25), 1e-12);
    assertEquals(-0.5, RIDE_FREQUENCY.margin(2.5), 1e-12);
    assertEquals(0.5, Limit.atLeast(3.0, 2.0, "common practice").margin(3.5), 1e-12);
  }

  @Test
  void roundingDoesNotCarryAValueOnTheLimitPastIt() {
    double twoDegrees = Math.toRadians(2.0);
    Limit limit = Limit.atMost(twoDegrees, Math.toRadians(5.0), "common practice");

    assertEquals(Verdict.GOOD, limit.verdict(twoDegrees * (1 + 1e-12)));
  }

  @Test
  void aGoodRangeBeyondTheStopRangeIsRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> new Limit(1.0, 3.0, 0.8, 2.8, "common practice"));
  }
}
