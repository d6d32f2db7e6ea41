package trammel.trade.plates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each shape against the plane geometry it is made of. */
class PlateShapesTest {
  private static final Point2 ORIGIN = new Point2(0.0, 0.0);

  private static String refusal(Runnable action) {
    String message =
        assertThrows(IllegalArgumentException.class, action::run, "expected a refusal")
            .getMessage();
    assertTrue(message.contains("\n"), "no remedy in: " + message);
    return message;
  }

  @Test
  void tubeBracketSaddlesOnTheTubeAndHoldsItsHoleWhereTheLayoutWantsIt() {
    double angle = Math.toRadians(-70.0);
    TubeBracket bracket = TubeBracket.at("lower axle tab", 6.35, 76.2, 85.0, angle, 16.0);
    Outline outline = bracket.outline();
    RoundHole hole = (RoundHole) outline.holes().get(0);
    assertEquals(85.0, ORIGIN.distanceMm(hole.centre()), 1e-9);
    assertEquals(angle, ORIGIN.headingRad(hole.centre()), 1e-9);
    // Nothing of the plate is inside the tube, and the saddle lies on it.
    assertEquals(38.1, outline.outer().distanceMm(ORIGIN), 1e-9);
    // A third of the tube's round.
    assertEquals(Math.PI * 76.2 / 3.0, bracket.saddleLengthMm(), 1e-9);
    // The nose reaches 1.5 hole diameters beyond the hole's centre.
    double reach = outline.outer().placed(Placement.turn(-angle)).bounds().maxXMm();
    assertEquals(85.0 + 24.0, reach, 1e-9);
  }

  @Test
  void tubeBracketAreaIsItsBeltLessTheTubeSegment() {
    TubeBracket bracket = TubeBracket.at("tab", 6.0, 80.0, 95.0, Math.PI / 2.0, 16.0);
    double half = Math.toRadians(60.0);
    Disc nose = new Disc(new Point2(0.0, 95.0), 24.0);
    Loop hull =
        Belt.around(
            List.of(
                nose,
                Disc.corner(Point2.polar(ORIGIN, 40.0, Math.PI / 2.0 - half)),
                Disc.corner(Point2.polar(ORIGIN, 40.0, Math.PI / 2.0 + half)),
                Disc.corner(Point2.polar(ORIGIN, 46.0, Math.PI / 2.0 - half)),
                Disc.corner(Point2.polar(ORIGIN, 46.0, Math.PI / 2.0 + half))));
    double tubeSegment = 1600.0 * (half - Math.sin(half) * Math.cos(half));
    double expected = hull.areaMm2() - tubeSegment - 64.0 * Math.PI;
    assertEquals(expected, bracket.outline().areaMm2(), 1e-8);
  }

  @Test
  void tubeBracketRefusesAHoleTooNearTheTube() {
    String message = refusal(() -> TubeBracket.at("tab", 6.0, 76.2, 60.0, 0.0, 16.0));
    // 38.1 + 1.5 x 16 = 62.1
    assertTrue(message.contains("60 mm") && message.contains("62.1 mm"), message);
  }

  @Test
  void tubeBracketRefusesASaddleNarrowerThanItsNose() {
    PickUpRow row = PickUpRow.single(new Point2(0.0, 100.0), 30.0);
    String message =
        refusal(
            () ->
                new TubeBracket(
                    "tab",
                    6.0,
                    60.0,
                    0.0,
                    Math.toRadians(20.0),
                    row.withNose(75.0),
                    HoleRules.SHOP));
    assertTrue(message.contains("wider saddle"), message);
  }

  @Test
  void adjustmentRowHasItsHolesAtThePitchAboutTheNominalOne() {
    PickUpRow row = PickUpRow.single(new Point2(10.0, -90.0), 16.0).row(4, 25.4, -Math.PI / 2.0, 1);
    List<Point2> centres = row.centres();
    assertEquals(new Point2(10.0, -90.0), centres.get(1));
    assertEquals(-90.0 + 25.4, centres.get(0).yMm(), 1e-9);
    assertEquals(-90.0 - 50.8, centres.get(3).yMm(), 1e-9);
    assertEquals(10.0, centres.get(3).xMm(), 1e-9);
    RailBracket bracket = new RailBracket("bracket", 6.35, 150.0, 0.0, row, HoleRules.SHOP);
    assertEquals(5, bracket.outline().pierces());
    // Ligament of the row: 25.4 - 16.
    assertEquals(9.4, bracket.outline().minimumLigamentMm().orElseThrow(), 1e-9);
  }

