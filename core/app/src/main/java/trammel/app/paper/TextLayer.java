package trammel.app.paper;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;

/**
 * The texts of drawings as texts over their lines, in the font that comes with Trammel. Those that
 * are read from the right are drawn as outlines in the order of sight, and stand here once more,
 * not to be seen, so that a reader finds and copies them (ISO 32000-1, 9.3.6, rendering mode 3).
 */
final class TextLayer {
  private final PDFont font;

  TextLayer(PDDocument document) throws IOException {
    font = Lettering.regular(document);
  }

  /** True for a text whose letters are seen here; false for one that is drawn as outlines. */
  static boolean writes(PlacedText text) {
    return !Lettering.readsFromTheRight(text.text());
  }

  /** Puts the texts of one page over it. */
  void put(PDPageContentStream content, float heightPt, List<PlacedText> texts) throws IOException {
    content.beginText();
    content.setFont(font, 1);
    for (PlacedText text : texts) {
      content.setRenderingMode(writes(text) ? RenderingMode.FILL : RenderingMode.NEITHER);
      content.setTextMatrix(matrix(text, heightPt));
      content.showText(known(text.text()));
    }
    content.endText();
  }

  /** Letters run up and the page's y runs up in a PDF; in a drawing both run down. */
  private static Matrix matrix(PlacedText text, float heightPt) {
    AffineTransform place = text.onPage();
    double size = text.sizeMm();
    return new Matrix(
        (float) (place.getScaleX() * size),
        (float) (-place.getShearY() * size),
        (float) (-place.getShearX() * size),
        (float) (place.getScaleY() * size),
        (float) place.getTranslateX(),
        (float) (heightPt - place.getTranslateY()));
  }

  /** What the font has no letter for is a question mark, as in the outlines. */
  private String known(String text) {
    StringBuilder known = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            letter -> {
              String one = Character.toString(letter);
              known.append(has(one) ? one : "?");
            });
    return known.toString();
  }

  private boolean has(String letter) {
    try {
      return font.encode(letter).length > 0;
    } catch (IllegalArgumentException | IOException unknown) {
      return false;
    }
  }
}
