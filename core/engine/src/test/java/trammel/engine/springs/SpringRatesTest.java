package trammel.engine.springs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.quantity.ShopUnits.nPerMm;
import static trammel.engine.quantity.ShopUnits.poundsPerInch;
import static trammel.engine.quantity.ShopUnits.rad;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class SpringRatesTest {
  @Test
  void wheelRateIsRateTimesTheSquareOfTheMotionRatio() {
    double rate = SpringRates.wheelRateNPerMm(nPerMm(300), 0.85);
    assertEquals(216.75, poundsPerInch(rate), 0.005, "Barton and Fieldhouse 2018 eq. 3.33");
  }

  @ParameterizedTest(name = "{0} lb/in at {1}°")
  @CsvSource({
    "250, 20, 220.756, closed form k cos²θ",
    "200, 15, 186.603, closed form k cos²θ",
    "200, 0, 200, limit: upright",
    "200, 60, 50, closed form: cos 60° is one half"
  })
  void aLeaningSpringLosesRateByTheSquareOfTheCosine(
      double lbPerIn, double leanDeg, double expected, String source) {
    double rate = SpringRates.leaningRateNPerMm(nPerMm(lbPerIn), rad(leanDeg));
    assertEquals(expected, poundsPerInch(rate), 0.001, source);
  }

  @Test
  void aLeaningSpringLosesForceByTheCosineOnce() {
    assertEquals(0.93969, SpringRates.verticalForceFactor(rad(20)), 0.000005, "closed form cos θ");
  }

  @Test
  void springsInSeriesAreSofterThanEither() {
    double both = SpringRates.inSeriesNPerMm(nPerMm(150), nPerMm(1200));
    assertEquals(133.33, poundsPerInch(both), 0.005, "closed form 1/(1/150 + 1/1200)");
  }

  /** The force a real leaning spring exerts, moved up and down by a hair, gives its rate. */
  @Seeds(1000)
  void theLoadedRateIsTheSlopeOfTheVerticalForce(Draw draw) {
    double rate = draw.between(5, 100);
    double leanDeg = draw.between(-45, 45);
    double force = draw.between(0, 8000);
    double lengthMm = 300;
    double step = 1e-3;
    double slope =
        (verticalForceN(rate, leanDeg, force, lengthMm, step)
                - verticalForceN(rate, leanDeg, force, lengthMm, -step))
            / (2 * step);
    double expected = SpringRates.loadedLeaningRateNPerMm(rate, rad(leanDeg), force, lengthMm);
    assertEquals(slope, expected, 1e-4);
  }

  private static double verticalForceN(
      double rate, double leanDeg, double force, double lengthMm, double riseMm) {
    double acrossMm = lengthMm * Math.sin(rad(leanDeg));
    double uprightMm = lengthMm * Math.cos(rad(leanDeg)) - riseMm;
    double newLengthMm = Math.hypot(acrossMm, uprightMm);
    double newForce = force + rate * (lengthMm - newLengthMm);
    return newForce * uprightMm / newLengthMm;
  }

  @Seeds(1000)
  void theLeaningRateIsNeverOverTheSpringsOwn(Draw draw) {
    double rate = draw.between(0.01, 1000);
    double leanDeg = draw.between(-80, 80);
    double leaning = SpringRates.leaningRateNPerMm(rate, rad(leanDeg));
    assertTrue(leaning > 0 && leaning <= rate);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-81, 81, Double.NaN})
  void aSpringLyingDownIsRefused(double leanDeg) {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class, () -> SpringRates.leaningRateNPerMm(20, rad(leanDeg)));
    assertTrue(refusal.getMessage().contains("from -80° to 80°"), refusal.getMessage());
  }
}
