package trammel.engine.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.engine.driveline.DriveShaftTube;
import trammel.engine.motion.LateralBarArc;

/** Published and hand-worked values in inches, pounds and psi. */
class PublishedMechanicsTest {
  private static final double INCH_MM = 25.4;
  private static final double POUND_N = 4.4482216152605;
  private static final double PSI_MPA = 0.006894757293;

  /** Secant formula, pinned ends, E 29e6 psi: tube 1.50 x 0.120, 28 in, worked by hand. */
  private static Column link() {
    return Column.pivoted(
        new RoundTubeSection(1.5 * INCH_MM, 0.12 * INCH_MM),
        28 * INCH_MM,
        new SteelGrade("60 ksi", 60_000 * PSI_MPA, 70_000 * PSI_MPA, "worked by hand"));
  }

  @Test
  void aLinkPushedBesideItsMiddleIsStressedByTheSecantFormula() {
    double stressMPa = link().secantStressMPa(6000 * POUND_N, 0.1 * INCH_MM);
    assertEquals(15_817, stressMPa / PSI_MPA, 0.002 * 15_817);
  }

  @ParameterizedTest
  @CsvSource({"0.10, 19460", "0.25, 14080"})
  void aLinkPushedBesideItsMiddleYieldsEarly(double besideIn, double pounds) {
    assertEquals(pounds, link().secantYieldLoadN(besideIn * INCH_MM) / POUND_N, 0.003 * pounds);
  }

  /** A channel 6 x 2 1/2 x 3/16 has 3.5674 in³, worked by hand; a box gains a third at most. */
  @Test
  void aChannelIsBentByItsOwnModulus() {
    double wall = 3 * INCH_MM / 16;
    ChannelSection channel = new ChannelSection(6 * INCH_MM, 2.5 * INCH_MM, wall, wall);
    assertEquals(3.5674, channel.modulusTopMm3() / Math.pow(INCH_MM, 3), 1e-3);
  }

  /** 76 in of 3.0 x 0.083 in one piece 2,401 rpm, in two halves 9,603 (0.7 of the critical). */
  @ParameterizedTest
  @CsvSource({"76, 2401", "38, 9603"})
  void aShaftInTwoPiecesTurnsFourTimesAsFast(double inches, double rpm) {
    DriveShaftTube tube = new DriveShaftTube(3 * INCH_MM, 2.834 * INCH_MM, inches * INCH_MM);
    assertEquals(rpm, tube.usableSpeedRpm(), 0.002 * rpm);
  }

  /** One lateral bar of 34 in pulls the axle over by R − √(R² − d²) = 0.13261 in at 3 in. */
  @Test
  void aLateralBarSwingsOnItsArc() {
    LateralBarArc bar = new LateralBarArc(34 * INCH_MM, 0);
    assertEquals(0.13261, Math.abs(bar.shiftMm(3 * INCH_MM)) / INCH_MM, 1e-5);
  }

  /** AISC Design Examples D.7: pin 1 in, hole 1.03, plate 1/2 x 4 1/4 A36: bearing, 16.2 kip. */
  @Test
  void aPinConnectedPlateIsCrushedFirst() {
    PinnedJoint plate =
        new PinnedJoint(
            PinnedJoint.Fit.TURNING,
            0.5 * INCH_MM,
            1,
            INCH_MM,
            1.03 * INCH_MM,
            2.25 * INCH_MM,
            4.25 * INCH_MM,
            new SteelGrade("A36", 36_000 * PSI_MPA, 58_000 * PSI_MPA, "ASTM A36"));
    assertEquals(16.2, plate.allowableN() / POUND_N / 1000, 0.05);
  }
}
