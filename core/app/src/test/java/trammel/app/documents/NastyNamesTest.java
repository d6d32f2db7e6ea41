package trammel.app.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trammel.reading.quantity.UnitSystem;

/** Any words at all in a table of a document. */
class NastyNamesTest {
  private static final String[] NASTY = {
    "W".repeat(300),
    "<b>\"bold\"</b> & 'quoted' </td></table>",
    "{{cells}} {{> head}} ${x}",
    "שלום (עולם) 12",
    "مرحبا بالعالم",
    "bell \u0007 null \u0000 half \ud800 end",
    "=1+1",
    "off fit flat",
    "\u4f60\u597d",
    "",
  };

  private static PaperDocument document(UnitSystem units) {
    Grid grid = new Grid("brll", new int[] {10, 20, 50, 20}, "one", "two", "three", "four");
    for (String text : NASTY) {
      grid.group(text);
      grid.noted(2, text, "1", text, text, text);
    }
    DocumentModel model = new DocumentModel();
    model.put("heading", NASTY[1]);
    model.put("title", NASTY[1]);
    model.put("foot", JobPaper.shortened(NASTY[0]));
    model.put("hasStops", false);
    model.put("total", NASTY[0]);
    model.put("validUntil", NASTY[1]);
    model.put("prices", grid);
    return new PaperDocument("quote", model, units);
  }

  /** Letters within the paper: the stripper gives where each of them stands, in points. */
  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void noWordLeavesThePaper(UnitSystem units) throws Exception {
    double[] most = new double[1];
    String text;
    try (PDDocument pdf = Loader.loadPDF(document(units).pdf())) {
      PDFTextStripper stripper =
          new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
              most[0] = Math.max(most[0], letter.getXDirAdj() + letter.getWidthDirAdj());
              super.processTextPosition(letter);
            }
          };
      text = stripper.getText(pdf);
      float width = pdf.getPage(0).getMediaBox().getWidth();
      assertEquals(units == UnitSystem.US ? 612 : 595.276, width, 0.1);
      assertTrue(most[0] < width - 14 * 72 / 25.4 + 1, "farthest letter at " + most[0]);
    }
    assertTrue(text.contains("{{cells}}"), "a template in a name stays a text");
    assertTrue(text.contains("</td></table>"));
  }

  /** A reader who looks for "off" finds it: the font's ligature of its letters is not used. */
  @Test
  void lettersAreNotJoined() throws Exception {
    Set<String> letters = new HashSet<>();
    try (PDDocument pdf = Loader.loadPDF(document(UnitSystem.US).pdf())) {
      new PDFTextStripper() {
        @Override
        protected void processTextPosition(TextPosition letter) {
          letters.add(letter.getUnicode());
        }
      }.getText(pdf);
    }
    assertTrue(letters.contains("f"));
    assertTrue(
        letters.stream().noneMatch(one -> one.matches("[\ufb00-\ufb06]|f[fijlt]+")),
        letters.toString());
  }

  @Test
  void namesAreEscapedOnScreen() throws Exception {
    String html = new String(document(UnitSystem.US).html(), StandardCharsets.UTF_8);
    assertFalse(html.contains("<b>\"bold\""));
    assertTrue(html.contains("&lt;b&gt;"));
    assertFalse(html.contains("\u0007"));
    assertTrue(html.contains("שלום (עולם)"));
  }

  /** The letters are there, not a sign for what is missing. */
  @Test
  void hebrewAndArabicHaveLetters() throws Exception {
    try (PDDocument pdf = Loader.loadPDF(document(UnitSystem.US).pdf())) {
      String text = new PDFTextStripper().getText(pdf);
      assertTrue(text.contains("ש") && text.contains("ם"), text);
      assertTrue(
          text.codePoints()
              .anyMatch(
                  letter ->
                      letter >= 0xfe80 && letter <= 0xfeff || letter >= 0x600 && letter <= 0x6ff),
          text);
    }
  }
}
