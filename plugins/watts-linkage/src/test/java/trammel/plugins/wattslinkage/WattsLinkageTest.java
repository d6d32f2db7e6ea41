package trammel.plugins.wattslinkage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.engine.checks.BarForces;
import trammel.engine.checks.Check;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Reading;
import trammel.engine.checks.StandardChecks;
import trammel.engine.checks.Verdict;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Duty;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Placement;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.kit.LinkageContract;
import trammel.planning.extension.kit.SampleVehicle;

/** Proposed layouts against the rules of the shop and against arithmetic done by hand. */
class WattsLinkageTest {
  private static final double INCH_MM = Trial.INCH_MM;

  @Test
  void keepsTheContractOfEveryLinkage() {
    new LinkageContract(Trial.LINKAGE, Trial.CATALOG, SampleVehicle.pickup()).verify();
  }

  /**
   * Housing not measured: 6 in. Ahead of the rocker's middle: half the grip, 2.05 in (see {@link
   * RockerWorkTest}), the head of a 5/8 bolt with its washer, .12 + .65 x .625 = .52625 in, and 1/4
   * in of air: 8.82625 in, up to the next 1/8 in 8.875 in.
   */
  @Test
  void rockerStandsAsNearAsTheHousingLetsIt() {
    assertEquals(-8.875, pivot(Trial.mounted("inboard")).xMm() / INCH_MM, 1e-9);
  }

  /**
   * Rail's underside 17 1/2 in up; the upper link's joint hangs 1 1/4 in under it for its 2 in
   * barrel and 1/4 in of air: 16 1/4 in. The rocker's arm is 3 in: pivot 13 1/4 in up.
   */
  @Test
  void pivotLiesSoLowThatTheUpperLinkClearsTheRail() {
    assertEquals(13.25, pivot(Trial.mounted("inboard")).zMm() / INCH_MM, 1e-9);
  }

  private static Point3 pivot(Trial trial) {
    return Rocker.of(trial.layout()).orElseThrow().pivot();
  }

  @ParameterizedTest
  @ValueSource(strings = {"inboard", "outboard"})
  void linksAreLevelAndOfOneLengthAndOneRunsToEachRail(String mounting) {
    Trial trial = Trial.mounted(mounting);
    Bar upper = trial.bar(Rocker.UPPER_LINK);
    Bar lower = trial.bar(Rocker.LOWER_LINK);
    // Inner faces 16 1/4 in at the axle and 1/26 in more for every inch behind it: 16.591346 in at
    // 8 7/8 in; less barrel 1 in and gap 1/2 in.
    assertEquals(15.091346, upper.lengthMm() / INCH_MM, 1e-6);
    assertEquals(upper.lengthMm(), lower.lengthMm(), 1e-9);
    assertEquals(upper.frame().yMm(), -lower.frame().yMm(), 1e-9);
    assertTrue(upper.frame().yMm() > 0);
    assertEquals(upper.frame().zMm(), upper.axle().zMm(), 1e-9);
    assertEquals(6, (upper.axle().zMm() - lower.axle().zMm()) / INCH_MM, 1e-9);
    assertEquals(Rocker.NAME, upper.axleEnd().body());
    assertEquals(Duty.SIDEWAYS.only(), lower.duties());
  }

  /** The same linkage seen from the other side of the vehicle. */
  @Test
  void upperLinkOnTheRightIsTheMirrorImage() {
    Trial left = Trial.mounted("inboard");
    Trial right = left.withUpperLink("right");
    for (String link : List.of(Rocker.UPPER_LINK, Rocker.LOWER_LINK)) {
      for (End end : End.values()) {
        Point3 mirrored = left.bar(link).point(end).mirrored();
        assertEquals(0, mirrored.distanceMm(right.bar(link).point(end)), 1e-9, link);
      }
    }
    AxlePose one = left.layout().motion().solve(2 * INCH_MM, Math.toRadians(2)).required();
    AxlePose other = right.layout().motion().solve(2 * INCH_MM, Math.toRadians(-2)).required();
    assertEquals(one.lateralMm(), -other.lateralMm(), 1e-6);
    assertEquals(one.pitchNoseUpRad(), other.pitchNoseUpRad(), 1e-9);
  }

  /**
   * Watt's straight line: a lateral bar of the length of one link would shift the axle by L -
   * sqrt(L2 - h2), 0.295 in at 3 in; the rocker's pin leaves its line only with the fourth power of
   * the travel.
   */
  @ParameterizedTest
  @ValueSource(doubles = {-3, -1.5, 1.5, 3})
  void axleStaysCentralWhereALateralBarWouldShiftIt(double heaveInches) {
    AxlePose pose =
        Trial.mounted("inboard").layout().motion().solve(heaveInches * INCH_MM, 0).required();
    double linkMm = 15.091346 * INCH_MM;
    double riseMm = heaveInches * INCH_MM;
    double barMm = linkMm - Math.sqrt(linkMm * linkMm - riseMm * riseMm);
    assertTrue(Math.abs(pose.lateralMm()) < 0.05 * barMm, pose.lateralMm() + " mm");
  }

