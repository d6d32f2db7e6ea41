package trammel.planning.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.tubes.Cope;

class WrapTemplateTest {
  private static final double INCH_MM = 25.4;
  private static final Pattern NUMBERS = Pattern.compile("-?\\d+(?:\\.\\d+)?");

  /** A 1 1/2 in tube on a 2 in barrel. */
  private static final Cope COPE = new Cope(0.75 * INCH_MM, INCH_MM, Math.PI / 2, 0);

  /** One unit of the drawing is one millimetre on paper: the page says its size in mm. */
  @Test
  void thePageIsAsLargeOnPaperAsInItsUnits() throws Exception {
    Element root = root();
    String[] box = root.getAttribute("viewBox").split(" ");
    assertEquals(box[2] + "mm", root.getAttribute("width"));
    assertEquals(box[3] + "mm", root.getAttribute("height"));
  }

  /** The paper goes once round the tube: pi times 1 1/2 in is 4.712 in. */
  @Test
  void thePaperGoesOnceRoundTheTube() throws Exception {
    double[] size = size(path(0));
    assertEquals(4.712389 * INCH_MM, size[0], 1e-3);
  }

  /**
   * The depth of the saddle is R - root of (R2 - r2): 1 - root of (1 - 0.5625) = 0.33856 in; the
   * paper stands 30 mm over it. Pure geometry.
   */
  @Test
  void theCurveIsAsDeepAsTheSaddle() throws Exception {
    assertEquals(0.338562 * INCH_MM + 30, size(path(0))[1], 1e-3);
  }

  @Test
  void theSquareBesideItMeasuresTwoInches() throws Exception {
    double[] size = size(path(1));
    assertEquals(2 * INCH_MM, size[0], 1e-9);
    assertEquals(2 * INCH_MM, size[1], 1e-9);
  }

  @Test
  void namesAreEscaped() throws Exception {
    String svg =
        new WrapTemplate("bar <1> & \"2\"", COPE, CheckSquare.of(UnitSystem.US)).svg().text();
    assertTrue(svg.contains("bar &lt;1&gt; &amp; \"2\""), svg);
    parse(svg);
  }

  private static Element root() throws Exception {
    return parse(new WrapTemplate("lower-left", COPE, CheckSquare.of(UnitSystem.US)).svg().text())
        .getDocumentElement();
  }

  private static Document parse(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
  }

  private static String path(int index) throws Exception {
    return ((Element) root().getElementsByTagName("path").item(index)).getAttribute("d");
  }

  /** Width and height of a path of straight lines. */
  private static double[] size(String path) {
    List<Double> numbers = new ArrayList<>();
    Matcher matcher = NUMBERS.matcher(path);
    while (matcher.find()) {
      numbers.add(Double.parseDouble(matcher.group()));
    }
    double[] least = {Double.MAX_VALUE, Double.MAX_VALUE};
    double[] most = {-Double.MAX_VALUE, -Double.MAX_VALUE};
    for (int i = 0; i < numbers.size(); i++) {
      least[i % 2] = Math.min(least[i % 2], numbers.get(i));
      most[i % 2] = Math.max(most[i % 2], numbers.get(i));
    }
    return new double[] {most[0] - least[0], most[1] - least[1]};
  }
}
