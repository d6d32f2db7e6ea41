package trammel.app.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PageTest {

  private static Page order(String customer, int lines) {
    List<Object> rows = new ArrayList<>();
    for (int i = 0; i < lines; i++) {
      rows.add(Map.of("quantity", i + 1, "unit", "each", "title", "bolt " + i, "amount", "$1.00"));
    }
    return new Page("order", "Material order")
        .put("shop", "Example shop (invented)")
        .put("number", "D-1")
        .put("vehicle", "pickup")
        .put("for", "for")
        .put("customer", customer)
        .put("date", "2026-11-28")
        .put("cautions", List.of("one", "two"))
        .put(
            "suppliers",
            List.of(
                Map.of(
                    "supplier", "steel yard",
                    "lead", "3 working days",
                    "lines", rows,
                    "total", "$9.00")));
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "O'Shop & \"Sons\" <b>",
        "]]> -->",
        "{{shop}} {{{style}}}",
        "\u05d0\u05d1\u05d2 (\u05d3)",
        "=SUM(A1:A9)"
      })
  void nastyNamesHarmNoDocument(String name) throws IOException {
    Page page = order(name, 3);
    assertFalse(page.html().contains("<script>"), "a name is never markup");
    PdfCheck.check(page.pdf(), 1);
    assertTrue(text(page.pdf()).contains("steel yard"));
  }

  /** As it is read from right to left, the first letter stands on the right. */
  @Test
  void rightToLeftNamesAreSetInReadingOrder() throws IOException {
    ReadingOrder order = new ReadingOrder();
    assertEquals("\u05d2\u05d1\u05d0", order.reorderRTLTextToLTR("\u05d0\u05d1\u05d2"));
    assertEquals("(\u05d0)", order.reorderRTLTextToLTR("(\u05d0)"));
    order.setParagraph("job \u05d0\u05d1", com.openhtmltopdf.bidi.BidiSplitter.LTR);
    assertEquals(2, order.countTextRuns());
    assertEquals(com.openhtmltopdf.bidi.BidiSplitter.RTL, order.getVisualRun(1).getDirection());
  }

  @Test
  void aNameOfThreeHundredLettersStaysOnThePage() throws IOException {
    PdfCheck.check(order("W".repeat(300), 3).pdf(), 1);
  }

  /** Many lines go over several pages, none of them blank, and every line is there. */
  @Test
  void longTablesRunOverSeveralPages() throws IOException {
    byte[] pdf = order("Example Customer (invented)", 120).pdf();
    int pages = PdfCheck.pages(pdf);
    assertTrue(pages >= 3 && pages <= 6, pages + " pages");
    PdfCheck.check(pdf, pages);
    String text = text(pdf);
    for (int i = 0; i < 120; i++) {
      assertTrue(text.contains("bolt " + i), "bolt " + i);
    }
  }

  /** A sketch 1000 mm wide in a frame 100 mm high: its height rules, and all lines are in it. */
  @Test
  void aSketchFitsItsFrameAndKeepsItsShape() {
    Sketch sketch =
        new Sketch(
            "side",
            List.of(
                new Sketch.Line(Sketch.Stroke.STRONG, 0, 0, 1000, 0),
                new Sketch.Line(Sketch.Stroke.LIGHT, 0, 0, 0, 2000)),
            List.of(),
            List.of());
    SketchFrame frame = new SketchFrame(sketch, 176, 100);
    assertEquals(100, frame.heightMm(), 1e-9);
    assertEquals(50, frame.widthMm(), 1e-9);
    assertTrue(frame.svg().contains("points=\"0.000,100.000 50.000,100.000 \""), frame.svg());
  }
}
