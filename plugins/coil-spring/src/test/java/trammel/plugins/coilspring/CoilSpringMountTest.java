package trammel.plugins.coilspring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Judge;
import trammel.engine.checks.StandardChecks;
import trammel.engine.checks.Verdict;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Masses;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.layout.Travel;
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
import trammel.trade.plates.Hole;

class CoilSpringMountTest {
  private static final double INCH_MM = 25.4;
  private static final double LB_PER_INCH = 4.4482216152605 / INCH_MM;

  private static Catalog catalog;

  private final CoilSpringMount mount = new CoilSpringMount();
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

  private TubeNeed crossmember(SpringSet set, FieldValues options) {
    Commission commission = new Commission(layout(pickup, set), site(pickup, options));
    return tube(mount.plan(commission), "coil-over crossmember");
  }

  /** The crossmember on pieces of its own tube. */
  private static final FieldValues ON_TUBE = FieldValues.none().with(MountOptions.legs(), "tube");

  private static Layout layout(Chassis chassis, SpringSet set) {
    return new Layout(chassis, SampleVehicle.bars(chassis), set.springs(), set.shocks());
  }

  private static TubeNeed tube(WorkPlan plan, String name) {
    for (TubeNeed tube : plan.tubes()) {
      if (tube.name().equals(name)) {
        return tube;
      }
    }
    throw new AssertionError("no tube " + name);
  }

  @Test
  void keepsTheContract() {
    new SpringContract(mount, catalog, pickup).verify();
  }

  /**
   * f = (1/2 pi) sqrt(k/m) (Gillespie 1992 ch. 5, from memory), so k = m (2 pi f)^2 at the wheel.
   * Corner: (1750 - 380) / 2 = 685 lb = 310.71 kg; at 1.4 Hz k = 310.71 x 8.7965^2 = 24 042 N/m =
   * 137.3 lb/in. Upright and without a turn of the axle the motion ratio is 1; the stocked rates on
   * either side are 130 and 140 lb/in.
   */
  @Test
  void takesTheStockedRateNearestToTheFrequency() {
    SpringSet set = propose(pickup, FieldValues.none().with(CoilOptions.LEAN, 0.0));
    assertEquals(140 * LB_PER_INCH, set.springs().get(0).rateNPerMm(), 0.5 * LB_PER_INCH);
  }

