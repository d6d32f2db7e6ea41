package trammel.engine.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.motion.Layouts.INCH;
import static trammel.engine.motion.Layouts.inch;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/** Ride figures against worked cases; inches in the tables. */
class RideFiguresTest {

  private static Linkage sideView(
      double lowerFrameX,
      double lowerFrameZ,
      double lowerAxleX,
      double lowerAxleZ,
      double upperFrameX,
      double upperFrameZ,
      double upperAxleX,
      double upperAxleZ) {
    return new Layouts()
        .pair("lower", inch(lowerFrameX, 18, lowerFrameZ), inch(lowerAxleX, 18, lowerAxleZ))
        .pair("upper", inch(upperFrameX, 16, upperFrameZ), inch(upperAxleX, 16, upperAxleZ))
        .bar(inch(-5, 17, 14), inch(-5, -17, 14))
        .build(60 * INCH, 13 * INCH);
  }

  /**
   * Instant centre where the link lines meet; anti-squat 100 (z/x)/(h/L) by Barton and Fieldhouse
   * 2018, eq. 3.63; anti-lift 100 (1 - share) (z/x)(L/h) by Gillespie 1992 ch. 7, from memory;
   * pinion change of 57.296/x degrees per inch. Values calculated from these formulas by hand.
   */
  @ParameterizedTest
  @CsvSource({
    "24, 11, 1, 9, 20, 18.5, -1, 20, 24, 112, 0.65, 69.549, 14.961, 100.385, 35.135, 0.8238",
    "30, 12.5, 2, 12.5, 22, 17, 0, 21, 26, 120, 0.60, 46.750, 12.500, 123.406, 49.362, 1.2256"
  })
  void sideViewOfTwoPairsOfLinks(
      double lfx,
      double lfz,
      double lax,
      double laz,
      double ufx,
      double ufz,
      double uax,
      double uaz,
      double heightInch,
      double wheelbaseInch,
      double share,
      double centreX,
      double centreZ,
      double antiSquat,
      double antiLift,
      double pinionDegPerInch) {
    PoseSolver solver = new PoseSolver(sideView(lfx, lfz, lax, laz, ufx, ufz, uax, uaz));
    RideFigures figures = RideFigures.of(solver);
    Point3 byLinks = figures.instantCentreFromLinks().orElseThrow();
    Point3 byMotion = figures.instantCentreFromMotion().orElseThrow();
    assertEquals(centreX, byLinks.xMm() / INCH, 1e-3);
    assertEquals(centreZ, byLinks.zMm() / INCH, 1e-3);
    assertEquals(0, byLinks.distanceMm(byMotion), 1e-6);
    assertEquals(centreX, figures.swingArmLengthMm().orElseThrow() / INCH, 1e-3);
    assertEquals(
        antiSquat, figures.antiSquatPercent(heightInch * INCH, wheelbaseInch * INCH), 1e-3);
    assertEquals(
        antiLift, figures.antiLiftPercent(share, heightInch * INCH, wheelbaseInch * INCH), 1e-3);
    // With the centre ahead, bump turns the nose down.
    assertEquals(
        -pinionDegPerInch, Math.toDegrees(figures.rates().pitchNoseUpRadPerMmHeave()) * INCH, 1e-4);
  }

  /** Parallel links: the centre is at infinity in the direction of the links; same sources. */
  @Test
  void parallelLinksKeepTheirSlope() {
    RideFigures figures = RideFigures.of(new PoseSolver(sideView(26, 12, 0, 9.5, 26, 20, 0, 17.5)));
    assertTrue(figures.instantCentreFromLinks().isEmpty());
    assertTrue(figures.instantCentreAtInfinity());
    assertTrue(figures.swingArmLengthMm().isEmpty());
    assertEquals(0.096154, figures.slopeFromMotion(), 1e-6);
    assertEquals(0.096154, figures.slopeFromLinks().orElseThrow(), 1e-6);
    assertEquals(47.203, figures.antiSquatPercent(22 * INCH, 108 * INCH), 1e-3);
    assertEquals(14.161, figures.antiLiftPercent(0.70, 22 * INCH, 108 * INCH), 1e-3);
    assertEquals(0, figures.rates().pitchNoseUpRadPerMmHeave(), 1e-15);
  }

