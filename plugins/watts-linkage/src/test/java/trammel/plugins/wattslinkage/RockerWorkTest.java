package trammel.plugins.wattslinkage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.assembly.Held;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AxleHousing;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.plates.Hole;
import trammel.trade.plates.RoundHole;

/**
 * The rocker and its carrier worked out by hand: links' joints 2 in wide with 1/2 in bolts in 1/4
 * in plates, arms of 3 in, carrier tube 1 1/2 x .120 in, axle tube 3 in, housing 6 1/2 in to either
 * side of the centre, pivot 8 7/8 in behind and 1 1/4 in below the axle's centre.
 */
class RockerWorkTest {
  private static final double INCH_MM = Trial.INCH_MM;
  private static final double INCH2_MM2 = INCH_MM * INCH_MM;

  private static WorkPlan plan() {
    return Trial.mounted("inboard").plan();
  }

  /**
   * Holes 1/2 + 1/64 = .515625 in with 1.5 of that about them, .773438 in; 1 1/2 in about the
   * pivot. The sides lean by asin((1.5 - .773438) / 3) = .244620. A quarter of the plate: sector of
   * the boss, .5 x 1.5^2 x .244620; trapezoid (1.5 + .773438) / 2 x 3 cos .244620; sector of the
   * end, .5 x .773438^2 x (pi / 2 - .244620). Four of them 15.921978 in2, less two holes of .208815
   * and a bore of 2 1/64 in, 3.190871.
   */
  @Test
  void rockerPlateIsRoundAboutItsThreeHoles() {
    PlateNeed rocker = Trial.plate(plan(), "rocker plate");
    assertEquals(2, rocker.quantity());
    assertEquals(3, Trial.widthMm(rocker) / INCH_MM, 1e-6);
    assertEquals(2 * 3.7734375, Trial.heightMm(rocker) / INCH_MM, 1e-6);
    assertEquals(12.313480, rocker.plate().outline().areaMm2() / INCH2_MM2, 1e-5);
    List<Double> at = new ArrayList<>();
    for (Hole hole : rocker.plate().outline().holes()) {
      if (hole instanceof RoundHole round) {
        assertEquals(0.515625, round.diameterMm() / INCH_MM, 1e-9);
        assertEquals(0, round.centre().xMm(), 1e-9);
        at.add(round.centre().yMm() / INCH_MM);
      }
    }
    assertEquals(List.of(3.0, -3.0), at.stream().map(y -> Math.rint(1e9 * y) / 1e9).toList());
    for (Held held : rocker.places()) {
      assertEquals("rocker", held.carrier());
    }
  }

  /**
   * Spacers: (1 1/2 in of boss + 3/4 in of tube + 1/4 in of air) / cos 25 deg = 2.758444 in out.
   * Round about each 3/4 + 3/8 = 1 1/8 in: 2 x 2.758444 x 2.25 + pi 1.125^2, less a hole of 5/8 +
   * 1/64 in.
   */
  @Test
  void strapIsAStadiumAboutTheSpacers() {
    PlateNeed strap = Trial.plate(plan(), "rocker strap");
    assertEquals(2 * (2.758444 + 1.125), Trial.widthMm(strap) / INCH_MM, 1e-5);
    assertEquals(2.25, Trial.heightMm(strap) / INCH_MM, 1e-6);
    double hole = Math.PI / 4 * 0.640625 * 0.640625;
    assertEquals(
        12.412998 + Math.PI * 1.265625 - hole, strap.plate().outline().areaMm2() / INCH2_MM2, 1e-5);
  }

  /**
   * A belt of 1 1/8 in about a trapezoid: spacers 2.758444 in out at the pivot, arms 6 1/2 + 1 1/8
   * = 7 5/8 in out, 1 1/4 in higher. Its area 10.383444 x 1.25 = 12.979305; its round 20.766888 + 2
   * hypot(4.866556, 1.25) = 30.815946, times 1.125; pi 1.125^2; less the pivot's hole.
   */
  @Test
  void carrierPlateReachesFromTheSpacersToTheArms() {
    PlateNeed plate = Trial.plate(plan(), "rocker carrier plate");
    assertEquals(2 * 8.75, Trial.widthMm(plate) / INCH_MM, 1e-6);
    assertEquals(1.25 + 2.25, Trial.heightMm(plate) / INCH_MM, 1e-6);
    double hole = Math.PI / 4 * 0.640625 * 0.640625;
    assertEquals(
        12.979305 + 30.815946 * 1.125 + Math.PI * 1.265625 - hole,
        plate.plate().outline().areaMm2() / INCH2_MM2,
        1e-4);
  }

