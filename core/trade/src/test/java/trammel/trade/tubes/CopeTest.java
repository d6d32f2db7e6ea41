package trammel.trade.tubes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;
import trammel.trade.plates.Point2;

class CopeTest {
  private static final double INCH = 25.4;

  @ParameterizedTest
  @CsvSource({
    // Intersection of two cylinders; every point put back into the header's equation.
    // r, R, degrees, e, z(0), z(45), z(90), z(135), z(180), depth, edge length (in)
    ".75, .875, 90, 0,   .8750, .6960, .4507, .6960, .8750, .4243, 5.0694",
    ".75, 1.0,  60, 0,   .7217, .6728, .7638, 1.2851, 1.5877, .9263, 5.3312",
    ".75, 1.0,  90, .25, .9682, .6254, 0,     .6254, .9682, 1.0000, 5.4806",
    ".875, 1.5, 90, 0,   1.5000, 1.3665, 1.2183, 1.3665, 1.5000, .2817, 5.6375",
  })
  void copeHasTheTabulatedEdge(
      double branch,
      double header,
      double degrees,
      double offset,
      double z0,
      double z45,
      double z90,
      double z135,
      double z180,
      double depth,
      double length) {
    Cope cope = new Cope(branch * INCH, header * INCH, Math.toRadians(degrees), offset * INCH);
    double[] expected = {z0, z45, z90, z135, z180};
    for (int i = 0; i < expected.length; i++) {
      assertEquals(expected[i], cope.edgeMm(i * Math.PI / 4.0) / INCH, 6e-5, i * 45 + " deg");
    }
    assertEquals(depth, cope.depthMm() / INCH, 6e-5);
    assertEquals(length, cope.edgeLengthMm() / INCH, 1e-4);
  }

  @Test
  void offsetCopeIsNotSymmetrical() {
    Cope cope = new Cope(0.75 * INCH, INCH, Math.PI / 2.0, 0.25 * INCH);
    assertEquals(0.8660, cope.edgeMm(1.5 * Math.PI) / INCH, 5e-5);
  }

  @ParameterizedTest
  @CsvSource({
    // Long form of AWS D1.1 (from memory): Ka 1.0926 and 1.1352; exact 1.0758 and 1.1313.
    ".75, .875, 90, 1.0926, 1.0758, 1.0000",
    ".75, 1.0, 60, 1.1352, 1.1313, 1.0774",
  })
  void weldLengthFactorsAreAsPublished(
      double branch, double header, double degrees, double tubular, double exact, double brief) {
    Cope cope = new Cope(branch * INCH, header * INCH, Math.toRadians(degrees), 0.0);
    double round = 2.0 * Math.PI * branch * INCH;
    assertEquals(tubular, cope.tubularRuleWeldMm() / round, 6e-5);
    assertEquals(exact, cope.edgeLengthMm() / round, 6e-5);
    assertEquals(brief, cope.shortRuleWeldMm() / round, 6e-5);
  }

  /** Short rule of AWS D1.1 (from memory), (1 + 1/sin) / 2 of the circumference, at four angles. */
  @ParameterizedTest
  @CsvSource({"90, 1.0000", "60, 1.0774", "45, 1.2071", "30, 1.5000"})
  void shortRuleGrowsAsTheTubesLieCloser(double degrees, double expected) {
    Cope cope = new Cope(0.75 * INCH, INCH, Math.toRadians(degrees), 0.0);
    double round = 2.0 * Math.PI * 0.75 * INCH;
    assertEquals(expected, cope.shortRuleWeldMm() / round, 6e-5);
  }

  @Seeds(300)
  void everyEdgePointLiesOnTheHeader(Draw draw) {
    double branch = draw.between(10.0, 40.0);
    double thicker = draw.between(0.0, 30.0);
    double angle = draw.between(0.3, 1.57);
    double offsetShare = draw.between(-1.0, 1.0);
    double offset = offsetShare * thicker;
    double header = branch + thicker;
    Cope cope = new Cope(branch, header, angle, offset);
    double nearest = cope.nearestMm();
    double furthest = cope.furthestMm();
    for (int i = 0; i < 72; i++) {
      double phi = i * Math.PI / 36.0;
      double z = cope.edgeMm(phi);
      // Header along X: the point's distance from that axis is the header's radius.
      double y = branch * Math.sin(phi) + offset;
      double height = z * Math.sin(angle) + branch * Math.cos(phi) * Math.cos(angle);
      assertEquals(header, Math.hypot(y, height), 1e-9 * header);
      assertTrue(z >= nearest - 1e-9 && z <= furthest + 1e-9);
    }
    assertTrue(cope.edgeLengthMm() >= 2.0 * Math.PI * branch);
  }

  @Test
  void edgeOfACopeOnAVastHeaderIsTheMitreEllipse() {
    // On a flat face the edge is an ellipse with half axes r and r / sin(theta);
    // perimeter by Ramanujan's second formula (1914), good to 1e-9 here.
    double r = 20.0;
    double theta = Math.toRadians(60.0);
    Cope cope = new Cope(r, 1e7, theta, 0.0);
    double a = r / Math.sin(theta);
    double h = (a - r) * (a - r) / ((a + r) * (a + r));
    double perimeter = Math.PI * (a + r) * (1.0 + 3.0 * h / (10.0 + Math.sqrt(4.0 - 3.0 * h)));
    assertEquals(perimeter, cope.edgeLengthMm(), 1e-4);
  }

  @Test
  void wrapStartsAndEndsOnTheSameLineAndTouchesZero() {
    Cope cope = new Cope(0.75 * INCH, INCH, Math.toRadians(60.0), 0.0);
    List<Point2> wrap = cope.wrap(360);
    assertEquals(361, wrap.size());
    assertEquals(wrap.get(0).yMm(), wrap.get(360).yMm(), 1e-9);
    assertEquals(2.0 * Math.PI * 0.75 * INCH, wrap.get(360).xMm(), 1e-9);
    double least = wrap.stream().mapToDouble(Point2::yMm).min().orElseThrow();
    double most = wrap.stream().mapToDouble(Point2::yMm).max().orElseThrow();
    assertEquals(0.0, least, 1e-2);
    assertEquals(0.9263 * INCH, most, 2e-3);
  }

  @ParameterizedTest
  @CsvSource({"20, 19, 90, 0", "20, 22, 90, 2.1", "20, 22, 90, -2.1", "20, 30, 10, 0"})
  void branchFatterThanTheHeaderOrTooSlantIsRefused(
      double branch, double header, double degrees, double offset) {
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> new Cope(branch, header, Math.toRadians(degrees), offset))
            .getMessage();
    assertTrue(message.contains("allowed is") && message.contains("\n"), message);
  }

  @Test
  void equalTubesMeetWithoutLosingARoot() {
    Cope cope = new Cope(20.0, 20.0, Math.PI / 2.0, 0.0);
    assertEquals(0.0, cope.edgeMm(Math.PI / 2.0), 1e-6);
    assertEquals(20.0, cope.depthMm(), 1e-6);
  }
}
