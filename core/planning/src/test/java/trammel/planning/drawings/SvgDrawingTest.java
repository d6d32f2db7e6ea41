package trammel.planning.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.MockUpStrut;
import trammel.trade.plates.Plate;

class SvgDrawingTest {
  private static Document parse(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
  }

  @ParameterizedTest
  @MethodSource("trammel.planning.drawings.DxfDrawingTest#plates")
  void pathReadBackEnclosesThePlateAtTrueSize(Plate plate) throws Exception {
    Document document = parse(SvgDrawing.of(plate.outline()).text());
    Element root = document.getDocumentElement();
    Bounds bounds = plate.outline().bounds();
    assertEquals(
        bounds.widthMm() + 10.0,
        Double.parseDouble(root.getAttribute("width").replace("mm", "")),
        1e-5);
    assertEquals(
        "0 0 "
            + root.getAttribute("width").replace("mm", "")
            + " "
            + root.getAttribute("height").replace("mm", ""),
        root.getAttribute("viewBox"));
    Element path = (Element) document.getElementsByTagName("path").item(0);
    String[] loops = path.getAttribute("d").split("Z");
    double area = area(loops[0]);
    for (int i = 1; i < loops.length; i++) {
      area -= area(loops[i]);
    }
    assertEquals(plate.outline().areaMm2(), area, 1e-2);
  }

  @Test
  void upOnThePlateIsUpOnThePage() {
    // Lower hole at the origin, 330 strut to the right: nothing is nearer the top than the margin.
    String svg =
        SvgDrawing.of(new MockUpStrut("strut", 4.8, 330.0, 13.0, 20.0, HoleRules.SHOP).outline())
            .text();
    assertTrue(svg.contains("width=\"380mm\" height=\"50mm\""), svg);
  }

  /** Area of one closed path of M, L and half-turn-at-most A commands, by chords and segments. */
  private static double area(String loop) {
    String[] words = loop.trim().replaceAll("([MLA])", " $1 ").trim().split("\\s+");
    double x = 0.0;
    double y = 0.0;
    double startX = 0.0;
    double startY = 0.0;
    double twice = 0.0;
    int i = 0;
    while (i < words.length) {
      String command = words[i];
      int numbers = command.equals("A") ? 7 : 2;
      double toX = Double.parseDouble(words[i + numbers - 1]);
      double toY = Double.parseDouble(words[i + numbers]);
      if (command.equals("M")) {
        startX = toX;
        startY = toY;
      } else {
        twice += x * toY - toX * y;
      }
      if (command.equals("A")) {
        double radius = Double.parseDouble(words[i + 1]);
        double half = Math.min(1.0, Math.hypot(toX - x, toY - y) / 2.0 / radius);
        double sweep = 2.0 * Math.asin(half);
        double segment = radius * radius * (sweep - Math.sin(sweep));
        // Sweep flag 1 turns the way of growing angles, which y downwards makes positive here.
        twice += words[i + 5].equals("1") ? segment : -segment;
      }
      x = toX;
      y = toY;
      i += numbers + 1;
    }
    twice += x * startY - startX * y;
    return Math.abs(twice) / 2.0;
  }
}
