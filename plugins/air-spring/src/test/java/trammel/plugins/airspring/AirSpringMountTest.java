package trammel.plugins.airspring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.mount.AxleTravel;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Judge;
import trammel.engine.checks.StandardChecks;
import trammel.engine.checks.Verdict;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Masses;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringAtRide;
import trammel.engine.layout.SpringUnit;
import trammel.planning.catalog.AirSpring;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.extension.Commission;
import trammel.planning.extension.Site;
import trammel.planning.extension.SpringSet;
import trammel.planning.extension.kit.SampleVehicle;
import trammel.planning.extension.kit.SpringContract;
import trammel.planning.options.MountOptions;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Plate;
import trammel.trade.welding.WeldSeam;

class AirSpringMountTest {
  private static final double INCH_MM = 25.4;
  private static final double POUND_N = 4.4482216152605;
  private static final double POUND_KG = 0.45359237;
  private static final double PSI_MPA = POUND_N / (INCH_MM * INCH_MM);

  private static Catalog catalog;

  private final AirSpringMount mount = new AirSpringMount();
  private final Chassis pickup = SampleVehicle.pickup();

  @BeforeAll
  static void readCatalog() {
    catalog = CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));
  }

  private static Site site(Chassis chassis, FieldValues options) {
    return new Site(chassis, options, catalog, UnitSystem.US);
  }

  private SpringSet propose(Chassis chassis, FieldValues options) {
    return mount.propose(site(chassis, options), AxleGuide.of(SampleVehicle.bars(chassis)));
  }

  private WorkPlan plan(Chassis chassis, FieldValues options) {
    SpringSet set = propose(chassis, options);
    Layout layout = layout(chassis, set);
    return mount.plan(new Commission(layout, site(chassis, options)));
  }

  private static Layout layout(Chassis chassis, SpringSet set) {
    return new Layout(chassis, SampleVehicle.bars(chassis), set.springs(), set.shocks());
  }

  private static Chassis withRear(Chassis chassis, double rearLb) {
    Masses masses = chassis.masses();
    return new Chassis(
        chassis.wheelbaseLeftMm(),
        chassis.wheelbaseRightMm(),
        new Masses(
            masses.frontAxleKg(),
            rearLb / 2 * POUND_KG,
            rearLb / 2 * POUND_KG,
            masses.rearUnsprungKg(),
            masses.centreOfGravityHeightMm()),
        chassis.traction(),
        chassis.tyre(),
        chassis.axle(),
        chassis.rails(),
        chassis.driveline(),
        chassis.obstacles(),
        chassis.travel());
  }

  @Test
  void keepsTheContract() {
    new SpringContract(mount, catalog, pickup).verify();
  }

  /**
   * Pressure is load over effective area (air-spring engineering manual EMDG198, pp. 22-23). The
   * corner carries 685 lb; the plan gives load and pressure at the height of the layout, and the
   * table of air-spring-5.0 has 12.03 in2 at 6 5/8 in, between 12.07 at 6 1/4 and 12.00 at 7 in.
   */
  @Test
  void carriesTheCornerByPressureTimesArea() {
    AirSpring spring = catalog.airSpring("air-spring-5.0");
    double areaMm2 = spring.size().at(6.625 * INCH_MM).effectiveAreaMm2();
    assertEquals(12.035, areaMm2 / (INCH_MM * INCH_MM), 1e-3);
    double gaugeMPa = spring.size().gaugeForLoadMPa(6.625 * INCH_MM, 685 * POUND_N);
    assertEquals(685 / 12.035, gaugeMPa / PSI_MPA, 1e-2);
    WorkPlan plan = plan(pickup, FieldValues.none());
    SpringUnit left = propose(pickup, FieldValues.none()).springs().get(0);
    double areaAtRideIn2 =
        spring.size().at(left.lengthMm()).effectiveAreaMm2() / (INCH_MM * INCH_MM);
    // The axle's turn over the travel puts the motion ratio within 10 % of 1.
    double psi = number(why(plan, "air-spring-5.0"));
    assertEquals(685 / areaAtRideIn2, psi, 0.10 * psi);
  }

  private static double number(String text) {
    return Double.parseDouble(text.substring(0, text.indexOf(' ')));
  }

  private static String why(WorkPlan plan, String key) {
    for (PartNeed part : plan.parts()) {
      if (part.itemKey().equals(key)) {
        return part.why().in(new QuantityPrinter(UnitSystem.US));
      }
    }
    throw new AssertionError("no part " + key);
  }

  /** The table of the 5 in spring goes from 2 1/2 to 10 in; both ends stay in reach. */
  @Test
  void standsAtTheHeightThatLeavesAsMuchInBumpAsInDroop() {
    SpringUnit left = propose(pickup, FieldValues.none()).springs().get(0);
    // Travel of 3 in each way is symmetric, so the height at ride is the middle of the table but
    // for the turn of the axle.
    assertEquals(6.25, left.lengthMm() / INCH_MM, 0.25);
    assertEquals(left.frame().xMm(), left.axle().xMm(), 1e-9);
    assertEquals(left.frame().yMm(), left.axle().yMm(), 1e-9);
  }

  @Test
  void keepsTheRideHeightThatTheJobGives() {
    SpringUnit left =
        propose(pickup, FieldValues.none().with(AirOptions.RIDE_HEIGHT, 6.0 * INCH_MM))
            .springs()
            .get(0);
    assertEquals(6.0 * INCH_MM, left.lengthMm(), 1e-9);
  }

  @Test
  void refusesARideHeightThatTheTableDoesNotReachFrom() {
    FieldValues options = FieldValues.none().with(AirOptions.RIDE_HEIGHT, 4.0 * INCH_MM);
    UnworkableLayoutException refusal =
        assertThrows(UnworkableLayoutException.class, () -> propose(pickup, options));
    assertTrue(
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)).contains("2 1/2 in"),
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {14, 17, 20})
  void leansTheShocksInwardAsAsked(double leanDeg) {
    ShockUnit shock =
        propose(pickup, FieldValues.none().with(AirOptions.SHOCK_LEAN, Math.toRadians(leanDeg)))
            .shocks()
            .get(0);
    double acrossMm = shock.axle().yMm() - shock.frame().yMm();
    double upMm = shock.frame().zMm() - shock.axle().zMm();
    assertEquals(leanDeg, Math.toDegrees(Math.atan2(acrossMm, upMm)), 1e-9);
  }

  /** Limits of the catalog: common practice, no source. */
  @Test
  void passesTheStandardChecksOfSpringsAndShocks() {
    Layout layout = layout(pickup, propose(pickup, FieldValues.none()));
    Judge judge = new Judge(StandardChecks.all(), catalog.limits(), catalog.analysis());
    int seen = 0;
    for (CheckResult result : judge.judge(layout)) {
      if (result instanceof CheckResult.Judged judged
          && (judged.id().startsWith("shock")
              || judged.id().startsWith("spring")
              || judged.id().equals("ride-frequency"))) {
        assertEquals(Verdict.GOOD, judged.verdict(), judged.id());
        seen++;
      }
    }
    assertEquals(5, seen);
  }

  /**
   * 120 psi on 12.07 in2 at the middle of the table carry 1,448 lb; a rear of 4,400 lb with 380 lb
   * unsprung puts 2,010 lb on each corner.
   */
  @Test
  void aLoadBeyondTheHighestPressureIsAStop() {
    FieldValues small = FieldValues.none().with(AirOptions.airSpring(catalog), "air-spring-5.0");
    Chassis heavy = withRear(pickup, 4400);
    Layout layout = layout(heavy, propose(heavy, small));
    Judge judge = new Judge(StandardChecks.all(), catalog.limits(), catalog.analysis());
    CheckResult.Judged pressure =
        (CheckResult.Judged)
            judge.verdicts(layout).stream()
                .filter(result -> result.id().equals("air-pressure"))
                .findFirst()
                .orElseThrow();
    assertEquals(Verdict.STOP, pressure.verdict());
    assertEquals(2010 / 12.07 / 120, pressure.value(), 0.05);
  }

  /** Outboard: clear of the rail's outer face and 1 in off the tyre, on outriggers. */
  @Test
  void standsOutboardOnOutriggersWhereThereIsRoom() {
    FieldValues outboard =
        FieldValues.none().with(AirOptions.ACROSS, AirSpringAcross.OUTBOARD.word());
    SpringUnit left = propose(pickup, outboard).springs().get(0);
    double innerEdgeIn = (left.frame().yMm() - left.radiusMm()) / INCH_MM;
    double outerEdgeIn = (left.frame().yMm() + left.radiusMm()) / INCH_MM;
    assertTrue(innerEdgeIn >= 18.5 + 0.5, "inner edge " + innerEdgeIn);
    assertTrue(outerEdgeIn <= 32 - 4.5 - 1, "outer edge " + outerEdgeIn);
    WorkPlan plan = plan(pickup, outboard);
    assertEquals(2, quantity(plan, "fit-outrigger"));
    assertEquals(1, quantity(plan, "fit-shock-crossmember"));
  }

  /**
   * Each gusset is welded along its two legs from the cut-out in its corner, 1/2 in, on; down the
   * rail on both faces, as the knee under the seat, from its own of 3/8 in.
   */
  @Test
  void gussetsOfOutriggersAreWeldedOnlyWhereTheyTouch() {
    FieldValues outboard =
        FieldValues.none().with(AirOptions.ACROSS, AirSpringAcross.OUTBOARD.word());
    WorkPlan plan = plan(pickup, outboard);
    Bounds gusset = plate(plan, "air spring outrigger gusset").outline().bounds();
    Bounds seat = plate(plan, "air spring outrigger seat").outline().bounds();
    double legMm = gusset.widthMm() - INCH_MM / 2;
    double railLegMm = gusset.heightMm() - INCH_MM / 2;

    assertEquals(4 * legMm, weldMm(plan, "air spring outrigger gusset to seat"), 1e-6);
    double seatMm = Math.max(seat.widthMm(), seat.heightMm());
    double railMm = weldMm(plan, "air spring outrigger to rail");
    Bounds knee = plate(plan, "air spring outrigger knee").outline().bounds();
    double kneeMm = knee.heightMm() - 0.375 * INCH_MM;
    double basesMm = railMm - 8 * railLegMm - 4 * kneeMm;
    assertTrue(basesMm > 0 && basesMm <= 4 * seatMm + 1e-6, basesMm + " mm of " + 4 * seatMm);
    assertEquals(
        4 * (knee.widthMm() - 0.375 * INCH_MM),
        weldMm(plan, "air spring outrigger knee to seat"),
        1e-6);
  }

  private static Plate plate(WorkPlan plan, String name) {
    return plan.plates().stream()
        .map(PlateNeed::plate)
        .filter(plate -> plate.name().startsWith(name))
        .findFirst()
        .orElseThrow();
  }

  private static double weldMm(WorkPlan plan, String name) {
    return plan.welds().stream()
        .filter(seam -> seam.name().equals(name))
        .mapToDouble(WeldSeam::totalLengthMm)
        .sum();
  }

  private static double quantity(WorkPlan plan, String operation) {
    double sum = 0;
    for (OperationNeed need : plan.operations()) {
      sum += need.operationKey().equals(operation) ? need.quantity() : 0;
    }
    return sum;
  }

  @Test
  void refusesOutboardWithoutRoomBetweenRailAndTyre() {
    Chassis wide = SampleVehicle.withRailsMoved(pickup, 12 * INCH_MM, 0);
    FieldValues outboard =
        FieldValues.none().with(AirOptions.ACROSS, AirSpringAcross.OUTBOARD.word());
    UnworkableLayoutException refusal =
        assertThrows(UnworkableLayoutException.class, () -> propose(wide, outboard));
    assertTrue(
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)).contains("room")
            || refusal.reason().in(new QuantityPrinter(UnitSystem.US)).contains("place"));
  }

  /** Inner faces 32.5 - x/13 in apart (rails 37 in and 35 in over both, 26 in between stations). */
  @Test
  void sawsTheBridgeToTheRails() {
    FieldValues inboard =
        FieldValues.none().with(AirOptions.ACROSS, AirSpringAcross.INBOARD.word());
    double xIn = propose(pickup, inboard).springs().get(0).frame().xMm() / INCH_MM;
    for (TubeNeed tube : plan(pickup, inboard).tubes()) {
      if (tube.name().equals("air spring bridge")) {
        assertEquals(32.5 - (xIn - 1) / 13, tube.cutLengthMm() / INCH_MM, 1e-6);
        return;
      }
    }
    throw new AssertionError("no bridge");
  }

  @Test
  void plumbsTheAir() {
    WorkPlan plan = plan(pickup, FieldValues.none());
    assertEquals(1, quantity(plan, "plumb-air"));
    assertTrue(why(plan, "air-supply-kit").contains("pressure"));
    assertTrue(why(plan, "air-fitting-kit").contains("each air spring"));
  }

  /**
   * Two arms share the load at full bump, each a plate bent on edge at the tube: stress = M / Z
   * with Z = t h2 / 6 (Gere, Mechanics of Materials, section 5.6), h the chord of a saddle of 120
   * degrees. A fifth of the yield strength, 36 ksi of A36 plate, is left to what comes on top:
   * common practice, no source. The thinnest plate from 1/4 in up that bears it is taken, else the
   * thickest of the catalog, 3/8 in.
   */
  @ParameterizedTest
  @ValueSource(doubles = {5, 5.5, 6, 6.5, 7, 7.25, 7.5, 7.75, 8, 8.5, 9, 9.5, 10, 12})
  void armsAreOfTheThinnestPlateThatBearsFullBump(double aheadIn) {
    SpringSet set = movedTo(aheadIn * INCH_MM, propose(pickup, FieldValues.none()));
    double radiusMm = pickup.axle().tubeRadiusMm();
    double leverMm = aheadIn * INCH_MM - radiusMm * Math.cos(Math.toRadians(60));
    double chordMm = 2 * radiusMm * Math.sin(Math.toRadians(60));
    double momentNmm = atFullBumpN(set.springs().get(0)) / 2 * leverMm;
    double allowedMPa = 36 * 6.894757 / 1.5;
    double expectedIn = 0.375;
    for (double thinnerIn : new double[] {0.3125, 0.25}) {
      double sectionMm3 = thinnerIn * INCH_MM * chordMm * chordMm / 6;
      expectedIn = momentNmm / sectionMm3 <= allowedMPa ? thinnerIn : expectedIn;
    }
    assertEquals(expectedIn * INCH_MM, armMm(set, FieldValues.none()), 1e-6);
    FieldValues asked =
        FieldValues.none().with(MountOptions.bracketPlate(catalog), quarterInchPlate());
    assertEquals(0.25 * INCH_MM, armMm(set, asked), 1e-6);
  }

  private SpringSet movedTo(double aheadMm, SpringSet set) {
    List<SpringUnit> moved =
        set.springs().stream()
            .map(unit -> unit.withPoint(End.FRAME, ahead(aheadMm, unit.frame())))
            .map(unit -> unit.withPoint(End.AXLE, ahead(aheadMm, unit.axle())))
            .toList();
    return new SpringSet(moved, set.shocks());
  }

  private static Point3 ahead(double aheadMm, Point3 point) {
    return new Point3(aheadMm, point.yMm(), point.zMm());
  }

  private double atFullBumpN(SpringUnit left) {
    AxleTravel travel = new AxleTravel(pickup, AxleGuide.of(SampleVehicle.bars(pickup)));
    double shortestMm = travel.path(left.axle()).from(left.frame()).leastMm();
    return travel.loadsN(left.frame(), left.axle()).stream()
        .mapToDouble(loadN -> new SpringAtRide(left, loadN).forceN(shortestMm))
        .max()
        .orElseThrow();
  }

  private double armMm(SpringSet set, FieldValues options) {
    WorkPlan plan = mount.plan(new Commission(layout(pickup, set), site(pickup, options)));
    return plan.plates().stream()
        .filter(plate -> plate.plate().name().equals("air spring arm"))
        .findFirst()
        .orElseThrow()
        .plate()
        .thicknessMm();
  }

  private static String quarterInchPlate() {
    return catalog.plates().values().stream()
        .filter(plate -> Math.abs(plate.form().thicknessMm() - 0.25 * INCH_MM) < 1e-6)
        .findFirst()
        .orElseThrow()
        .key();
  }
}
