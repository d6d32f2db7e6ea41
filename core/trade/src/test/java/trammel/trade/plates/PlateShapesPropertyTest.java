package trammel.trade.plates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.AfterAll;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** What holds for every set of dimensions that a shape accepts. */
class PlateShapesPropertyTest {
  private static final double CHORD_TOLERANCE_MM = 0.05;

  private static final Map<String, Integer> accepted = new HashMap<>();
  private static int runs;

  @Seeds(800)
  void everyAcceptedShapeIsSound(Draw draw) {
    Kind kind = KINDS.get(draw.whole(0, KINDS.size() - 1));
    Optional<PlateShape> shape = acceptedOrRefusedWithARemedy(kind, draw);
    runs++;
    if (shape.isPresent()) {
      accepted.merge(kind.name(), 1, Integer::sum);
      Outline outline = shape.get().outline();
      polygonAgreesWithExactArea(outline);
      holesKeepTheirMetal(outline);
      otherHandIsTheSameSize(outline);
      assertTrue(shape.get().plate("mild steel").weightKg() > 0.0);
    }
  }

  /** What is refused proves nothing about a shape. */
  @AfterAll
  static void someOfEveryKindWereAccepted() {
    if (runs >= 800) {
      for (Kind kind : KINDS) {
        int times = accepted.getOrDefault(kind.name(), 0);
        assertTrue(times > 10, kind.name() + " accepted " + times + " times");
      }
    }
  }

  private static Optional<PlateShape> acceptedOrRefusedWithARemedy(Kind kind, Draw draw) {
    try {
      return Optional.of(kind.make().apply(new Sizes(draw)));
    } catch (IllegalArgumentException refused) {
      assertTrue(refused.getMessage().contains("\n"), "no remedy in: " + refused.getMessage());
      assertTrue(!refused.getMessage().contains("NaN"), refused.getMessage());
      return Optional.empty();
    }
  }

  private static void polygonAgreesWithExactArea(Outline outline) {
    double polygon = Shoelace.areaMm2(outline, CHORD_TOLERANCE_MM);
    assertEquals(outline.areaMm2(), polygon, CHORD_TOLERANCE_MM * outline.cutLengthMm(), "area");
    // The outline's own bounds hold the polygon and are no larger than the arcs need.
    double most = Double.NEGATIVE_INFINITY;
    for (Point2 point : outline.polygon(CHORD_TOLERANCE_MM)) {
      most = Math.max(most, point.yMm());
    }
    assertEquals(outline.bounds().maxYMm(), most, 2.0 * CHORD_TOLERANCE_MM, "top");
  }

  /** Measured on finely divided polygons, not with the outlines' own distances. */
  private static void holesKeepTheirMetal(Outline outline) {
    List<Point2> edge = outline.polygon(0.005);
    for (Hole hole : outline.holes()) {
      if (hole instanceof RoundHole round) {
        double centreToEdgeMm = distanceMm(edge, round.centre());
        assertTrue(
            centreToEdgeMm >= 1.5 * round.diameterMm() - 0.01,
            () -> "edge distance " + centreToEdgeMm + " at hole " + round);
      }
    }
    for (int i = 0; i < outline.holes().size(); i++) {
      for (int j = 0; j < i; j++) {
        if (outline.holes().get(i) instanceof RoundHole one
            && outline.holes().get(j) instanceof RoundHole other) {
          double gapMm =
              one.centre().distanceMm(other.centre())
                  - (one.diameterMm() + other.diameterMm()) / 2.0;
          assertTrue(gapMm >= 0.5 * one.diameterMm() - 1e-6, "ligament " + gapMm);
        }
      }
    }
  }

