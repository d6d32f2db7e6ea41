package trammel.plugins.triangulated;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.rail.RailClosings;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.Check;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Judge;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Reading;
import trammel.engine.checks.StandardChecks;
import trammel.engine.checks.Verdict;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Rails;
import trammel.engine.motion.AxlePose;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.extension.Commission;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;
import trammel.planning.extension.kit.LinkageContract;
import trammel.planning.extension.kit.SampleVehicle;
import trammel.planning.options.BarOptions;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/** Proposed layouts against the rules of the shop and against arithmetic done by hand. */
class TriangulatedTest {
  private static final double INCH_MM = 25.4;
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));
  private static final Triangulated LINKAGE = new Triangulated();
  private static final Chassis CHASSIS = SampleVehicle.pickup();

  private static FieldValues mounted(String mounting) {
    return FieldValues.none().with(BarOptions.mounting("lower bars"), mounting);
  }

  private static FieldValues set(String key, double inches) {
    for (Field<?> field : LINKAGE.options(CATALOG)) {
      if (field.key().equals(key)) {
        @SuppressWarnings("unchecked")
        Field<Double> length = (Field<Double>) field;
        return FieldValues.none().with(length, inches * INCH_MM);
      }
    }
    throw new IllegalArgumentException("no option " + key);
  }

  private static Site site(Chassis chassis, FieldValues options) {
    return new Site(chassis, options, CATALOG, UnitSystem.US);
  }

  private static Layout layout(Chassis chassis, FieldValues options) {
    return layout(chassis, LINKAGE.propose(site(chassis, options)).bars());
  }

  private static Layout layout(Chassis chassis, List<Bar> bars) {
    return new Layout(chassis, bars, SampleVehicle.springs(chassis), List.of());
  }

  private static WorkPlan plan(Chassis chassis, FieldValues options) {
    WorkPlan plan = LINKAGE.plan(new Commission(layout(chassis, options), site(chassis, options)));
    return RailClosings.closed(plan, chassis.rails(), Optional.empty());
  }

  private static PlateNeed plate(WorkPlan plan, String name) {
    return plan.plates().stream()
        .filter(need -> need.plate().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static double quantity(WorkPlan plan, String operationKey) {
    return plan.operations().stream()
        .filter(need -> need.operationKey().equals(operationKey))
        .mapToDouble(OperationNeed::quantity)
        .sum();
  }

  @Test
  void keepsTheContractOfEveryLinkage() {
    new LinkageContract(LINKAGE, CATALOG, CHASSIS).verify();
  }

  @Test
  void upperBarsStartTheSpreadApartAndHaveTheLengthAskedFor() {
    Layout layout = layout(CHASSIS, FieldValues.none());
    Bar left = layout.bar("upper-left").orElseThrow();
    Bar right = layout.bar("upper-right").orElseThrow();
    assertEquals(6, (left.axle().yMm() - right.axle().yMm()) / INCH_MM, 1e-9);
    assertEquals(18, left.lengthMm() / INCH_MM, 1e-9);
    assertEquals(-1.5, Math.toDegrees(left.axle().to(left.frame()).sideViewRad()), 1e-9);
  }

  @Test
  void upperJointsAreRaisedUntilTheirBracketsFindAFlatOnAShallowRail() {
    // The housing asks for 7 3/4 in. On a rail of 4 in depth, 18 1/2 in off the ground and .15 in
    // thick, the flat begins at 18.9 in; a bracket that stands on 1 1/2 in of it has its joint at
    // least 1 1/4 in higher, at 21.65 in. The bar falls by tan 1.5 deg on its way forward.
    Chassis raised = SampleVehicle.withRailsMoved(CHASSIS, 0, INCH_MM);
    Rails deep = raised.rails();
    Rails shallow =
        new Rails(
            deep.boxed(),
            deep.outsideAtAxleMm(),
            deep.outsideAtFrontMm(),
            deep.undersideAtAxleMm(),
            deep.undersideAtFrontMm(),
            deep.frontMountsForwardMm(),
            4 * INCH_MM,
            deep.flangeMm(),
            deep.wallMm(),
            0);
    Bar bar = layout(raised.withRails(shallow), FieldValues.none()).bar("upper-left").orElseThrow();
    double least = 21.65 + bar.frame().xMm() / INCH_MM * Math.tan(Math.toRadians(1.5)) - 14.5;
    assertEquals(Math.ceil(4 * least) / 4, bar.axle().zMm() / INCH_MM - 14.5, 1e-6);
  }

  @Test
  void upperFrameBracketKeepsTheGapToTheRail() {
    // The bracket, turned by the bar's plan angle p, takes (2.5 cos p + base sin p) / 2 to its
    // side; base 2 (0.867188 + 1.25 tan 30 deg) = 3.177751 in. Then 1/2 in to the inner face,
    // which is 16.25 - x/26 in out.
    Bar left = layout(CHASSIS, FieldValues.none()).bar("upper-left").orElseThrow();
    double plan = left.axle().to(left.frame()).planViewRad();
    double half = (2.5 * Math.cos(plan) + 3.177751 * Math.sin(plan)) / 2;
    double face = 16.25 - left.frame().xMm() / INCH_MM / 26;
    assertEquals(face - 0.5 - half, left.frame().yMm() / INCH_MM, 1e-5);
  }

  @ParameterizedTest
  @ValueSource(strings = {"inboard", "outboard"})
  void checksOfTheBarsAreGood(String mounting) {
    List<String> ofTheBars =
        List.of(
            "lower-bar-angle",
            "upper-bar-angle",
            "lower-bar-match",
            "upper-bar-match",
            "lateral-shift",
            "linkage-reach",
            "anti-squat",
            "roll-steer",
            "upper-bar-plan-angle");
    List<Check> checks = new ArrayList<>(StandardChecks.all());
    Map<String, Limit> limits = new HashMap<>(CATALOG.limits());
    for (LimitedCheck own : LINKAGE.checks()) {
      checks.add(own.check());
      limits.put(own.check().id(), own.limit());
    }
    int judged = 0;
    for (CheckResult result :
        new Judge(checks, limits, CATALOG.analysis()).judge(layout(CHASSIS, mounted(mounting)))) {
      if (result instanceof CheckResult.Judged found && ofTheBars.contains(found.id())) {
        assertEquals(Verdict.GOOD, found.verdict(), found.toString());
        judged++;
      }
    }
    assertEquals(ofTheBars.size(), judged);
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, -3})
  void axleStaysCentralThroughItsTravelWithLittlePinionTurn(double heaveInches) {
    Layout layout = layout(CHASSIS, FieldValues.none());
    AxlePose pose = layout.motion().solve(heaveInches * INCH_MM, 0).found().orElseThrow();
    // Mirror symmetry: in pure heave nothing pushes the axle to a side.
    assertEquals(0, pose.lateralMm(), 1e-6);
    assertTrue(Math.abs(pose.pitchNoseUpRad()) < Math.toRadians(3), pose.toString());
  }

  @ParameterizedTest
  @CsvSource({"30, 60, GOOD", "20, 40, LOOK_AGAIN", "15, 30, STOP"})
  void planAngleIsTwiceTheAngleOfOneBarToTheCentrePlane(
      double halfDeg, double angleDeg, Verdict verdict) {
    Layout layout = layout(CHASSIS, FieldValues.none());
    double forwardMm = 500;
    List<Bar> bars = new ArrayList<>(layout.bars());
    bars.replaceAll(
        bar ->
            bar.name().startsWith("upper")
                ? bar.withPoint(End.FRAME, turned(bar.axle(), forwardMm, halfDeg))
                : bar);
    LimitedCheck own = LINKAGE.checks().get(0);
    Reading.Value value =
        (Reading.Value)
            own.check().read(new LayoutAnalysis(layout(CHASSIS, bars), CATALOG.analysis()));
    assertEquals(angleDeg, Math.toDegrees(value.value()), 1e-9);
    assertEquals(verdict, own.limit().verdict(value.value()));
  }

  private static Point3 turned(Point3 axle, double forwardMm, double halfDeg) {
    double acrossMm = Math.copySign(forwardMm * Math.tan(Math.toRadians(halfDeg)), axle.yMm());
    return new Point3(forwardMm, axle.yMm() + acrossMm, axle.zMm());
  }

  // No room

  @Test
  void refusesABridgeThatWouldTouchTheHousing() {
    // Housing 5 in, air 1/4, webs 1, deck 1/4, joint over the deck 1 1/4: 7 3/4 in at least.
    UnworkableLayoutException refusal =
        assertThrows(
            UnworkableLayoutException.class,
            () -> LINKAGE.propose(site(CHASSIS, set("upper_rise", 7))));
    assertTrue(
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)).contains("need 7 3/4 in"),
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)));
  }

  @Test
  void refusesUpperBarsTooShortToReachTheRails() {
    UnworkableLayoutException refusal =
        assertThrows(
            UnworkableLayoutException.class,
            () -> LINKAGE.propose(site(CHASSIS, set("upper_length", 10))));
    assertTrue(
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)).contains("upper_length longer"),
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)));
  }

  @Test
  void refusesJointsTooCloseTogetherOverTheHousing() {
    UnworkableLayoutException refusal =
        assertThrows(
            UnworkableLayoutException.class,
            () -> LINKAGE.propose(site(CHASSIS, set("upper_spread", 3))));
    assertTrue(
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)).contains("upper_spread"),
        refusal.reason().in(new QuantityPrinter(UnitSystem.US)));
  }

  // Work

  @Test
  void nothingIsWeldedToTheHousing() {
    WorkPlan plan = plan(CHASSIS, set("upper_rise", 8));
    PlateNeed deck = plate(plan, "housing bridge deck");
    assertTrue(deck.why().mentions("usually cast"), deck.why().toString());
    // Webs from inner leg to inner leg, 6 1/2 in either side; under a deck whose top is 8 - 1 1/4
    // in up they are 6.75 - 0.25 - 5 - 0.25 = 1 1/4 in deep.
    PlateNeed web = plate(plan, "housing bridge web");
    assertEquals(13, web.plate().outline().bounds().widthMm() / INCH_MM, 1e-9);
    assertEquals(1.25, web.plate().outline().bounds().heightMm() / INCH_MM, 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "inboard, fit-frame-bracket, 2",
    "inboard, fit-outrigger, 2",
    "outboard, fit-outrigger, 4",
    "outboard, fit-frame-bracket, 0",
    "inboard, fit-axle-bracket, 4",
    "inboard, fit-lateral-bar, 0",
    "inboard, make-bar, 4",
    "outboard, box-rail, 0"
  })
  void operationsAreCountedFromTheLayout(String mounting, String operation, double quantity) {
    assertEquals(quantity, quantity(plan(CHASSIS, mounted(mounting)), operation), 1e-9);
  }

  @Test
  void upperBracketNeedsBoxingBehindIt() {
    // Shelf of the turned bracket: 3.177751 cos p + 2.5 sin p along the rail, half of it behind
    // the joint, and 2 in of lead.
    FieldValues inboard = mounted("inboard");
    Bar upper = layout(CHASSIS, inboard).bar("upper-left").orElseThrow();
    double plan = upper.axle().to(upper.frame()).planViewRad();
    double shelf = 3.177751 * Math.cos(plan) + 2.5 * Math.sin(plan);
    double rear = upper.frame().xMm() / INCH_MM - shelf / 2 - 2;
    // Lower joint 24 cos 1 deg ahead, base 2 (0.867188 + 5.981142 tan 30 deg) = 8.640806 in.
    double front = 24 * Math.cos(Math.toRadians(1)) + 8.640806 / 2 + 2;
    double run = (front - rear) * Math.sqrt(1 + 1 / 676.0);
    PlateNeed boxing = plate(plan(CHASSIS, inboard), "left rail boxing plate");
    assertEquals(run, boxing.plate().outline().bounds().widthMm() / INCH_MM, 1e-4);
  }
}