  /**
   * Grip of the pivot: stack 2 1/2 in, on either side a 1/2 in bolt's washer and head, .1 + .65 x
   * .5, and 1/8 in, .55 in: sleeve 3.6 in; plate and strap 1/4 in each: 4.1 in.
   */
  @Test
  void pivotBoltClampsSleevePlateAndStrap() {
    BoltNeed pivot = bolt("rocker pivot");
    assertEquals(4.1, pivot.gripMm() / INCH_MM, 1e-9);
    assertEquals("bolt-0.625-18", pivot.boltKey());
    assertEquals(
        List.of("rocker carrier plate", "rocker pivot bush", "rocker strap"),
        pivot.places().get(0).through());
    // 4.1 + 2 washers of .12 + nut .77 + two threads of 1/18: 5.221 in, so 5 1/4 in.
    assertEquals(
        5.25,
        Trial.CATALOG.bolt("bolt-0.625-18").choose(pivot.gripMm()).lengthMm() / INCH_MM,
        1e-9);
    assertEquals(3.6, Trial.tube(plan(), "rocker spacer").cutLengthMm() / INCH_MM, 1e-9);
  }

  private static BoltNeed bolt(String where) {
    return plan().bolts().stream()
        .filter(need -> need.where().equals(where))
        .findFirst()
        .orElseThrow();
  }

  /** 2 in joint and two plates of 1/4 in, at both ends of both links as at the four bars. */
  @Test
  void everyOtherBoltClampsAJointBetweenTwoPlates() {
    List<BoltNeed> bolts = plan().bolts();
    assertEquals(13, bolts.size());
    for (BoltNeed bolt : bolts) {
      if (!bolt.where().equals("rocker pivot")) {
        assertEquals(2.5, bolt.gripMm() / INCH_MM, 1e-9, bolt.where());
      }
    }
    BoltNeed onRocker = bolt("watt-link-upper axle end");
    assertEquals("rocker", onRocker.places().get(0).held().carrier());
    assertEquals("bolt-0.500-20", onRocker.boltKey());
  }

  /**
   * From the axle's centre to the plate's front: 8.875 - 4.1 / 2 = 6.825 in; to the tips of the
   * cope sqrt(1.5^2 - .75^2) = 1.299038 in.
   */
  @Test
  void armsAreCopedToTheAxleTubeAndEndAtThePlate() {
    var arm = Trial.tube(plan(), "rocker carrier arm");
    assertEquals(2, arm.quantity());
    assertEquals(5.525962, arm.cutLengthMm() / INCH_MM, 1e-6);
    for (Held held : arm.places()) {
      assertEquals(7.625, Math.abs(held.place().origin().yMm()) / INCH_MM, 1e-9);
      assertEquals(-1.299038, held.place().origin().xMm() / INCH_MM, 1e-6);
    }
  }

  /**
   * Round the arms' and spacers' ends pi x 1 1/2 in, round the shell pi x 2 in, each once; round a
   * cope of 1 1/2 in tube on 3 in the line integral of sqrt(r2 + z'2), z = sqrt(R2 - r2 sin2), by
   * Simpson's rule: 4.795867 in.
   */
  @ParameterizedTest
  @CsvSource({
    "rocker carrier arm to plate, 2, 4.712389",
    "rocker spacer to plate and strap, 4, 4.712389",
    "rocker plates to pivot bush, 2, 6.283185",
    "rocker carrier arm to axle tube, 2, 4.795867",
  })
  void seamsRunRoundTubesAndShell(String name, int runs, double inches) {
    var weld = Trial.weld(plan(), name);
    assertEquals(runs, weld.count());
    assertEquals(inches, weld.lengthMm() / INCH_MM, 1e-4);
  }

  /** Holes: two at each of 10 bracketed bar ends, four in the rocker, one in plate and strap. */
  @ParameterizedTest
  @CsvSource({
    "fit-rocker, 1",
    "fit-lateral-bar, 0",
    "make-bar, 6",
    "fit-axle-bracket, 4",
    "fit-frame-bracket, 6",
    "saw-tube, 20",
    "drill-plate, 26"
  })
  void operationsAreCountedFromTheLayout(String operation, double quantity) {
    assertEquals(quantity, Trial.quantity(plan(), operation), 1e-9);
  }

  @Test
  void everyPartOfTheCarrierMovesWithTheAxle() {
    WorkPlan plan = plan();
    for (String name : List.of("rocker carrier plate", "rocker strap")) {
      assertEquals("axle", Trial.plate(plan, name).places().get(0).carrier());
    }
    for (String name : List.of("rocker carrier arm", "rocker spacer")) {
      Trial.tube(plan, name).places().forEach(held -> assertEquals("axle", held.carrier()));
    }
    assertEquals(1, plan.parts().stream().filter(p -> p.itemKey().equals("pivot-bush")).count());
  }

  // What is refused

  private static String refusal(Trial trial) {
    return assertThrows(UnworkableLayoutException.class, trial::plan)
        .reason()
        .in(new QuantityPrinter(UnitSystem.US));
  }

