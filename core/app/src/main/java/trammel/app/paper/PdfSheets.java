package trammel.app.paper;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.geom.AffineTransform;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import trammel.app.drawings.Drawing;

/** Drawings as the pages of a PDF, each page as large as its drawing, at true scale. */
public final class PdfSheets {
  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final double MARGIN_MM = 12;

  private PdfSheets() {}

  /** The file: one page a drawing. */
  public static byte[] of(List<? extends Drawing> drawings) {
    try (PDDocument document = new PDDocument()) {
      TextLayer layer = new TextLayer(document);
      for (Drawing drawing : drawings) {
        add(document, layer, drawing);
      }
      return saved(document);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /**
   * Drawings on sheets of paper, one under the other as far as they fit.
   *
   * @param drawings the drawings, none larger than the paper within its margins
   * @param widthMm width of the paper
   * @param heightMm height of the paper
   */
  public static byte[] onPaper(List<? extends Drawing> drawings, double widthMm, double heightMm) {
    List<Sheet> sheets = new ArrayList<>();
    Sheet sheet = new Sheet(new ArrayList<>(), widthMm, heightMm);
    double usedMm = 0;
    for (Drawing drawing : drawings) {
      if (usedMm > 0 && usedMm + drawing.heightMm() > heightMm - 2 * MARGIN_MM) {
        sheets.add(sheet);
        sheet = new Sheet(new ArrayList<>(), widthMm, heightMm);
        usedMm = 0;
      }
      sheet.drawings().add(drawing);
      usedMm += drawing.heightMm();
    }
    sheets.add(sheet);
    try (PDDocument document = new PDDocument()) {
      TextLayer layer = new TextLayer(document);
      for (Sheet one : sheets) {
        add(document, layer, one);
      }
      return saved(document);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private record Sheet(List<Drawing> drawings, double widthMm, double heightMm) {}

  private static void add(PDDocument document, TextLayer layer, Sheet sheet) throws IOException {
    List<PlacedText> texts = new ArrayList<>();
    PdfBoxGraphics2D graphics = page(document, sheet.widthMm(), sheet.heightMm());
    double topMm = MARGIN_MM;
    for (Drawing drawing : sheet.drawings()) {
      AffineTransform before = graphics.getTransform();
      graphics.translate((sheet.widthMm() - drawing.widthMm()) / 2, topMm);
      drawing.drawOn(
          new GraphicsPaper(graphics, text -> texts.add(text) && TextLayer.writes(text)));
      graphics.setTransform(before);
      topMm += drawing.heightMm();
    }
    put(document, graphics, layer, texts);
  }

  private static void add(PDDocument document, TextLayer layer, Drawing drawing)
      throws IOException {
    List<PlacedText> texts = new ArrayList<>();
    PdfBoxGraphics2D graphics = page(document, drawing.widthMm(), drawing.heightMm());
    drawing.drawOn(new GraphicsPaper(graphics, text -> texts.add(text) && TextLayer.writes(text)));
    put(document, graphics, layer, texts);
  }

  private static PdfBoxGraphics2D page(PDDocument document, double widthMm, double heightMm)
      throws IOException {
    float width = (float) (widthMm * POINTS_PER_MM);
    float height = (float) (heightMm * POINTS_PER_MM);
    document.addPage(new PDPage(new PDRectangle(width, height)));
    PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, width, height);
    graphics.scale(POINTS_PER_MM, POINTS_PER_MM);
    return graphics;
  }

  private static void put(
      PDDocument document, PdfBoxGraphics2D graphics, TextLayer layer, List<PlacedText> texts)
      throws IOException {
    graphics.dispose();
    PDPage page = document.getPage(document.getNumberOfPages() - 1);
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      content.drawForm(graphics.getXFormObject());
      layer.put(content, page.getMediaBox().getHeight(), texts);
    }
  }

  private static byte[] saved(PDDocument document) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    document.save(bytes);
    return bytes.toByteArray();
  }
}
