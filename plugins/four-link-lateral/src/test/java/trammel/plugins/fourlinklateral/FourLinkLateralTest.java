package trammel.plugins.fourlinklateral;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Judge;
import trammel.engine.checks.StandardChecks;
import trammel.engine.checks.Verdict;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.AxleHousing;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.engine.motion.AxlePose;
import trammel.planning.extension.kit.LinkageContract;
import trammel.planning.extension.kit.SampleVehicle;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/** Proposed layouts against the rules of the shop and against arithmetic done by hand. */
class FourLinkLateralTest {
  private static final double INCH_MM = Trial.INCH_MM;

  @Test
  void keepsTheContractOfEveryLinkage() {
    new LinkageContract(Trial.LINKAGE, Trial.CATALOG, SampleVehicle.pickup()).verify();
  }

  @ParameterizedTest
  @ValueSource(strings = {"inboard", "outboard"})
  void barsRunParallelToTheCentrePlaneAndTheLateralBarIsLevel(String mounting) {
    for (Bar bar : Trial.mounted(mounting).bars()) {
      if (bar.isAcross()) {
        assertEquals(bar.frame().zMm(), bar.axle().zMm(), 1e-9);
        assertEquals(bar.frame().xMm(), bar.axle().xMm(), 1e-9);
      } else {
        assertEquals(bar.frame().yMm(), bar.axle().yMm(), 1e-9, bar.name());
      }
    }
  }

  @Test
  void inboardBracketsStandOffTheRailByTheGapWhereItIsClosest() {
    // Inner faces: 18.5 - 2.25 = 16.25 in at the axle, 1/26 in closer for every inch forward; at
    // the front of the plane, 24 in ahead: 16.25 - 24/26 = 15.3269 in. Less the gap and half of 2
    // in
    // joint and two 1/4 in plates, 1.25 in. The upper brackets rise beside the rail: 1 1/2 in of
    // gap.
    assertEquals(
        12.576923, Trial.mounted("inboard").bar("lower-left").axle().yMm() / INCH_MM, 1e-5);
  }

  @Test
  void outboardBracketsStandOffTheRailByTheGapWhereItIsClosest() {
    // Outer faces are widest at the axle, 18.5 in. Plus 1 1/2 in gap and 1.25 in: 21.25 in.
    assertEquals(21.25, Trial.mounted("outboard").bar("upper-left").axle().yMm() / INCH_MM, 1e-9);
  }

  /** With the frame 6 in higher no bracket over the tube comes beside the rail: 1/2 in of gap. */
  @Test
  void bracketsThatStayUnderTheRailStandCloserToIt() {
    Trial trial = Trial.mounted("outboard");
    Trial higher = trial.on(SampleVehicle.withRailsMoved(trial.chassis(), 0, 6 * INCH_MM));
    assertEquals(20.25, higher.bar("upper-left").axle().yMm() / INCH_MM, 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"inboard, lower-left, 24, 1", "outboard, upper-right, 18, -1.5"})
  void barsHaveTheLengthAndSlopeAskedFor(String mounting, String name, double length, double deg) {
    Bar bar = Trial.mounted(mounting).bar(name);
    assertEquals(length, bar.lengthMm() / INCH_MM, 1e-9);
    assertEquals(Math.toRadians(deg), bar.axle().to(bar.frame()).sideViewRad(), 1e-9);
  }

  @Test
  void lateralBarHangsFromTheSideAskedFor() {
    Trial left = Trial.mounted("inboard");
    assertTrue(left.bar("lateral-bar").frame().yMm() > 0);
    assertTrue(left.bar("lateral-bar").axle().yMm() < 0);
    // 7 3/8 in behind, as a housing of 6 in, half of a 1 1/2 in tube and 5/8 in of air ask for.
    // Inner
    // face there: 16.25 + 7.375/26 = 16.5337 in; less barrel 1 in and gap 1/2 in.
    assertEquals(15.033654, left.bar("lateral-bar").frame().yMm() / INCH_MM, 1e-5);
  }

