package trammel.trade.labour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class ThreePointTest {

  /** Derived from the PERT formulas and the beta distribution, computed apart from this project. */
  @ParameterizedTest
  @CsvSource({
    "4, 6, 14, 7.0, 1.6667, 1.7321, 6.767, 8.503, 9.453",
    "5, 8, 14, 8.5, 1.5, 1.6583, 8.382, 9.987, 10.800",
    "3, 4, 5, 4.0, .3333, .3780, 4.000, 4.347, 4.507",
    "1, 2, 9, 3.0, 1.3333, 1.3093, 2.769, 4.103, 4.871"
  })
  void betaPertHasItsMeanSpreadsAndQuantiles(
      double low,
      double likely,
      double high,
      double mean,
      double ruleOfSix,
      double deviation,
      double p50,
      double p80,
      double p90) {
    ThreePoint hours = new ThreePoint(low, likely, high);
    assertEquals(mean, hours.mean(), 1e-9);
    assertEquals(ruleOfSix, hours.ruleOfSixDeviation(), 0.00005);
    assertEquals(deviation, hours.standardDeviation(), 0.00005);
    assertEquals(p50, hours.quantile(0.5), 0.0006);
    assertEquals(p80, hours.quantile(0.8), 0.0006);
    assertEquals(p90, hours.quantile(0.9), 0.0006);
  }

  /** Closed form: the shape's own mean and spread are those of the three-point formulas. */
  @Seeds(200)
  void shapeCarriesTheSameMeanAndSpread(Draw draw) {
    double low = draw.between(0, 50);
    double rise = draw.between(0, 20);
    double tail = draw.between(0.1, 40);
    ThreePoint hours = new ThreePoint(low, low + rise, low + rise + tail);
    assertEquals(hours.mean(), hours.distribution().mean(), 1e-9);
    assertEquals(hours.standardDeviation(), hours.distribution().standardDeviation(), 1e-9);
  }

  /** Closed forms: with one shape of 1 the chance is x^alpha, or 1 - (1 - x)^beta. */
  @ParameterizedTest
  @CsvSource({"1, 5", "5, 1", "1, .5", "28, 1", "1, 1300", "1, 1"})
  void quantilesAgreeWithClosedForms(double alpha, double beta) {
    BetaRange range = new BetaRange(0, 1, alpha, beta);
    for (double chance : new double[] {0.001, 0.1, 0.5, 0.8, 0.9, 0.999}) {
      double expected =
          beta == 1 ? Math.pow(chance, 1 / alpha) : 1 - Math.pow(1 - chance, 1 / beta);
      assertEquals(expected, range.quantile(chance), 1e-9);
    }
  }

  /** Definition of a quantile, and symmetry: a shape turned round has the other quantile. */
  @ParameterizedTest
  @CsvSource({"2.3, 3.7", "3, 3", "28, 61", "700, 1300", ".5, .5"})
  void quantilesTurnBackIntoTheirChances(double alpha, double beta) {
    BetaRange range = new BetaRange(0, 1, alpha, beta);
    BetaRange turned = new BetaRange(0, 1, beta, alpha);
    for (double chance : new double[] {0.001, 0.1, 0.5, 0.8, 0.9, 0.999}) {
      double value = range.quantile(chance);
      assertEquals(chance, range.chanceWithin(value), 1e-9);
      assertEquals(1 - chance, turned.chanceWithin(1 - value), 1e-9);
    }
  }

  /**
   * Normal tables: z50 0, z80 .8416, z90 1.2816; chances at 1, 2 and 3 from Abramowitz and Stegun,
   * table 26.1, from memory.
   */
  @Test
  void normalCurveAgreesWithTables() {
    assertEquals(0, NormalCurve.quantile(0.5), 1e-9);
    assertEquals(0.8416, NormalCurve.quantile(0.8), 0.00005);
    assertEquals(1.2816, NormalCurve.quantile(0.9), 0.00005);
    assertEquals(0.841344746, NormalCurve.chanceWithin(1), 5e-10);
    assertEquals(0.977249868, NormalCurve.chanceWithin(2), 5e-10);
    assertEquals(0.998650102, NormalCurve.chanceWithin(3), 5e-10);
    assertEquals(1 - 0.998650102, NormalCurve.chanceWithin(-3), 5e-10);
    assertEquals(0, NormalCurve.chanceWithin(-40));
    assertEquals(1, NormalCurve.chanceWithin(Double.POSITIVE_INFINITY));
  }

  @Test
  void knownFigureHasNoSpread() {
    ThreePoint hours = ThreePoint.exactly(3);
    assertEquals(3, hours.mean());
    assertEquals(0, hours.standardDeviation());
    assertEquals(3, hours.quantile(0.8));
  }

  /** Published chain, baelearn.uncg.edu SCM 304 unit 6.3: total 23, variance 2.778, sd 1.667. */
  @Test
  void chainOfTheCourseAddsUp() {
    RuleOfSixSum chain =
        new RuleOfSixSum(
            List.of(
                new ThreePoint(6, 7, 14),
                new ThreePoint(2, 3, 4),
                new ThreePoint(5, 5.5, 9),
                new ThreePoint(4, 6, 8)));
    assertEquals(23, chain.meanHours(), 1e-9);
    assertEquals(2.778, Math.pow(chain.independentDeviation(), 2), 0.0005);
    assertEquals(1.667, chain.independentDeviation(), 0.0005);
    // Derived from the same figures and the normal table.
    assertEquals(0.8849, chain.chanceWithin(25), 0.00006);
    assertEquals(0.0359, chain.chanceWithin(20), 0.00006);
    assertEquals(24.40, chain.quantileHours(0.8), 0.005);
  }

  @ParameterizedTest
  @CsvSource({"3, 2, 5", "1, 4, 3", "-1, 2, 3", "NaN, 2, 3", "1, 2, NaN", "1, 2, Infinity"})
  void figuresOutOfOrderAreRefused(double low, double likely, double high) {
    String message =
        assertThrows(IllegalArgumentException.class, () -> new ThreePoint(low, likely, high))
            .getMessage();
    assertTrue(message.contains("low <= likely <= high"), message);
  }

  @Test
  void impossibleChanceIsRefused() {
    ThreePoint hours = new ThreePoint(1, 2, 3);
    assertThrows(IllegalArgumentException.class, () -> hours.quantile(1.2));
    assertThrows(IllegalArgumentException.class, () -> hours.quantile(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> hours.times(-1));
  }
}