  /**
   * Roll axis of a triangulated four-link through the points where the upper and the lower link
   * lines cross the centre plane, roll steer from its slope: Gillespie 1992 ch. 7, from memory.
   * First case: uppers cross at (-9.091, 21.909), lowers at (130, 17.0). Second: uppers at 18 *
   * 18/10 = 32.4 and 20 - 1.5 * 32.4/18 = 17.3, lowers parallel, so 17.3 - 32.4 * 0.071429.
   */
  @ParameterizedTest
  @CsvSource({
    "20, 16, 19, 0, 5, 21, 26, 16, 11, 0, 20, 9.5, -0.035294, -2.021, 21.588, UNDERSTEER",
    "18, 8, 18.5, 0, 18, 20, 28, 14, 12, 0, 14, 10, 0.071429, 4.086, 14.986, OVERSTEER"
  })
  void rollAxisOfATriangulatedFourLink(
      double ufx,
      double ufy,
      double ufz,
      double uax,
      double uay,
      double uaz,
      double lfx,
      double lfy,
      double lfz,
      double lax,
      double lay,
      double laz,
      double slope,
      double slopeDeg,
      double rollCentreInch,
      RollSteerSense sense) {
    Linkage linkage =
        new Layouts()
            .pair("upper", inch(ufx, ufy, ufz), inch(uax, uay, uaz))
            .pair("lower", inch(lfx, lfy, lfz), inch(lax, lay, laz))
            .build(60 * INCH, 13 * INCH);
    RideFigures figures = RideFigures.of(new PoseSolver(linkage));
    assertEquals(slope, figures.rollAxisSlope(), 1e-6);
    assertEquals(slope, figures.rollSteerRadPerRad(), 1e-6);
    assertEquals(-slope, figures.rollUndersteerRadPerRad(), 1e-6);
    assertEquals(slopeDeg, Math.toDegrees(figures.rollAxisAngleRad()), 1e-3);
    assertEquals(rollCentreInch, figures.rollCentreHeightMm() / INCH, 1e-3);
    assertEquals(sense, figures.rollSteerSense());
  }

  /**
   * With level parallel links the axle rolls about the point where the lateral bar crosses the
   * centre plane: Gillespie 1992 ch. 7, from memory.
   */
  @ParameterizedTest
  @CsvSource({"-18, 12, 18, 15, 13.500", "-20, 11, 16, 14.5, 12.944", "-17, 13, 19, 13, 13.000"})
  void rollCentreOnTheLateralBar(
      double axleY, double axleZ, double frameY, double frameZ, double rollCentreInch) {
    Linkage linkage =
        new Layouts()
            .pair("lower", inch(22, 18, 10), inch(0, 18, 10))
            .pair("upper", inch(22, 18, 17), inch(0, 18, 17))
            .bar(inch(-5, frameY, frameZ), inch(-5, axleY, axleZ))
            .build(60 * INCH, 13 * INCH);
    RideFigures figures = RideFigures.of(new PoseSolver(linkage));
    assertEquals(rollCentreInch, figures.rollCentreHeightMm() / INCH, 1e-3);
    assertEquals(RollSteerSense.NEUTRAL, figures.rollSteerSense());
  }

  /**
   * Upright springs on the axle line: motion ratio 1 in heave, half the rate of both a wheel; in
   * roll the stiffness is half k s squared (Gillespie 1992 ch. 6, from memory): 200 lb/in on a base
   * of 40 in gives 2792.5 in lb/deg.
   */
  @Test
  void uprightSpringsOnTheAxleLine() {
    double poundsPerInch = 0.45359237 * 9.80665 / INCH;
    PoseSolver solver =
        new PoseSolver(
            new Layouts()
                .pair("lower", inch(22, 18, 10), inch(0, 18, 10))
                .pair("upper", inch(22, 18, 17), inch(0, 18, 17))
                .bar(inch(0, 17, 13), inch(0, -17, 13))
                .build(60 * INCH, 13 * INCH));
    List<SpringPoint> springs =
        List.of(
            new SpringPoint("left", inch(0, 20, 24), inch(0, 20, 13), 200 * poundsPerInch),
            new SpringPoint("right", inch(0, -20, 24), inch(0, -20, 13), 200 * poundsPerInch));
    WheelRates rates = WheelRates.of(solver, AxlePose.atRide(13 * INCH), springs);
    assertEquals(200 * poundsPerInch, rates.heaveNPerMm(), 1e-9);
    double inchPoundNmm = poundsPerInch * INCH * INCH;
    assertEquals(2792.5, rates.rollNmPerDegree() * 1000 / inchPoundNmm, 0.05);
    assertEquals(1, rates.springs().get(0).motionRatioHeave(), 1e-12);
    assertEquals(20.0 / 30, rates.springs().get(1).motionRatioRoll(), 1e-12);
  }

  /** Natural frequency of 350 kg on 28.1 N/mm is 1.4261 Hz (Gillespie 1992 ch. 5, from memory). */
  @Test
  void rideFrequencyOfACorner() {
    WheelRates rates = new WheelRates(List.of(), 28.1, 0);
    assertEquals(1.4261, rates.rideFrequencyHz(350), 1e-4);
    assertThrows(IllegalArgumentException.class, () -> rates.rideFrequencyHz(0));
  }

  @Test
  void impossibleVehicleFiguresAreRefused() {
    RideFigures figures = RideFigures.of(new PoseSolver(Layouts.triangulated()));
    assertThrows(IllegalArgumentException.class, () -> figures.antiSquatPercent(0, 2800));
    assertThrows(IllegalArgumentException.class, () -> figures.antiSquatPercent(500, -1));
    assertThrows(IllegalArgumentException.class, () -> figures.antiLiftPercent(70, 500, 2800));
  }