  @Test
  void adjustmentRowWithTooSmallAPitchIsRefused() {
    PickUpRow row = PickUpRow.single(new Point2(0.0, -90.0), 16.0).row(3, 20.0, 0.0, 1);
    String message =
        refusal(() -> new RailBracket("bracket", 6.35, 150.0, 0.0, row, HoleRules.SHOP));
    assertTrue(message.contains("pitch larger by 4 mm"), message);
  }

  @ParameterizedTest
  @CsvSource({
    // drop, nose: 2 (nose + drop tan 30), Whitmore 1952 spread, from memory.
    "100, 24, 163.470",
    "60, 20, 109.282",
  })
  void railBracketBaseFollowsTheLoadSpread(double drop, double nose, double base) {
    assertEquals(base, RailBracket.baseByRuleMm(drop, nose), 1e-3);
  }

  @Test
  void railBracketStandsOnItsBase() {
    RailBracket bracket = RailBracket.below("frame bracket", 6.35, 100.0, 15.0, 16.0, 40.0);
    Bounds bounds = bracket.outline().bounds();
    assertEquals(bracket.baseLengthMm(), bounds.widthMm(), 1e-9);
    assertEquals(40.0, bounds.maxYMm(), 1e-9);
    assertEquals(-124.0, bounds.minYMm(), 1e-9);
    assertTrue(bracket.baseLengthMm() / 2.0 >= 15.0 + 24.0);
  }

  @Test
  void lateralBarRailBracketKeepsClearOfTheRail() {
    PickUpRow row = PickUpRow.single(new Point2(20.0, -70.0), 16.0).row(3, 25.4, -Math.PI / 2.0, 0);
    LateralBarRailBracket bracket =
        new LateralBarRailBracket("bar bracket", 6.35, 60.0, 80.0, 40.0, 12.0, row, HoleRules.SHOP);
    Loop outer = bracket.outline().outer();
    for (Point2 point : outer.polygon(0.1)) {
      boolean inRail = point.xMm() < -1e-6 && point.yMm() > 1e-6;
      assertTrue(!inRail, () -> point + " is inside the rail");
    }
    assertEquals(12.0, outer.distanceMm(ORIGIN), 1e-9);
    assertEquals(60.0 + 80.0 - 24.0, bracket.weldLineMm(), 1e-12);
    assertEquals(-70.0 - 50.8 - 24.0, outer.bounds().minYMm(), 1e-9);
  }

  @Test
  void mockUpStrutIsAnObroundWithTwoHoles() {
    MockUpStrut strut = new MockUpStrut("strut", 4.8, 330.0, 13.0, 20.0, HoleRules.SHOP);
    double expected = 330.0 * 40.0 + 400.0 * Math.PI - 2.0 * 42.25 * Math.PI;
    assertEquals(expected, strut.outline().areaMm2(), 1e-8);
  }

  @Test
  void springSeatIsAnAnnulusLessItsBoltHoles() {
    SpringSeat seat =
        new SpringSeat("seat", 6.35, 150.0, 50.0, 10.0, 110.0, 4, 0.3, HoleRules.SHOP);
    double expected = Math.PI * (5625.0 - 625.0 - 4.0 * 25.0);
    assertEquals(expected, seat.outline().areaMm2(), 1e-8);
    assertEquals(6, seat.outline().pierces());
    // 75 - 55 - 5 outside, 55 - 25 - 5 inside.
    assertEquals(15.0, seat.outline().minimumLigamentMm().orElseThrow(), 1e-9);
  }

  @Test
  void springSeatWithBoltsOffTheEdgeIsRefused() {
    refusal(() -> new SpringSeat("seat", 6.35, 120.0, 50.0, 10.0, 110.0, 4, 0.0, HoleRules.SHOP));
  }

  @Test
  void crossmemberTabIsARectangleLessTwoRoundedCorners() {
    CrossmemberTab tab =
        new CrossmemberTab(
            "tab", 6.35, 100.0, 80.0, 15.0, 10.0, 2, 50.0, 2, 35.0, 25.0, HoleRules.SHOP);
    double expected = 8000.0 - 2.0 * 225.0 * (1.0 - Math.PI / 4.0) - 4.0 * 25.0 * Math.PI;
    assertEquals(expected, tab.outline().areaMm2(), 1e-9);
  }

  @Test
  void shockTabIsAsHighAsItsHoleAndNose() {
    ShockTab tab = new ShockTab("tab", 6.35, 60.0, 45.0, 13.0, 20.0, HoleRules.SHOP);
    Bounds bounds = tab.outline().bounds();
    assertEquals(65.0, bounds.heightMm(), 1e-9);
    assertEquals(60.0, bounds.widthMm(), 1e-9);
    String message =
        refusal(() -> new ShockTab("tab", 6.35, 60.0, 45.0, 13.0, 19.0, HoleRules.SHOP));
    assertTrue(message.contains("larger about the hole by 0.5 mm"), message);
  }

