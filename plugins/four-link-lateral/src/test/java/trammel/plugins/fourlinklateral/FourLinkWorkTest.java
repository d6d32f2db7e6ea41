package trammel.plugins.fourlinklateral;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.clearance.Box;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Obstacle;
import trammel.engine.layout.ObstacleKind;
import trammel.planning.extension.kit.SampleVehicle;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/**
 * The plan of one chassis worked out by hand: loaded radius 14 1/2 in, axle tube 3 in, channel
 * rails 6 x 2 1/4 x .150 in, 17 1/2 in off the ground, outer faces 18 1/2 in from the centre at the
 * axle and 17 1/2 in 26 in ahead; 2 in joints, 1/4 in brackets, 3/16 in boxing.
 */
class FourLinkWorkTest {
  private static final double INCH_MM = Trial.INCH_MM;
  private static final double SPREAD = Math.tan(Math.toRadians(30));

  @Test
  void tubeIsCutToTheJointsLessBothEnds() {
    // 3/4 in shank of 4 in in a bore two diameters deep: between 4 - 1.5 = 2.5 in screwed home and
    // 4 - 0.75 = 3.25 in at one diameter of engagement, so 2.875 in at the middle, and 1/8 in of
    // shoulder: 3 in. Tube of 1 1/2 in coped onto a 2 in barrel: tips sqrt(1 - 0.75^2) = 0.6614 in
    // from its centre. 24 - 3 - 0.6614 = 20.3386 in.
    WorkPlan plan = Trial.mounted("inboard").plan();
    assertEquals(20.338562, Trial.tube(plan, "lower-left").cutLengthMm() / INCH_MM, 1e-5);
    assertEquals(14.338562, Trial.tube(plan, "upper-right").cutLengthMm() / INCH_MM, 1e-5);
  }

  @Test
  void frameBracketIsAsHighAsTheRailIsAboveTheJoint() {
    // Base: 17.5 + wall 0.15 + 1/4 = 17.9 in up. Joint: 14.5 - 3 + 24 sin 1 deg = 11.918858 in up.
    // Drop 5.981142 in. Hole 9/16 + 1/64 = 0.578125 in, nose 1.5 times that, 0.867188 in.
    // Lap max(2, 5.98 / 2) = 2.990571 in. Height 2.990571 + 5.981142 + 0.867188 = 9.838901 in.
    WorkPlan plan = Trial.mounted("inboard").plan();
    assertEquals(
        9.838901,
        Trial.heightMm(Trial.plate(plan, "lower-left frame bracket side")) / INCH_MM,
        1e-5);
  }

  @Test
  void rowOfHolesKeepsTheLayoutsJointInItsMiddle() {
    // Hole 0.578125 in: twice that is 1.15625 in, so 1 1/4 in from hole to hole. One hole more on
    // either side of the layout's: the plate is 1 1/4 in higher than with one hole.
    WorkPlan plan = Trial.mounted("inboard").withHoles(3).plan();
    PlateNeed side = Trial.plate(plan, "lower-left frame bracket side");
    assertEquals(3, side.plate().outline().holes().size());
    assertEquals(9.838901 + 1.25, Trial.heightMm(side) / INCH_MM, 1e-5);
    // The upper joint hangs by what its own barrel needs, 1 1/4 in, and one pitch on top of it.
    assertEquals(
        2 * (0.867188 + (1.25 + 2 * 1.25) * SPREAD),
        Trial.widthMm(Trial.plate(plan, "upper-left frame bracket side")) / INCH_MM,
        1e-5);
    assertEquals(
        1, Trial.plate(plan, "lateral-bar frame bracket side").plate().outline().holes().size());
  }

  @Test
  void evenRowHasItsSpareHoleTowardsTheRail() {
    WorkPlan plan = Trial.mounted("inboard").withHoles(2).plan();
    assertEquals(
        9.838901,
        Trial.heightMm(Trial.plate(plan, "lower-left frame bracket side")) / INCH_MM,
        1e-5);
  }

