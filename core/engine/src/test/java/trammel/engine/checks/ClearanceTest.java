package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.checks.SampleLayout.INCH;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.engine.checks.CheckResult.Judged;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.ClearancePair;
import trammel.engine.clearance.ClearanceSweep;
import trammel.engine.clearance.Gap;
import trammel.engine.clearance.LeastGap;
import trammel.engine.clearance.Shape;
import trammel.engine.clearance.Sphere;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Obstacle;
import trammel.engine.layout.ObstacleKind;
import trammel.engine.layout.Rails;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class ClearanceTest {

  private static Layout withObstacles(Obstacle... obstacles) {
    Chassis chassis = SampleLayout.chassis();
    return SampleLayout.good()
        .withChassis(
            new Chassis(
                chassis.wheelbaseLeftMm(),
                chassis.wheelbaseRightMm(),
                chassis.masses(),
                chassis.traction(),
                chassis.tyre(),
                chassis.axle(),
                chassis.rails(),
                chassis.driveline(),
                List.of(obstacles),
                chassis.travel()));
  }

  /** A block over the middle of the axle, its lower face at a height. */
  private static Obstacle block(ObstacleKind kind, double undersideIn) {
    Shape shape =
        Box.between(
            -4 * INCH, 4 * INCH, -5 * INCH, 5 * INCH, undersideIn * INCH, (undersideIn + 1) * INCH);
    return new Obstacle("block", kind, shape);
  }

  /** By hand: tube top 14.5 + 1.5 = 16 in and 3.5 in of bump leave 20 - 19.5 = 0.5 in. */
  @Test
  void theGapToWhatStandsOverTheAxleIsWhatTheBumpLeaves() {
    Reading.Value gap =
        SampleLayout.reading(withObstacles(block(ObstacleKind.OTHER, 20)), "clearance-moving");

    assertEquals(0.5, gap.value() / INCH, 2e-3);
    assertEquals("axle tube to the block, both wheels at full bump", gap.where().toString());
  }

  /** By hand: 19 - 19.5 = -0.5 in. What can be moved is no reason to stop. */
  @Test
  void anExhaustInTheWayIsToldAndDoesNotStop() {
    Layout layout = withObstacles(block(ObstacleKind.EXHAUST, 19));
    Judge judge = new Judge(StandardChecks.all(), SampleLayout.limits(), SampleLayout.settings());

    for (CheckResult result : judge.judge(layout)) {
      if (result.id().equals("clearance-obstacles")) {
        Judged judged = (Judged) result;
        assertEquals(-0.5, judged.value() / INCH, 2e-3);
        assertEquals(Verdict.LOOK_AGAIN, judged.verdict());
        assertTrue(
            judged.where().toString().startsWith("axle tube runs into the block"),
            judged.where().toString());
        return;
      }
    }
    throw new AssertionError("clearance-obstacles was not judged");
  }

  /** What strikes a tank or a fuel line may set the vehicle on fire. */
  @ParameterizedTest
  @EnumSource(
      value = ObstacleKind.class,
      names = {"TANK", "FUEL_LINE"})
  void aStruckTankOrFuelLineStops(ObstacleKind kind) {
    Layout layout = withObstacles(block(kind, 19));
    Judge judge = new Judge(StandardChecks.all(), SampleLayout.limits(), SampleLayout.settings());

    Judged judged = judged(judge.verdicts(layout), "clearance-fuel");
    assertEquals(-0.5, judged.value() / INCH, 2e-3);
    assertEquals(Verdict.STOP, judged.verdict());
    assertTrue(judged.advice().startsWith("Move the tank or line"), judged.advice());
  }

  private static Judged judged(List<CheckResult> results, String id) {
    return (Judged)
        results.stream().filter(result -> result.id().equals(id)).findFirst().orElseThrow();
  }

  /** Blocks half an inch and an inch into the tube's way: both are told, the worse first. */
  @Test
  void everyPairThatTouchesIsTold() {
    Layout layout =
        withObstacles(
            block(ObstacleKind.EXHAUST, 19),
            block(ObstacleKind.EXHAUST, 18.5),
            block(ObstacleKind.EXHAUST, 22));
    Judge judge = new Judge(StandardChecks.all(), SampleLayout.limits(), SampleLayout.settings());

    List<Detail> touching = judged(judge.verdicts(layout), "clearance-obstacles").details();
    assertTrue(touching.size() >= 2, touching.toString());
    for (int i = 0; i < touching.size(); i++) {
      assertTrue(touching.get(i).value() <= 0, touching.toString());
      assertTrue(i == 0 || touching.get(i).value() >= touching.get(i - 1).value());
    }
    List<String> tube =
        touching.stream()
            .map(Detail::words)
            .filter(words -> words.startsWith("axle tube runs into the block"))
            .toList();
    assertEquals(2, tube.size(), touching.toString());
  }

  @Test
  void twoObstaclesMayHaveOneName() {
    Layout layout = withObstacles(block(ObstacleKind.OTHER, 22), block(ObstacleKind.OTHER, 20));

    assertEquals(0.5, SampleLayout.value(layout, "clearance-moving") / INCH, 2e-3);
  }

  /** A wheel house is over the tyre where a floor is drawn as a plain block. */
  @Test
  void aTyreIsNotHeldAgainstTheFloor() {
    Shape floor = Box.between(-400, 400, -40 * INCH, 40 * INCH, 27 * INCH, 28 * INCH);
    Obstacle bed = new Obstacle("bed floor", ObstacleKind.BED_FLOOR, floor);

    // The tyre's top comes to 14.5 + 15 + 3.5 = 33 in; the tube's top to 19.5 in.
    assertTrue(SampleLayout.value(withObstacles(bed), "clearance-obstacles") > -4 * INCH);
  }

  /** A bar hangs in a bracket on its rail: what runs inside the bracket is no finding. */
  @Test
  void aBarIsNotHeldAgainstTheRailAtItsOwnBracket() {
    double inRailMm = SampleLayout.chassis().rails().innerFaceMm(18 * INCH) + 10;
    Layout layout = SampleLayout.good();
    for (Bar bar : layout.upper()) {
      double outMm = inRailMm - Math.abs(bar.frame().yMm());
      layout =
          new Adjustment.MoveEnds(Set.of(bar.name()), End.FRAME, Direction.OUTBOARD)
              .apply(layout, outMm);
      layout =
          new Adjustment.MoveEnds(Set.of(bar.name()), End.FRAME, Direction.UP)
              .apply(layout, 4 * INCH);
      layout =
          new Adjustment.MoveEnds(Set.of(bar.name()), End.AXLE, Direction.OUTBOARD)
              .apply(layout, -9 * INCH);
    }

    Reading.Value gap = SampleLayout.reading(layout, "clearance-moving");

    assertTrue(gap.value() > 0, gap.value() + " " + gap.where().toString());
  }

  /** A bar that runs across the other rail's corner is a finding even close to its axle joint. */
  @Test
  void aLateralBarUnderTheFarRailIsHeldAgainstIt() {
    Layout high =
        new Adjustment.MoveEnds(Set.of("lateral-bar"), End.AXLE, Direction.UP)
            .apply(SampleLayout.good(), 2 * INCH);

    Reading.Value gap = SampleLayout.reading(high, "clearance-moving");

    assertTrue(gap.value() < 0, gap.value() + " " + gap.where().toString());
    assertTrue(
        gap.where().toString().startsWith("lateral-bar runs into right rail"),
        gap.where().toString());
  }

  /** By hand: the notch raises the rail's underside over the axle by its depth, 2 in. */
  @Test
  void theRailIsHollowInItsNotch() {
    Rails rails = SampleLayout.chassis().rails().withNotchDepth(2 * INCH);
    Chassis notched = SampleLayout.chassis().withRails(rails);
    double middleMm = rails.outerFaceMm(0) - rails.flangeMm() / 2;
    Sphere ball = new Sphere(new Point3(0, middleMm, rails.undersideMm(0) + 10), 5);

    double leastMm = Double.POSITIVE_INFINITY;
    for (Body block : new RailBlocks(notched).of(true)) {
      leastMm = Math.min(leastMm, Gap.between(ball, block.shape()).gapMm());
    }

    assertEquals(2 * INCH - 10 - 5, leastMm, 0.1);
  }

  /** The short way over rooms leaves out no pair that could be the tightest, overlaps included. */
  @Seeds(25)
  void noTighterPairIsLeftOut(Draw draw) {
    double springForwardIn = draw.between(-3, 3);
    double springOutIn = draw.between(-3, 3);
    double lateralUpIn = draw.between(-2, 2);
    Set<String> springs = Set.of("spring-left", "spring-right", "shock-left", "shock-right");
    Layout layout =
        new Adjustment.MoveEnds(springs, End.AXLE, Direction.FORWARD)
            .apply(SampleLayout.good(), springForwardIn * INCH);
    layout =
        new Adjustment.MoveEnds(springs, End.FRAME, Direction.OUTBOARD)
            .apply(layout, springOutIn * INCH);
    layout =
        new Adjustment.MoveEnds(Set.of("lateral-bar"), End.FRAME, Direction.UP)
            .apply(layout, lateralUpIn * INCH);
    ClearanceBodies bodies = new ClearanceBodies(layout);
    LayoutAnalysis analysis = new LayoutAnalysis(layout, SampleLayout.settings());

    double leastMm = Double.POSITIVE_INFINITY;
    for (int i = 0; i < bodies.moving().size(); i++) {
      for (int k = i + 1; k < bodies.moving().size(); k++) {
        leastMm = Math.min(leastMm, leastMm(bodies, i, k, analysis));
      }
    }

    double found = SampleLayout.value(layout, "clearance-between");
    assertTrue(found <= leastMm + 1e-6 && found > leastMm - 2, found + " against " + leastMm);
  }

  /**
   * The lateral bar runs 6 in behind the axle's line, square to it: a housing that reaches d
   * further leaves d less between the two.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.25, 0.5, 1.0})
  void aLargerHousingLeavesThatMuchLess(double largerIn) {
    double leftMm = SampleLayout.value(barBehind(4), "clearance-housing");
    double lessMm = SampleLayout.value(barBehind(4 + largerIn), "clearance-housing");
    assertEquals(largerIn * INCH, leftMm - lessMm, 0.01 * INCH);
  }

  private static Layout barBehind(double housingIn) {
    Layout layout = SampleLayout.withHousing(OptionalDouble.of(housingIn * INCH));
    for (End end : End.values()) {
      layout =
          new Adjustment.MoveEnds(Set.of("lateral-bar"), end, Direction.FORWARD)
              .apply(layout, 4 * INCH);
    }
    return layout;
  }

  /** 6 in, from memory, where nobody measured it. */
  @Test
  void aHousingThatIsNotMeasuredIsTakenAtItsUsualRadiusAndSaysSo() {
    Layout unmeasured = SampleLayout.withHousing(OptionalDouble.empty());
    Reading assumed = SampleLayout.readingOrReason(unmeasured, "clearance-housing");
    Reading measured =
        SampleLayout.readingOrReason(
            SampleLayout.withHousing(OptionalDouble.of(6 * INCH)), "clearance-housing");
    Reading.Value taken = (Reading.Value) assumed;
    assertEquals(((Reading.Value) measured).value(), taken.value(), 1e-9);
    assertTrue(
        taken.where().toString().contains("give measured.axle.housing_radius"),
        taken.where().toString());
    assertFalse(((Reading.Value) measured).where().toString().contains("housing_radius"));
  }

  private static double leastMm(
      ClearanceBodies bodies, int first, int second, LayoutAnalysis analysis) {
    Body one = bodies.moving().get(first);
    Body other = bodies.moving().get(second);
    boolean onAxle =
        one.carrier() == other.carrier() && one.carrier() == trammel.engine.clearance.Carrier.AXLE;
    if (onAxle) {
      return Double.POSITIVE_INFINITY;
    }
    return ClearancePair.of(one, other, bodies.joints())
        .map(pair -> new ClearanceSweep(List.of(pair), 0, 1).over(analysis.envelope()).get(0))
        .map(LeastGap::gap)
        .map(Gap::gapMm)
        .orElse(Double.POSITIVE_INFINITY);
  }
}
