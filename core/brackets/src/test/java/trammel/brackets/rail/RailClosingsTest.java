package trammel.brackets.rail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.assembly.SeamRun;
import trammel.brackets.SampleBars;
import trammel.brackets.SampleBasis;
import trammel.brackets.mount.Crossmember;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.Arc;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Point2;
import trammel.trade.welding.WeldSeam;

/**
 * Rails of 150 x 4 mm, straight and level, 390 mm from the centre plane to their inner faces. A
 * crossmember 50 mm wide 800 mm ahead of the axle asks for both rails to be closed from 724.2 to
 * 875.8 mm: half its width and 50.8 mm to each side.
 */
class RailClosingsTest {
  private static final double HEIGHT_MM = 138.825;

  private static WorkPlan crossmember() {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    new Crossmember("tube", SampleBasis.rails(false), SampleBars.mountStock(), 800, 500)
        .addTo(plan, Phrase.of("carries something"));
    return plan.build();
  }

  private static WorkPlan closed(WorkPlan plan) {
    return RailClosings.closed(plan, SampleBasis.rails(false), Optional.empty());
  }

  private static double quantity(WorkPlan plan, String key) {
    return plan.operations().stream()
        .filter(need -> need.operationKey().equals(key))
        .mapToDouble(OperationNeed::quantity)
        .sum();
  }

  private static double flangeWeldsMm(WorkPlan plan) {
    return plan.welds().stream()
        .filter(weld -> weld.name().endsWith("to flanges"))
        .mapToDouble(weld -> weld.totalLengthMm())
        .sum();
  }

  /**
   * A bracket from 650 to 700 mm asks for 599.2 to 750.8 mm on the left: over the crossmember's.
   */
  @Test
  void platesOfABracketAndOfACrossmemberThatOverlapAreOne() {
    Footprint bracket = new Footprint(true, 650, 700, "lower-left bracket");
    WorkPlan bars = RailBoxing.local(List.of(bracket), SampleBasis.of(false)).plan();

    WorkPlan plan = closed(bars.plus(crossmember()));

    List<PlateNeed> plates = plan.plates();
    assertEquals(2, plates.size());
    // 599.2 to 875.8 mm as one on the left; the right one stays as it was.
    assertEquals("left rail shared boxing plate", plates.get(0).plate().name());
    assertEquals(276.6, plates.get(0).plate().outline().areaMm2() / HEIGHT_MM, 1e-6);
    assertEquals(599.2, plates.get(0).places().get(0).place().origin().xMm(), 1e-6);
    assertEquals(151.6, plates.get(1).plate().outline().areaMm2() / HEIGHT_MM, 1e-6);
    assertEquals(2 * (276.6 + 151.6), flangeWeldsMm(plan), 1e-6);
    assertEquals(2, quantity(plan, "fit-local-boxing"));
    assertEquals(2, quantity(plan, "dress-plate"));
    String why = plates.get(0).why().in(SampleBasis.PRINT);
    assertTrue(why.contains("lower-left bracket") && why.contains("tube"), why);
  }

  /** What was to be welded to a plate of its own is welded to the plate that is there. */
  @Test
  void weldsNameThePlateThatIsThere() {
    Footprint bracket = new Footprint(true, 650, 700, "lower-left bracket");
    WorkPlan bars = RailBoxing.along(List.of(bracket), List.of(), SampleBasis.of(false)).plan();

    WorkPlan plan = closed(bars.plus(crossmember()));

    Set<String> onto =
        plan.welds().stream()
            .filter(weld -> weld.name().equals("tube to rail"))
            .flatMap(weld -> weld.runs().stream())
            .flatMap(run -> ((SeamRun) run).onto().stream())
            .collect(Collectors.toSet());
    assertEquals(
        Set.of(
            "left rail shared boxing plate", "tube boxing plate, right", "left rail", "right rail"),
        onto);
    // The long plate is counted by its length: 276.6 mm at 304.8 mm a foot; the right one as one.
    assertEquals(276.6 / 304.8, quantity(plan, "box-rail"), 1e-9);
    assertEquals(1, quantity(plan, "fit-local-boxing"));
  }