  @Test
  void squareGussetIsItsPolygonLessAQuarterCircle() {
    OutriggerGusset gusset =
        new OutriggerGusset("gusset", 6.0, 120.0, 90.0, Math.PI / 2.0, 12.0, 15.0);
    double polygon =
        Shoelace.areaMm2(
            List.of(
                ORIGIN,
                new Point2(120.0, 0.0),
                new Point2(120.0, 12.0),
                new Point2(12.0, 90.0),
                new Point2(0.0, 90.0)));
    assertEquals(polygon - 225.0 * Math.PI / 4.0, gusset.outline().areaMm2(), 1e-9);
    assertEquals(120.0 + 90.0 - 30.0, gusset.weldLineMm(), 1e-12);
  }

  @Test
  void gussetIsTheSameWithItsLegsExchanged() {
    double corner = Math.toRadians(110.0);
    OutriggerGusset one = new OutriggerGusset("gusset", 6.0, 120.0, 90.0, corner, 12.0, 15.0);
    OutriggerGusset other = new OutriggerGusset("gusset", 6.0, 90.0, 120.0, corner, 12.0, 15.0);
    assertEquals(one.outline().areaMm2(), other.outline().areaMm2(), 1e-8);
    assertEquals(one.outline().cutLengthMm(), other.outline().cutLengthMm(), 1e-8);
  }

  private static BoxingPlate boxing(double insideDepthMm, Optional<Arc> notch) {
    return new BoxingPlate("boxing", 4.8, 600.0, insideDepthMm, 1.5, notch);
  }

  /** A cut of 100 mm radius and 100 mm deep about a point of the rail's lower edge. */
  private static Optional<Arc> notchAt(double alongMm) {
    // The rail's lower edge is 144 mm under the inside of its upper flange: 4 mm of wall below.
    return Optional.of(Arc.about(new Point2(alongMm, -144.0), 100.0, Math.PI, -Math.PI));
  }

  @Test
  void boxingPlateIsARectangleLessItsGaps() {
    assertEquals(600.0 * 137.0, boxing(140.0, Optional.empty()).outline().areaMm2(), 1e-9);
  }

  /** Area of a circle's part over a chord: r² acos(d/r) - d √(r² - d²). */
  private static double segmentMm2(double radiusMm, double chordMm) {
    return radiusMm * radiusMm * Math.acos(chordMm / radiusMm)
        - chordMm * Math.sqrt(radiusMm * radiusMm - chordMm * chordMm);
  }

