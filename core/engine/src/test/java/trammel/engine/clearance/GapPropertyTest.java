package trammel.engine.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.AxlePose;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class GapPropertyTest {

  private static final double TOLERANCE_MM = 1e-5;
  private static final double DEPTH_TOLERANCE_MM = 1e-4;

  /**
   * Two points, one in each body, are the nearest if each body lies wholly behind the plane through
   * its point square to the line between them (separating planes; convex optimisation).
   */
  @Seeds(1000)
  void gapOfSeparateBodiesIsProvedByItsPlanes(Draw draw) {
    Shape first = anyShape(draw);
    Shape second = anyShape(draw);
    Gap gap = Gap.between(first, second);
    if (gap.gapMm() < 0.1) {
      return;
    }
    Vector3 towardsSecond = gap.onFirst().to(gap.onSecond()).normalized();
    double roomMm =
        -Solids.reachMm(second, towardsSecond.scaled(-1)) - Solids.reachMm(first, towardsSecond);

    assertEquals(0, Solids.distanceMm(first, gap.onFirst()), TOLERANCE_MM);
    assertEquals(0, Solids.distanceMm(second, gap.onSecond()), TOLERANCE_MM);
    assertEquals(gap.gapMm(), gap.onFirst().distanceMm(gap.onSecond()), TOLERANCE_MM);
    assertEquals(gap.gapMm(), roomMm, TOLERANCE_MM);
  }

  /**
   * Projecting from one convex body to the other and back comes to their nearest points (Cheney and
   * Goldstein 1959, from memory); no pair of points met on the way is nearer than the gap.
   */
  @Seeds(200)
  void gapIsWhatProjectingBackAndForthComesTo(Draw draw) {
    Shape first = anyShape(draw);
    Shape second = anyShape(draw);
    Gap gap = Gap.between(first, second);
    Point3 onSecond = Solids.nearestTo(second, new Point3(0, 0, 0));
    double distanceMm = 0;
    for (int step = 0; step < 2000; step++) {
      Point3 onFirst = Solids.nearestTo(first, onSecond);
      onSecond = Solids.nearestTo(second, onFirst);
      distanceMm = onFirst.distanceMm(onSecond);
    }
    double clearMm = Math.max(0, gap.gapMm());

    assertTrue(distanceMm >= clearMm - TOLERANCE_MM, distanceMm + " under " + clearMm);
    // Bodies that touch at a grazing angle are approached slowly.
    assertEquals(clearMm, distanceMm, 0.5);
  }

  /**
   * Points taken at random from each body: none nearer than the gap, some inside if it overlaps.
   */
  @Seeds(200)
  void noSampledPointsAreNearerThanTheGap(Draw draw) {
    Shape first = anyShape(draw);
    Shape second = anyShape(draw);
    long seed = draw.anyLong();
    Gap gap = Gap.between(first, second);
    Random random = new Random(seed);
    for (int sample = 0; sample < 300; sample++) {
      Point3 onFirst =
          Solids.nearestTo(
              first,
              new Point3(
                  600 * random.nextGaussian(),
                  600 * random.nextGaussian(),
                  600 * random.nextGaussian()));
      double distanceMm = Solids.distanceMm(second, onFirst);
      assertTrue(distanceMm >= gap.gapMm() - DEPTH_TOLERANCE_MM);
      if (distanceMm == 0) {
        assertTrue(gap.gapMm() <= DEPTH_TOLERANCE_MM, "a point in both bodies");
      }
    }
  }

  /** Depth of penetration: the least of the ways out over all directions. */
  @Seeds(1000)
  void depthIsTheShortestWayOut(Draw draw) {
    Shape first = anyShape(draw);
    Shape second = shapeNearCentre(draw);
    long seed = draw.anyLong();
    Gap gap = Gap.between(first, second);
    if (gap.gapMm() > -0.1) {
      return;
    }
    Random random = new Random(seed);
    Vector3 out = gap.onFirst().to(gap.onSecond()).normalized();
    double depthMm = -gap.gapMm();

    assertEquals(depthMm, wayOutMm(first, second, out), DEPTH_TOLERANCE_MM);
    for (int sample = 0; sample < 500; sample++) {
      double spread = sample % 2 == 0 ? 10 : 0.1;
      Vector3 direction =
          out.plus(
                  new Vector3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
                      .scaled(spread))
              .normalized();
      assertTrue(wayOutMm(first, second, direction) >= depthMm - DEPTH_TOLERANCE_MM);
    }
  }

  @Seeds(1000)
  void gapIsTheSameEitherWayRound(Draw draw) {
    Shape first = anyShape(draw);
    Shape second = anyShape(draw);
    assertEquals(
        Gap.between(first, second).gapMm(), Gap.between(second, first).gapMm(), DEPTH_TOLERANCE_MM);
  }

  @Seeds(1000)
  void gapStaysTheSameWhenBothBodiesAreCarriedAlong(Draw draw) {
    Shape first = anyShape(draw);
    Shape second = anyShape(draw);
    AxlePose pose = anyPose(draw);
    assertEquals(
        Gap.between(first, second).gapMm(),
        Gap.between(first.moved(pose), second.moved(pose)).gapMm(),
        TOLERANCE_MM);
  }

  /** A capsule's axis is a line for the general search too: two ways to one answer. */
  @Seeds(1000)
  void generalSearchAgreesWithTheClosedFormOfTwoLines(Draw draw) {
    Capsule first = anyCapsule(draw);
    Capsule second = anyCapsule(draw);
    NearestPoints closed = new NearestPoints();
    LinePair.find(Placed.of(first), Placed.of(second), closed);
    NearestPoints general = new NearestPoints();
    boolean isApart = new SimplexWalk().find(Placed.of(first), Placed.of(second), 1, 0, 0, general);

    assertEquals(closed.gapMm, isApart ? general.gapMm : 0, TOLERANCE_MM);
  }

  /**
   * How far the first must move along a direction's opposite to leave the second behind a plane.
   */
  private static double wayOutMm(Shape first, Shape second, Vector3 direction) {
    return Solids.reachMm(second, direction) + Solids.reachMm(first, direction.scaled(-1));
  }

  /** The quick answer for what is far apart must be the answer of the gap itself. */
  @Seeds(1000)
  void closerThanALimitIsWhatTheGapSays(Draw draw) {
    Shape first = shapeNearCentre(draw);
    Shape second = anyShape(draw);
    double limitMm = draw.between(1, 300);
    assertEquals(
        Gap.between(first, second).gapMm() < limitMm, Gap.isCloser(first, second, limitMm));
  }

  private static Shape anyShape(Draw draw) {
    return shapeWithin(draw, 500);
  }

  private static Shape shapeNearCentre(Draw draw) {
    return shapeWithin(draw, 100);
  }

  private static Capsule anyCapsule(Draw draw) {
    return new Capsule(point(draw, 500), point(draw, 500), size(draw));
  }

  private static AxlePose anyPose(Draw draw) {
    return new AxlePose(
        draw.between(-300, 300),
        draw.between(-3, 3),
        draw.between(-300, 300),
        draw.between(-300, 300),
        draw.between(-3, 3),
        draw.between(-3, 3),
        350);
  }

  private static Shape shapeWithin(Draw draw, double rangeMm) {
    Point3 place = point(draw, rangeMm);
    return switch (draw.whole(1, 4)) {
      case 1 -> new Sphere(place, size(draw));
      case 2 -> new Capsule(place, place.plus(span(draw)), size(draw));
      case 3 -> new Cylinder(place, place.plus(span(draw)), size(draw));
      default ->
          box(place, size(draw), size(draw), size(draw), draw.between(-3, 3), draw.between(-3, 3));
    };
  }

  private static Box box(
      Point3 centre, double length, double width, double height, double yaw, double roll) {
    AxlePose turn = new AxlePose(0, roll, 0, 0, yaw, 0, 0);
    return new Box(
        centre,
        length,
        width,
        height,
        turn.turn(new Vector3(1, 0, 0)),
        turn.turn(new Vector3(0, 1, 0)),
        turn.turn(new Vector3(0, 0, 1)));
  }

  private static double size(Draw draw) {
    return draw.between(0.5, 150);
  }

  /** An axis long enough to have a direction. */
  private static Vector3 span(Draw draw) {
    Vector3 span;
    do {
      span = new Point3(0, 0, 0).to(point(draw, 300));
    } while (span.norm() <= 1);
    return span;
  }

  private static Point3 point(Draw draw, double rangeMm) {
    return new Point3(
        draw.between(-rangeMm, rangeMm),
        draw.between(-rangeMm, rangeMm),
        draw.between(-rangeMm, rangeMm));
  }
}
