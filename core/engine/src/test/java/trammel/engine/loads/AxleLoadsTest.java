package trammel.engine.loads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.engine.loads.AxleLoads.DriveLimit;
import trammel.engine.quantity.Gravity;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/**
 * An invented car, worked by hand: weights of 8000 N in front and 8000 N behind, centre of gravity
 * 600 mm high, wheelbase 2400 mm (h/L one quarter), track 1500 mm, tyre radius 320 mm, axle ratio
 * 4.
 */
class AxleLoadsTest {
  private static final double G = Gravity.M_PER_S2;

  private static LoadedVehicle car(double engineTorqueNmm, double unsprungN) {
    return new LoadedVehicle(
        new WeightAndSize(8000 / G, 8000 / G, unsprungN / G, 600, 2400, 1500),
        new DriveTrain(engineTorqueNmm, 2.5, 1.0, 4.0),
        320,
        0.4,
        0.4);
  }

  private static final LoadedVehicle STRONG = car(1e6, 0);
  private static final LoadedVehicle WEAK = car(160_000, 0);

  private static PointForce left(AppliedLoads loads) {
    return loads.forces().get(0);
  }

  private static PointForce right(AppliedLoads loads) {
    return loads.forces().get(1);
  }

  private static LoadCase launch(double friction) {
    return new LoadCase("launch", 1, 0, 0, 1, 1, friction);
  }

  @Test
  void standingStillEachTyreCarriesHalf() {
    AppliedLoads loads = new AxleLoads(STRONG).applied(new LoadCase("standing", 0, 0, 0, 1, 1, 1));
    assertEquals(4000, left(loads).forceZN(), 1e-9, "hand-worked");
    assertEquals(4000, right(loads).forceZN(), 1e-9, "hand-worked");
    assertEquals(0, loads.totalForceXN(), 1e-9, "hand-worked");
    assertEquals(0, loads.momentXNmm(), 1e-9, "hand-worked");
    assertEquals(750, left(loads).yMm(), "left is positive");
    assertEquals(-750, right(loads).yMm(), "right is negative");
  }

  @Test
  void aLaunchEndedByGripPressesItsOwnTyresDown() {
    // μ 0.8: F = 0.8·8000/(1 − 0.8/4) = 8000; rear load 8000 + 8000/4 = 10,000; 8000/10,000 = 0.8.
    AxleLoads axle = new AxleLoads(STRONG);
    LoadCase launch = launch(0.8);
    String source = "Gillespie ch. 1 and 2, from memory, hand-worked";
    assertEquals(DriveLimit.GRIP, axle.driveLimit(launch), source);
    assertEquals(8000, axle.driveForceN(launch), 1e-6, source);
    assertEquals(10_000, axle.rearLoadN(launch), 1e-6, source);
    // Shaft 8000·320/4 = 640,000 Nmm; the front holds 0.6 of it over the track: 256 N.
    assertEquals(640_000, axle.shaftTorqueNmm(launch), 1e-6, source);
    AppliedLoads loads = axle.applied(launch);
    assertEquals(-640_000, loads.momentXNmm(), 1e-6, "turns against the usual engine");
    assertEquals(5256, left(loads).forceZN(), 1e-6, source);
    assertEquals(4744, right(loads).forceZN(), 1e-6, source);
    assertEquals(0.8 * 5256, left(loads).forceXN(), 1e-6, "each tyre at its grip");
    assertEquals(0.8 * 4744, right(loads).forceXN(), 1e-6, "each tyre at its grip");
  }

  @Test
  void aLaunchEndedByTorque() {
    // 160 Nm · 2.5 · 4/0.320 m = 5000 N; rear load 8000 + 1250.
    AxleLoads axle = new AxleLoads(WEAK);
    assertEquals(DriveLimit.TORQUE, axle.driveLimit(launch(0.8)), "hand-worked");
    assertEquals(5000, axle.driveForceN(launch(0.8)), 1e-6, "hand-worked");
    assertEquals(9250, axle.rearLoadN(launch(0.8)), 1e-6, "hand-worked");
    AppliedLoads loads = axle.applied(launch(0.8));
    // Wind-up of the housing about the axle: 5000 N at 320 mm below it, nose up.
    assertEquals(-1.6e6, loads.momentYAboutNmm(0, 320), 1e-3, "hand-worked");
  }

