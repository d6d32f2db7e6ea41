package trammel.app.documents;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.Locale;
import trammel.planning.quantity.DecimalText;

/**
 * A sketch fitted into a frame on paper; drawn once on Graphics2D for PDF, once as SVG for HTML.
 */
final class SketchFrame {
  private static final double STRONG_MM = 0.6;
  private static final double PLAIN_MM = 0.25;
  private static final double LIGHT_MM = 0.15;
  private static final int PLACES = 3;

  private final Sketch sketch;
  private final double scale;
  private final double leftMm;
  private final double topMm;
  private final double widthMm;
  private final double heightMm;

  /**
   * @param mostWidthMm width of the paper that it may take (mm)
   * @param mostHeightMm height that it may take (mm)
   */
  SketchFrame(Sketch sketch, double mostWidthMm, double mostHeightMm) {
    this.sketch = sketch;
    double[] bounds = sketch.bounds();
    double realWidth = bounds[2] - bounds[0];
    double realHeight = bounds[3] - bounds[1];
    scale = Math.min(mostWidthMm / realWidth, mostHeightMm / realHeight);
    leftMm = bounds[0];
    topMm = bounds[3];
    widthMm = scale * realWidth;
    heightMm = scale * realHeight;
  }

  double widthMm() {
    return widthMm;
  }

  double heightMm() {
    return heightMm;
  }

  private double x(double xMm) {
    return scale * (xMm - leftMm);
  }

  private double y(double yMm) {
    return scale * (topMm - yMm);
  }

  /** Draws the lines into a box of the given size, whatever its unit. */
  void draw(Graphics2D graphics, double width, double height) {
    graphics.scale(width / widthMm, height / heightMm);
    for (Sketch.Line line : sketch.lines()) {
      pen(graphics, line.stroke());
      Path2D path = new Path2D.Double();
      double[] points = line.points();
      path.moveTo(x(points[0]), y(points[1]));
      for (int i = 2; i < points.length; i += 2) {
        path.lineTo(x(points[i]), y(points[i + 1]));
      }
      graphics.draw(path);
    }
    for (Sketch.Circle circle : sketch.circles()) {
      pen(graphics, circle.stroke());
      double radius = scale * circle.radiusMm();
      graphics.draw(
          new Ellipse2D.Double(
              x(circle.xMm()) - radius, y(circle.yMm()) - radius, 2 * radius, 2 * radius));
    }
  }

  private static void pen(Graphics2D graphics, Sketch.Stroke stroke) {
    graphics.setColor(stroke == Sketch.Stroke.LIGHT ? Color.GRAY : Color.BLACK);
    graphics.setStroke(new BasicStroke((float) widthOf(stroke)));
  }

  private static double widthOf(Sketch.Stroke stroke) {
    return switch (stroke) {
      case STRONG -> STRONG_MM;
      case PLAIN -> PLAIN_MM;
      case LIGHT -> LIGHT_MM;
    };
  }

  /** The lines as SVG, without the labels. */
  String svg() {
    StringBuilder svg = new StringBuilder();
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ");
    svg.append(number(widthMm)).append(' ').append(number(heightMm));
    svg.append("\" width=\"100%\" height=\"100%\" fill=\"none\">");
    for (Sketch.Line line : sketch.lines()) {
      svg.append("<polyline ").append(pen(line.stroke())).append(" points=\"");
      double[] points = line.points();
      for (int i = 0; i < points.length; i += 2) {
        svg.append(number(x(points[i]))).append(',').append(number(y(points[i + 1]))).append(' ');
      }
      svg.append("\"/>");
    }
    for (Sketch.Circle circle : sketch.circles()) {
      svg.append("<circle ").append(pen(circle.stroke()));
      svg.append(" cx=\"").append(number(x(circle.xMm())));
      svg.append("\" cy=\"").append(number(y(circle.yMm())));
      svg.append("\" r=\"").append(number(scale * circle.radiusMm())).append("\"/>");
    }
    return svg.append("</svg>").toString();
  }

  private static String pen(Sketch.Stroke stroke) {
    return "stroke=\""
        + (stroke == Sketch.Stroke.LIGHT ? "gray" : "black")
        + "\" stroke-width=\""
        + number(widthOf(stroke))
        + "\"";
  }

  /** Where a label stands, as a style of its element. */
  String style(Sketch.Label label) {
    return String.format(
        Locale.ROOT,
        "left:%.2f%%;top:%.2f%%",
        100 * x(label.xMm()) / widthMm,
        100 * y(label.yMm()) / heightMm);
  }

  private static String number(double value) {
    return DecimalText.fixed(value, PLACES);
  }
}