  /** From 599.2 mm on: a third stretch that meets both of two makes one plate of all three. */
  @Test
  void aStretchBetweenTwoJoinsThem() {
    Footprint rear = new Footprint(true, 300, 400, "rear bracket");
    Footprint between = new Footprint(true, 500, 640, "middle bracket");
    WorkPlan apart =
        RailBoxing.local(List.of(rear), SampleBasis.of(false)).plan().plus(crossmember());
    WorkPlan middle = RailBoxing.local(List.of(between), SampleBasis.of(false)).plan();

    assertEquals(2, closed(apart).plates().size());
    WorkPlan plan = closed(apart.plus(middle));

    assertEquals(
        List.of("left rail shared boxing plate", "tube boxing plate"),
        plan.plates().stream().map(need -> need.plate().name()).toList());
    assertEquals(875.8 - 249.2, plan.plates().get(0).plate().outline().areaMm2() / HEIGHT_MM, 1e-6);
  }

  /**
   * The rails are 150 mm deep: 149 mm are not left open between two plates, 151 mm are. Common
   * practice, no source.
   */
  @ParameterizedTest
  @CsvSource({"149, 1", "151, 2"})
  void lessThanTheRailsDepthIsNotLeftOpen(double openMm, int plates) {
    Footprint rear = new Footprint(true, 300, 400, "rear bracket");
    double frontMm = 400 + 2 * 50.8 + openMm;
    Footprint front = new Footprint(true, frontMm, frontMm + 100, "front bracket");

    WorkPlan plan = closed(RailBoxing.local(List.of(rear, front), SampleBasis.of(false)).plan());

    assertEquals(plates, plan.plates().size());
  }

  /** A cut of 80 mm radius, as deep, over the axle. */
  private static final Optional<Arc> NOTCH =
      Optional.of(Arc.about(new Point2(0, 0), 80, Math.PI, -Math.PI));

  /**
   * A bracket from -100 to 0 mm asks for -150.8 to 50.8 mm: across the notch. The plate's lower
   * edge is 4 mm of wall and 1.5875 mm of gap over the rail's, so the cut is there 79.805 mm to
   * each side of the axle: 70.995 mm of edge are left behind it, and none ahead of it.
   */
  @Test
  void aPlateAcrossTheNotchIsCutOutWithTheRail() {
    Footprint bracket = new Footprint(true, -100, 0, "lateral-bar bracket");
    WorkPlan bars = RailBoxing.local(List.of(bracket), SampleBasis.of(false)).plan();

    WorkPlan plan = RailClosings.closed(bars, SampleBasis.rails(false), NOTCH);

    // Under the arc from -79.805 to 50.8 mm, over the plate's lower edge.
    double upMm = 4 + 1.5875;
    double fromMm = -Math.sqrt(80 * 80 - upMm * upMm);
    double cutMm2 = underCircle(50.8) - underCircle(fromMm) - (50.8 - fromMm) * upMm;
    Outline outline = plan.plates().get(0).plate().outline();
    assertEquals(201.6 * HEIGHT_MM - cutMm2, outline.areaMm2(), 1e-3);
    String name = plan.plates().get(0).plate().name();
    assertEquals(201.6, weldMm(plan, name + " to upper flange"), 1e-3);
    assertEquals(70.995, weldMm(plan, name + " to lower flange behind the notch"), 1e-3);
    assertEquals(2, plan.welds().size());
  }

  /** Integral of √(80² - x²) from 0 to x. */
  private static double underCircle(double x) {
    return (x * Math.sqrt(80 * 80 - x * x) + 80 * 80 * Math.asin(x / 80)) / 2;
  }

  private static double weldMm(WorkPlan plan, String name) {
    return plan.welds().stream()
        .filter(weld -> weld.name().equals(name))
        .mapToDouble(WeldSeam::totalLengthMm)
        .sum();
  }

  @Test
  void aPlanThatAsksForNothingStaysAsItIs() {
    assertSame(WorkPlan.NONE, closed(WorkPlan.NONE));
  }
}
