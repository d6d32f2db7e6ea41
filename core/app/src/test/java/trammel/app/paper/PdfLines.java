package trammel.app.paper;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/**
 * Reads the straight lines that a page of a PDF draws, in millimetres from its lower left corner.
 */
final class PdfLines extends PDFGraphicsStreamEngine {
  private static final double MM_PER_POINT = 25.4 / 72;

  private final List<Line> lines = new ArrayList<>();
  private final GeneralPath path = new GeneralPath();

  private PdfLines(PDPage page) {
    super(page);
  }

  /**
   * One straight line.
   *
   * @param from one end (mm)
   * @param to the other (mm)
   * @param red whether it is drawn in the accent
   */
  record Line(Point2D from, Point2D to, boolean red) {
    double lengthMm() {
      return from.distance(to);
    }
  }

  static List<Line> of(PDPage page) throws IOException {
    PdfLines reader = new PdfLines(page);
    reader.processPage(page);
    return reader.lines;
  }

  @Override
  public void strokePath() throws IOException {
    float[] colour = getGraphicsState().getStrokingColor().getComponents();
    boolean red = colour.length == 3 && colour[0] > 2 * colour[1];
    double[] at = new double[6];
    Point2D start = null;
    Point2D last = null;
    for (PathIterator i = path.getPathIterator(new AffineTransform()); !i.isDone(); i.next()) {
      int kind = i.currentSegment(at);
      Point2D next =
          kind == PathIterator.SEG_CLOSE
              ? start
              : new Point2D.Double(at[0] * MM_PER_POINT, at[1] * MM_PER_POINT);
      if (kind == PathIterator.SEG_MOVETO) {
        start = next;
      } else if (last.distance(next) > 1e-6) {
        lines.add(new Line(last, next, red));
      }
      last = next;
    }
    path.reset();
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
    path.lineTo(x3, y3);
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
  public void fillPath(int windingRule) {
    path.reset();
  }

  @Override
  public void fillAndStrokePath(int windingRule) throws IOException {
    strokePath();
  }

  @Override
  public void drawImage(PDImage image) {
    // There are none on these sheets.
  }

  @Override
  public void clip(int windingRule) {
    // What is clipped away is drawn all the same.
  }

  @Override
  public void shadingFill(COSName name) {
    // There are none on these sheets.
  }
}