  /** Rates at any pose are the slopes of the curve through the poses on both sides. */
  @ParameterizedTest
  @CsvSource({"0, 0", "80, 0", "-60, 0.05", "40, -0.09"})
  void ratesAreTheSlopesOfTheMotion(double heaveMm, double rollRad) {
    for (Linkage linkage :
        new Linkage[] {Layouts.triangulated(), Layouts.fourBarsAndLateralBar()}) {
      PoseSolver solver = new PoseSolver(linkage);
      MotionRates rates = solver.ratesAt(solver.solve(heaveMm, rollRad).required());
      AxlePose up = solver.solve(heaveMm + 0.01, rollRad).required();
      AxlePose down = solver.solve(heaveMm - 0.01, rollRad).required();
      assertEquals((up.forwardMm() - down.forwardMm()) / 0.02, rates.forwardPerMmHeave(), 1e-6);
      assertEquals((up.lateralMm() - down.lateralMm()) / 0.02, rates.lateralPerMmHeave(), 1e-6);
      assertEquals((up.yawRad() - down.yawRad()) / 0.02, rates.yawRadPerMmHeave(), 1e-8);
      AxlePose left = solver.solve(heaveMm, rollRad + 1e-5).required();
      AxlePose right = solver.solve(heaveMm, rollRad - 1e-5).required();
      assertEquals(
          (left.lateralMm() - right.lateralMm()) / 2e-5, rates.lateralMmPerRadRoll(), 2e-3);
      assertEquals((left.yawRad() - right.yawRad()) / 2e-5, rates.yawRadPerRadRoll(), 1e-5);
      assertEquals(
          (left.pitchNoseUpRad() - right.pitchNoseUpRad()) / 2e-5,
          rates.pitchNoseUpRadPerRadRoll(),
          1e-5);
    }
  }

  @Test
  void aShaftInLineWithBothAxesHasNoJointAngle() {
    Vector3 along = new Vector3(Math.cos(0.05), 0, Math.sin(0.05));
    Point3 pinion = new Point3(250, 0, 300);
    Shaft shaft = new Shaft(pinion, along, pinion.plus(along.scaled(1200)), along);
    ShaftReading ride = shaft.at(AxlePose.atRide(330));
    assertEquals(1200, ride.lengthMm(), 1e-9);
    assertEquals(0, ride.frontJointRad(), 1e-12);
    assertEquals(0, ride.rearJointRad(), 1e-12);
    assertEquals(0.05, ride.pinionElevationRad(), 1e-12);
    // Nose-up pitch of the housing about its own line opens the rear joint by as much.
    Shaft onTheLine =
        new Shaft(new Point3(0, 0, 330), along, new Point3(0, 0, 330).plus(along), along);
    ShaftReading pitched = onTheLine.at(new AxlePose(0, 0, 0, 0, 0, 0.02, 330));
    assertEquals(0.02, pitched.rearJointRad(), 1e-12);
    assertEquals(0, pitched.frontJointRad(), 1e-12);
    assertEquals(0.02, pitched.residualRad(), 1e-12);
    assertEquals(0.07, pitched.pinionElevationRad(), 1e-12);
  }

  @Test
  void aJointMustAllowTheTurnOfTheLinkAgainstItsSide() {
    Linkage linkage =
        new Linkage(
            1500,
            330,
            List.of(
                Layouts.link(
                    "a", LinkKind.LONGITUDINAL, new Point3(500, 450, 250), new Point3(0, 450, 250)),
                Layouts.link(
                    "b",
                    LinkKind.LONGITUDINAL,
                    new Point3(500, -450, 250),
                    new Point3(0, -450, 250)),
                Layouts.link(
                    "c", LinkKind.LONGITUDINAL, new Point3(500, 0, 400), new Point3(0, 0, 400)),
                Layouts.link(
                    "d", LinkKind.LATERAL, new Point3(0, 450, 330), new Point3(0, -450, 330))));
    AxlePose pose = new PoseSolver(linkage).solve(80, 0).required();
    LinkReading link = LinkReading.of(linkage, pose).get(0);
    // A parallelogram does not turn the axle: both joints see the swing of the bar itself.
    double swing = link.axleToFrame().angleToRad(new Vector3(1, 0, 0));
    assertEquals(swing, link.turnInFrameRad(), 1e-12);
    assertEquals(swing, link.turnInAxleRad(), 1e-9);
    // A turn of the axle about the link's own cross axis is all taken by the axle joint.
    LinkReading pitched = LinkReading.of(linkage, new AxlePose(0, 0, 0, 0, 0, 0.1, 330)).get(3);
    assertEquals(0, pitched.turnInAxleRad(), 1e-12);
    assertTrue(pitched.sideViewRad().isEmpty());
  }
}
