package trammel.engine.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** EN 1993-1-9: curve constants as published; numbers worked by hand from them. */
class FatigueCurveTest {
  private static final FatigueCurve CURVE = new FatigueCurve(71);

  @Test
  void theKneeAndTheCutOffAreSharesOfTheCategory() {
    assertEquals(52.313, CURVE.kneeMPa(), 1e-3);
    assertEquals(28.735, CURVE.cutOffMPa(), 1e-3);
  }

  @Test
  void aRangeIsStoodByTheCubeAndBelowTheKneeByTheFifthPower() {
    assertEquals(2e6, CURVE.cycles(71), 1);
    assertEquals(715_822, CURVE.cycles(100), 1);
    assertEquals(1.06161e7, CURVE.cycles(45), 1e2);
    assertEquals(Double.POSITIVE_INFINITY, CURVE.cycles(28), 0);
  }

  /** 20,000 at 110, 200,000 at 70, 2 million at 45, 5 million at 25 MPa: 0.32142. */
  @Test
  void damageAddsUpByMinersRule() {
    double sum =
        CURVE.damage(20_000, 110)
            + CURVE.damage(200_000, 70)
            + CURVE.damage(2e6, 45)
            + CURVE.damage(5e6, 25);

    assertEquals(0.32142, sum, 1e-5);
  }

  /** Partial factor 1.35: 52.593 MPa, 290,940 times 100 MPa. */
  @Test
  void aPartialFactorDividesTheCategory() {
    FatigueCurve safer = CURVE.dividedBy(1.35);

    assertEquals(52.593, safer.categoryMPa(), 1e-3);
    assertEquals(290_940, safer.cycles(100), 10);
  }

  /**
   * A block of 1 cycle that is stood 10,000 times and 4 that are stood 100,000 times does 0.00014,
   * so it is stood 7,143 times: a published problem, worked again (its print cuts to 7,142).
   */
  @Test
  void blocksOfCyclesAreCountedNotCycles() {
    double hardMPa = 71 * Math.cbrt(2e6 / 1e4);
    double easyMPa = 71 * Math.cbrt(2e6 / 1e5);

    double block = CURVE.damage(1, hardMPa) + CURVE.damage(4, easyMPa);

    assertEquals(0.00014, block, 1e-9);
    assertEquals(7_143, 1 / block, 0.2);
  }
}
