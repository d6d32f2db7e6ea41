package trammel.trade.plates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class OutlineTest {
  private static final double INCH = 25.4;
  private static final double LB_PER_KG = 2.20462262;

  private static Loop rectangle(double width, double height) {
    return Loop.through(
        List.of(
            new Point2(0.0, 0.0),
            new Point2(width, 0.0),
            new Point2(width, height),
            new Point2(0.0, height)));
  }

  @Test
  void areaCutLengthAndPiercesCountTheHoles() {
    Outline outline =
        new Outline(
            rectangle(100.0, 60.0),
            List.of(
                new RoundHole(new Point2(20.0, 30.0), 16.0),
                new SlotHole(new Point2(65.0, 30.0), 10.0, 20.0, 0.3)));
    double slotArea = 10.0 * 20.0 + 25.0 * Math.PI;
    assertEquals(6000.0 - 64.0 * Math.PI - slotArea, outline.areaMm2(), 1e-9);
    double slotLength = 40.0 + 10.0 * Math.PI;
    assertEquals(320.0 + 16.0 * Math.PI + slotLength, outline.cutLengthMm(), 1e-9);
    assertEquals(3, outline.pierces());
  }

  @Test
  void minimumLigamentIsTheLeastOfEdgeAndNeighbour() {
    RoundHole one = new RoundHole(new Point2(20.0, 30.0), 16.0);
    RoundHole other = new RoundHole(new Point2(45.0, 30.0), 16.0);
    Outline single = new Outline(rectangle(100.0, 60.0), List.of(one));
    Outline pair = new Outline(rectangle(100.0, 60.0), List.of(one, other));
    assertEquals(12.0, single.minimumLigamentMm().orElseThrow(), 1e-12);
    assertEquals(9.0, pair.minimumLigamentMm().orElseThrow(), 1e-12);
    assertFalse(Outline.solid(rectangle(5.0, 5.0)).minimumLigamentMm().isPresent());
  }

  @ParameterizedTest
  @CsvSource({"5, 30", "-20, 30", "100, 60", "250, 30"})
  void holeNotWhollyInsideIsRefused(double x, double y) {
    List<Hole> hole = List.of(new RoundHole(new Point2(x, y), 16.0));
    Loop outer = rectangle(100.0, 60.0);
    String message =
        assertThrows(IllegalArgumentException.class, () -> new Outline(outer, hole)).getMessage();
    assertTrue(message.contains("Hole 1 at") && message.contains("\nMove the hole"), message);
  }

  @Test
  void holesThatMeetOrNestAreRefused() {
    Loop outer = rectangle(100.0, 60.0);
    RoundHole hole = new RoundHole(new Point2(40.0, 30.0), 16.0);
    for (Hole bad :
        List.of(
            new RoundHole(new Point2(50.0, 30.0), 16.0),
            new RoundHole(new Point2(40.0, 30.0), 4.0),
            new RoundHole(new Point2(40.0, 30.0), 30.0),
            new RoundHole(new Point2(40.0, 30.0), 16.0))) {
      assertThrows(IllegalArgumentException.class, () -> new Outline(outer, List.of(hole, bad)));
    }
  }

  @ParameterizedTest
  @CsvSource({
    // Plate weights with 0.2836 lb/in3 (7850 kg/m3), mechanics table of plate parts.
    "4, 6, 0.25, 1.7016",
    "5, 8, 0.375, 4.2540",
    // A 4x8 sheet of 1/4 in, with 0.2836 lb/in3.
    "48, 96, 0.25, 326.7",
  })
  void rectangularPlateHasThePublishedWeight(
      double width, double height, double thickness, double pounds) {
    Plate plate =
        new Plate(
            "test plate",
            Outline.solid(rectangle(width * INCH, height * INCH)),
            thickness * INCH,
            "mild steel");
    assertEquals(pounds, plate.weightKg() * LB_PER_KG, 0.0005 * pounds);
  }

  @Test
  void triangularPlateHasThePublishedWeight() {
    // Triangle 3 x 3 x 3/16 in: 0.2393 lb at 0.2836 lb/in3.
    Loop triangle =
        Loop.through(
            List.of(
                new Point2(0.0, 0.0), new Point2(3.0 * INCH, 0.0), new Point2(0.0, 3.0 * INCH)));
    Plate plate = new Plate("gusset", Outline.solid(triangle), 0.1875 * INCH, "mild steel");
    assertEquals(0.2393, plate.weightKg() * LB_PER_KG, 0.0002);
  }

  @Seeds(200)
  void slotMovesWithItsPlate(Draw draw) {
    double angleRad = draw.between(-3.0, 3.0);
    double turnRad = draw.between(-3.0, 3.0);
    boolean mirrored = draw.either();
    SlotHole slot = new SlotHole(new Point2(12.0, 5.0), 8.0, 14.0, angleRad);
    Placement placement = new Placement(mirrored, turnRad, 7.0, -3.0);
    Loop moved = slot.placed(placement).loop();
    Loop expected = slot.loop().placed(placement);
    for (Point2 point : expected.polygon(0.1)) {
      assertEquals(0.0, moved.distanceMm(point), 1e-9);
    }
  }

  @Test
  void badPlatesAreRefusedByName() {
    Outline outline = Outline.solid(rectangle(10.0, 10.0));
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> new Plate("tab", outline, Double.NaN, "mild steel"))
            .getMessage();
    assertTrue(message.contains("thickness of tab"), message);
    assertThrows(IllegalArgumentException.class, () -> new Plate(" ", outline, 5.0, "steel"));
  }
}