  @ParameterizedTest
  @ValueSource(strings = {"inboard", "outboard"})
  void checksOfTheBarsThemselvesAreGood(String mounting) {
    Trial trial = Trial.mounted(mounting);
    Judge judge = new Judge(StandardChecks.all(), Trial.CATALOG.limits(), Trial.CATALOG.analysis());
    List<String> ofTheBars =
        List.of(
            "lower-bar-angle",
            "upper-bar-angle",
            "lower-bar-match",
            "upper-bar-match",
            "lateral-bar-angle",
            "linkage-reach",
            "anti-squat",
            "roll-steer");
    int judged = 0;
    for (CheckResult result : judge.judge(trial.layout(trial.bars()))) {
      if (result instanceof CheckResult.Judged found && ofTheBars.contains(found.id())) {
        assertEquals(Verdict.GOOD, found.verdict(), found.toString());
        judged++;
      }
      if (result instanceof CheckResult.Judged found && found.id().equals("lateral-shift")) {
        assertFalse(found.verdict() == Verdict.STOP, found.toString());
      }
    }
    assertEquals(ofTheBars.size(), judged);
  }

  @ParameterizedTest
  @CsvSource({"inboard, 3", "inboard, -3", "outboard, 3", "outboard, -3"})
  void axleMovesThroughItsTravelWithLittlePinionTurnAndShift(String mounting, double heaveInches) {
    Trial trial = Trial.mounted(mounting);
    List<Bar> bars = trial.bars();
    AxlePose pose =
        trial.layout(bars).motion().solve(heaveInches * INCH_MM, 0).found().orElseThrow();
    assertTrue(Math.abs(pose.pitchNoseUpRad()) < Math.toRadians(2), pose.toString());
    // A level bar of length L whose end rises by h draws its end in by L - sqrt(L2 - h2).
    double lengthMm = trial.bar("lateral-bar").lengthMm();
    double riseMm = heaveInches * INCH_MM;
    double drawnMm = lengthMm - Math.sqrt(lengthMm * lengthMm - riseMm * riseMm);
    assertEquals(drawnMm, Math.abs(pose.lateralMm()), 1.0);
    assertTrue(Math.abs(pose.lateralMm()) < 0.25 * INCH_MM);
  }

  /** Housing radius, half of a 1 1/2 in tube, 1/2 in of air and 1/8 in, no less than 6 in. */
  @ParameterizedTest
  @CsvSource({"4.5, 6", "5, 6.375", "5.5, 6.875", "6.25, 7.625"})
  void theLateralBarPassesBehindTheHousing(double housingIn, double behindIn) {
    Chassis pickup = SampleVehicle.pickup();
    AxleHousing axle = pickup.axle();
    Chassis measured =
        new Chassis(
            pickup.wheelbaseLeftMm(),
            pickup.wheelbaseRightMm(),
            pickup.masses(),
            pickup.traction(),
            pickup.tyre(),
            new AxleHousing(
                axle.tubeDiameterMm(),
                axle.tubeWallMm(),
                axle.flangeToFlangeMm(),
                axle.innerLimitMm(),
                axle.outerLimitMm(),
                axle.trackMm(),
                OptionalDouble.of(housingIn * INCH_MM)),
            pickup.rails(),
            pickup.driveline(),
            pickup.obstacles(),
            pickup.travel());
    Bar lateral = Trial.mounted("inboard").on(measured).bar("lateral-bar");
    assertEquals(-behindIn, lateral.frame().xMm() / INCH_MM, 1e-9);
    assertEquals(-behindIn, lateral.axle().xMm() / INCH_MM, 1e-9);
  }

