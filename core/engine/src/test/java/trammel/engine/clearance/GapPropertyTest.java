package trammel.engine.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.AxlePose;

class GapPropertyTest {

  private static final double TOLERANCE_MM = 1e-5;
  private static final double DEPTH_TOLERANCE_MM = 1e-4;

  /**
   * Two points, one in each body, are the nearest if each body lies wholly behind the plane through
   * its point square to the line between them (separating planes; convex optimisation).
   */
  @Property(tries = 1000)
  void gapOfSeparateBodiesIsProvedByItsPlanes(
      @ForAll("shapes") Shape first, @ForAll("shapes") Shape second) {
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
  @Property(tries = 200)
  void gapIsWhatProjectingBackAndForthComesTo(
      @ForAll("shapes") Shape first, @ForAll("shapes") Shape second) {
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
  @Property(tries = 200)
  void noSampledPointsAreNearerThanTheGap(
      @ForAll("shapes") Shape first, @ForAll("shapes") Shape second, @ForAll long seed) {
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
  @Property(tries = 1000)
  void depthIsTheShortestWayOut(
      @ForAll("shapes") Shape first, @ForAll("nearCentre") Shape second, @ForAll long seed) {
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

  @Property(tries = 1000)
  void gapIsTheSameEitherWayRound(@ForAll("shapes") Shape first, @ForAll("shapes") Shape second) {
    assertEquals(
        Gap.between(first, second).gapMm(), Gap.between(second, first).gapMm(), DEPTH_TOLERANCE_MM);
  }

  @Property(tries = 1000)
  void gapStaysTheSameWhenBothBodiesAreCarriedAlong(
      @ForAll("shapes") Shape first,
      @ForAll("shapes") Shape second,
      @ForAll("poses") AxlePose pose) {
    assertEquals(
        Gap.between(first, second).gapMm(),
        Gap.between(first.moved(pose), second.moved(pose)).gapMm(),
        TOLERANCE_MM);
  }

  /** A capsule's axis is a line for the general search too: two ways to one answer. */
  @Property(tries = 1000)
  void generalSearchAgreesWithTheClosedFormOfTwoLines(
      @ForAll("capsules") Capsule first, @ForAll("capsules") Capsule second) {
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
  @Property
  void closerThanALimitIsWhatTheGapSays(
      @ForAll("nearCentre") Shape first,
      @ForAll("shapes") Shape second,
      @ForAll @DoubleRange(min = 1, max = 300) double limitMm) {
    assertEquals(
        Gap.between(first, second).gapMm() < limitMm, Gap.isCloser(first, second, limitMm));
  }

  @Provide
  Arbitrary<Shape> shapes() {
    return shapes(points(500));
  }

  @Provide
  Arbitrary<Shape> nearCentre() {
    return shapes(points(100));
  }

  @Provide
  Arbitrary<Capsule> capsules() {
    return Combinators.combine(points(500), points(500), sizes()).as(Capsule::new);
  }

  @Provide
  Arbitrary<AxlePose> poses() {
    Arbitrary<Double> shifts = Arbitraries.doubles().between(-300, 300);
    Arbitrary<Double> turns = Arbitraries.doubles().between(-3, 3);
    return Combinators.combine(shifts, turns, shifts, shifts, turns, turns)
        .as(
            (heave, roll, forward, left, yaw, pitch) ->
                new AxlePose(heave, roll, forward, left, yaw, pitch, 350));
  }

  private static Arbitrary<Shape> shapes(Arbitrary<Point3> places) {
    Arbitrary<Vector3> spans =
        points(300).map(p -> new Vector3(p.xMm(), p.yMm(), p.zMm())).filter(v -> v.norm() > 1);
    Arbitrary<Shape> spheres = Combinators.combine(places, sizes()).as(Sphere::new);
    Arbitrary<Shape> capsules =
        Combinators.combine(places, spans, sizes()).as((p, v, r) -> new Capsule(p, p.plus(v), r));
    Arbitrary<Shape> cylinders =
        Combinators.combine(places, spans, sizes()).as((p, v, r) -> new Cylinder(p, p.plus(v), r));
    Arbitrary<Double> turns = Arbitraries.doubles().between(-3, 3);
    Arbitrary<Shape> boxes =
        Combinators.combine(places, sizes(), sizes(), sizes(), turns, turns)
            .as(GapPropertyTest::box);
    return Arbitraries.oneOf(spheres, capsules, cylinders, boxes);
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

  private static Arbitrary<Double> sizes() {
    return Arbitraries.doubles().between(0.5, 150);
  }

  private static Arbitrary<Point3> points(double range) {
    Arbitrary<Double> coordinates = Arbitraries.doubles().between(-range, range);
    return Combinators.combine(coordinates, coordinates, coordinates).as(Point3::new);
  }
}
