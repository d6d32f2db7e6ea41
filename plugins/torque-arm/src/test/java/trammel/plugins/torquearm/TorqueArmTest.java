package trammel.plugins.torquearm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.BarForces;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Reading;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.motion.AxlePose;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.extension.Commission;
import trammel.planning.extension.Site;
import trammel.planning.extension.kit.LinkageContract;
import trammel.planning.extension.kit.SampleVehicle;
import trammel.planning.options.BarOptions;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.welding.WeldSeam;

/**
 * A torque arm on the sample pickup worked out by hand: axle tube 3 in, centre housing 6 1/2 in
 * from the centre plane, 2 in joints with 1/2 in bolts and barrels of 2 in, 1/4 in plate; eye 36 in
 * ahead at the axle's height.
 */
class TorqueArmTest {
  private static final double INCH_MM = 25.4;
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));
  private static final TorqueArm LINKAGE = new TorqueArm();
  private static final Chassis PICKUP = SampleVehicle.pickup();

  /** Radius of the metal about a 1/2 in bolt's hole, 33/64 in, by the shop's rule of 1 1/2. */
  private static final double NOSE_IN = 1.5 * 33 / 64.0;

  private static Site site(FieldValues options) {
    return new Site(PICKUP, options, CATALOG, UnitSystem.US);
  }

  private static Layout layout(FieldValues options) {
    return new Layout(
        PICKUP, LINKAGE.propose(site(options)), SampleVehicle.springs(PICKUP), List.of());
  }

  private static WorkPlan plan(FieldValues options) {
    return LINKAGE.plan(new Commission(layout(options), site(options)));
  }

  private static PlateNeed plate(WorkPlan plan, String name) {
    return plan.plates().stream()
        .filter(need -> need.plate().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static WeldSeam weld(WorkPlan plan, String name) {
    return plan.welds().stream().filter(seam -> seam.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void keepsTheContractOfEveryLinkage() {
    new LinkageContract(LINKAGE, CATALOG, PICKUP).verify();
  }

  /** Beside the housing: 6 1/2 in, 1/4 in for the weld and half of 2 in joint and two plates. */
  @ParameterizedTest
  @CsvSource({"left, 8", "right, -8"})
  void armRunsBesideTheHousingOnTheSideAskedFor(String side, double acrossInches) {
    Bar link =
        layout(FieldValues.none().with(TorqueArmOptions.ARM_SIDE, side))
            .bar("drop-link")
            .orElseThrow();
    assertEquals(acrossInches, link.axle().yMm() / INCH_MM, 1e-9);
    assertEquals(36, link.axle().xMm() / INCH_MM, 1e-9);
    // Rails' top 23 1/2 in, less 1/4 in and half of 2 in tube, over the eye at 14 1/2 in.
    assertEquals(7.75, link.lengthMm() / INCH_MM, 1e-9);
    assertEquals(link.axle().xMm(), link.frame().xMm(), 1e-9);
  }

  /** Saddle of 150 degrees on a 3 in tube, two plates, both faces: 4 x 1.5 x 2.618 in. */
  @Test
  void sidesAreWeldedRoundTheirSaddles() {
    WeldSeam seam = weld(plan(FieldValues.none()), "torque arm to axle tube");
    assertEquals(4 * 1.5 * Math.toRadians(150), seam.totalLengthMm() / INCH_MM, 1e-6);
  }

  /** From the eye's nose back to the middle of the saddle, 36 in and the nose; less cos 75. */
  @Test
  void sidePlateReachesFromTheSaddleToTheNose() {
    PlateNeed side = plate(plan(FieldValues.none()), "torque arm side");
    assertEquals(2, side.quantity());
    double rearIn = 1.5 * Math.cos(Math.toRadians(75));
    double wideIn = 36 + NOSE_IN - rearIn;
    double deepIn = 2 * 1.75 * Math.sin(Math.toRadians(75));
    assertEquals(wideIn, side.plate().outline().bounds().widthMm() / INCH_MM, 1e-4);
    assertEquals(deepIn, side.plate().outline().bounds().heightMm() / INCH_MM, 1e-4);
    assertEquals(1, side.plate().outline().holes().size());
  }

  /**
   * The edge runs from the foot's corner, 1 3/4 in at 75 degrees, to touch the nose; the strip ends
   * 1 1/4 in before, where the joint's barrel and its air begin.
   */
  @Test
  void stripsCloseTheBoxUpToTheJoint() {
    WorkPlan plan = plan(FieldValues.none());
    double x = 36 - 1.75 * Math.cos(Math.toRadians(75));
    double y = 1.75 * Math.sin(Math.toRadians(75));
    double lengthIn = Math.sqrt(x * x + y * y - NOSE_IN * NOSE_IN) - 1.25;
    for (String which : List.of("top", "bottom")) {
      PlateNeed strip = plate(plan, "torque arm " + which + " strip");
      assertEquals(lengthIn, strip.plate().outline().bounds().widthMm() / INCH_MM, 1e-6, which);
      assertEquals(2, strip.plate().outline().bounds().heightMm() / INCH_MM, 1e-9, which);
      assertEquals(
          2 * lengthIn,
          weld(plan, "torque arm " + which + " strip to sides").totalLengthMm() / INCH_MM,
          1e-6);
    }
  }

  /** 2 in of joint and two plates of 1/4 in at the eye and at the tabs. */
  @Test
  void bothBoltsOfTheDropLinkClampJointAndPlates() {
    List<BoltNeed> bolts =
        plan(FieldValues.none()).bolts().stream()
            .filter(bolt -> bolt.where().startsWith("drop-link "))
            .toList();
    assertEquals(2, bolts.size());
    bolts.forEach(bolt -> assertEquals(2.5, bolt.gripMm() / INCH_MM, 1e-9));
  }

  /** Four bars, eight bolts, eight feet; the arm's hours once; counted by hand. */
  @Test
  void everyBarHasItsBoltsFeetAndOperations() {
    WorkPlan plan = plan(FieldValues.none());
    assertEquals(8, plan.bolts().stream().mapToInt(BoltNeed::quantity).sum());
    assertEquals(8, plan.feet().size());
    assertEquals(4, quantity(plan, "make-bar"), 1e-9);
    assertEquals(2, quantity(plan, "fit-axle-bracket"), 1e-9);
    assertEquals(1, quantity(plan, "fit-torque-arm"), 1e-9);
    assertEquals(1, quantity(plan, "fit-lateral-bar"), 1e-9);
  }

  /** The two tabs of the drop link on the crossmember are drilled and dressed like all others. */
  @Test
  void everyPlateIsDressedAndEveryBoltHoleDrilled() {
    WorkPlan plan = plan(FieldValues.none());
    assertEquals(2, plate(plan, "drop-link frame tab").quantity());
    assertEquals(
        plan.plates().stream().mapToInt(PlateNeed::quantity).sum(),
        quantity(plan, "dress-plate"),
        1e-9);
    // Eight joints, each bolted through two plates.
    assertEquals(16, quantity(plan, "drill-plate"), 1e-9);
  }

  private static double quantity(WorkPlan plan, String key) {
    return plan.operations().stream()
        .filter(need -> need.operationKey().equals(key))
        .mapToDouble(OperationNeed::quantity)
        .sum();
  }

  /** An eye that stays at its height tilts the pinion by the rise over the arm's length. */
  @Test
  void pinionFollowsTheArm() {
    Layout layout = layout(FieldValues.none());
    AxlePose up = layout.motion().solve(3 * INCH_MM, 0).required();
    assertEquals(-Math.atan2(3, 36), up.pitchNoseUpRad(), Math.toRadians(0.3));
  }

  /**
   * What turns the housing is held at the arm's length: under the launch that gives the largest
   * force, bending stress at the foot is that force times the arm over the box's section modulus,
   * worked out here from two sides of 1/4 x 3.381 in and two strips of 2 x 1/4 in.
   */
  @Test
  void armIsJudgedInBendingAtItsFoot() {
    Layout layout = layout(FieldValues.none());
    LayoutAnalysis analysis = new LayoutAnalysis(layout, CATALOG.analysis());
    Reading.Value strength =
        assertInstanceOf(Reading.Value.class, LINKAGE.checks().get(0).check().read(analysis));

    double deep = 2 * 1.75 * Math.sin(Math.toRadians(75));
    double sides = 2 * 0.25 * deep * deep * deep / 12;
    double strips = 2 * (2 * Math.pow(0.25, 3) / 12 + 0.5 * Math.pow(deep / 2 - 0.125, 2));
    double modulusMm3 = (sides + strips) / (deep / 2) * Math.pow(INCH_MM, 3);
    BarForces forces = analysis.barForces();
    int link = layout.bars().indexOf(layout.bar("drop-link").orElseThrow());
    OptionalDouble most = OptionalDouble.empty();
    for (int i = 0; i < forces.cases().size(); i++) {
      double force = Math.abs(forces.tensionN(i, link));
      most = OptionalDouble.of(Math.max(force, most.orElse(0)));
    }
    double armMm = (36 - 1.75 * Math.cos(Math.toRadians(75))) * INCH_MM;
    double yieldMPa = layout.bars().get(link).bracket().orElseThrow().yieldMPa();
    double expected = yieldMPa * modulusMm3 / (most.orElseThrow() * armMm);
    assertEquals(expected, strength.value(), 1e-3 * expected);
  }

  @Test
  void armAndInboardBarsNeedRoomBesideEachOther() {
    Chassis narrow = SampleVehicle.withRailsMoved(PICKUP, -9 * INCH_MM, 0);
    Site site =
        new Site(
            narrow,
            FieldValues.none().with(BarOptions.mounting("lower bars"), "inboard"),
            CATALOG,
            UnitSystem.US);
    String message =
        assertThrows(UnworkableLayoutException.class, () -> LINKAGE.propose(site))
            .reason()
            .in(new QuantityPrinter(UnitSystem.US));
    assertTrue(message.contains("is missing"), message);
    assertTrue(message.contains("mounting: outboard"), message);
  }

  /** The crossmember is ahead of where the tape measured the rails, and the sheet says so. */
  @Test
  void crossmemberAheadOfTheMeasuredRailsAsksForTheTape() {
    WorkPlan plan = plan(FieldValues.none());
    String why =
        plan.tubes().stream()
            .filter(tube -> tube.name().equals("torque arm crossmember"))
            .findFirst()
            .orElseThrow()
            .why()
            .in(new QuantityPrinter(UnitSystem.US));
    assertTrue(why.contains("measure between the rails there"), why);
  }
}