  /**
   * A rail 6 in deep, 0.15 in thick: between 0.4 in over its underside and 0.4 in under its top a
   * bracket needs 1 1/2 in of flat beside a joint that reaches 1 1/4 in. Wherever the rail is to
   * the axle, the bars go in, and the upper ones leave 4 1/2 in by no more than that makes them.
   */
  @Test
  void upperBarsGoWhereTheRailHasAFlatForThem() {
    for (double higherIn = -3; higherIn <= 4; higherIn += 0.25) {
      Chassis chassis = SampleVehicle.withRailsMoved(SampleVehicle.pickup(), 0, higherIn * INCH_MM);
      Bar upper = Trial.mounted("inboard").on(chassis).bar("upper-left");
      double riseIn = (upper.axle().zMm() - chassis.axleCentre().zMm()) / INCH_MM;
      double jointIn = (upper.frame().zMm() - chassis.rails().undersideMm(18 * INCH_MM)) / INCH_MM;
      boolean hangs = 6 - 0.4 - (jointIn + 1.25) >= 1.5 - 1e-6;
      boolean stands = jointIn - 1.25 - 0.4 >= 1.5 - 1e-6;
      assertTrue(hangs || stands, higherIn + " in higher: joint " + jointIn + " in over the rail");
      // The worst joint stands 3.15 - 2.85 = 0.3 in off a place; steps are 1/8 in.
      assertEquals(4.5, riseIn, 0.4, higherIn + " in higher");
    }
  }

  // No room

  @Test
  void refusesInboardBarsBetweenNarrowRailsAndSaysWhatIsMissing() {
    // Rails 18 in narrower: inner face at 24 in ahead 6.3269 in, less 1/2 in gap: 5.8269 in. That
    // is inside the housing's limit of 6 1/2 in, so nothing is left; the bars need 2 1/2 in.
    Chassis narrow = SampleVehicle.withRailsMoved(SampleVehicle.pickup(), -18 * INCH_MM, 0);
    Trial trial = Trial.mounted("inboard").on(narrow);
    String message =
        assertThrows(UnworkableLayoutException.class, trial::bars)
            .reason()
            .in(new QuantityPrinter(UnitSystem.US));
    assertTrue(message.contains("need 2 1/2 in"), message);
    assertTrue(message.contains("3 3/16 in is missing"), message);
    assertTrue(message.contains("mounting: outboard"), message);
  }

  @Test
  void refusesOutboardBarsThatWouldComeToTheTyre() {
    // Track 64 in, tyre 9 in: the tyre's inside is 27 1/2 in out, less 1 in air: 26 1/2 in. Rails
    // 12 in wider: outer face 24 1/2 in, plus 1/2 in gap: 1 1/2 in of room for 2 1/2 in.
    Chassis wide = SampleVehicle.withRailsMoved(SampleVehicle.pickup(), 12 * INCH_MM, 0);
    Trial trial = Trial.mounted("outboard").on(wide);
    String message =
        assertThrows(UnworkableLayoutException.class, trial::bars)
            .reason()
            .in(new QuantityPrinter(UnitSystem.US));
    assertTrue(message.contains("there is 1 1/2 in"), message);
    assertTrue(message.contains("1 in is missing"), message);
  }

  @Test
  void refusesALowerJointThatTouchesTheAxleTube() {
    // Tube radius 1 1/2 in, barrel radius 1 in, air 1/4 in: 2 3/4 in at least.
    Trial trial = Trial.mounted("inboard").with("lower_drop", 2);
    String message =
        assertThrows(UnworkableLayoutException.class, trial::bars)
            .reason()
            .in(new QuantityPrinter(UnitSystem.US));
    assertTrue(message.contains("needs 2 3/4 in"), message);
    assertTrue(message.contains("lower_drop"), message);
  }

  @Test
  void refusesFrameBracketsThatWouldSitOnEachOther() {
    Trial trial = Trial.mounted("inboard").with("upper_length", 24);
    String message =
        assertThrows(UnworkableLayoutException.class, trial::bars)
            .reason()
            .in(new QuantityPrinter(UnitSystem.US));
    assertTrue(message.contains("apart along the rail"), message);
  }

  @Test
  void refusesAPickUpPointInsideTheRail() {
    Trial trial = Trial.mounted("inboard");
    List<Bar> moved =
        trial.bars().stream()
            .map(
                bar ->
                    bar.name().equals("lower-left")
                        ? bar.withPoint(
                            End.FRAME,
                            new Point3(bar.frame().xMm(), 16 * INCH_MM, bar.frame().zMm()))
                        : bar)
            .toList();
    String message =
        assertThrows(UnworkableLayoutException.class, () -> trial.plan(moved))
            .reason()
            .in(new QuantityPrinter(UnitSystem.US));
    assertTrue(message.contains("into the rail"), message);
  }
}