  /**
   * With its pin u higher (and a little ahead, v) each link pulls its end of the rocker in by L -
   * sqrt(L2 - u2 - v2), to the two sides: over the arm that is the sine of the rocker's turn,
   * within what the turn itself lifts the joints.
   */
  @Test
  void rockerTurnsByWhatTheLinksDrawItsEndsIn() {
    Trial trial = Trial.mounted("inboard");
    Rocker rocker = Rocker.of(trial.layout()).orElseThrow();
    AxlePose up = trial.layout().motion().solve(3 * INCH_MM, 0).required();
    Placement body = up.placement().of(Rocker.NAME);
    Vector3 moved = rocker.pivot().to(body.move(rocker.pivot()));
    double linkMm = 15.091346 * INCH_MM;
    double drawnMm =
        linkMm - Math.sqrt(linkMm * linkMm - moved.z() * moved.z() - moved.x() * moved.x());
    Vector3 arm = body.turn(rocker.arm(trial.bar(Rocker.UPPER_LINK)));
    assertEquals(3, moved.z() / INCH_MM, 0.5);
    assertEquals(Math.asin(drawnMm / (3 * INCH_MM)), Math.atan2(arm.y(), arm.z()), 0.005);
  }

  private static Verdict verdict(String id, LayoutAnalysis analysis) {
    for (LimitedCheck limited : Trial.LINKAGE.checks()) {
      if (limited.check().id().equals(id)) {
        return verdict(limited.check(), limited.limit(), analysis);
      }
    }
    Check check =
        StandardChecks.all().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    return verdict(check, Trial.CATALOG.limits().get(id), analysis);
  }

  private static Verdict verdict(Check check, Limit limit, LayoutAnalysis analysis) {
    Reading.Value value = assertInstanceOf(Reading.Value.class, check.read(analysis), check.id());
    return limit.verdict(value.value());
  }

  @ParameterizedTest
  @ValueSource(strings = {"inboard", "outboard"})
  void checksOfTheLinkageItselfAreGood(String mounting) {
    LayoutAnalysis analysis =
        new LayoutAnalysis(Trial.mounted(mounting).layout(), Trial.CATALOG.analysis());
    for (String id :
        List.of(
            "lower-bar-angle",
            "upper-bar-angle",
            "lateral-bar-angle",
            "lateral-shift",
            "linkage-reach",
            "joint-misalignment",
            "rocker-dead-point",
            "rocker-swing",
            "rocker-strength",
            "rocker-pivot-bolt")) {
      assertEquals(Verdict.GOOD, verdict(id, analysis), id);
    }
  }

  /**
   * With the rail ends of both links drawn up so far that they run along the rocker's arms, the
   * rocker is near its dead point at ride already: the tangent of the angle is 15.09 / 30, 26.7
   * deg.
   */
  @Test
  void linksAlongTheRockerAreNearTheDeadPoint() {
    Layout layout = Trial.mounted("inboard").layout();
    List<Bar> steep =
        layout.bars().stream()
            .map(
                bar ->
                    bar.name().startsWith("watt-link")
                        ? bar.withPoint(
                            End.FRAME,
                            bar.frame().plus(new Vector3(0, 0, upwards(bar) * 30 * INCH_MM)))
                        : bar)
            .toList();
    Reading reading =
        new DeadPoint().read(new LayoutAnalysis(layout.withBars(steep), Trial.CATALOG.analysis()));
    assertTrue(((Reading.Value) reading).value() < Math.toRadians(30), reading.toString());
  }

  private static int upwards(Bar link) {
    return link.name().equals(Rocker.UPPER_LINK) ? 1 : -1;
  }

  /** Cornering without braking: the links share the side force, one pulls and one pushes. */
  @Test
  void pivotBoltCarriesBothLinks() {
    Layout layout = Trial.mounted("inboard").layout();
    LayoutAnalysis analysis = new LayoutAnalysis(layout, Trial.CATALOG.analysis());
    BarForces forces = analysis.barForces();
    double mostN = 0;
    for (int i = 0; i < forces.cases().size(); i++) {
      double upperN = forces.tensionN(i, 4);
      double lowerN = forces.tensionN(i, 5);
      // Equal arms, level links to the two sides: equal and opposite, so the bolt carries both.
      assertEquals(-upperN, lowerN, 1 + 0.01 * Math.abs(upperN));
      mostN = Math.max(mostN, Math.abs(upperN) + Math.abs(lowerN));
    }
    Reading.Value found =
        assertInstanceOf(Reading.Value.class, new PivotBoltStrength().read(analysis));
    assertEquals(PivotBoltStrength.shearN() / mostN, found.value(), 0.01 * found.value());
  }
}
