package trammel.app.paper;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import trammel.app.drawings.Drawing;

/** Drawings as the pages of a PDF, each page as large as its drawing, at true scale. */
public final class PdfSheets {
  private static final double POINTS_PER_MM = 72 / 25.4;

  private PdfSheets() {}

  /** The file: one page a drawing. */
  public static byte[] of(List<? extends Drawing> drawings) {
    try (PDDocument document = new PDDocument()) {
      for (Drawing drawing : drawings) {
        add(document, drawing);
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      return bytes.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private static void add(PDDocument document, Drawing drawing) throws IOException {
    float width = (float) (drawing.widthMm() * POINTS_PER_MM);
    float height = (float) (drawing.heightMm() * POINTS_PER_MM);
    PDPage page = new PDPage(new PDRectangle(width, height));
    document.addPage(page);
    PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, width, height);
    graphics.scale(POINTS_PER_MM, POINTS_PER_MM);
    drawing.drawOn(new GraphicsPaper(graphics));
    graphics.dispose();
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      content.drawForm(graphics.getXFormObject());
    }
  }
}
