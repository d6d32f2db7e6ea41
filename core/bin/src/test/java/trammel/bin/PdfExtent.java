package trammel.bin;

import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/**
 * How far to each side the lines, areas and letters of a page reach, also what a clip hides: a
 * drawing that is cut off at the edge of the body looks well to an eye that sees only ink. How far
 * up and down is left to {@link PdfPages}: a long table repeats its lines on pages where none
 * shows.
 */
final class PdfExtent extends PDFGraphicsStreamEngine {
  private static final double POINTS_PER_MM = 72 / 25.4;

  /** Margins at the sides of every document. */
  private static final double MARGIN_MM = 14;

  private static final double HALF_A_LINE_MM = 0.4;

  private final GeneralPath path = new GeneralPath();
  private Rectangle2D painted;

  private PdfExtent(PDPage page) {
    super(page);
  }

  /** What lies outside the body of a document, one sentence a page; empty if nothing. */
  static List<String> outsideTheBody(Path pdf) throws IOException {
    List<String> outside = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        PDPage page = document.getPage(i);
        PdfExtent extent = new PdfExtent(page);
        extent.processPage(page);
        double widthMm = page.getMediaBox().getWidth() / POINTS_PER_MM;
        Rectangle2D box = extent.painted;
        double side = MARGIN_MM - HALF_A_LINE_MM;
        if (box != null && (box.getMinX() < side || box.getMaxX() > widthMm - side)) {
          outside.add(
              pdf.getFileName()
                  + ", page "
                  + (i + 1)
                  + ": "
                  + box
                  + " mm on paper of "
                  + widthMm
                  + " mm in width");
        }
      }
    }
    return outside;
  }

  private void paint() {
    if (path.getCurrentPoint() != null) {
      Rectangle2D at = path.getBounds2D();
      add(at.getMinX(), at.getMinY());
      add(at.getMaxX(), at.getMaxY());
    }
    path.reset();
  }

  private void add(double x, double y) {
    Point2D point = new Point2D.Double(x / POINTS_PER_MM, y / POINTS_PER_MM);
    if (painted == null) {
      painted = new Rectangle2D.Double(point.getX(), point.getY(), 0, 0);
    } else {
      painted.add(point);
    }
  }

  @Override
  protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement) {
    add(matrix.getTranslateX(), matrix.getTranslateY());
    Point2D.Float end = matrix.transformPoint(displacement.getX(), 0);
    add(end.getX(), end.getY());
  }

  @Override
  public void strokePath() {
    paint();
  }

  @Override
  public void fillPath(int windingRule) {
    paint();
  }

  @Override
  public void fillAndStrokePath(int windingRule) {
    paint();
  }

  @Override
  public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
    moveTo((float) a.getX(), (float) a.getY());
    lineTo((float) b.getX(), (float) b.getY());
    lineTo((float) c.getX(), (float) c.getY());
    lineTo((float) d.getX(), (float) d.getY());
    closePath();
  }

  @Override
  public void moveTo(float x, float y) {
    path.moveTo(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    path.lineTo(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    path.curveTo(x1, y1, x2, y2, x3, y3);
  }

  @Override
  public Point2D getCurrentPoint() {
    return path.getCurrentPoint();
  }

  @Override
  public void closePath() {
    path.closePath();
  }

  @Override
  public void endPath() {
    path.reset();
  }

  @Override
  public void drawImage(PDImage image) {
    // There are none in these documents.
  }

  @Override
  public void clip(int windingRule) {
    // What is clipped away is measured all the same.
  }

  @Override
  public void shadingFill(COSName name) {
    // There are none in these documents.
  }
}