  @Test
  void holesTooCloseToEachOtherAreRefusedByName() {
    Trial close = Trial.mounted("inboard").withHoles(2).with("hole_pitch", 1);
    String message =
        assertThrows(UnworkableLayoutException.class, close::plan)
            .reason()
            .in(new QuantityPrinter(UnitSystem.US));
    assertTrue(message.contains("hole_pitch is 1 in"), message);
    assertTrue(message.contains("1 5/32 in"), message);
  }

  @Test
  void boxingPlateRunsFromTheRearmostToTheForemostBracket() {
    // Upper joint 18 cos 1.5 deg = 17.993832 in ahead, base 2 (0.867188 + 1.25 tan 30) = 3.177751.
    // Lower joint 24 cos 1 deg = 23.996345 in ahead, base by rule 8.64 in; what is left beside the
    // upper bracket is 2 (6.002513 - 0.25) - 3.177751 = 8.327275 in, so it is that.
    // From 17.993832 - 1.588876 - 2 = 14.404956 to 23.996345 + 4.163638 + 2 = 30.159983 in. The
    // rail closes by 1 in 26, so along it 15.755027 sqrt(1 + 1/676) = 15.766676 in.
    WorkPlan plan = Trial.mounted("inboard").plan();
    assertEquals(
        15.766676, Trial.widthMm(Trial.plate(plan, "left rail boxing plate")) / INCH_MM, 1e-4);
    // Inside depth 6 - 2 x 0.15, less 1/16 in at each flange.
    assertEquals(
        5.575, Trial.heightMm(Trial.plate(plan, "left rail boxing plate")) / INCH_MM, 1e-6);
    // Both edges of both plates, and the hours by the foot.
    assertEquals(
        15.766676,
        Trial.weld(plan, "left rail boxing plate to flanges").lengthMm() / INCH_MM,
        1e-4);
    assertEquals(2, Trial.weld(plan, "left rail boxing plate to flanges").count());
    assertEquals(2 * 15.766676 / 12, Trial.quantity(plan, "box-rail"), 1e-5);
  }

  @Test
  void boxingSeamsAreLaidInSkips() {
    // 15.767 in in steps of at most 2 1/2 in: 7.
    WorkPlan plan = Trial.mounted("inboard").plan();
    assertEquals(7, Trial.weld(plan, "right rail boxing plate to flanges").starts());
  }

  @Test
  void boltsGripTheJointAndBothPlates() {
    // 2 in joint and two plates of 1/4 in.
    List<BoltNeed> bolts = Trial.mounted("inboard").plan().bolts();
    assertEquals(10, bolts.size());
    for (BoltNeed bolt : bolts) {
      assertEquals(2.5, bolt.gripMm() / INCH_MM, 1e-9, bolt.where());
    }
  }

  @Test
  void axleBracketsSaddleTheTube() {
    // A third of the round of a 3 in tube: pi in.
    WorkPlan plan = Trial.mounted("outboard").plan();
    assertEquals(
        Math.PI, Trial.weld(plan, "upper-left axle bracket to tube").lengthMm() / INCH_MM, 1e-9);
    assertEquals(4, Trial.weld(plan, "upper-left axle bracket to tube").count());
  }

  @ParameterizedTest
  @CsvSource({
    "inboard, fit-frame-bracket, 4",
    "inboard, fit-outrigger, 0",
    "outboard, fit-frame-bracket, 0",
    "outboard, fit-outrigger, 4",
    "outboard, box-rail, 0",
    "inboard, fit-axle-bracket, 4",
    "inboard, fit-lateral-bar, 1",
    "inboard, make-bar, 5",
    "inboard, saw-tube, 10",
    "inboard, drill-plate, 20"
  })
  void operationsAreCountedFromTheLayout(String mounting, String operation, double quantity) {
    assertEquals(quantity, Trial.quantity(Trial.mounted(mounting).plan(), operation), 1e-9);
  }

