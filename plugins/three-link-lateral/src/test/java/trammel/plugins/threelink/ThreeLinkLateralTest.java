package trammel.plugins.threelink;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.Check;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Reading;
import trammel.engine.checks.StandardChecks;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
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

/** Three links on the sample pickup, against the rules of the shop and arithmetic done by hand. */
class ThreeLinkLateralTest {
  private static final double INCH_MM = 25.4;
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));
  private static final ThreeLinkLateral LINKAGE = new ThreeLinkLateral();
  private static final Chassis PICKUP = SampleVehicle.pickup();

  private static Site site(FieldValues options) {
    return new Site(PICKUP, options, CATALOG, UnitSystem.US);
  }

  private static FieldValues mounted(String mounting) {
    return FieldValues.none().with(BarOptions.mounting("bars"), mounting);
  }

  private static Layout layout(FieldValues options) {
    return new Layout(
        PICKUP, LINKAGE.propose(site(options)), SampleVehicle.springs(PICKUP), List.of());
  }

  private static WorkPlan plan(FieldValues options) {
    return LINKAGE.plan(new Commission(layout(options), site(options)));
  }

  private static double quantity(WorkPlan plan, String key) {
    return plan.operations().stream()
        .filter(need -> need.operationKey().equals(key))
        .mapToDouble(OperationNeed::quantity)
        .sum();
  }

  private static TubeNeed tube(WorkPlan plan, String name) {
    return plan.tubes().stream().filter(need -> need.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void keepsTheContractOfEveryLinkage() {
    new LinkageContract(LINKAGE, CATALOG, PICKUP).verify();
  }

  @ParameterizedTest
  @CsvSource({"left, 1", "right, -1"})
  void theUpperBarRunsAlongTheRailAskedFor(String side, int sign) {
    Bar upper =
        layout(FieldValues.none().with(ThreeLinkOptions.UPPER_SIDE, side))
            .bar("upper")
            .orElseThrow();
    assertTrue(sign * upper.axle().yMm() > 0, upper.toString());
    assertEquals(upper.axle().yMm(), upper.frame().yMm(), 1e-9);
    assertEquals(18, upper.lengthMm() / INCH_MM, 1e-9);
    assertEquals(4.5, (upper.axle().zMm() - PICKUP.axleCentre().zMm()) / INCH_MM, 1e-9);
  }

  /**
   * Two and a half inches of 3/4 in thread and the cope on a 2 in barrel come off each bar, as in
   * the four-link's hand calculation: 24 - 3 - 0.6614 in and 18 - 3 - 0.6614 in.
   */
  @Test
  void tubesAreCutToTheJointsLessBothEnds() {
    WorkPlan plan = plan(FieldValues.none());
    assertEquals(20.338562, tube(plan, "lower-right").cutLengthMm() / INCH_MM, 1e-5);
    assertEquals(14.338562, tube(plan, "upper").cutLengthMm() / INCH_MM, 1e-5);
    assertEquals(4, plan.tubes().size());
  }

  /** Every bar has two bolts, two brackets and its share of the work; counted by hand. */
  @ParameterizedTest
  @CsvSource({"inboard, 3, 0", "outboard, 0, 3"})
  void everyBarHasItsBoltsBracketsAndOperations(String mounting, double inside, double outside) {
    WorkPlan plan = plan(mounted(mounting));
    assertEquals(8, plan.bolts().stream().mapToInt(bolt -> bolt.quantity()).sum());
    for (Bar bar : layout(mounted(mounting)).bars()) {
      for (End end : End.values()) {
        assertTrue(
            plan.feet().stream()
                .anyMatch(foot -> foot.end() == end && foot.bars().contains(bar.name())),
            bar.name() + " " + end);
      }
    }
    assertEquals(4, quantity(plan, "make-bar"), 1e-9);
    assertEquals(3, quantity(plan, "fit-axle-bracket"), 1e-9);
    assertEquals(inside, quantity(plan, "fit-frame-bracket"), 1e-9);
    assertEquals(outside, quantity(plan, "fit-outrigger"), 1e-9);
    assertEquals(1, quantity(plan, "fit-lateral-bar"), 1e-9);
    assertEquals(8, quantity(plan, "saw-tube"), 1e-9);
  }

  /** The rail without an upper bar is boxed behind the lower bracket and the lateral bar's only. */
  @Test
  void theRailWithoutTheUpperBarHasNoBracketOfIt() {
    WorkPlan plan = plan(FieldValues.none());
    List<String> uppers =
        plan.plates().stream()
            .map(PlateNeed::plate)
            .map(plate -> plate.name())
            .filter(name -> name.startsWith("upper"))
            .toList();
    assertTrue(uppers.contains("upper axle bracket side"), uppers.toString());
    assertTrue(uppers.stream().noneMatch(name -> name.contains("-left")), uppers.toString());
  }

  /** Four bars hold the four freedoms that heave and roll leave: nothing is held twice. */
  @ParameterizedTest
  @ValueSource(strings = {"inboard", "outboard"})
  void nothingBinds(String mounting) {
    Reading.Value bind =
        assertInstanceOf(Reading.Value.class, read("bar-bind", layout(mounted(mounting))));
    assertEquals(0, bind.value(), 1e-6);
    assertInstanceOf(
        Reading.NotApplicable.class, read("upper-bar-match", layout(mounted(mounting))));
  }

  private static Reading read(String id, Layout layout) {
    Check check =
        StandardChecks.all().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    return check.read(new LayoutAnalysis(layout, CATALOG.analysis()));
  }

  @Test
  void refusesALowerJointThatTouchesTheAxleTube() {
    // Tube radius 1 1/2 in, barrel radius 1 in, air 1/4 in: 2 3/4 in at least.
    FieldValues options = FieldValues.none().with(BarOptions.LOWER_DROP, 2 * INCH_MM);
    String message =
        assertThrows(UnworkableLayoutException.class, () -> LINKAGE.propose(site(options)))
            .reason()
            .in(new QuantityPrinter(UnitSystem.US));
    assertTrue(message.contains("needs 2 3/4 in"), message);
    assertTrue(message.contains("lower_drop"), message);
  }
}