  private static double distanceMm(List<Point2> polygon, Point2 point) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < polygon.size(); i++) {
      Point2 a = polygon.get(i);
      Point2 b = polygon.get((i + 1) % polygon.size());
      double dx = b.xMm() - a.xMm();
      double dy = b.yMm() - a.yMm();
      double share =
          ((point.xMm() - a.xMm()) * dx + (point.yMm() - a.yMm()) * dy) / (dx * dx + dy * dy);
      double t = Math.max(0.0, Math.min(1.0, share));
      least =
          Math.min(
              least, Math.hypot(a.xMm() + t * dx - point.xMm(), a.yMm() + t * dy - point.yMm()));
    }
    return least;
  }

  private static void otherHandIsTheSameSize(Outline outline) {
    Outline mirrored = outline.mirrored();
    assertEquals(outline.areaMm2(), mirrored.areaMm2(), 1e-6);
    assertEquals(outline.cutLengthMm(), mirrored.cutLengthMm(), 1e-6);
    assertEquals(-outline.bounds().maxXMm(), mirrored.bounds().minXMm(), 1e-6);
  }

  record Kind(String name, Function<Sizes, PlateShape> make) {}

  /** The sizes a shop meets, and somewhat beyond. */
  record Sizes(Draw draw) {
    double mm(double least, double most) {
      return draw.evenly(least, most);
    }

    int count(int most) {
      return draw.whole(1, most);
    }

    double thickness() {
      return mm(3.0, 10.0);
    }

    PickUpRow row(Point2 centre, double directionRad) {
      int count = count(4);
      double hole = mm(10.0, 20.0);
      PickUpRow single = PickUpRow.single(centre, hole).withNose(hole * mm(1.45, 2.2));
      return single.row(count, mm(1.4, 3.0) * hole, directionRad, draw.whole(0, count - 1));
    }
  }

  private static final List<Kind> KINDS =
      List.of(
          new Kind(
              "tube bracket",
              s ->
                  new TubeBracket(
                      "tab",
                      s.thickness(),
                      s.mm(60.0, 90.0),
                      s.mm(0.0, 2.0),
                      s.mm(1.0, 2.9),
                      s.row(
                          Point2.polar(new Point2(0.0, 0.0), s.mm(60.0, 160.0), s.mm(-3.0, 3.0)),
                          s.mm(-3.0, 3.0)),
                      HoleRules.SHOP)),
          new Kind(
              "rail bracket",
              s ->
                  new RailBracket(
                      "bracket",
                      s.thickness(),
                      s.mm(60.0, 250.0),
                      s.mm(0.0, 60.0),
                      s.row(new Point2(s.mm(-50.0, 50.0), -s.mm(25.0, 150.0)), s.mm(-3.2, 0.0)),
                      HoleRules.SHOP)),
          new Kind(
              "lateral rail bracket",
              s ->
                  new LateralBarRailBracket(
                      "bracket",
                      s.thickness(),
                      s.mm(30.0, 80.0),
                      s.mm(30.0, 120.0),
                      s.mm(20.0, 60.0),
                      s.mm(5.0, 15.0),
                      s.row(new Point2(s.mm(-20.0, 60.0), -s.mm(40.0, 150.0)), -Math.PI / 2.0),
                      HoleRules.SHOP)),
          new Kind(
              "gusset",
              s ->
                  new OutriggerGusset(
                      "gusset",
                      s.thickness(),
                      s.mm(50.0, 200.0),
                      s.mm(50.0, 200.0),
                      s.mm(0.6, 2.5),
                      s.mm(5.0, 25.0),
                      s.mm(5.0, 25.0))),
          new Kind(
              "shock tab",
              s ->
                  new ShockTab(
                      "tab",
                      s.thickness(),
                      s.mm(30.0, 100.0),
                      s.mm(15.0, 80.0),
                      s.mm(10.0, 16.0),
                      s.mm(14.0, 30.0),
                      HoleRules.SHOP)),
          new Kind(
              "spring seat",
              s ->
                  new SpringSeat(
                      "seat",
                      s.thickness(),
                      s.mm(120.0, 180.0),
                      s.mm(0.0, 60.0),
                      s.mm(6.0, 14.0),
                      s.mm(70.0, 150.0),
                      s.count(8),
                      s.mm(-3.0, 3.0),
                      HoleRules.SHOP)),
          new Kind(
              "crossmember tab",
              s ->
                  new CrossmemberTab(
                      "tab",
                      s.thickness(),
                      s.mm(60.0, 160.0),
                      s.mm(40.0, 120.0),
                      s.mm(0.0, 25.0),
                      s.mm(8.0, 14.0),
                      s.count(3),
                      s.mm(25.0, 50.0),
                      s.count(2),
                      s.mm(25.0, 40.0),
                      s.mm(15.0, 40.0),
                      HoleRules.SHOP)),
          new Kind(
              "strut",
              s ->
                  new MockUpStrut(
                      "strut",
                      s.thickness(),
                      s.mm(200.0, 500.0),
                      s.mm(10.0, 16.0),
                      s.mm(14.0, 30.0),
                      HoleRules.SHOP)),
          new Kind(
              "notch",
              s ->
                  new NotchPlate(
                      "notch",
                      s.thickness(),
                      s.mm(60.0, 130.0),
                      s.mm(30.0, 120.0),
                      s.mm(25.0, 60.0),
                      s.mm(40.0, 150.0),
                      s.mm(5.0, 30.0),
                      s.mm(40.0, 80.0))));
}
