package trammel.planning.fitup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.planning.extension.kit.SampleVehicle;

class FitUpSheetTest {
  private static final Chassis CHASSIS = SampleVehicle.pickup();
  private static final Layout LAYOUT =
      new Layout(CHASSIS, SampleVehicle.bars(CHASSIS), SampleVehicle.springs(CHASSIS), List.of());

  private static FitUpSheet sheet(double noseUpDeg) {
    return FitUpSheet.of(LAYOUT, Math.toRadians(noseUpDeg), Math.toRadians(0.2));
  }

  private static Map<String, Double> plan(FitUpSheet sheet) {
    Map<String, Double> plan = new HashMap<>();
    for (Target target : sheet.targets()) {
      plan.put(target.id(), target.plan());
    }
    return plan;
  }

  /** Three distances square to each other make up the straight distance: Pythagoras. */
  @Test
  void theThreeDistancesOfABracketMakeUpItsStraightDistanceFromTheDatum() {
    Map<String, Double> plan = plan(sheet(0));
    for (Mount mount : Mount.of(LAYOUT)) {
      double forward = plan.get(mount.key() + ".forward");
      double left = plan.get(mount.key() + ".left");
      double up = plan.get(mount.key() + ".up");
      Point3 origin = FitUpSheet.origin(mount.end(), CHASSIS);
      assertEquals(
          origin.distanceMm(mount.point(LAYOUT)),
          Math.sqrt(forward * forward + left * left + up * up),
          1e-9,
          mount.key());
    }
  }

  /** A link to a rocker ends in a bracket on the frame and in a joint on the rocker. */
  @Test
  void aJointOnARockerIsNamedByTheBodyThatItIsOn() {
    List<Bar> bars = new ArrayList<>(SampleVehicle.bars(CHASSIS));
    bars.replaceAll(bar -> bar.isAcross() ? bar.withBody(End.AXLE, "rocker") : bar);
    Layout layout = new Layout(CHASSIS, bars, SampleVehicle.springs(CHASSIS), List.of());
    assertEquals(
        "joint of lateral-bar on the rocker", new Mount("lateral-bar", End.AXLE).words(layout));
    assertEquals("frame bracket of lateral-bar", new Mount("lateral-bar", End.FRAME).words(layout));
    assertEquals("axle bracket of lower-left", new Mount("lower-left", End.AXLE).words(layout));
    assertEquals("axle bracket of spring-left", new Mount("spring-left", End.AXLE).words(layout));
  }

  /** However the frame sits on its stands, places along and square to the rail stay the same. */
  @ParameterizedTest
  @ValueSource(doubles = {-3, 0.5, 2})
  void placesDoNotDependOnHowTheFrameSits(double noseUpDeg) {
    Map<String, Double> level = plan(sheet(0));
    Map<String, Double> tipped = plan(sheet(noseUpDeg));
    for (Map.Entry<String, Double> target : level.entrySet()) {
      double changed = tipped.get(target.getKey()) - target.getValue();
      double expected = target.getKey().equals("pinion.angle") ? Math.toRadians(noseUpDeg) : 0;
      assertEquals(expected, changed, 1e-12, target.getKey());
    }
  }

  /** What runs fore and aft is tipped with the frame; zeroed on the rail nothing changes. */
  @Test
  void theFinderReadsMoreByHowMuchTheNoseIsUpAndTheSameFromTheRail() {
    for (String part : List.of("rail's underside", "lower-left", "pinion")) {
      FitUpSheet.FinderAngle level = angle(sheet(0), part);
      FitUpSheet.FinderAngle tipped = angle(sheet(2), part);
      assertEquals(level.onStandsRad() + Math.toRadians(2), tipped.onStandsRad(), 1e-12, part);
      assertEquals(level.fromFrameRad(), tipped.fromFrameRad(), 1e-12, part);
      assertEquals(level.onStandsRad(), level.atRideRad(), 1e-12, part);
    }
  }

  private static FitUpSheet.FinderAngle angle(FitUpSheet sheet, String part) {
    return sheet.angles().stream()
        .filter(angle -> angle.what().startsWith(part + ","))
        .findFirst()
        .orElseThrow();
  }