  @Test
  void boxedRailsNeedNoBoxingAndThePlanSaysSo() {
    for (String mounting : List.of("inboard", "outboard")) {
      Trial trial = Trial.mounted(mounting);
      WorkPlan plan = trial.on(SampleVehicle.withBoxedRails(trial.chassis())).plan();
      assertEquals(0, Trial.quantity(plan, "box-rail") + Trial.quantity(plan, "fit-local-boxing"));
      assertTrue(plan.operations().stream().anyMatch(need -> need.why().mentions("boxed already")));
    }
  }

  // What follows the geometry

  @Test
  void standOffGrowsByAsMuchAsTheRailMovesAway() {
    Trial trial = Trial.mounted("inboard");
    List<Bar> bars = trial.bars();
    Trial wider = trial.on(SampleVehicle.withRailsMoved(trial.chassis(), INCH_MM, 0));
    double before =
        Trial.heightMm(Trial.plate(trial.plan(bars), "lower-left stand-off upright, front"));
    double after =
        Trial.heightMm(Trial.plate(wider.plan(bars), "lower-left stand-off upright, front"));
    assertEquals(INCH_MM / 2, after - before, 1e-6);
  }

  @Test
  void outriggerReachesFurtherByAsMuchAsTheRailMovesIn() {
    Trial trial = Trial.mounted("outboard");
    List<Bar> bars = trial.bars();
    Trial narrower = trial.on(SampleVehicle.withRailsMoved(trial.chassis(), -INCH_MM, 0));
    WorkPlan before = trial.plan(bars);
    WorkPlan after = narrower.plan(bars);
    String shelf = "lower-left outrigger shelf";
    assertEquals(
        INCH_MM / 2,
        Trial.heightMm(Trial.plate(after, shelf)) - Trial.heightMm(Trial.plate(before, shelf)),
        1e-6);
    String seam = "lower-left outrigger gusset to shelf";
    assertEquals(
        INCH_MM / 2,
        Trial.weld(after, seam).lengthMm() - Trial.weld(before, seam).lengthMm(),
        1e-6);
  }

  @Test
  void boxingPlateGrowsWithTheBracketWhenTheRailIsHigher() {
    // Bars far enough apart that no base is shortened. A rail half an inch higher makes the lower
    // bracket's base longer by 0.5 tan 30 deg at each end; only its front end moves the boxing.
    Trial trial = Trial.mounted("inboard").with("lower_length", 28);
    List<Bar> bars = trial.bars();
    Trial higher = trial.on(SampleVehicle.withRailsMoved(trial.chassis(), 0, INCH_MM / 2));
    String plate = "left rail boxing plate";
    double grownMm =
        Trial.widthMm(Trial.plate(higher.plan(bars), plate))
            - Trial.widthMm(Trial.plate(trial.plan(bars), plate));
    assertEquals(0.5 * SPREAD * Math.sqrt(1 + 1 / 676.0) * INCH_MM, grownMm, 1e-6);
  }

  // Running boards

  @ParameterizedTest
  @CsvSource({"outboard, 18, 1", "outboard, 23.1, 0", "inboard, 18, 0"})
  void runningBoardSupportIsMovedOnlyWhereTheBarsComeClose(
      String mounting, double fromInches, double moved) {
    Trial trial = Trial.mounted(mounting).with("rail_gap", 0.5);
    Box support =
        Box.between(
            21 * INCH_MM,
            25 * INCH_MM,
            fromInches * INCH_MM,
            27 * INCH_MM,
            11 * INCH_MM,
            14 * INCH_MM);
    WorkPlan plan = trial.on(withObstacle(trial.chassis(), support)).plan();
    assertEquals(moved, Trial.quantity(plan, "move-running-board-support"), 1e-9);
  }

  private static Chassis withObstacle(Chassis chassis, Box shape) {
    return new Chassis(
        chassis.wheelbaseLeftMm(),
        chassis.wheelbaseRightMm(),
        chassis.masses(),
        chassis.traction(),
        chassis.tyre(),
        chassis.axle(),
        chassis.rails(),
        chassis.driveline(),
        List.of(new Obstacle("support", ObstacleKind.RUNNING_BOARD_SUPPORT, shape)),
        chassis.travel());
  }
}
