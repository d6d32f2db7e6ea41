package trammel.planning.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.assembly.SeamRun;
import trammel.assembly.SpotPath;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Cylinder;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Obstacle;
import trammel.engine.layout.ObstacleKind;
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.extension.Site;
import trammel.planning.extension.kit.SampleVehicle;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.plates.NotchPlate;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.PlugWeld;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldPosition;
import trammel.trade.welding.WeldSeam;

class VehicleWorkTest {
  private static final double INCH_MM = 25.4;

  private static Catalog catalog;

  private final Chassis pickup = SampleVehicle.pickup();

  @BeforeAll
  static void readCatalog() {
    catalog = CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));
  }

  private static Layout layout(Chassis chassis) {
    return new Layout(
        chassis, SampleVehicle.bars(chassis), SampleVehicle.springs(chassis), List.of());
  }

  private static WorkPlan plan(Chassis chassis) {
    return VehicleWork.plan(layout(chassis), site(chassis));
  }

  private static Site site(Chassis chassis) {
    return new Site(chassis, FieldValues.none(), catalog, UnitSystem.US);
  }

  private static Chassis with(Chassis chassis, Obstacle obstacle) {
    return new Chassis(
        chassis.wheelbaseLeftMm(),
        chassis.wheelbaseRightMm(),
        chassis.masses(),
        chassis.traction(),
        chassis.tyre(),
        chassis.axle(),
        chassis.rails(),
        chassis.driveline(),
        List.of(obstacle),
        chassis.travel());
  }

  private static Optional<OperationNeed> operation(WorkPlan plan, String key) {
    for (OperationNeed need : plan.operations()) {
      if (need.operationKey().equals(key)) {
        return Optional.of(need);
      }
    }
    return Optional.empty();
  }

  private static Optional<PartNeed> part(WorkPlan plan, String key) {
    for (PartNeed need : plan.parts()) {
      if (need.itemKey().equals(key)) {
        return Optional.of(need);
      }
    }
    return Optional.empty();
  }

  @Test
  void asksForEveryStageThatTheCatalogKnows() {
    for (OperationNeed need : plan(pickup).operations()) {
      assertEquals(need.operationKey(), catalog.operation(need.operationKey()).key());
    }
    for (PartNeed need : plan(pickup).parts()) {
      assertEquals(need.itemKey(), catalog.item(need.itemKey()).key());
    }
    assertTrue(operation(plan(pickup), "road-test").isPresent());
  }

  /** 24 in of weld are 2 ft. */
  @Test
  void countsTheFeetOfWeldToDress() {
    WeldSeam seam =
        WeldSeam.alone(
            "seam",
            FilletWeld.ofLeg(5),
            12 * INCH_MM,
            2,
            WeldPosition.FLAT,
            WeldPlace.BENCH,
            Phrase.of("two seams of a foot"));
    WorkPlan mounts = new WorkPlan.Builder().add(seam).build();
    WorkPlan plan = VehicleWork.plan(layout(pickup), site(pickup), mounts, Optional.empty());
    assertEquals(2.0, operation(plan, "dress-and-inspect-welds").orElseThrow().quantity(), 1e-9);
  }

  @Test
  void notchesNoRailThatIsHighEnough() {
    assertTrue(operation(plan(pickup), "notch-rail").isEmpty());
  }

  /**
   * Notch 1 in clear, tube radius 1 1/2, 1/2 in of air, plate t: cut 1 + t deep on a radius of 2 +
   * t; half opening sqrt(d (2 R - d)); strip 2 acos((R - d)/R) (R - t/2).
   */
  @Test
  void cutsTheNotchAboutTheTube() {
    Chassis notched = pickup.withRails(pickup.rails().withNotchDepth(INCH_MM));
    NotchPlate shape = new NotchWork(layout(notched), catalog).shape(0.25 * INCH_MM);
    assertEquals(1.25, shape.depthMm() / INCH_MM, 1e-9);
    assertEquals(2.25, shape.cutRadiusMm() / INCH_MM, 1e-9);
    assertEquals(2 * Math.sqrt(1.25 * (4.5 - 1.25)), shape.openingMm() / INCH_MM, 1e-9);
    assertEquals(2 * Math.acos(1.0 / 2.25) * (2.25 - 0.125), shape.stripLengthMm() / INCH_MM, 1e-9);
  }

  @Test
  void platesBothSidesOfBothRailsAtANotch() {
    WorkPlan plan = plan(pickup.withRails(pickup.rails().withNotchDepth(INCH_MM)));
    assertEquals(2, operation(plan, "notch-rail").orElseThrow().quantity());
    int sides = 0;
    int strips = 0;
    for (PlateNeed need : plan.plates()) {
      sides += need.plate().name().equals("notch side plate") ? need.quantity() : 0;
      strips += need.plate().name().equals("notch side plate strip") ? need.quantity() : 0;
    }
    assertEquals(4, sides);
    assertEquals(2, strips);
  }

  /** Over each rail a strip joins them, welded along both edges and across both ends. */
  @Test
  void platesThatRiseAboveTheRailAreClosedByAStripOverIt() {
    Rails notched = pickup.rails().withNotchDepth(2 * INCH_MM);
    WorkPlan flush = plan(pickup.withRails(notched));
    WorkPlan raised = plan(pickup.withRails(notched.withNotchRise(INCH_MM)));

    assertTrue(operation(flush, "raise-notch").isEmpty());
    assertEquals(2, operation(raised, "raise-notch").orElseThrow().quantity());
    assertEquals(2, strips(raised, "notch side plate top strip"));
    assertEquals(2, strips(raised, "notch side plate strip"));
    List<String> seams = raised.welds().stream().map(WeldSeam::name).toList();
    assertTrue(seams.contains("notch top strip to side plates"), "" + seams);
    assertTrue(seams.contains("notch top strip to rail"), "" + seams);
  }

  private static int strips(WorkPlan plan, String name) {
    return plan.plates().stream()
        .filter(need -> need.plate().name().equals(name))
        .mapToInt(PlateNeed::quantity)
        .sum();
  }

  /** A plate of twice the thickness stiffens the section in the notch. */
  @Test
  void thickerNotchPlatesGiveMoreModulusBack() {
    Chassis notched = pickup.withRails(pickup.rails().withNotchDepth(1.5 * INCH_MM));
    NotchWork work = new NotchWork(layout(notched), catalog);
    double thin = work.modulusRatio(work.shape(3.0 / 16 * INCH_MM));
    double thick = work.modulusRatio(work.shape(3.0 / 8 * INCH_MM));
    assertTrue(thick > thin, thin + " then " + thick);
  }

  @Test
  void refusesANotchThatLeavesNoRail() {
    Chassis notched = pickup.withRails(pickup.rails().withNotchDepth(5.6 * INCH_MM));
    UnworkableLayoutException refusal =
        assertThrows(UnworkableLayoutException.class, () -> plan(notched));
    String words = refusal.reason().in(new QuantityPrinter(UnitSystem.US));
    assertTrue(words.contains("a rail of 6 in"), words);
  }

  /**
   * A pipe across the vehicle over the axle tube: the tube's top is at 14.5 + 1.5 = 16 in at ride
   * and 19 in at 3 in of bump; with a radius of 1 in the pipe at z leaves z - 20 in.
   */
  @ParameterizedTest
  @CsvSource({"21.9, true", "22.1, false"})
  void movesAnExhaustThatComesWithinTwoInches(double upIn, boolean moved) {
    Cylinder pipe =
        new Cylinder(
            new Point3(0, -100, upIn * INCH_MM), new Point3(0, 100, upIn * INCH_MM), INCH_MM);
    WorkPlan plan = plan(with(pickup, new Obstacle("pipe", ObstacleKind.EXHAUST, pipe)));
    assertEquals(moved, operation(plan, "move-exhaust").isPresent());
    assertEquals(moved, part(plan, "exhaust-rework").isPresent());
    if (moved) {
      String why =
          operation(plan, "move-exhaust")
              .orElseThrow()
              .why()
              .in(new QuantityPrinter(UnitSystem.US));
      assertTrue(why.contains("pipe") && why.contains("axle tube"), why);
    }
  }

  /** A weld to the rail 6 in behind the axle: a tank within 12 in of it comes out. */
  @ParameterizedTest
  @CsvSource({"-18, true", "-40, false"})
  void movesATankNearAWeld(double frontIn, boolean moved) {
    Box box =
        Box.between(
            (frontIn - 20) * INCH_MM,
            frontIn * INCH_MM,
            -12 * INCH_MM,
            12 * INCH_MM,
            14 * INCH_MM,
            22 * INCH_MM);
    Chassis tanked = with(pickup, new Obstacle("tank", ObstacleKind.TANK, box));
    assertEquals(moved, operation(welded(tanked, WeldPlace.VEHICLE), "move-fuel-tank").isPresent());
    assertTrue(
        operation(welded(tanked, WeldPlace.BENCH), "move-fuel-tank").isEmpty(),
        "what is welded on the bench is not near the tank");
  }

  private static WorkPlan welded(Chassis chassis, WeldPlace place) {
    SeamRun run =
        new SeamRun(
            "bracket",
            "left rail",
            new SpotPath(new Point3(-6 * INCH_MM, 12 * INCH_MM, 18 * INCH_MM)));
    WeldSeam seam =
        WeldSeam.spots(
            "bracket to rail",
            new PlugWeld(12, 5),
            List.of(run),
            WeldPosition.FLAT,
            place,
            Phrase.of("test"));
    return VehicleWork.plan(
        layout(chassis), site(chassis), new WorkPlan.Builder().add(seam).build(), Optional.empty());
  }

  /** The tube's top reaches 19 in at full bump; a floor from 20 in up is relieved under 1 in. */
  @ParameterizedTest
  @CsvSource({"19.9, true", "30.0, false"})
  void relievesABedFloorThatTheAxleReaches(double undersideIn, boolean relieved) {
    Box floor =
        Box.between(-300, 300, -700, 700, undersideIn * INCH_MM, (undersideIn + 0.25) * INCH_MM);
    WorkPlan plan = plan(with(pickup, new Obstacle("floor", ObstacleKind.BED_FLOOR, floor)));
    assertEquals(relieved, operation(plan, "relieve-bed-floor").isPresent());
  }

  /** An obstacle of no such kind asks for nothing. */
  @Test
  void leavesOtherObstaclesAlone() {
    Capsule ball = new Capsule(new Point3(0, 0, 500), new Point3(0, 1, 500), 20);
    WorkPlan plan = plan(with(pickup, new Obstacle("bracket", ObstacleKind.OTHER, ball)));
    assertTrue(operation(plan, "move-exhaust").isEmpty());
    assertTrue(operation(plan, "move-fuel-tank").isEmpty());
    assertTrue(operation(plan, "relieve-bed-floor").isEmpty());
  }

  /** Turned by 25 degrees about the axle, the joint 11 in ahead of it moves nearly 5 in. */
  @Test
  void sendsTheShaftAwayWhenItsLengthAtRideChanges() {
    var now = pickup.driveline();
    var found = now.withPinionTurned(pickup.axleCentre(), Math.toRadians(-25));
    double wasMm = found.pinionJoint().distanceMm(found.transmissionJoint());
    double isMm = now.pinionJoint().distanceMm(now.transmissionJoint());
    assertTrue(Math.abs(isMm - wasMm) > INCH_MM / 8);
    WorkPlan nothing = new WorkPlan.Builder().build();
    WorkPlan turned = VehicleWork.plan(layout(pickup), site(pickup), nothing, Optional.of(found));
    assertTrue(part(turned, "driveshaft-rework").orElseThrow().why().mentions("pinion"));
    WorkPlan asItWas = VehicleWork.plan(layout(pickup), site(pickup), nothing, Optional.of(now));
    assertFalse(
        part(asItWas, "driveshaft-rework")
            .map(PartNeed::why)
            .orElse(Phrase.NONE)
            .mentions("pinion"));
  }
}
