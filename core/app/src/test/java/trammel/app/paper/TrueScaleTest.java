package trammel.app.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.app.drawings.Tiling;
import trammel.app.drawings.TrueScalePage;
import trammel.app.drawings.TrueScaleTemplate;
import trammel.planning.drawings.CheckSquare;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Point2;
import trammel.trade.plates.RoundHole;
import trammel.trade.tubes.Cope;

/** What a printer at 100 % puts on the paper, read from the PDF's own lines (1 pt is 1/72 in). */
class TrueScaleTest {
  private static final double LETTER_WIDTH_MM = 215.9;
  private static final double LETTER_HEIGHT_MM = 279.4;
  private static final double TRUE_MM = 0.2;

  private static List<PdfLines.Line> printed(TrueScaleTemplate template) throws Exception {
    return printed(template, UnitSystem.US);
  }

  private static List<PdfLines.Line> printed(TrueScaleTemplate template, UnitSystem units)
      throws Exception {
    TrueScalePage page =
        new TrueScalePage(
            LETTER_WIDTH_MM,
            LETTER_HEIGHT_MM,
            "test",
            List.of(TrueScalePage.Piece.whole(template, 0, 0)),
            List.of(),
            CheckSquare.of(units));
    try (PDDocument document = Loader.loadPDF(PdfSheets.of(List.of(page)))) {
      assertEquals(612, document.getPage(0).getMediaBox().getWidth(), 0.01, "8 1/2 in");
      assertEquals(792, document.getPage(0).getMediaBox().getHeight(), 0.01, "11 in");
      return PdfLines.of(document.getPage(0));
    }
  }

  private static Rectangle2D black(List<PdfLines.Line> lines) {
    Rectangle2D all = new Rectangle2D.Double();
    boolean first = true;
    for (PdfLines.Line line : lines) {
      if (!line.red()) {
        for (Point2D point : List.of(line.from(), line.to())) {
          if (first) {
            all.setRect(point.getX(), point.getY(), 0, 0);
            first = false;
          }
          all.add(point);
        }
      }
    }
    return all;
  }

  @Test
  void aBracketMeasuresTrueOnPaper() throws Exception {
    Outline bracket =
        new Outline(
            Loop.through(
                List.of(
                    new Point2(0, 0), new Point2(120, 0), new Point2(120, 90), new Point2(0, 90))),
            List.of(
                new RoundHole(new Point2(20, 20), 6.5), new RoundHole(new Point2(95, 70), 6.5)));
    List<PdfLines.Line> lines = printed(TrueScaleTemplate.of("bracket", "", bracket));
    Rectangle2D outside = black(lines);
    assertEquals(120, outside.getWidth(), TRUE_MM);
    assertEquals(90, outside.getHeight(), TRUE_MM);
    // The crosses to punch are 5 mm long and stand in the middle of the holes.
    double[] xs = crossXs(lines, outside);
    assertEquals(20, xs[0], TRUE_MM);
    assertEquals(95, xs[1], TRUE_MM);
  }

  private static double[] crossXs(List<PdfLines.Line> lines, Rectangle2D outside) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (PdfLines.Line line : lines) {
      boolean level = Math.abs(line.from().getY() - line.to().getY()) < 1e-3;
      if (level && Math.abs(line.lengthMm() - 5) < 0.05) {
        double x = (line.from().getX() + line.to().getX()) / 2 - outside.getX();
        least = Math.min(least, x);
        most = Math.max(most, x);
      }
    }
    return new double[] {least, most};
  }

  /** Of a size that the rule at hand has: 2 in is 50.8 mm; a metric one reads 50 mm. */
  @ParameterizedTest
  @CsvSource({"US, 50.8", "METRIC, 50"})
  void theCheckSquareIsOfARoundSizeOnTheShopsRule(UnitSystem units, double sideMm)
      throws Exception {
    Outline any =
        Outline.solid(
            Loop.through(List.of(new Point2(0, 0), new Point2(30, 0), new Point2(0, 30))));
    int sides = 0;
    for (PdfLines.Line line : printed(TrueScaleTemplate.of("any", "", any), units)) {
      if (line.red()) {
        assertEquals(sideMm, line.lengthMm(), 0.02);
        sides++;
      }
    }
    assertEquals(4, sides);
  }

  /** A wrap is as long as the tube is round: pi times its diameter. */
  @Test
  void aWrapGoesOnceRoundTheTube() throws Exception {
    Cope cope = new Cope(19.05, 25.4, Math.PI / 2, 0);
    Rectangle2D outside = black(printed(TrueScaleTemplate.of("wrap", "round 1 1/2 in tube", cope)));
    assertEquals(Math.PI * 38.1, outside.getWidth(), TRUE_MM);
    assertTrue(outside.getHeight() > cope.depthMm());
  }

  /**
   * A plate of 500 mm x 300 mm on sheets of 190 mm x 180 mm: by hand, three tiles across
   * overlapping 12 mm show 190 + 2 x 178 = 546 mm, two down 180 + 168 = 348 mm. A hole of 20 mm
   * stands on the first seam at 190 mm, so that the second tile begins before it.
   */
  @Test
  void noSeamGoesThroughAHoleAndEveryJointHasTwoCrosses() {
    Outline plate =
        new Outline(
            Loop.through(
                List.of(
                    new Point2(0, 0),
                    new Point2(500, 0),
                    new Point2(500, 300),
                    new Point2(0, 300))),
            List.of(
                new RoundHole(new Point2(185, 250), 20), new RoundHole(new Point2(60, 125), 15)));
    Tiling tiling = new Tiling(TrueScaleTemplate.of("plate", "", plate), 190, 180);
    assertEquals(6, tiling.count());
    assertEquals(List.of(), tiling.blank());
    for (TrueScaleTemplate.Opening hole : TrueScaleTemplate.of("plate", "", plate).holes()) {
      assertTrue(
          tiling.drawn().stream().anyMatch(tile -> within(hole.bounds(), tile.shown())),
          () -> "no tile shows all of the hole at " + hole.bounds());
    }
    Map<String, List<Tiling.Mark>> joints = new TreeMap<>();
    for (Tiling.Tile tile : tiling.drawn()) {
      for (Tiling.Mark mark : tile.marks()) {
        assertTrue(
            within(new Bounds(mark.xMm(), mark.yMm(), mark.xMm(), mark.yMm()), tile.shown()));
        joints.computeIfAbsent(mark.name(), name -> new ArrayList<>()).add(mark);
      }
    }
    // Two rows of three tiles meet at four upright seams and three level ones.
    assertEquals(2 * (4 + 3), joints.size());
    joints.forEach((name, on) -> assertEquals(2, on.size(), name + " is on two sheets"));
  }

  /** The middle of a ring is empty paper: that tile needs no sheet, and its number is told. */
  @Test
  void aTileWithNothingOnItIsNamedAsBlank() {
    Outline frame =
        new Outline(
            Loop.through(
                List.of(
                    new Point2(0, 0),
                    new Point2(500, 0),
                    new Point2(500, 500),
                    new Point2(0, 500))),
            List.of());
    Tiling tiling = new Tiling(TrueScaleTemplate.of("frame", "", frame), 180, 180);
    assertEquals(9, tiling.count());
    assertEquals(List.of(5), tiling.blank());
    assertEquals(8, tiling.drawn().size());
  }

  private static boolean within(Bounds one, Bounds other) {
    return one.minXMm() >= other.minXMm()
        && one.maxXMm() <= other.maxXMm()
        && one.minYMm() >= other.minYMm()
        && one.maxYMm() <= other.maxYMm();
  }
}
