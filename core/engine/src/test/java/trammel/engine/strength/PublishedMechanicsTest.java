package trammel.engine.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
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

  private static final double INCH3 = Math.pow(INCH_MM, 3);

  /** Beer and Johnston, sample problem 10.2: A 3.54, r 1.50, c 2.0, 8 ft, free at one end. */
  @Test
  void aColumnFreeAtOneEndIsTakenTwiceAsLong() {
    Column column =
        new Column(
            3.54 * INCH_MM * INCH_MM,
            1.50 * INCH_MM,
            2 * INCH_MM,
            96 * INCH_MM,
            2,
            36_000 * PSI_MPA,
            29e6 * PSI_MPA);

    assertEquals(62.11, column.eulerLoadN() / POUND_N / 1000, 0.005 * 62.11);
    double half = 31.06 * 1000 * POUND_N;
    assertEquals(22.0, column.secantStressMPa(half, 0.75 * INCH_MM) / PSI_MPA / 1000, 0.06);
  }

  /** Gere, Mechanics of Materials, 11.6-1: 2 x 2 in, 36 in, 20 kip 3/4 in beside: 17.26 ksi. */
  @Test
  void aSquareBarPushedBesideItsMiddle() {
    Column bar =
        new Column(
            4 * INCH_MM * INCH_MM,
            Math.sqrt(1.0 / 3) * INCH_MM,
            INCH_MM,
            36 * INCH_MM,
            1,
            36_000 * PSI_MPA,
            29e6 * PSI_MPA);

    double stressMPa = bar.secantStressMPa(20_000 * POUND_N, 0.75 * INCH_MM);

    assertEquals(17.26, stressMPa / PSI_MPA / 1000, 0.01);
  }

  private static FrameRail rail() {
    double wall = 3 * INCH_MM / 16;
    return FrameRail.open(new ChannelSection(6 * INCH_MM, 2.5 * INCH_MM, wall, wall));
  }

  private static PlateRectangle plate(double x, double y, double width, double height) {
    return new PlateRectangle(x * INCH_MM, y * INCH_MM, width * INCH_MM, height * INCH_MM);
  }

  private static double modulusIn3(PlateRectangle... added) {
    List<PlateRectangle> parts = new ArrayList<>(rail().section().parts());
    parts.addAll(List.of(added));
    return new BuiltUpSection(parts).modulusTopMm3() / INCH3;
  }

  /**
   * A channel 6 x 2 1/2 x 3/16, by parallel axes: a plate that closes it adds a third at most, as
   * deep as the rail or between its flanges.
   */
  @Test
  void aBoxingPlateAddsAThirdToBendingAtMost() {
    assertEquals(3.5674, modulusIn3(), 1e-4);
    assertEquals(
        4.6924, rail().boxedWith(3 * INCH_MM / 16).section().modulusTopMm3() / INCH3, 1e-4);
    assertEquals(4.4943, modulusIn3(plate(2.5, 0.1875, 0.1875, 5.625)), 1e-4);
  }

  /**
   * The same rail: an inch of steel on the web gains 12.5 %, three quarters on the flanges 57.3.
   */
  @Test
  void steelOnTheFlangesGainsFourTimesAsMuchAsOnTheWeb() {
    assertEquals(4.012, modulusIn3(plate(-0.25, 1, 0.25, 4)), 1e-3);
    assertEquals(5.610, modulusIn3(plate(0, 6, 2, 0.1875), plate(0, -0.1875, 2, 0.1875)), 1e-3);
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

  /** 0.7 of 4.8e6 root of (D² + d²)/N: SAE joint selection graph; wall 0.083, worked by hand. */
  @ParameterizedTest
  @CsvSource({
    "3.0, 62.94, 58.88, 52.66, 48.07",
    "3.5, 68.12, 63.72, 56.99, 52.03",
    "4.0, 72.93, 68.22, 61.02, 55.70",
  })
  void theLongestShaftInOnePiece(
      double outside, double l3500, double l4000, double l5000, double l6000) {
    double[] speeds = {3500, 4000, 5000, 6000};
    double[] lengths = {l3500, l4000, l5000, l6000};
    for (int i = 0; i < speeds.length; i++) {
      DriveShaftTube tube =
          new DriveShaftTube(outside * INCH_MM, (outside - 0.166) * INCH_MM, lengths[i] * INCH_MM);
      assertEquals(speeds[i], tube.usableSpeedRpm(), 0.001 * speeds[i], "" + lengths[i]);
    }
  }

  /**
   * AISC Design Examples D.7: pin 1 in, hole 1.03, plate 1/2 x 4 1/4 A36 with 2 1/4 beyond the
   * hole: 93.4 kip beside the hole, 95.7 to tear out, 32.4 to crush, 76.5 across; 16.2 allowed.
   */
  @Test
  void aPinConnectedPlateIsCrushedFirst() {
    PinnedJoint plate =
        new PinnedJoint(
            0.5 * INCH_MM,
            1,
            INCH_MM,
            1.03 * INCH_MM,
            (2.25 + 1.03 / 2) * INCH_MM,
            4.25 * INCH_MM,
            new SteelGrade("A36", 36_000 * PSI_MPA, 58_000 * PSI_MPA, "ASTM A36"));
    double kip = 1000 * POUND_N;

    assertEquals(93.4, plate.nominalN(PinnedJoint.Mode.NET_SECTION) / kip, 0.05);
    assertEquals(95.7, plate.nominalN(PinnedJoint.Mode.TEAR_OUT) / kip, 0.05);
    assertEquals(32.4, plate.nominalN(PinnedJoint.Mode.BEARING) / kip, 0.05);
    assertEquals(76.5, plate.nominalN(PinnedJoint.Mode.GROSS_SECTION) / kip, 0.05);
    assertEquals(16.2, plate.allowableN() / kip, 0.05);
  }
}
