package trammel.app.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What every document on paper must keep to, seen by PDFBox. */
final class PdfCheck {
  private static final float DOTS_PER_INCH = 40;
  private static final float LEAST_MARGIN_PT = 20;

  private PdfCheck() {}

  static int pages(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return document.getNumberOfPages();
    }
  }

  /** So many pages, none blank, every font embedded, every letter within the margins. */
  static void check(byte[] pdf, int pages) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertEquals(pages, document.getNumberOfPages(), "pages");
      PDFRenderer renderer = new PDFRenderer(document);
      for (int i = 0; i < pages; i++) {
        PDPage page = document.getPage(i);
        for (COSName name : page.getResources().getFontNames()) {
          assertTrue(page.getResources().getFont(name).isEmbedded(), name + " is not embedded");
        }
        assertTrue(darkDots(renderer.renderImageWithDPI(i, DOTS_PER_INCH)) > 100, "blank page");
        checkLetters(document, i, page.getCropBox());
      }
    }
  }

  private static int darkDots(BufferedImage image) {
    int dark = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        dark += (image.getRGB(x, y) & 0xff) < 0xc0 ? 1 : 0;
      }
    }
    return dark;
  }

  private static void checkLetters(PDDocument document, int page, PDRectangle box)
      throws IOException {
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void writeString(String text, List<TextPosition> positions) {
            for (TextPosition letter : positions) {
              float right = letter.getXDirAdj() + letter.getWidthDirAdj();
              assertTrue(
                  letter.getXDirAdj() >= LEAST_MARGIN_PT
                      && right <= box.getWidth() - LEAST_MARGIN_PT
                      && letter.getYDirAdj() >= LEAST_MARGIN_PT
                      && letter.getYDirAdj() <= box.getHeight() - LEAST_MARGIN_PT,
                  "'" + text + "' runs over the page");
            }
          }
        };
    stripper.setStartPage(page + 1);
    stripper.setEndPage(page + 1);
    assertNotNull(stripper.getText(document));
  }
}
