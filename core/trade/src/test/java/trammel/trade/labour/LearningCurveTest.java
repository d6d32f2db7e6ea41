package trammel.trade.labour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LearningCurveTest {

  /** Closed form ln(s) / ln 2. */
  @ParameterizedTest
  @CsvSource({".80, -.321928", ".85, -.234465", ".90, -.152003"})
  void exponentFollowsFromTheSlope(double slope, double exponent) {
    assertEquals(exponent, LearningCurve.exponent(slope), 0.0000005);
  }

  /** Accounting text-book table (flipbuilder, p. 330), 80 % curve of 100 h. */
  @ParameterizedTest
  @CsvSource({"1, 100, 100", "2, 80, 160", "4, 64, 256", "8, 51.2, 409.6", "16, 40.96, 655.36"})
  void wrightAveragesFallWithEachDoubling(int units, double average, double total) {
    WrightCurve curve = new WrightCurve(100, 0.80);
    assertEquals(average, curve.averageHours(units), 1e-9);
    assertEquals(total, curve.totalHours(units), 1e-8);
  }

  /** The second eight units take 245.76 h: difference of the two published totals. */
  @Test
  void wrightBatchIsADifferenceOfTotals() {
    WrightCurve curve = new WrightCurve(100, 0.80);
    assertEquals(245.76, curve.totalHours(16) - curve.totalHours(8), 1e-8);
  }

  /** Project-management text-book, Table 18-1: 812 h, 75 %, unit 250 takes 82.1 h. */
  @Test
  void crawfordUnitIsThePublishedOne() {
    assertEquals(82.1, new CrawfordCurve(812, 0.75).unitHours(250), 0.05);
  }

  /** Inputs of the AFIT learningCurve vignette, 100 h, 85 %, 125 units; values derived. */
  @Test
  void bothCurvesOnTheSameInputs() {
    CrawfordCurve crawford = new CrawfordCurve(100, 0.85);
    assertEquals(32.236, crawford.unitHours(125), 0.0005);
    assertEquals(5201.09, crawford.totalHours(125), 0.006);
    assertEquals(5201.09 / 125, crawford.averageHours(125), 0.0001);
    WrightCurve wright = new WrightCurve(100, 0.85);
    assertEquals(24.701, wright.unitHours(125), 0.0005);
    assertEquals(4029.56, wright.totalHours(125), 0.005);
  }

  @Test
  void impossibleCurvesAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new WrightCurve(100, 80));
    assertThrows(IllegalArgumentException.class, () -> new CrawfordCurve(0, 0.8));
    assertThrows(IllegalArgumentException.class, () -> new CrawfordCurve(100, 0.8).totalHours(0));
  }
}