  @Test
  void withEnoughGripTheFrontWheelsLeaveTheGround() {
    AxleLoads axle = new AxleLoads(car(1e9, 0));
    assertEquals(16_000, axle.rearLoadN(launch(4)), 1e-6, "all weight at the rear");
    assertEquals(64_000, axle.driveForceN(launch(4)), 1e-6, "friction of the whole weight");
  }

  @Test
  void brakingTakesLoadOffTheRear() {
    // 0.5 g: brakes 8000, rear 0.4 of it = 3200; rear load 8000 − 8000/4 = 6000.
    AppliedLoads loads = new AxleLoads(STRONG).applied(new LoadCase("braking", 0, 0.5, 0, 1, 1, 1));
    String source = "Gillespie ch. 1, from memory, hand-worked";
    assertEquals(6000, loads.totalForceZN(), 1e-6, source);
    assertEquals(-3200, loads.totalForceXN(), 1e-6, source);
    assertEquals(-1600, left(loads).forceXN(), 1e-6, source);
    assertEquals(0, loads.momentXNmm(), 1e-9, "no torque in the shaft");
    assertEquals(3200 * 320, loads.momentYAboutNmm(0, 320), 1e-3, "winds the nose down");
  }

  @Test
  void lockedRearWheelsBrakeNoMoreThanTheyGrip() {
    // 1 g asks 6400 of a rear load of 4000 at μ 1.
    AppliedLoads loads = new AxleLoads(STRONG).applied(new LoadCase("braking", 0, 1, 0, 1, 1, 1));
    assertEquals(-4000, loads.totalForceXN(), 1e-6, "hand-worked");
  }

  @Test
  void aLeftHandBendLoadsTheRightTyre() {
    // 0.5 g: side force 4000 to the left; 0.4 · 16,000 · 0.5 · 600/1500 = 1280 moved.
    AppliedLoads loads = new AxleLoads(STRONG).applied(new LoadCase("bend", 0, 0, 0.5, 1, 1, 1));
    String source = "Gillespie ch. 6, from memory, hand-worked";
    assertEquals(4000, loads.totalForceYN(), 1e-6, source);
    assertEquals(2720, left(loads).forceZN(), 1e-6, source);
    assertEquals(5280, right(loads).forceZN(), 1e-6, source);
    assertEquals(0.5 * 2720, left(loads).forceYN(), 1e-6, "shared as the loads are");
  }

  @Test
  void aBumpMultipliesTheLoadOfItsWheelAlone() {
    AppliedLoads loads = new AxleLoads(STRONG).applied(new LoadCase("bump", 0, 0, 0, 3, 1, 1));
    assertEquals(12_000, left(loads).forceZN(), 1e-6, "hand-worked");
    assertEquals(4000, right(loads).forceZN(), 1e-6, "hand-worked");
    assertEquals(6e6, loads.momentXAboutNmm(0, 0), 1e-3, "hand-worked: 8000 N at 750 mm");
  }

  @Test
  void theAxlesOwnWeightAndInertiaActAtItsMiddle() {
    // 1000 N of axle, 0.5 g in a bend to the left: 500 N to the right, 1000 N down.
    AppliedLoads loads =
        new AxleLoads(car(1e6, 1000)).applied(new LoadCase("bend", 0, 0, 0.5, 1, 1, 1));
    PointForce own = loads.forces().get(2);
    assertEquals(-500, own.forceYN(), 1e-9, "hand-worked");
    assertEquals(-1000, own.forceZN(), 1e-9, "hand-worked");
    assertEquals(320, own.zMm(), "at the axle");
    assertEquals(7000, loads.totalForceZN(), 1e-6, "what the springs carry");
  }

  @Test
  void drivingOutOfABendStaysInsideTheFrictionCircle() {
    AxleLoads axle = new AxleLoads(STRONG);
    LoadCase both = new LoadCase("both", 1, 0, 0.5, 1, 1, 0.8);
    double together = Math.hypot(axle.driveForceN(both), 4000);
    assertEquals(0.8 * axle.rearLoadN(both), together, 1e-6, "friction circle");
    assertTrue(axle.driveForceN(both) < axle.driveForceN(launch(0.8)), "less is left to drive");
  }