  /** The catalog has rates of 70 to 600 lb/in: 158 is 1 % off 160, 800 a quarter off 600. */
  @Test
  void takesTheRateThatTheJobGivesAndRefusesOneThatIsNotStocked() {
    FieldValues stocked = FieldValues.none().with(CoilOptions.RATE, 158 * LB_PER_INCH);
    assertEquals(160 * LB_PER_INCH, propose(pickup, stocked).springs().get(0).rateNPerMm(), 1e-6);
    FieldValues missing = FieldValues.none().with(CoilOptions.RATE, 800 * LB_PER_INCH);
    UnworkableLayoutException refusal =
        assertThrows(UnworkableLayoutException.class, () -> propose(pickup, missing));
    assertTrue(
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)).contains("800 lb/in"),
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)));
    assertTrue(
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)).contains("600 lb/in"),
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 8, 12, 20})
  void leansInwardAsAsked(double leanDeg) {
    ShockUnit shock =
        propose(pickup, FieldValues.none().with(CoilOptions.LEAN, Math.toRadians(leanDeg)))
            .shocks()
            .get(0);
    assertEquals(
        leanDeg,
        Math.toDegrees(
            Math.atan2(
                shock.axle().yMm() - shock.frame().yMm(),
                shock.frame().zMm() - shock.axle().zMm())),
        1e-9);
    assertEquals(shock.axle().xMm(), shock.frame().xMm(), 1e-9);
  }

  /** The strut holds the axle where the shock would: its holes are as far apart, at ride. */
  @Test
  void cutsMockUpStrutsOfTheShocksLengthAtRide() {
    ShockUnit shock = propose(pickup, FieldValues.none()).shocks().get(0);
    PlateNeed strut =
        plan(pickup, FieldValues.none()).plates().stream()
            .filter(need -> need.plate().name().contains("mock-up strut"))
            .findFirst()
            .orElseThrow();
    assertEquals(2, strut.quantity());
    List<Hole> holes = strut.plate().outline().holes();
    assertEquals(2, holes.size());
    double apartMm = holes.get(1).loop().bounds().minXMm() - holes.get(0).loop().bounds().minXMm();
    assertEquals(shock.axle().distanceMm(shock.frame()), apartMm, 1e-6);
  }

  /** Common practice, no source: 3/8 in of shock travel left, 1/4 in from spring to tube. */
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
   * The spring at ride is its free length less load over rate; what the layout keeps as its
   * shortest length is the shock's length with the coils touching.
   */
  @Test
  void keepsTheSpringOpenAtFullBump() {
    SpringSet set = propose(pickup, FieldValues.none());
    SpringUnit spring = set.springs().get(0);
    ShockUnit shock = set.shocks().get(0);
    assertEquals(shock.lengthMm(), spring.lengthMm(), 1e-9);
    // Bump moves the lower mount 3 in up; leaning and wheel to wheel the shock takes at most that.
    double leastAtBumpMm = spring.lengthMm() - 3.3 * INCH_MM;
    assertTrue(spring.shortestMm() < leastAtBumpMm, "shortest " + spring.shortestMm());
    assertTrue(spring.longestMm() > spring.lengthMm());
  }

  /**
   * Rails 37 in over both at the axle, 35 in at 26 in ahead, flanges 2 1/4 in: inner faces at x are
   * 37 - 4.5 - 2 x / 26 = 32.5 - x/13 in apart. An inch more over both rails is an inch more of
   * crossmember, wherever its mounts then find their place.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1})
  void sawsTheCrossmemberToTheRails(double widerIn) {
    Chassis chassis = SampleVehicle.withRailsMoved(pickup, widerIn * INCH_MM, 0);
    TubeNeed tube = tube(plan(chassis, ON_TUBE), "coil-over crossmember");
    SpringSet set = propose(chassis, ON_TUBE);
    double mountIn = set.shocks().get(0).frame().xMm() / INCH_MM;
    // Spring radius 1 3/4 + 1/2 air, then the 2 in tube: its far edge is 4 1/4 in past the mount.
    double edgeIn = mountIn < 0 ? mountIn - 4.25 : mountIn + 2.25;
    assertEquals(32.5 + widerIn - edgeIn / 13, tube.cutLengthMm() / INCH_MM, 1e-6);
  }

  /** Legs: from the top of the rails less a lap of 4 in to the underside of a 2 in tube. */
  @Test
  void standsTheCrossmemberOnLegsOverTheRails() {
    SpringSet set = propose(pickup, ON_TUBE);
    double mountMm = set.shocks().get(0).frame().zMm();
    double topMm = (17.5 + 6) * INCH_MM;
    WorkPlan plan = plan(pickup, ON_TUBE);
    TubeNeed leg = tube(plan, "coil-over crossmember leg");
    assertEquals(2, leg.quantity());
    // Under the middle of a tube 3 in deep, lapping the rail by 4 in.
    assertEquals(mountMm - 1.5 * INCH_MM - topMm + 4 * INCH_MM, leg.cutLengthMm(), 1e-6);
  }

  /**
   * Bars run by the rails of the pickup. Where they meet a leg of 2 in tube the crossmember stands
   * on plates as thick as its brackets, and is shorter by both; they reach 3/8 in past the tube.
   */
  @Test
  void plansPlatesForLegsWhereABarIsInTheWayOfTube() {
    SpringSet set = propose(pickup, FieldValues.none());
    double mountMm = set.shocks().get(0).frame().zMm();
    double topMm = (17.5 + 6) * INCH_MM;
    WorkPlan plan = plan(pickup, FieldValues.none());
    PlateNeed leg =
        plan.plates().stream()
            .filter(plate -> plate.plate().name().equals("coil-over crossmember leg"))
            .findFirst()
            .orElseThrow();
    assertEquals(2, leg.quantity());
    assertEquals(0.25 * INCH_MM, leg.plate().thicknessMm(), 1e-6);
    assertEquals(4 * INCH_MM, leg.plate().outline().bounds().widthMm(), 1e-6);
    assertEquals(
        mountMm + (1.5 + 0.375) * INCH_MM - topMm + 4 * INCH_MM,
        leg.plate().outline().bounds().heightMm(),
        1e-6);
    SpringSet onTube = propose(pickup, ON_TUBE);
    double onTubeMm = crossmember(onTube, ON_TUBE).cutLengthMm();
    FieldValues onPlate = FieldValues.none().with(MountOptions.legs(), "plate");
    double onPlateMm = crossmember(onTube, onPlate).cutLengthMm();
    assertEquals(onTubeMm - 0.5 * INCH_MM, onPlateMm, 1e-6);
  }

  /**
   * 685 lb a corner stand on a tube of 2 x 3 in, 514 lb on 2 in square, and any on what is asked.
   */
  @Test
  void aCornerOfMoreThan550PoundsAsksForADeeperCrossmember() {
    Masses is = pickup.masses();
    Chassis light =
        pickup.withMasses(
            new Masses(
                is.frontAxleKg(),
                0.75 * is.rearLeftKg(),
                0.75 * is.rearRightKg(),
                0.75 * is.rearUnsprungKg(),
                is.centreOfGravityHeightMm()));
    assertEquals(
        "box-2x3x0.188", tube(plan(pickup, FieldValues.none()), "coil-over crossmember").barKey());
    assertEquals(
        "box-2x2x0.188", tube(plan(light, FieldValues.none()), "coil-over crossmember").barKey());
    FieldValues asked = FieldValues.none().with(MountOptions.crossmember(catalog), "box-2x2x0.188");
    assertEquals("box-2x2x0.188", tube(plan(pickup, asked), "coil-over crossmember").barKey());
  }

  /**
   * A corner of 800 lb and more is carried by brackets of 3/8 in, unless the job says otherwise.
   */
  @Test
  void aHeavyCornerAsksForThickerBrackets() {
    double lightMm = plateMm(plan(pickup, FieldValues.none()));
    // (2100 - 380) / 2 = 860 lb a corner, against 685.
    Masses is = pickup.masses();
    Chassis heavy =
        pickup.withMasses(
            new Masses(
                is.frontAxleKg(),
                1.2 * is.rearLeftKg(),
                1.2 * is.rearRightKg(),
                is.rearUnsprungKg(),
                is.centreOfGravityHeightMm()));
    assertEquals(0.25 * INCH_MM, lightMm, 1e-6);
    assertEquals(0.375 * INCH_MM, plateMm(plan(heavy, FieldValues.none())), 1e-6);
  }

  private static double plateMm(WorkPlan plan) {
    return plan.plates().stream()
        .filter(plate -> plate.plate().name().startsWith("coil-over upper tab"))
        .findFirst()
        .orElseThrow()
        .plate()
        .thicknessMm();
  }

  /** 1 1/4 in eye and two plates of 1/4 in. */
  @Test
  void boltsByTheGrip() {
    WorkPlan plan = plan(pickup, FieldValues.none());
    BoltNeed bolt = plan.bolts().get(0);
    assertEquals(1.75 * INCH_MM, bolt.gripMm(), 1e-9);
    assertEquals(4, bolt.quantity());
  }

  @Test
  void boxesOnlyAnOpenRail() {
    assertTrue(hasBoxing(plan(pickup, FieldValues.none())));
    assertFalse(hasBoxing(plan(SampleVehicle.withBoxedRails(pickup), FieldValues.none())));
  }

  private static boolean hasBoxing(WorkPlan plan) {
    return !plan.closings().isEmpty();
  }

  @Test
  void refusesTravelThatNoShockHas() {
    Chassis far = pickup.withTravel(new Travel(7 * INCH_MM, 7 * INCH_MM));
    UnworkableLayoutException refusal =
        assertThrows(UnworkableLayoutException.class, () -> propose(far, FieldValues.none()));
    assertTrue(
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)).contains("stroke of 11 in"),
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)));
  }

  /** The shock of 4 in stroke cannot leave 3/8 in at both ends of 6 in of travel. */
  @Test
  void refusesAShockThatIsTooShortAndNamesTheLength() {
    FieldValues options = FieldValues.none().with(MountOptions.shock(catalog, true), "coil-over-4");
    UnworkableLayoutException refusal =
        assertThrows(UnworkableLayoutException.class, () -> propose(pickup, options));
    assertTrue(
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)).contains("coil-over-4"),
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)));
    assertTrue(
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)).contains("closed"),
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)));
  }

  @Test
  void namesBothSides() {
    SpringSet set = propose(pickup, FieldValues.none());
    assertEquals(
        List.of("spring-left", "spring-right"),
        List.of(set.springs().get(0).name(), set.springs().get(1).name()));
    assertEquals(
        List.of("shock-left", "shock-right"),
        List.of(set.shocks().get(0).name(), set.shocks().get(1).name()));
  }
}
