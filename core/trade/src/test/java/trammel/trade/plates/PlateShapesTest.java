package trammel.trade.plates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
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

  @Test
  void boxingPlateIsATrapeziumLessItsGaps() {
    BoxingPlate plate = BoxingPlate.tapered("boxing", 4.8, 600.0, 140.0, 100.0, 1.5);
    // Sloping side 40 in 600: its gap measured upright is 1.5 / cos(atan(40/600)).
    double upright = 1.5 * Math.hypot(600.0, 40.0) / 600.0;
    assertEquals(600.0 * (120.0 - 1.5 - upright), plate.outline().areaMm2(), 1e-8);
    BoxingPlate even = BoxingPlate.even("boxing", 4.8, 600.0, 140.0, 1.5);
    assertEquals(600.0 * 137.0, even.outline().areaMm2(), 1e-9);
  }

  @Test
  void boxingPlateKeepsItsGapAtEveryKinkOfTheRail() {
    List<RailStation> stations =
        List.of(
            new RailStation(0.0, 0.0, 150.0),
            new RailStation(300.0, 40.0, 150.0),
            new RailStation(700.0, 90.0, 210.0));
    BoxingPlate plate = new BoxingPlate("boxing", 4.8, stations, 2.0, PlugWelds.NONE, List.of());
    Loop outer = plate.outline().outer();
    for (int i = 0; i < 2; i++) {
      RailStation from = stations.get(i);
      RailStation to = stations.get(i + 1);
      Straight lower =
          new Straight(
              new Point2(from.alongMm(), from.lowerMm()), new Point2(to.alongMm(), to.lowerMm()));
      Straight upper =
          new Straight(
              new Point2(from.alongMm(), from.upperMm()), new Point2(to.alongMm(), to.upperMm()));
      assertEquals(2.0, outer.distanceMm(lower.at(0.5)), 1e-9);
      assertEquals(2.0, outer.distanceMm(upper.at(0.5)), 1e-9);
    }
  }

  @Test
  void plugWeldsAreSpreadEvenlyAndNoFurtherApartThanAsked() {
    BoxingPlate plate =
        BoxingPlate.even("boxing", 4.8, 600.0, 140.0, 1.5)
            .withPlugs(new PlugWelds(12.0, 100.0, 50.0))
            .withOpenings(List.of(new RoundHole(new Point2(300.0, -25.0), 30.0)));
    List<Hole> holes = plate.outline().holes();
    // 500 between first and last at 100: six plugs, and the pass-through.
    assertEquals(7, holes.size());
    assertEquals(150.0, ((RoundHole) holes.get(1)).centre().xMm(), 1e-9);
    assertEquals(-70.0, ((RoundHole) holes.get(1)).centre().yMm(), 1e-9);
  }

  @ParameterizedTest
  // Four diameters between plug welds: AISC 360 J2.3b, from memory.
  @CsvSource({"12, 47, 50", "12, 100, 11", "12, 100, 320"})
  void plugWeldsTooCloseAreRefused(double diameter, double pitch, double end) {
    refusal(
        () ->
            BoxingPlate.even("boxing", 4.8, 600.0, 140.0, 1.5)
                .withPlugs(new PlugWelds(diameter, pitch, end)));
  }

  @Test
  void boxingPlateForAShallowerRailThanItsGapsIsRefused() {
    refusal(() -> BoxingPlate.even("boxing", 4.8, 600.0, 3.0, 1.5));
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

  @Test
  void notchDeeperThanItsRadiusOrWithShortFlatsIsRefused() {
    refusal(() -> new NotchPlate("notch", 6.0, 90.0, 91.0, 40.0, 80.0, 20.0, 63.5));
    String message =
        refusal(() -> new NotchPlate("notch", 6.0, 90.0, 90.0, 40.0, 30.0, 20.0, 63.5));
    assertTrue(message.contains("flat of notch"), message);
  }
}