  /** Barrel 1 in, shell 1 in, air 1/4 in: 2 1/4 in from pivot to joint. */
  @Test
  void refusesARockerWhoseJointsTouchThePivot() {
    String message = refusal(Trial.mounted("inboard").with("rocker_arm", 2));
    assertTrue(message.contains("need 2 1/4 in"), message);
  }

  /** Half the tube 1 1/2 in + 2.82625 in of rocker, plate, bolt's head and air: 4.32625 in. */
  @Test
  void refusesARockerInTheAxleTube() {
    String message = refusal(Trial.mounted("inboard").with("rocker_behind", 4));
    assertTrue(message.contains("need 4 5/16 in"), message);
    assertTrue(message.contains("rocker_behind"), message);
  }

  /** Pivot 6 1/2 in up, arm 3 in, barrel 1 in: 2 1/2 in. */
  @Test
  void refusesARockerNearTheGround() {
    String message = refusal(Trial.mounted("inboard").with("rocker_rise", -8));
    assertTrue(message.contains("2 1/2 in above the ground"), message);
  }

  /**
   * The widest joint, 3 in, in plates of 3/8 in: stack 3.75 in, .65125 in for the bolts' heads on
   * either side, two plates: grip 5.8025 in; with washers, nut and threads over 6 3/4 in.
   */
  @Test
  void refusesAPivotForWhichNoBoltIsLongEnough() {
    String message =
        refusal(
            Trial.mounted("outboard")
                .withChoice("axle_end", "bushing-3.00")
                .withChoice("bracket_plate", "plate-0.375")
                .with("rocker_arm", 4));
    assertTrue(message.contains("no stocked length"), message);
  }

  @Test
  void refusesALinkOutOfTheRockersPlane() {
    Trial trial = Trial.mounted("inboard");
    Layout layout = trial.layout();
    List<Bar> moved =
        layout.bars().stream()
            .map(
                bar ->
                    bar.name().equals(Rocker.LOWER_LINK)
                        ? bar.withPoint(End.AXLE, bar.axle().plus(new Vector3(-INCH_MM, 0, 0)))
                        : bar)
            .toList();
    String message =
        assertThrows(UnworkableLayoutException.class, () -> trial.plan(layout.withBars(moved)))
            .reason()
            .in(new QuantityPrinter(UnitSystem.US));
    assertTrue(message.contains("1 in behind the rocker's pivot"), message);
  }

  /** A housing that is measured decides how far behind the rocker stands: 5 + 2.82625, to 1/8. */
  @Test
  void measuredHousingSetsTheRocker() {
    Trial trial = Trial.mounted("inboard");
    AxleHousing axle = trial.chassis().axle();
    AxleHousing measured =
        new AxleHousing(
            axle.tubeDiameterMm(),
            axle.tubeWallMm(),
            axle.flangeToFlangeMm(),
            axle.innerLimitMm(),
            axle.outerLimitMm(),
            axle.trackMm(),
            OptionalDouble.of(5 * INCH_MM));
    Chassis chassis = trial.chassis();
    Trial on =
        trial.on(
            new Chassis(
                chassis.wheelbaseLeftMm(),
                chassis.wheelbaseRightMm(),
                chassis.masses(),
                chassis.traction(),
                chassis.tyre(),
                measured,
                chassis.rails(),
                chassis.driveline(),
                chassis.obstacles(),
                chassis.travel()));
    Point3 pivot = Rocker.of(on.layout()).orElseThrow().pivot();
    assertEquals(-7.875, pivot.xMm() / INCH_MM, 1e-9);
  }

  // Strength

  /**
   * 10 kN square to an arm of 3 in, two plates of 6.35 mm, 76.2 mm wide with a bore of 51.197 mm:
   * modulus 12.7 (76.2^3 - 51.197^3) / (6 x 76.2) = 8562.7 mm3, 762,000 Nmm, 88.99 MPa; A36 yields
   * at 36 ksi, 248.2 MPa.
   */
  @Test
  void rockerBendsAcrossItsBore() {
    Trial trial = Trial.mounted("inboard");
    Bar link = trial.bar(Rocker.UPPER_LINK);
    Vector3 arm = Rocker.of(trial.layout()).orElseThrow().arm(link);
    assertEquals(248.2 / 88.99, RockerStrength.factor(arm, link, 10_000), 0.003);
    assertEquals(248.2 / 88.99, RockerStrength.factor(arm, link, -10_000), 0.003);
  }

  /** Stress area of 5/8-18: .256 in2 (ASME B1.1); grade 8: 150 ksi; 2 x .6 x 150,000 x .256 lbf. */
  @Test
  void pivotBoltShearsInTwoPlanes() {
    assertEquals(46_080 * 4.4482216, PivotBoltStrength.shearN(), 0.005 * 205_000);
  }
}
