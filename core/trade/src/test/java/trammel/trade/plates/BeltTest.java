package trammel.trade.plates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class BeltTest {
  @Test
  void beltRoundTwoEqualDiscsIsAnObround() {
    Loop belt =
        Belt.around(
            List.of(new Disc(new Point2(3.0, 4.0), 6.0), new Disc(new Point2(43.0, 34.0), 6.0)));
    assertEquals(2.0 * 6.0 * 50.0 + Math.PI * 36.0, belt.areaMm2(), 1e-9);
    assertEquals(100.0 + 12.0 * Math.PI, belt.lengthMm(), 1e-9);
    assertEquals(4, belt.edges().size());
  }

  @ParameterizedTest
  @CsvSource({"20, 8, 60", "30, 5, 40", "12, 0, 50"})
  void beltRoundTwoPulleysHasTheOpenBeltLength(double big, double small, double apart) {
    // Open belt, any machine design text: 2 sqrt(C2 - (R-r)2) + pi (R+r) + 2 (R-r) asin((R-r)/C).
    double expected =
        2.0 * Math.sqrt(apart * apart - (big - small) * (big - small))
            + Math.PI * (big + small)
            + 2.0 * (big - small) * Math.asin((big - small) / apart);
    Loop belt =
        Belt.around(
            List.of(new Disc(new Point2(0.0, 0.0), big), new Disc(new Point2(apart, 0.0), small)));
    assertEquals(expected, belt.lengthMm(), 1e-9 * expected);
  }

  @Test
  void beltSkipsTheMiddleOfARowAndWhatLiesInside() {
    Loop belt =
        Belt.around(
            List.of(
                new Disc(new Point2(20.0, 0.0), 5.0),
                new Disc(new Point2(0.0, 0.0), 5.0),
                new Disc(new Point2(40.0, 0.0), 5.0),
                new Disc(new Point2(10.0, 1.0), 2.0),
                new Disc(new Point2(40.0, 0.0), 5.0)));
    assertEquals(4, belt.edges().size());
    assertEquals(400.0 + 25.0 * Math.PI, belt.areaMm2(), 1e-9);
  }

  @Test
  void beltRoundCornersIsTheirPolygon() {
    Loop belt =
        Belt.around(
            List.of(
                Disc.corner(new Point2(0.0, 0.0)),
                Disc.corner(new Point2(10.0, 0.0)),
                Disc.corner(new Point2(10.0, 10.0)),
                Disc.corner(new Point2(0.0, 10.0)),
                Disc.corner(new Point2(4.0, 5.0))));
    assertEquals(100.0, belt.areaMm2(), 1e-12);
    assertEquals(4, belt.edges().size());
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-9, 1e-8, 1e-7, 1e-6, 1e-5, 1e-4, 1e-3, 1e-2})
  void discThatBarelySticksOutOfARowIsStillHeld(double outMm) {
    Loop belt =
        Belt.around(
            List.of(
                new Disc(new Point2(0.0, 0.0), 5.0),
                new Disc(new Point2(20.0, -outMm), 5.0),
                new Disc(new Point2(40.0, 0.0), 5.0)));
    // The row of 40 by 10 with its ends, and a sliver of 40 x out / 2 below it.
    assertEquals(400.0 + 25.0 * Math.PI + 20.0 * outMm, belt.areaMm2(), 1e-4);
  }

  @Test
  void discsThatAllButShareATangentAreHeld() {
    // The common tangent of the first two passes the third by 0.00026.
    Disc small = new Disc(new Point2(0.0, 0.0), 3.0);
    Loop belt =
        Belt.around(
            List.of(
                new Disc(new Point2(12.5, -15.0), 19.5),
                new Disc(new Point2(22.5, 60.0), 6.0),
                small));
    assertEquals(0.0, belt.distanceMm(new Point2(0.0, 0.0)) - 3.0, 1e-3);
  }

  @Test
  void beltWithoutAreaIsRefused() {
    Disc one = Disc.corner(new Point2(0.0, 0.0));
    Disc other = Disc.corner(new Point2(5.0, 0.0));
    assertThrows(IllegalArgumentException.class, () -> Belt.around(List.of(one)));
    assertThrows(IllegalArgumentException.class, () -> Belt.around(List.of(one, other)));
  }

  @Seeds(200)
  void beltHoldsEveryDiscAndIsNoLongerThanNeeded(Draw draw) {
    List<Disc> discs = discs(draw);
    Loop belt = Belt.around(discs);
    assertTrue(belt.isAnticlockwise());
    double turnRad = 0.0;
    for (Edge edge : belt.edges()) {
      if (edge instanceof Arc arc) {
        assertTrue(arc.anticlockwise());
        turnRad += arc.sweepRad();
      }
    }
    assertTrue(turnRad <= 2.0 * Math.PI + 1e-9, "turn " + turnRad);
    for (Disc disc : discs) {
      for (int i = 0; i < 16; i++) {
        Point2 rim = Point2.polar(disc.centre(), disc.radiusMm() * 0.9999, i * Math.PI / 8.0 + 0.1);
        assertTrue(belt.contains(rim) || belt.distanceMm(rim) < 1e-6, () -> disc + " sticks out");
      }
    }
    for (int i = 0; i < 32; i++) {
      // In every direction the belt reaches exactly as far as the furthest disc.
      double angle = i * Math.PI / 16.0;
      double furthest = Double.NEGATIVE_INFINITY;
      for (Disc disc : discs) {
        Point2 c = disc.centre();
        furthest =
            Math.max(
                furthest, c.xMm() * Math.cos(angle) + c.yMm() * Math.sin(angle) + disc.radiusMm());
      }
      assertEquals(furthest, belt.placed(Placement.turn(-angle)).bounds().maxXMm(), 1e-6);
    }
  }

  @Seeds(200)
  void exactAreaAgreesWithThePolygonWithinTheChordTolerance(Draw draw) {
    List<Disc> discs = discs(draw);
    double toleranceMm = 0.02;
    Loop belt = Belt.around(discs);
    double polygon = Shoelace.areaMm2(belt.polygon(toleranceMm));
    assertTrue(polygon <= belt.areaMm2() + 1e-6, "chords of a bulging path lie inside it");
    assertEquals(belt.areaMm2(), polygon, toleranceMm * belt.lengthMm());
  }

  @Seeds(200)
  void placingAndMirroringKeepAreaLengthAndSense(Draw draw) {
    List<Disc> discs = discs(draw);
    Placement placement = placement(draw);
    Loop belt = Belt.around(discs);
    Loop moved = belt.placed(placement);
    assertTrue(moved.isAnticlockwise());
    assertEquals(belt.areaMm2(), moved.areaMm2(), 1e-8 * belt.areaMm2() + 1e-6);
    assertEquals(belt.lengthMm(), moved.lengthMm(), 1e-8 * belt.lengthMm());
  }

  /** Up to seven discs, on a grid so that some touch or line up, and one that has an area. */
  private static List<Disc> discs(Draw draw) {
    List<Disc> discs = new ArrayList<>(draw.listOf(0, 7, BeltTest::disc));
    discs.add(new Disc(new Point2(0.0, 0.0), 3.0));
    return discs;
  }

  private static Disc disc(Draw draw) {
    Point2 centre = new Point2(2.5 * draw.whole(-40, 40), 2.5 * draw.whole(-40, 40));
    return new Disc(centre, 1.5 * draw.whole(0, 20));
  }

  private static Placement placement(Draw draw) {
    return new Placement(
        draw.either(),
        draw.between(-7.0, 7.0),
        draw.between(-500.0, 500.0),
        draw.between(-500.0, 500.0));
  }
}
