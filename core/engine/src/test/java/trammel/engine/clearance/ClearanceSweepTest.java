package trammel.engine.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import trammel.engine.geometry.Point3;
import trammel.engine.motion.AxlePose;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class ClearanceSweepTest {

  private static final double RADIUS_MM = 350;

  /** A ball at the axle's middle, which roll does not move, and a wall 100 mm ahead of it. */
  private static final Body BALL =
      new Body("ball", new Sphere(new Point3(0, 0, RADIUS_MM), 10), Carrier.AXLE);

  private static final Body WALL =
      new Body("wall", Box.between(100, 120, -900, 900, -900, 1900), Carrier.FRAME);

  private static final ClearanceSweep SWEEP =
      ClearanceSweep.of(List.of(ClearancePair.of(WALL, BALL)));

  /**
   * The axle comes forward by 20 cos((heave - h0) / 30 mm) + 15 cos(4 (roll - r0)); so the ball
   * comes closest at h0 and r0, to 100 - 10 - 35 = 55 mm.
   */
  @Seeds(60)
  void minimumBetweenThePosesIsFound(Draw draw) {
    double heaveAtLeast = draw.between(-60, 60);
    double rollAtLeast = draw.between(-0.08, 0.08);
    PoseSource source =
        (heave, roll) ->
            Optional.of(
                pose(
                    heave,
                    roll,
                    20 * Math.cos((heave - heaveAtLeast) / 30)
                        + 15 * Math.cos(4 * (roll - rollAtLeast))));
    ClearanceSweep sweep =
        new ClearanceSweep(List.of(ClearancePair.of(WALL, BALL)), Double.POSITIVE_INFINITY, 1);

    LeastGap least = sweep.over(grid(source, 12.5, 0.02), source).get(0);

    assertTrue(least.refined());
    assertEquals(55, least.gap().gapMm(), 1e-4);
    assertEquals(heaveAtLeast, least.heaveMm(), 0.1);
    assertEquals(rollAtLeast, least.rollRad(), 0.001);
    assertEquals(100, least.gap().onFirst().xMm(), 1e-6);
    assertEquals(RADIUS_MM + least.heaveMm(), least.gap().onFirst().zMm(), 1e-6);
  }

  /**
   * Two approaches: a broad one that is lowest on the grid, 30.1 mm forward at heave 5, and one
   * between two poses, 31 mm forward at heave 50. Nearest: 100 - 10 - 31.
   */
  @Test
  void deeperMinimumThatTheGridMissesIsFoundToo() {
    PoseSource source =
        (heave, roll) ->
            Optional.of(
                pose(
                    heave,
                    roll,
                    Math.max(
                        30.1 - (heave - 5) * (heave - 5) / 200, 31 - Math.abs(heave - 50) * 0.8)));
    ClearanceSweep sweep = new ClearanceSweep(List.of(ClearancePair.of(WALL, BALL)), 100, 1);

    LeastGap onGrid = sweep.over(grid(source, 10, 0.05)).get(0);
    LeastGap between = sweep.over(grid(source, 10, 0.05), source).get(0);

    assertEquals(100 - 10 - 30.1, onGrid.gap().gapMm(), 1e-9);
    assertFalse(onGrid.refined());
    assertEquals(100 - 10 - 31, between.gap().gapMm(), 0.01);
    assertEquals(50, between.heaveMm(), 0.01);
  }

  @Test
  void placesOutOfReachAreLeftAlone() {
    PoseSource whole = (heave, roll) -> Optional.of(pose(heave, roll, heave / 4));
    PoseSource reached = (heave, roll) -> heave > 33 ? Optional.empty() : whole.at(heave, roll);
    ClearanceSweep sweep = new ClearanceSweep(List.of(ClearancePair.of(WALL, BALL)), 200, 1);

    LeastGap least = sweep.over(grid(reached, 10, 0.05), reached).get(0);

    // Last pose of the grid: heave 25 mm.
    assertEquals(100 - 10 - 25 / 4.0, least.gap().gapMm(), 1e-6);
    assertEquals(25, least.heaveMm(), 1e-9);
  }

  @Test
  void roomyPairsKeepTheValueOfTheGrid() {
    PoseSource source =
        (heave, roll) -> {
          throw new AssertionError("asked for a pose between the grid's");
        };
    List<AxlePose> poses = grid((h, r) -> Optional.of(pose(h, r, 0)), 10, 0.05);
    ClearanceSweep sweep = new ClearanceSweep(List.of(ClearancePair.of(WALL, BALL)), 50, 1);

    LeastGap least = sweep.over(poses, source).get(0);

    assertEquals(90, least.gap().gapMm(), 1e-9);
    assertFalse(least.refined());
  }

  @Test
  void collisionIsReportedWithItsDepthAndPlace() {
    PoseSource source = (heave, roll) -> Optional.of(pose(heave, roll, 97 - Math.abs(heave - 15)));

    LeastGap least = SWEEP.over(grid(source, 10, 0.05), source).get(0);

    assertEquals(100 - 10 - 97, least.gap().gapMm(), 0.01);
    assertTrue(least.gap().isOverlap());
    assertEquals(15, least.heaveMm(), 0.02);
  }

  /** Against every gap worked out one by one, for bodies and moves of all kinds. */
  @Test
  void leastGapOnTheGridIsTheLeastOfAllGaps() {
    List<ClearancePair> pairs = manyPairs();
    List<AxlePose> poses = grid(ClearanceSweepTest::swinging, 25, 0.04);

    List<LeastGap> found = ClearanceSweep.of(pairs).over(poses);

    for (LeastGap least : found) {
      double expectedMm = Double.POSITIVE_INFINITY;
      for (AxlePose pose : poses) {
        Shape first = least.pair().first().at(pose);
        Shape second = least.pair().second().at(pose);
        expectedMm = Math.min(expectedMm, Gap.between(first, second).gapMm());
      }
      assertEquals(expectedMm, least.gap().gapMm(), 1e-4);
    }
  }

  @Test
  void resultIsTheSameForAnyNumberOfWorkersAndAnyOrderOfPoses() {
    List<ClearancePair> pairs = manyPairs();
    List<AxlePose> poses = grid(ClearanceSweepTest::swinging, 5, 0.01);
    assertTrue(pairs.size() * poses.size() > 20_000, "enough work to be shared");

    List<LeastGap> alone =
        new ClearanceSweep(pairs, 20, 1).over(poses, ClearanceSweepTest::swinging);
    List<LeastGap> shared =
        new ClearanceSweep(pairs, 20, 4).over(poses, ClearanceSweepTest::swinging);
    List<AxlePose> mixed = new ArrayList<>(poses);
    Collections.shuffle(mixed, new Random(5));
    List<LeastGap> inOtherOrder =
        new ClearanceSweep(pairs, 20, 2).over(mixed, ClearanceSweepTest::swinging);

    assertEquals(alone, shared);
    for (int k = 0; k < alone.size(); k++) {
      assertEquals(alone.get(k).gap().gapMm(), inOtherOrder.get(k).gap().gapMm(), 0.01);
    }
  }

  @Test
  void mistakesAreRefused() {
    List<ClearancePair> pairs = List.of(ClearancePair.of(WALL, BALL));
    Body otherWall = new Body("wall", Box.between(0, 1, 0, 1, 0, 1), Carrier.FRAME);

    assertRefused("0 poses", () -> SWEEP.over(List.of()));
    assertRefused("0 workers", () -> new ClearanceSweep(pairs, 50, 0));
    assertRefused("not a number", () -> new ClearanceSweep(pairs, Double.NaN, 1));
    assertRefused(
        "'wall'",
        () -> ClearanceSweep.of(List.of(pairs.get(0), ClearancePair.of(otherWall, BALL))));
  }

  private static void assertRefused(String given, Executable mistake) {
    String message = assertThrows(IllegalArgumentException.class, mistake).getMessage();
    assertTrue(message.contains(given), message);
  }

  private static Optional<AxlePose> swinging(double heaveMm, double rollRad) {
    return Optional.of(
        new AxlePose(
            heaveMm,
            rollRad,
            -heaveMm * heaveMm / 1200,
            30 * rollRad,
            rollRad / 10,
            heaveMm / 2000,
            RADIUS_MM));
  }

  private static List<ClearancePair> manyPairs() {
    List<Body> bodies = new ArrayList<>();
    for (int side = -1; side <= 1; side += 2) {
      String name = side < 0 ? " right" : " left";
      double y = side * 375;
      bodies.add(
          new Body("rail" + name, Box.between(-900, 900, y - 25, y + 25, 470, 570), Carrier.FRAME));
      bodies.add(
          new Body(
              "link" + name,
              new Capsule(new Point3(650, side * 300, 330), new Point3(0, side * 330, 270), 22),
              Carrier.LINK));
      bodies.add(
          new Body(
              "spring" + name,
              new Cylinder(new Point3(-90, side * 280, 640), new Point3(-60, side * 300, 330), 60),
              Carrier.LINK));
      bodies.add(
          new Body(
              "tyre" + name,
              new Cylinder(
                  new Point3(0, side * 620, RADIUS_MM), new Point3(0, side * 870, RADIUS_MM), 350),
              Carrier.AXLE));
    }
    bodies.add(
        new Body(
            "tube",
            new Capsule(new Point3(0, -600, RADIUS_MM), new Point3(0, 600, RADIUS_MM), 38),
            Carrier.AXLE));
    bodies.add(new Body("housing", new Sphere(new Point3(20, 0, RADIUS_MM), 150), Carrier.AXLE));
    bodies.add(new Body("floor", Box.between(-900, 900, -350, 350, 600, 602), Carrier.FRAME));
    return ClearancePair.among(bodies, List.of());
  }

  private static List<AxlePose> grid(PoseSource source, double heaveStepMm, double rollStepRad) {
    List<AxlePose> poses = new ArrayList<>();
    for (double heave = -75; heave <= 75.001; heave += heaveStepMm) {
      for (double roll = -0.1; roll <= 0.1001; roll += rollStepRad) {
        source.at(heave, roll).ifPresent(poses::add);
      }
    }
    return poses;
  }

  private static AxlePose pose(double heaveMm, double rollRad, double forwardMm) {
    return new AxlePose(heaveMm, rollRad, forwardMm, 0, 0, 0, RADIUS_MM);
  }
}