  @Test
  void boxingPlateIsCutOutWithTheNotchOfTheRail() {
    BoxingPlate plate = boxing(140.0, notchAt(250.0));
    // The plate's lower edge is 5.5 mm over the rail's: that much less of the half round.
    assertEquals(600.0 * 137.0 - segmentMm2(100.0, 5.5), plate.outline().areaMm2(), 1e-6);
    double reachMm = Math.sqrt(100.0 * 100.0 - 5.5 * 5.5);
    List<Straight> lower = plate.lowerEdges();
    assertEquals(2, lower.size());
    assertEquals(250.0 - reachMm, lower.get(0).lengthMm(), 1e-9);
    assertEquals(350.0 - reachMm, lower.get(1).lengthMm(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"0", "600"})
  void boxingPlateThatEndsInTheMiddleOfTheNotchLosesHalfOfIt(double middleMm) {
    BoxingPlate plate = boxing(140.0, notchAt(middleMm));
    assertEquals(600.0 * 137.0 - segmentMm2(100.0, 5.5) / 2, plate.outline().areaMm2(), 1e-6);
    assertEquals(1, plate.lowerEdges().size());
  }

  @Test
  void boxingPlateInsideTheOpeningKeepsWhatIsOverTheCut() {
    BoxingPlate plate = new BoxingPlate("boxing", 4.8, 40.0, 140.0, 1.5, notchAt(20.0));
    // A strip of 40 mm of the circle about its top, over the line 5.5 mm over its middle.
    double underCutMm2 =
        2 * (10.0 * Math.sqrt(100.0 * 100.0 - 20.0 * 20.0) + 5000.0 * Math.asin(0.2)) - 40 * 5.5;
    assertEquals(40.0 * 137.0 - underCutMm2, plate.outline().areaMm2(), 1e-6);
    assertTrue(plate.lowerEdges().isEmpty());
  }

  @Test
  void boxingPlateBesideTheNotchStaysWhole() {
    assertEquals(600.0 * 137.0, boxing(140.0, notchAt(-100.0)).outline().areaMm2(), 1e-9);
  }

  @Test
  void boxingPlateForAShallowerRailThanItsGapsIsRefused() {
    refusal(() -> boxing(3.0, Optional.empty()));
  }

  @Test
  void fullDepthNotchIsAHalfRound() {
    NotchPlate notch = new NotchPlate("notch", 6.0, 90.0, 90.0, 40.0, 80.0, 20.0, 63.5);
    assertEquals(180.0, notch.openingMm(), 1e-9);
    // Half round on the middle of a 6 mm strip that lies inside radius 90.
    assertEquals(Math.PI * 87.0, notch.stripLengthMm(), 1e-9);
    assertEquals(Math.PI * 87.0 * 63.5, notch.strip("mild steel").outline().areaMm2(), 1e-6);
    Bounds bounds = notch.outline().bounds();
    assertEquals(130.0, bounds.maxYMm(), 1e-9);
    assertEquals(2.0 * (90.0 + 80.0), bounds.widthMm(), 1e-9);
  }

  @Test
  void notchRingAndFlatsMeetInTangentRoots() {
    NotchPlate notch = new NotchPlate("notch", 6.0, 100.0, 70.0, 40.0, 90.0, 20.0, 63.5);
    List<Edge> edges = notch.outline().outer().edges();
    int roots = 0;
    for (int i = 0; i < edges.size(); i++) {
      Edge edge = edges.get(i);
      if (edge instanceof Arc arc && Math.abs(arc.radiusMm() - 20.0) < 1e-9) {
        Edge before = edges.get(i - 1);
        Edge after = edges.get(i + 1);
        assertEquals(1.0, Math.cos(arc.startHeadingRad() - before.endHeadingRad()), 1e-12);
        assertEquals(1.0, Math.cos(after.startHeadingRad() - arc.endHeadingRad()), 1e-12);
        roots++;
      }
    }
    assertEquals(2, roots);
    // Chord of a circle: half opening squared = depth (2 R - depth).
    assertEquals(2.0 * Math.sqrt(70.0 * 130.0), notch.openingMm(), 1e-9);
  }

  /**
   * On a rail of 100 mm the plate of 110 mm rises by 10. By hand: the outer arc, radius 140 about
   * 30 mm under the rail, is on the rail up to sin a = 130/140, where the line across the top
   * begins, 2 (140^2 - 130^2)^0.5 long; both arcs 166.08, both roots 38.94, the straight edges
   * 366.21 with the ends.
   */
  @Test
  void aPlateThatRisesAboveTheRailIsWeldedToItsTopToo() {
    NotchPlate notch = new NotchPlate("notch", 6.0, 100.0, 70.0, 40.0, 90.0, 20.0, 63.5);
    List<Edge> welded = notch.weldedTo(100);

    double across = 2 * Math.sqrt(140 * 140 - 130 * 130);
    double lengthMm = welded.stream().mapToDouble(Edge::lengthMm).sum();
    assertEquals(166.079 + 38.936 + 366.213 + across, lengthMm, 1e-2);
    assertTrue(welded.stream().allMatch(edge -> edge.bounds().maxYMm() < 100 + 1e-6));
    // Flush with a rail of its own height: all round but for the cut.
    double all = notch.outline().outer().edges().stream().mapToDouble(Edge::lengthMm).sum();
    double flush = notch.weldedTo(110).stream().mapToDouble(Edge::lengthMm).sum();
    assertEquals(all - notch.cut().lengthMm(), flush, 1e-9);
  }

  /**
   * Its lower face, radius 134, meets the rail's top where sin a = 130/134: half of what it spans
   * is (134^2 - 130^2)^0.5; it is (pi - 2 a) 137 long before rolling.
   */
  @Test
  void theStripOverARaisedPlateEndsOnTheRailsTop() {
    NotchPlate notch = new NotchPlate("notch", 6.0, 100.0, 70.0, 40.0, 90.0, 20.0, 63.5);

    assertEquals(32.496, notch.halfUnderTopStripMm(100), 1e-3);
    assertEquals(67.117, notch.topStrip("mild steel", 100).outline().bounds().widthMm(), 1e-2);
    Bounds rolled = notch.rolledTopStrip(100).bounds();
    assertEquals(100.0, rolled.minYMm(), 1e-6);
    assertEquals(110.0, rolled.maxYMm(), 1e-6);
  }

  @Test
  void notchDeeperThanItsRadiusOrWithShortFlatsIsRefused() {
    refusal(() -> new NotchPlate("notch", 6.0, 90.0, 91.0, 40.0, 80.0, 20.0, 63.5));
    String message =
        refusal(() -> new NotchPlate("notch", 6.0, 90.0, 90.0, 40.0, 30.0, 20.0, 63.5));
    assertTrue(message.contains("flat of notch"), message);
  }
}
