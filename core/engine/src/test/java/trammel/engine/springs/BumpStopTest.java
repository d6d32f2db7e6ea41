package trammel.engine.springs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** A stop of 400 lb/in and 250 lb/in3, an invented one; energy by hand. */
class BumpStopTest {
  private static final double INCH = 25.4;
  private static final double POUND_N = 4.4482216152605;
  private static final double POUND_KG = 0.45359237;
  private static final BumpStop STOP =
      new BumpStop(400 * POUND_N / INCH, 250 * POUND_N / Math.pow(INCH, 3), 40 * INCH);

  /** At 2 in: 2,800 lb and 1,800 in lb, not half of force times squeeze, 2,800. */
  @Test
  void aStopThatStiffensTakesUpLessThanAStraightOne() {
    assertEquals(2_800, STOP.forceN(2 * INCH) / POUND_N, 0.1);
    assertEquals(1_800, STOP.energyNmm(2 * INCH) / POUND_N / INCH, 0.1);
  }

  /**
   * 700 lb at 40 in/s, 160 lb/in squeezed by 3 in already: 1,450.4 in lb, 1.3946 in, 1,236.0 lb.
   */
  @Test
  void springAndStopCatchTheWheelTogether() {
    double squeezed = STOP.squeezedMm(700 * POUND_KG, 160 * POUND_N / INCH, 3 * INCH);

    assertEquals(1_450.4, STOP.movingNmm(700 * POUND_KG) / POUND_N / INCH, 0.5);
    assertEquals(1.3946, squeezed / INCH, 1e-3);
    assertEquals(1_236.0, STOP.forceN(squeezed) / POUND_N, 1.5);
    assertEquals(1.8644, STOP.squeezedMm(700 * POUND_KG, 0, 3 * INCH) / INCH, 1e-3);
  }

  /** Gere, Mechanics of Materials, problem 2.8-5: 1 lb from 12 in on 0.5 lb/in, 9.21 in. */
  @Test
  void aWeightThatFallsOnASpring() {
    double squeezed = BumpStop.underFallMm(POUND_N, 0.5 * POUND_N / INCH, 12 * INCH);

    assertEquals(9.21, squeezed / INCH, 5e-3);
  }
}
