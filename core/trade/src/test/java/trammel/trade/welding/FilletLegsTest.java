package trammel.trade.welding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source: ANSI/AISC 360, Table J2.4 and section J2.2b. */
class FilletLegsTest {

  private static final double INCH = 25.4;

  @ParameterizedTest
  @CsvSource({
    ".125, .125",
    ".1875, .125",
    ".25, .125",
    ".3125, .1875",
    ".5, .1875",
    ".51, .25",
    ".5625, .25",
    ".75, .25",
    ".76, .3125",
    "1, .3125",
    "2, .3125"
  })
  void smallestLegGoesByTheThinnerPart(double thicknessIn, double legIn) {
    assertEquals(legIn * INCH, FilletLegs.smallestMm(thicknessIn * INCH), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({".1875, .1875", ".25, .1875", ".375, .3125", ".5, .4375"})
  void largestLegAlongAnEdgeLeavesTheEdgeInSight(double thicknessIn, double legIn) {
    assertEquals(legIn * INCH, FilletLegs.largestAlongEdgeMm(thicknessIn * INCH), 1e-9);
  }

  /** A 3/16 fillet only 1/2 in long counts as 1/8. */
  @Test
  void shortWeldCountsAsAQuarterOfItsLength() {
    assertEquals(INCH / 8, FilletLegs.countedLegMm(0.1875 * INCH, INCH / 2), 1e-9);
    assertEquals(0.1875 * INCH, FilletLegs.countedLegMm(0.1875 * INCH, 2 * INCH), 1e-9);
  }

  /** Intermittent step: four legs, and 1 1/2 in. */
  @Test
  void shortestStepIsFourLegsOrAnInchAndAHalf() {
    assertEquals(INCH, FilletLegs.leastLengthMm(INCH / 4), 1e-9);
    assertEquals(1.5 * INCH, FilletLegs.shortestStepMm(0.1875 * INCH), 1e-9);
    assertEquals(2 * INCH, FilletLegs.shortestStepMm(INCH / 2), 1e-9);
  }

  /** Common practice, no source: sheet is not given a leg thicker than itself. */
  @Test
  void thinSheetTakesItsOwnThickness() {
    assertEquals(1.5, FilletLegs.smallestMm(1.5), 1e-9);
    assertEquals(INCH / 8, FilletLegs.leastByTableMm(1.5), 1e-9);
  }

  @Test
  void noThicknessIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> FilletLegs.smallestMm(0));
    assertThrows(IllegalArgumentException.class, () -> FilletLegs.largestAlongEdgeMm(Double.NaN));
  }
}