  @Seeds(1000)
  void noTyrePullsTheRoadOrHoldsMoreThanItsGrip(Draw draw) {
    double drive = draw.between(0, 10);
    double braking = draw.between(0, 3);
    double cornering = draw.between(-3, 3);
    double friction = draw.between(0.01, 5);
    LoadCase driving = new LoadCase("driving", drive, 0, cornering, 1, 1, friction);
    LoadCase slowing = new LoadCase("slowing", 0, braking, cornering, 1, 1, friction);
    for (LoadCase loadCase : new LoadCase[] {driving, slowing}) {
      AppliedLoads loads = new AxleLoads(STRONG).applied(loadCase);
      double rearN = 0;
      for (PointForce tyre : loads.forces().subList(0, 2)) {
        double heldN = friction * tyre.forceZN();
        assertTrue(tyre.forceZN() >= -1e-9);
        assertTrue(Math.hypot(tyre.forceXN(), tyre.forceYN()) <= heldN + 1e-6 * (1 + heldN));
        rearN += tyre.forceZN();
      }
      assertTrue(rearN <= 16_000 + 1e-6);
    }
  }

  @Seeds(1000)
  void theMirrorImageOfABendIsTheOtherBend(Draw draw) {
    double braking = draw.between(0, 1);
    double cornering = draw.between(0, 1.5);
    AxleLoads axle = new AxleLoads(car(1e6, 900));
    AppliedLoads one = axle.applied(new LoadCase("left", 0, braking, cornering, 2, 1, 1));
    AppliedLoads other = axle.applied(new LoadCase("right", 0, braking, -cornering, 1, 2, 1));
    assertEquals(left(one).forceZN(), right(other).forceZN(), 1e-6);
    // A tyre at the end of its grip has a root of rounding left to brake with.
    assertEquals(left(one).forceXN(), right(other).forceXN(), 1e-3);
    assertEquals(one.totalForceYN(), -other.totalForceYN(), 1e-6);
    assertEquals(one.momentXAboutNmm(0, 0), -other.momentXAboutNmm(0, 0), 1e-3);
    assertEquals(one.momentZAboutNmm(0, 0), -other.momentZAboutNmm(0, 0), 1);
  }

  /**
   * 380 lb-ft, converter 2.1 at stall, first 2.84, axle 3.73, 0.9 of it arrives: 2,266.3 lb-ft in
   * the shaft. Tyres of 14 in radius with friction 0.9 under 2,200 lb hold 2,310 lb-ft at the axle
   * (CALC; here with the load that the drive force itself moves to the rear).
   */
  @Test
  void theConverterMultipliesTorqueAndGripCapsIt() {
    double poundFoot = 1355.8179483314;
    DriveTrain train = new DriveTrain(380 * poundFoot, 2.84 * 2.1, 0.9, 3.73);
    assertEquals(2039.7, train.shaftTorqueNmm() / poundFoot, 0.1);
    assertEquals(7608, train.shaftTorqueNmm() * 3.73 / poundFoot, 0.5);
    LoadedVehicle vehicle =
        new LoadedVehicle(
            new WeightAndSize(1000, 2200 * 0.45359237, 170, 1e-9 + 50, 1e4, 1500),
            train,
            14 * 25.4,
            0.35,
            0.5);
    AxleLoads axle = new AxleLoads(vehicle);
    LoadCase launch = launch(0.9);
    assertEquals(AxleLoads.DriveLimit.GRIP, axle.driveLimit(launch));
    double atAxle = axle.driveForceN(launch) * 14 * 25.4 / poundFoot;
    assertEquals(2310, atAxle, 0.006 * 2310);
  }

  @Test
  void bendsAndBumpsComeInBothHands() {
    LoadCase bump = new LoadCase("bump under the left wheel", 0, 0, 0, 3, 1, 1);
    LoadCase straight = new LoadCase("launch", 1, 0, 0, 1, 1, 1);
    List<LoadCase> both = LoadCase.inBothHands(List.of(bump, straight));

    assertEquals(3, both.size());
    assertEquals("bump under the right wheel", both.get(2).name());
    assertEquals(3, both.get(2).rightBumpFactor());
    assertEquals(both, LoadCase.inBothHands(both), "nothing is added twice");
    assertEquals(LoadCase.usual(), LoadCase.inBothHands(LoadCase.usual()), "all are there");
  }

