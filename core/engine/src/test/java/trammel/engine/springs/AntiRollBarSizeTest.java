package trammel.engine.springs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Bars bent from one piece, in shop units. */
class AntiRollBarSizeTest {
  private static final double INCH = 25.4;
  private static final double POUND_N = 4.4482216152605;
  private static final double LB_PER_IN = POUND_N / INCH;
  private static final double PSI = 0.006894757293168;
  private static final double INCH_POUND_PER_DEGREE = Math.toDegrees(POUND_N * INCH);

  /**
   * 1 in solid, 34 in between arms of 9 in lever and 9 1/2 in length, G 11.5e6 and E 30e6 psi, ends
   * 40 in apart. By hand: A2 B/(G J) = 2,754/1,129,000 and 2 C3/(3 E I) = 1,714.75/4,417,900.
   */
  @Test
  void aBarGivesByItsTwistAndByTheBendingOfItsArms() {
    AntiRollBarSize bar =
        AntiRollBarSize.bent(INCH, 0, 34 * INCH, 9 * INCH, 9.5 * INCH, 11.5e6 * PSI);

    assertEquals(353.68, bar.rateNPerMm() / LB_PER_IN, 0.05);
    assertEquals(409.95, bar.torsionOnlyNPerMm() / LB_PER_IN, 0.05);
    assertEquals(9_876.5, bar.rollNmmPerRad(40 * INCH) / INCH_POUND_PER_DEGREE, 2);
  }

  /** 500,000 D4/(0.4244 A2 B + 0.2264 C3), Puhn from memory, which has G 12e6: 283.39 lb/in. */
  @Test
  void thePrintedShortFormIsTheSameWithItsModulus() {
    double printed = 500_000 * Math.pow(0.875, 4) / (0.4244 * 64 * 32 + 0.2264 * 9 * 9 * 9);
    AntiRollBarSize bar =
        AntiRollBarSize.bent(0.875 * INCH, 0, 32 * INCH, 8 * INCH, 9 * INCH, 12e6 * PSI);

    assertEquals(283.39, printed, 0.01);
    assertEquals(printed, bar.rateNPerMm() / LB_PER_IN, 2e-3 * printed);
  }

  /**
   * 10^4 T2 K2 D4/(R2 L/2) in lb per deg, credited to Staniforth, has torsion alone and lies 1.5 %
   * above G 11.5e6: 10,637 for T 60, K 0.7, D 0.9, R 8, L 34.
   */
  @Test
  void theOtherPrintedShortFormHasTorsionAlone() {
    double printed = 1e4 * 60 * 60 * 0.49 * Math.pow(0.9, 4) / (64 * 17.0);
    AntiRollBarSize bar =
        AntiRollBarSize.bent(0.9 * INCH, 0, 34 * INCH, 8 * INCH, 8 * INCH, 11.5e6 * PSI);
    double apartMm = 0.7 * 60 * INCH;
    double torsionOnly = bar.torsionOnlyNPerMm() * apartMm * apartMm / INCH_POUND_PER_DEGREE;

    assertEquals(10_637, printed, 1);
    assertEquals(1.015, printed / torsionOnly, 1e-3);
  }

  /** 16 T/(pi D3) on 1 in and 1,000 in lb: 5,093 psi. A hollow bar is D4 - d4, not (D - d)4. */
  @Test
  void theSkinIsShearedByTheTorqueOverTheWholeRing() {
    AntiRollBarSize solid =
        AntiRollBarSize.bent(INCH, 0, 34 * INCH, 10 * INCH, 10 * INCH, 11.5e6 * PSI);
    AntiRollBarSize hollow =
        AntiRollBarSize.bent(INCH, 0.75 * INCH, 34 * INCH, 10 * INCH, 10 * INCH, 11.5e6 * PSI);

    assertEquals(5_093, solid.shearMPa(100 * POUND_N) / PSI, 1);
    assertEquals(
        1 - Math.pow(0.75, 4), hollow.torsionOnlyNPerMm() / solid.torsionOnlyNPerMm(), 1e-9);
  }

  @Test
  void anArmShorterThanItsLeverIsRefused() {
    String refusal =
        assertThrows(
                IllegalArgumentException.class,
                () -> AntiRollBarSize.bent(25, 0, 800, 250, 200, 79_000))
            .getMessage();

    assertTrue(refusal.contains("lever"), refusal);
  }
}
