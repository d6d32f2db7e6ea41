package trammel.app.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.app.drawings.WeldMark.Sign;
import trammel.engine.geometry.Point3;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.PlugWeld;
import trammel.trade.welding.SingleBevelGroove;
import trammel.trade.welding.SquareGroove;
import trammel.trade.welding.VGroove;
import trammel.trade.welding.WeldCap;

/** The signs of AWS A2.4 and ISO 2553 (system B), from memory: what is on the reference line. */
class WeldMarkTest {
  /** The reference line runs at this height, the sign begins 14 mm from its left end. */
  private static final double LINE_Y = 20;

  private static final double SIGN_X = 14;

  private static String svg(Sign sign, boolean bothSides) {
    WeldMark mark =
        new WeldMark("seam", sign, "6", "50", 1, bothSides, false, false, new Point3(0, 0, 0));
    SvgPage page = new SvgPage(100, 50);
    mark.drawOn(page, 0, LINE_Y, 90, false, 0, 40);
    return page.svg();
  }

  /** Strokes between the reference line and the side that the arrow points to, below it. */
  private static List<String> strokes(String svg) {
    return Pattern.compile("<line x1=\"([.0-9]+)\" y1=\"20\" x2=\"([.0-9]+)\" y2=\"22.6\"")
        .matcher(svg)
        .results()
        .map(found -> slant(found.group(1), found.group(2)))
        .toList();
  }

  private static String slant(String top, String bottom) {
    double across = Double.parseDouble(bottom) - Double.parseDouble(top);
    return Math.abs(across) < 1e-9 ? "upright" : across > 0 ? "to the right" : "to the left";
  }

  /** A V opens away from the line; the upright stroke of a bevel stands on its left. */
  @Test
  void everyGrooveHasTheStrokesOfItsOwnSign() {
    assertEquals(List.of("upright", "upright"), strokes(svg(Sign.SQUARE, false)));
    assertEquals(List.of("upright", "to the right"), strokes(svg(Sign.BEVEL, false)));
    assertEquals(List.of("to the left", "to the right"), strokes(svg(Sign.VEE, false)));
    assertEquals(List.of(), strokes(svg(Sign.FILLET, false)));
  }

  /** A triangle for a fillet, its upright leg on the left, and a box for a plug. */
  @Test
  void aFilletIsATriangleAndAPlugABox() {
    double right = SIGN_X + 2.6;
    assertTrue(svg(Sign.FILLET, false).contains("14,20 14,22.6 " + right + ",20"));
    String box = "14,20 14,22.6 " + right + ",22.6 " + right + ",20";
    assertTrue(svg(Sign.SPOT, false).contains(box), svg(Sign.SPOT, false));
  }

  /** What is welded on the other side stands above the line. */
  @Test
  void aWeldOnBothSidesHasItsSignBelowAndAboveTheLine() {
    assertFalse(svg(Sign.VEE, false).contains("y2=\"17.4\""));
    assertTrue(svg(Sign.VEE, true).contains("y2=\"17.4\""));
  }

  @Test
  void everyJointHasItsSign() {
    assertEquals(Sign.FILLET, Sign.of(new FilletWeld(5, 5)));
    assertEquals(Sign.SQUARE, Sign.of(new SquareGroove(3, 1, new WeldCap(6, 1))));
    assertEquals(Sign.BEVEL, Sign.of(new SingleBevelGroove(8, 2, 1, Math.toRadians(45), 1)));
    assertEquals(Sign.VEE, Sign.of(new VGroove(8, 2, 1, Math.toRadians(60), 1)));
    assertEquals(Sign.SPOT, Sign.of(new PlugWeld(12, 6)));
  }

  /**
   * AWS A2.4 puts the size of a groove in brackets, ISO 2553 an s before it, and before the leg of
   * a fillet a z, since an a is its throat; all from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "FILLET, US, 1/4",
    "FILLET, METRIC, z1/4",
    "VEE, US, (1/4)",
    "VEE, METRIC, s1/4",
    "SQUARE, US, (1/4)",
    "SPOT, US, 1/4"
  })
  void theSizeIsMarkedAsWhatItIs(Sign sign, UnitSystem units, String said) {
    assertEquals(said, sign.size("1/4", units));
  }
}