  @Test
  void theUsualCasesHaveNamesOfTheirOwnAndAllWork() {
    AxleLoads axle = new AxleLoads(car(400_000, 900));
    long names = LoadCase.usual().stream().map(LoadCase::name).distinct().count();
    assertEquals(LoadCase.usual().size(), names);
    for (LoadCase loadCase : LoadCase.usual()) {
      AppliedLoads loads = axle.applied(loadCase);
      assertTrue(loads.totalForceZN() > 0, loadCase.name());
    }
  }

  @Test
  void drivingAndBrakingAtOnceIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class, () -> new LoadCase("muddle", 1, 0.5, 0, 1, 1, 1));
    assertTrue(refusal.getMessage().contains("two load cases"), refusal.getMessage());
  }

  @ParameterizedTest
  @CsvSource({"-1, 0, 0, 1", "0, -1, 0, 1", "0, 0, 4, 1", "0, 0, 0, 0", "0, 0, NaN, 1"})
  void anImpossibleCaseIsRefusedByName(double drive, double braking, double bend, double friction) {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> new LoadCase("odd", drive, braking, bend, 1, 1, friction));
    assertTrue(refusal.getMessage().contains("of load case odd"), refusal.getMessage());
  }

  @Test
  void anAxleHeavierThanItsScalesReadingIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> new WeightAndSize(800, 700, 700, 600, 2700, 1500));
    assertTrue(refusal.getMessage().contains("part of the rear"), refusal.getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> new LoadedVehicle(STRONG.size(), STRONG.driveTrain(), 320, 1.2, 0.4));
    assertThrows(IllegalArgumentException.class, () -> new DriveTrain(-1, 2.5, 1, 4));
    assertThrows(IllegalArgumentException.class, () -> new LoadCase(" ", 1, 0, 0, 1, 1, 1));
  }

  /**
   * Kerb strike of 4,200 lb, track 62 in, height 26 in: 7,011 lb with a factor of 1.4, 8,763 with
   * 1.75 and 5,008 with 1.0 (Brown, Robertson and Serpento, Motor Vehicle Structures, p. 24). Here
   * the weight of the rear axle alone, and all of it on the tyre that strikes.
   */
  @ParameterizedTest
  @CsvSource({"1.0, 5008", "1.4, 7011", "1.75, 8763"})
  void aKerbPushesWithWhatTipsTheVehicle(double factor, double pounds) {
    double newtons = 4.4482216152605;
    LoadedVehicle heavy =
        new LoadedVehicle(
            new WeightAndSize(1, 4200 * newtons / G, 0, 26 * 25.4, 3000, 62 * 25.4),
            new DriveTrain(1e6, 2.5, 1.0, 4.0),
            320,
            0.4,
            0.4);
    LoadCase kerb =
        new LoadCase("kerb at the left wheel", 0, 0, 0, 2, 0, 1)
            .withBlows(new WheelBlow(0, factor), WheelBlow.NONE);
    AppliedLoads loads = new AxleLoads(heavy).applied(kerb);
    assertEquals(-pounds, loads.totalForceYN() / newtons, 1);
    assertEquals(4200, left(loads).forceZN() / newtons, 1);
    assertEquals(0, right(loads).forceZN(), 1e-9);
  }

  /** Twice its load at rest, 8,000 N, at the wheel's middle: it rolls, and takes no torque. */
  @Test
  void aPotholePushesTheWheelBackAtItsMiddle() {
    LoadCase pothole =
        new LoadCase("pothole", 0, 0, 0, 1, 3, 1).withBlows(WheelBlow.NONE, new WheelBlow(2, 0));
    AppliedLoads loads = new AxleLoads(STRONG).applied(pothole);
    PointForce blow = loads.forces().get(3);
    assertEquals(-8000, blow.forceXN(), 1e-9);
    assertEquals(320, blow.zMm(), 1e-9);
    assertEquals(-750, blow.yMm(), 1e-9);
    assertEquals(12000, right(loads).forceZN(), 1e-9);
  }

  @Test
  void aBlowHasTwoHands() {
    LoadCase left =
        new LoadCase("kerb at the left wheel", 0, 0, 0, 1, 1, 1)
            .withBlows(new WheelBlow(0, 1.4), WheelBlow.NONE);
    List<LoadCase> both = LoadCase.inBothHands(List.of(left));
    assertEquals(2, both.size());
    assertEquals("kerb at the right wheel", both.get(1).name());
    assertEquals(new WheelBlow(0, 1.4), both.get(1).rightBlow());
    assertEquals(WheelBlow.NONE, both.get(1).leftBlow());
  }
}
