package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.checks.SampleLayout.INCH;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trammel.engine.checks.CheckResult.Judged;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Direction;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Travel;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class JudgeTest {
  private final Judge judge =
      new Judge(StandardChecks.all(), SampleLayout.limits(), SampleLayout.settings());

  private Judged judged(Layout layout, String id) {
    for (CheckResult result : judge.judge(layout)) {
      if (result.id().equals(id) && result instanceof Judged judged) {
        return judged;
      }
    }
    throw new AssertionError("check " + id + " was not judged");
  }

  private static Layout moved(String name, End end, Direction direction, double inches) {
    return new Adjustment.MoveEnds(Set.of(name), end, direction)
        .apply(SampleLayout.good(), inches * INCH);
  }

  @Test
  void everyCheckOfAGoodLayoutIsJudgedButThoseOfNotchObstaclesAirSpringsLoadAndBlows() {
    List<CheckResult> results = judge.judge(SampleLayout.good());

    assertEquals(StandardChecks.all().size() - 21, results.size());
    for (CheckResult result : results) {
      if (result.id().equals("bump-travel-loaded")) {
        continue;
      }
      Judged judged = (Judged) result;
      assertTrue(judged.verdict() != Verdict.STOP, judged.id() + " " + judged.value());
    }
  }

  /** An order over many jobs reads the verdicts only; they must be those that a quote prints. */
  @Test
  void verdictsAreTheSameWithoutChangesTried() {
    Layout layout = moved("lower-left", End.FRAME, Direction.FORWARD, 0.25);
    List<CheckResult> full = judge.judge(layout);
    List<CheckResult> quick = judge.verdicts(layout);

    assertEquals(full.size(), quick.size());
    for (int i = 0; i < full.size(); i++) {
      assertEquals(full.get(i).id(), quick.get(i).id());
      if (full.get(i) instanceof Judged with && quick.get(i) instanceof Judged without) {
        assertEquals(with.verdict(), without.verdict(), with.id());
        assertEquals(with.value(), without.value(), with.id());
        assertTrue(without.change().isEmpty(), without.id());
      }
    }
  }

  /** By hand: 0.4 in over 24 in is atan(0.4/24) = 0.9548 deg. */
  @Test
  void theBarAngleIsTheSideViewSlope() {
    assertEquals(
        0.9548, Math.toDegrees(judged(SampleLayout.good(), "lower-bar-angle").value()), 1e-4);
  }

  /** By hand: an end moved 1/4 in along its 24 in bar makes it 0.25 cos(0.955 deg) longer. */
  @Test
  void aBarMovedForwardNoLongerMatchesItsTwin() {
    Judged match =
        judged(moved("lower-left", End.FRAME, Direction.FORWARD, 0.25), "lower-bar-match");

    assertEquals(0.25 * Math.cos(Math.atan(0.4 / 24)), match.value() / INCH, 1e-4);
    assertEquals(Verdict.STOP, match.verdict());
    assertEquals("lower-left is the longest", match.where().toString());
  }

  /**
   * By hand: a level bar of 36 in over the axle's line gives 36 - sqrt(36^2 - 3.5^2) = 0.1705 in at
   * 3.5 in of bump, as in the pure geometry of the lateral bar's arc.
   */
  @Test
  void theLateralBarsArcShiftsTheAxle() {
    Layout overTheAxle =
        new Adjustment.MoveEnds(Set.of("lateral-bar"), End.AXLE, Direction.FORWARD)
            .apply(moved("lateral-bar", End.FRAME, Direction.FORWARD, 10), 10 * INCH);

    Judged shift = judged(overTheAxle, "lateral-shift");

    assertEquals(36 - Math.sqrt(36 * 36 - 3.5 * 3.5), shift.value() / INCH, 2e-3);
  }

  /**
   * By hand: tube top 14.5 + 1.5 = 16 in, underside 20.5 in, less 3.5 in of bump: 1.0 in; the
   * rail's own slope takes 0.003.
   */
  @Test
  void theGapToTheRailIsWhatTheTravelLeaves() {
    Judged gap = judged(SampleLayout.good(), "axle-to-rail");

    assertEquals(1.0, gap.value() / INCH, 5e-3);
  }

  @Test
  void theRailStopsTheAxleBeforeTheBumpStop() {
    Layout low =
        SampleLayout.good()
            .withChassis(SampleLayout.chassis().withTravel(new Travel(6 * INCH, 3 * INCH)));

    Judged travel = judged(low, "bump-travel");

    assertTrue(
        travel.where().toString().contains("shock") || travel.where().toString().contains("rail"),
        travel.where().toString());
    assertTrue(travel.value() < 4.6 * INCH, "travel " + travel.value());
  }

  /** By hand: asin of nothing but the lean: atan(1.5 / 13) = 6.582 deg. */
  @Test
  void theLeanIsMeasuredFromUpright() {
    assertEquals(
        Math.toDegrees(Math.atan(1.5 / 13)),
        Math.toDegrees(judged(SampleLayout.good(), "spring-lean").value()),
        1e-9);
  }

  @Test
  void aPinionTurnedUpIsToldToTurnBackByWhatTheAngleFinderReads() {
    Chassis chassis = SampleLayout.chassis();
    Layout turned =
        SampleLayout.good()
            .withChassis(
                chassis.withDriveline(
                    chassis.driveline().withPinionTurned(chassis.axleCentre(), Math.toRadians(4))));

    Judged pinion = judged(turned, "pinion-parallel");

    assertEquals(Verdict.STOP, pinion.verdict());
    assertEquals(-3, Math.toDegrees(pinion.change().orElseThrow().amount()), 1e-9);
  }

  @Test
  void aSlipYokeThatIsNotMeasuredIsNotJudged() {
    Chassis chassis = SampleLayout.chassis();
    Driveline old = chassis.driveline();
    Driveline unmeasured =
        new Driveline(
            old.pinionJoint(),
            old.pinionAxis(),
            old.transmissionJoint(),
            old.transmissionAxis(),
            old.shaftDiameterMm(),
            old.shaftWallMm(),
            OptionalDouble.empty(),
            OptionalDouble.empty());

    List<CheckResult> results =
        judge.judge(SampleLayout.good().withChassis(chassis.withDriveline(unmeasured)));

    List<String> open =
        results.stream()
            .filter(result -> result instanceof CheckResult.NotJudged)
            .map(CheckResult::id)
            .filter(id -> id.startsWith("slip-"))
            .toList();
    assertEquals(List.of("slip-room", "slip-engagement"), open);
  }

  @Test
  void theWorstComesFirst() {
    List<CheckResult> results =
        judge.judge(moved("lower-left", End.FRAME, Direction.FORWARD, 0.25));

    assertEquals(Verdict.STOP, ((Judged) results.get(0)).verdict());
  }

  @Test
  void aCheckWithoutALimitIsRefused() {
    Map<String, Limit> limits = new HashMap<>(SampleLayout.limits());
    limits.remove("roll-steer");

    assertTrue(
        assertThrows(
                IllegalArgumentException.class,
                () -> new Judge(StandardChecks.all(), limits, SampleLayout.settings()))
            .getMessage()
            .contains("roll-steer"));
  }

  /** Whatever is moved, a change that is offered makes its check good when it is made. */
  @Seeds(10)
  void everyChangeThatIsOfferedHelps(Draw draw) {
    double lowerUp = draw.between(-2, 2);
    double upperUp = draw.between(-2, 2);
    double lateralUp = draw.between(-3, 3);
    double pinionDeg = draw.between(-5, 5);
    double shockOut = draw.between(-4, 4);
    Layout layout = SampleLayout.good();
    layout = move(layout, Set.of("lower-left", "lower-right"), Direction.UP, lowerUp);
    layout = move(layout, Set.of("upper-left", "upper-right"), Direction.UP, upperUp);
    layout = move(layout, Set.of("lateral-bar"), Direction.UP, lateralUp);
    layout = move(layout, Set.of("shock-left", "shock-right"), Direction.OUTBOARD, shockOut);
    layout = new Adjustment.TurnPinion().apply(layout, Math.toRadians(pinionDeg));

    for (CheckResult result : judge.judge(layout)) {
      if (result instanceof Judged judged && judged.change().isPresent()) {
        Change change = judged.change().get();
        Layout after = change.adjustment().apply(layout, change.amount());
        assertEquals(Verdict.GOOD, judged(after, judged.id()).verdict(), judged.id());
        assertTellsWhatItUpsets(change, judged, judge.verdicts(layout), judge.verdicts(after));
      }
    }
  }

  /** What a change makes worse is named, and a remark is never bought off with a stop. */
  private static void assertTellsWhatItUpsets(
      Change change, Judged mended, List<CheckResult> before, List<CheckResult> after) {
    Map<String, Verdict> now = new HashMap<>();
    after.stream()
        .filter(Judged.class::isInstance)
        .map(Judged.class::cast)
        .forEach(is -> now.put(is.id(), is.verdict()));
    Set<String> worse = new HashSet<>();
    boolean stops = false;
    for (CheckResult was : before) {
      if (was instanceof Judged judged
          && judged.verdict().compareTo(now.getOrDefault(judged.id(), Verdict.GOOD)) < 0) {
        worse.add(judged.title());
        stops |= now.get(judged.id()) == Verdict.STOP;
      }
    }
    assertEquals(worse, Set.copyOf(change.upsets()), mended.id());
    assertEquals(stops, change.bringsStop(), mended.id());
    assertTrue(mended.verdict() == Verdict.STOP || !stops, mended.id() + " brings a stop");
  }

  private static Layout move(Layout layout, Set<String> names, Direction way, double inches) {
    return new Adjustment.MoveEnds(names, End.FRAME, way).apply(layout, inches * INCH);
  }
}