  /**
   * A bar that runs 300 mm ahead, splays 50 deg in plan and rises 60 mm. By hand: it runs 300 / cos
   * 50 deg = 466.72 mm in plan, so the finder reads atan(60 / 466.72) = 7.326 deg, where from the
   * side one sees atan(60 / 300) = 11.310 deg. With the nose 2 deg up it rises 300 sin 2 deg + 60
   * cos 2 deg = 70.433 mm over 465.25 mm in plan: 8.608 deg.
   */
  @Test
  void theFinderOnASplayedBarReadsItsRiseOverItsRunInPlan() {
    double splayMm = 300 * Math.tan(Math.toRadians(50));
    Bar first = LAYOUT.bars().get(0);
    Point3 frame = first.axle().plus(new Vector3(300, splayMm, 60));
    Layout splayed = new Mount(first.name(), End.FRAME).moved(LAYOUT, frame);
    FitUpSheet level = FitUpSheet.of(splayed, 0, Math.toRadians(0.2));
    FitUpSheet tipped = FitUpSheet.of(splayed, Math.toRadians(2), Math.toRadians(0.2));
    FitUpSheet.FinderAngle read = tipped.angleOf(first.name()).orElseThrow();
    assertEquals(7.326, Math.toDegrees(read.atRideRad()), 0.001);
    assertEquals(8.608, Math.toDegrees(read.onStandsRad()), 0.001);
    assertEquals(
        7.326, Math.toDegrees(level.angleOf(first.name()).orElseThrow().onStandsRad()), 0.001);
  }

  /** A lateral bar rises to a side, and the finder lies along it as along any other. */
  @Test
  void aBarAcrossTheVehicleRisesToTheLeft() {
    FitUpSheet.FinderAngle lateral = sheet(0).angleOf("lateral-bar").orElseThrow();
    assertEquals("lateral-bar, rising to the left", lateral.what());
  }

  /** Axle on the bench, axle under the frame, frame, then what proves it; nothing is lost. */
  @Test
  void theOrderOfWorkGoesFromTheAxleToTheFrame() {
    List<String> ids = sheet(0).inOrderOfWork().stream().map(Target::id).toList();
    assertEquals(plan(sheet(0)).keySet(), new HashSet<>(ids));
    assertTrue(ids.indexOf("lower-left.axle.up") < ids.indexOf("pinion.angle"));
    assertTrue(ids.indexOf("pinion.angle") < ids.indexOf("lower-left.frame.forward"));
    assertTrue(ids.indexOf("spring-left.frame.up") < ids.indexOf("lower-left.length"));
    assertEquals(ids.size(), new HashSet<>(ids).size());
  }

  /** Square brackets have equal diagonals. */
  @Test
  void theDiagonalsOfASquareLayoutAreEqual() {
    Map<String, Double> plan = plan(sheet(0));
    assertEquals(plan.get("diagonal.left-to-right"), plan.get("diagonal.right-to-left"), 1e-9);
  }

  /**
   * A coil over a shock hangs on the shock's two bolts: one bracket an end, and one set of marks.
   */
  @Test
  void aCoilOverStandsOnceOnTheSheetAndMovesWithItsShock() {
    Layout coilOvers = withShocksIn(LAYOUT);
    FitUpSheet sheet = FitUpSheet.of(coilOvers, 0, Math.toRadians(0.2));
    assertEquals(sheet(0).targets().size(), sheet.targets().size());
    assertTrue(sheet.targets().stream().noneMatch(target -> target.id().startsWith("spring")));

    Mount top = new Mount("shock-left", End.FRAME);
    Point3 lower = top.point(coilOvers).plus(new Vector3(0, 0, -20));
    Layout moved = top.moved(coilOvers, lower);
    assertEquals(lower, moved.springs().get(0).frame());
    assertEquals(coilOvers.springs().get(0).axle(), moved.springs().get(0).axle());
    assertEquals(coilOvers.springs().get(1), moved.springs().get(1));
  }

  /** A shock beside its spring has brackets of its own. */
  @Test
  void aShockBesideItsSpringStandsApart() {
    SpringUnit spring = LAYOUT.springs().get(0);
    Vector3 inch = new Vector3(25.4, 0, 0);
    ShockUnit beside =
        new ShockUnit(
            "shock-left", spring.frame().plus(inch), spring.axle().plus(inch), 30, 200, 500);
    Layout layout = new Layout(CHASSIS, LAYOUT.bars(), LAYOUT.springs(), List.of(beside));
    assertEquals(Mount.of(LAYOUT).size() + 2, Mount.of(layout).size());
  }

  private static Layout withShocksIn(Layout layout) {
    List<ShockUnit> shocks =
        layout.springs().stream()
            .map(
                spring ->
                    new ShockUnit(
                        spring.name().replace("spring", "shock"),
                        spring.frame(),
                        spring.axle(),
                        30,
                        200,
                        500))
            .toList();
    return new Layout(CHASSIS, layout.bars(), layout.springs(), shocks);
  }

  @Test
  void everyTargetHasANameOfItsOwn() {
    Set<String> names = new HashSet<>();
    for (Target target : sheet(0).targets()) {
      assertTrue(names.add(target.id()), target.id());
    }
    assertEquals(7 * 6 + 5 + 2 + 7, names.size());
  }
}
