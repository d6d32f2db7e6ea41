package trammel.engine.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** Welds as lines in space against the tables of welds in one plane, and against sums by hand. */
class WeldRunsTest {
  private static final Point3 ORIGIN = new Point3(0, 0, 0);
  private static final Vector3 NONE = new Vector3(0, 0, 0);
  private static final double PER_TURN = 720;

  private static List<Point3> circle(double radiusMm) {
    List<Point3> points = new ArrayList<>();
    for (int i = 0; i <= PER_TURN; i++) {
      double rad = 2 * Math.PI * i / PER_TURN;
      points.add(new Point3(radiusMm * Math.cos(rad), radiusMm * Math.sin(rad), 0));
    }
    return points;
  }

  private static List<Point3> line(
      double x1, double y1, double z1, double x2, double y2, double z2) {
    return List.of(new Point3(x1, y1, z1), new Point3(x2, y2, z2));
  }

  /** Shigley, tables 9-1 and 9-2, from memory: a circle has J = 2 pi r^3 and I = pi r^3. */
  @Test
  void aCircleIsTurnedAndBentAsTheTablesSay() {
    WeldRuns round = new WeldRuns(List.of(circle(30)));
    double turned = round.largestNPerMm(NONE, ORIGIN, new Vector3(0, 0, 1e6));
    assertEquals(1e6 / (2 * Math.PI * 30 * 30), turned, 1e-3 * turned);
    double bent = round.largestNPerMm(NONE, ORIGIN, new Vector3(1e6, 0, 0));
    assertEquals(1e6 / (Math.PI * 30 * 30), bent, 1e-3 * bent);
    double pushed = round.largestNPerMm(new Vector3(3_000, 0, 4_000), ORIGIN, NONE);
    assertEquals(5_000 / (2 * Math.PI * 30), pushed, 1e-3 * pushed);
  }

  /** Shigley, table 9-1, from memory: two lines of d, b apart, have J = d (3 b^2 + d^2) / 6. */
  @Test
  void twoLinesAreTurnedAsTheTableSays() {
    WeldRuns pair =
        new WeldRuns(List.of(line(-20, -40, 0, -20, 40, 0), line(20, -40, 0, 20, 40, 0)));
    double polar = 80 * (3 * 40 * 40 + 80 * 80) / 6.0;
    assertEquals(
        1e5 * Math.hypot(20, 40) / polar,
        pair.largestNPerMm(NONE, ORIGIN, new Vector3(0, 0, 1e5)),
        1e-9);
  }

  /**
   * Two lines of 100 mm, 60 apart, 50 to each side of the middle in height: a force of 1 kN across
   * them at 200 mm ahead of their middle. 1,000 / 200 evenly; the moment of 200,000 Nmm about the
   * upright axis meets 2 x 100 x 30^2 + 2 x 100^3 / 12 = 346,667 mm3, and turns the ends, 30 and 50
   * from the axis, by 200,000 x 58.31 / 346,667 = 33.64: 33.64 x 50/58.31 = 28.85 on the even 5.
   */
  @Test
  void aForceBesideTheWeldsTurnsThem() {
    WeldRuns pair =
        new WeldRuns(List.of(line(-50, -30, 50, 50, -30, 50), line(-50, 30, 50, 50, 30, 50)));
    double flow = pair.largestNPerMm(new Vector3(0, 1_000, 0), new Point3(200, 0, 50), NONE);
    double along = 200_000.0 * 30 / 346_666.667;
    assertEquals(Math.hypot(5 + 200_000.0 * 50 / 346_666.667, along), flow, 1e-6);
    assertEquals(
        flow / (3 / Math.sqrt(2)),
        pair.throatMPa(new Vector3(0, 1_000, 0), new Point3(200, 0, 50), NONE, 3),
        1e-3 * flow);
  }

  /** In one plane it is the treatment that {@link WeldFlow} has of its own, load by load. */
  @Seeds(200)
  void inOnePlaneItIsTheWeldGroup(Draw draw) {
    List<WeldLine> lines = new ArrayList<>();
    List<List<Point3>> runs = new ArrayList<>();
    int count = draw.whole(2, 6);
    for (int i = 0; i < count; i++) {
      double x1 = draw.between(-100, 100);
      double y1 = draw.between(-100, 100);
      double x2 = draw.between(-100, 100);
      double y2 = draw.between(-100, 100);
      lines.add(new WeldLine(x1, y1, x2, y2));
      runs.add(line(x1, y1, 0, x2, y2, 0));
    }
    Vector3 force = draw(draw, 1e4);
    Vector3 moment = draw(draw, 1e6);
    WeldLoad load =
        new WeldLoad(force.x(), force.y(), force.z(), 0, 0, 0, moment.x(), moment.y(), moment.z());
    double expected = new WeldFlow(new WeldGroup(lines)).largestNPerMm(load);
    double found = new WeldRuns(runs).largestNPerMm(force, ORIGIN, moment);
    assertEquals(expected, found, 1e-6 * expected);
  }

  private static Vector3 draw(Draw draw, double most) {
    return new Vector3(
        draw.between(-most, most), draw.between(-most, most), draw.between(-most, most));
  }

  /** What is turned as a whole in space bears the same. */
  @Seeds(100)
  void turningEverythingChangesNothing(Draw draw) {
    List<List<Point3>> runs = new ArrayList<>();
    List<List<Point3>> turned = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Vector3 from = draw(draw, 100);
      Vector3 to = draw(draw, 100);
      runs.add(List.of(at(from), at(to)));
      turned.add(List.of(at(cycled(from)), at(cycled(to))));
    }
    Vector3 force = draw(draw, 1e4);
    Vector3 arm = draw(draw, 300);
    double flow = new WeldRuns(runs).largestNPerMm(force, at(arm), NONE);
    double other = new WeldRuns(turned).largestNPerMm(cycled(force), at(cycled(arm)), NONE);
    assertTrue(flow > 0);
    assertEquals(flow, other, 1e-9 * flow);
  }

  private static Point3 at(Vector3 vector) {
    return new Point3(vector.x(), vector.y(), vector.z());
  }

  /** Turned by a third about the space diagonal. */
  private static Vector3 cycled(Vector3 vector) {
    return new Vector3(vector.z(), vector.x(), vector.y());
  }

  @Test
  void weldsOnOneStraightLineHoldNothingThatTurns() {
    String refusal =
        assertThrows(
                IllegalArgumentException.class,
                () -> new WeldRuns(List.of(line(0, 0, 0, 10, 0, 0), line(20, 0, 0, 40, 0, 0))))
            .getMessage();
    assertTrue(refusal.contains("one straight line"), refusal);
  }
}
