package trammel.trade.plates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LoopTest {
  private static final Point2 ORIGIN = new Point2(0.0, 0.0);

  private static Loop segment(double radiusMm, double angleRad, boolean anticlockwise) {
    Arc arc = Arc.about(new Point2(30.0, -12.0), radiusMm, 0.4, angleRad);
    Loop loop = new Loop(List.of(arc, new Straight(arc.to(), arc.from())));
    return anticlockwise ? loop : loop.reversed();
  }

  @ParameterizedTest
  @ValueSource(doubles = {10.0, 60.0, 90.0, 179.0, 181.0, 270.0, 350.0})
  void circularSegmentHasItsTextbookAreaAndLength(double degrees) {
    double angle = Math.toRadians(degrees);
    double radius = 17.0;
    // Closed forms of the circular segment: r2 (a - sin a) / 2 and r a + 2 r sin(a/2).
    double area = radius * radius * (angle - Math.sin(angle)) / 2.0;
    double length = radius * angle + 2.0 * radius * Math.sin(angle / 2.0);
    assertEquals(area, segment(radius, angle, true).areaMm2(), 1e-9 * radius * radius);
    assertEquals(area, segment(radius, angle, false).areaMm2(), 1e-9 * radius * radius);
    assertEquals(length, segment(radius, angle, true).lengthMm(), 1e-9 * length);
  }

  @Test
  void reversingTurnsTheOtherWayRound() {
    assertTrue(segment(10.0, 2.0, true).isAnticlockwise());
    assertFalse(segment(10.0, 2.0, false).isAnticlockwise());
  }

  @Test
  void boundsReachToTheArcNotOnlyToItsEnds() {
    // A quarter arc from -45 to +45 degrees bulges to x = r.
    Arc arc = Arc.about(ORIGIN, 10.0, -Math.PI / 4.0, Math.PI / 2.0);
    Bounds bounds = arc.bounds();
    assertEquals(10.0, bounds.maxXMm(), 1e-12);
    assertEquals(10.0 * Math.sqrt(0.5), bounds.minXMm(), 1e-12);
    assertEquals(10.0 * Math.sqrt(2.0), bounds.heightMm(), 1e-12);
    assertEquals(bounds, arc.reversed().bounds());
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, true",
    "9.99, 0, true",
    "10.01, 0, false",
    "0, -9.99, true",
    "-7.2, 7.2, false",
  })
  void pointsInsideACircleAreTold(double x, double y, boolean inside) {
    assertEquals(inside, Loop.circle(ORIGIN, 10.0).contains(new Point2(x, y)));
  }

  @ParameterizedTest
  @CsvSource({"0, 2, false", "0, 4.9, false", "0, 5.1, true", "5.5, 1, true", "0, 7, false"})
  void pointsInsideTheHollowOfASaddleAreOutside(double x, double y, boolean inside) {
    // A block 12 wide, 6 high over the origin with a half-round of radius 5 cut from below.
    Loop saddle =
        Path.from(5.0, 0.0)
            .lineTo(6.0, 0.0)
            .lineTo(6.0, 6.0)
            .lineTo(-6.0, 6.0)
            .lineTo(-6.0, 0.0)
            .lineTo(-5.0, 0.0)
            .arcTo(new Point2(5.0, 0.0), ORIGIN, false)
            .close();
    assertEquals(72.0 - 12.5 * Math.PI, saddle.areaMm2(), 1e-9);
    assertEquals(inside, saddle.contains(new Point2(x, y)));
  }

  @Test
  void pathThatCrossesItselfIsRefused() {
    List<Point2> bowTie =
        List.of(ORIGIN, new Point2(10.0, 10.0), new Point2(10.0, 0.0), new Point2(0.0, 9.0));
    String message =
        assertThrows(IllegalArgumentException.class, () -> Loop.through(bowTie)).getMessage();
    assertTrue(message.contains("meets itself: edge 1 and edge 3"), message);
  }

  @Test
  void arcThatCutsThroughAnEdgeIsRefused() {
    // The saddle's arc of radius 5 would break out of a top only 4 high.
    Path path =
        Path.from(5.0, 0.0)
            .lineTo(6.0, 0.0)
            .lineTo(6.0, 4.0)
            .lineTo(-6.0, 4.0)
            .lineTo(-6.0, 0.0)
            .lineTo(-5.0, 0.0)
            .arcTo(new Point2(5.0, 0.0), ORIGIN, false);
    assertThrows(IllegalArgumentException.class, path::close);
  }

  @Test
  void gapsSpikesAndEmptyPathsAreRefused() {
    Straight one = new Straight(ORIGIN, new Point2(5.0, 0.0));
    Straight up = new Straight(new Point2(5.0, 0.1), new Point2(5.0, 5.0));
    Straight back = new Straight(new Point2(5.0, 5.0), ORIGIN);
    String gap =
        assertThrows(IllegalArgumentException.class, () -> new Loop(List.of(one, up, back)))
            .getMessage();
    assertTrue(gap.contains("gap of 0.1 mm"), gap);
    assertThrows(IllegalArgumentException.class, () -> new Loop(List.of()));
    List<Point2> spike =
        List.of(
            ORIGIN,
            new Point2(5.0, 0.0),
            new Point2(9.0, 0.0),
            new Point2(5.0, 0.0),
            new Point2(0.0, 5.0));
    assertThrows(IllegalArgumentException.class, () -> Loop.through(spike));
  }

  @ParameterizedTest
  @CsvSource({
    // Circle and circle: centre distance less both radii.
    "40, 0, 10, 40, 0, 5, 25",
    // One inside the other: difference of the radii less the centre distance.
    "0, 0, 20, 3, 4, 5, 10",
    // Crossing.
    "0, 0, 10, 8, 0, 5, 0",
  })
  void distanceBetweenCirclesIsTheClosedForm(
      double x, double y, double r, double otherX, double otherY, double otherR, double expected) {
    double shift = x == otherX ? 40.0 : 0.0;
    Loop one = Loop.circle(new Point2(x - shift, y), r);
    Loop other = Loop.circle(new Point2(otherX, otherY), otherR);
    assertEquals(expected, one.distanceMm(other), 1e-12);
    assertEquals(expected, other.distanceMm(one), 1e-12);
  }

  @Test
  void distanceFromCircleToSquareIsToItsNearestSideOrCorner() {
    Loop square =
        Loop.through(
            List.of(
                new Point2(-10.0, -10.0),
                new Point2(10.0, -10.0),
                new Point2(10.0, 10.0),
                new Point2(-10.0, 10.0)));
    assertEquals(6.0, square.distanceMm(Loop.circle(ORIGIN, 4.0)), 1e-12);
    Loop beyondCorner = Loop.circle(new Point2(13.0, 14.0), 2.0);
    assertEquals(3.0, square.distanceMm(beyondCorner), 1e-12);
    assertEquals(3.0, beyondCorner.distanceMm(square), 1e-12);
  }

  @Test
  void chordsOfThePolygonStayWithinTheTolerance() {
    double radius = 30.0;
    double tolerance = 0.05;
    List<Point2> polygon = Loop.circle(ORIGIN, radius).polygon(tolerance);
    double chord = polygon.get(0).distanceMm(polygon.get(1));
    double sag = radius - Math.sqrt(radius * radius - chord * chord / 4.0);
    assertTrue(sag <= tolerance, "sag " + sag);
    assertTrue(sag > tolerance / 2.0, "finer than asked: sag " + sag);
  }
}
