package trammel.app.paper;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.GeneralPath;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.function.Predicate;
import trammel.app.drawings.Paper;
import trammel.app.drawings.Pen;

/** Draws on a graphics context whose unit is the millimetre: a PDF page or a picture. */
public final class GraphicsPaper implements Paper {
  private static final String NONE = "none";

  private final Graphics2D graphics;
  private final Predicate<PlacedText> writer;

  /**
   * @param graphics where to draw, scaled to millimetres
   */
  public GraphicsPaper(Graphics2D graphics) {
    this(graphics, text -> false);
  }

  /**
   * @param graphics where to draw, scaled to millimetres
   * @param writer is told every text and where; answers whether it writes the letters itself
   */
  GraphicsPaper(Graphics2D graphics, Predicate<PlacedText> writer) {
    this.graphics = graphics;
    this.writer = writer;
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }

  @Override
  public GraphicsPaper line(double x1, double y1, double x2, double y2, Pen pen) {
    return stroke(new Line2D.Double(x1, y1, x2, y2), pen);
  }

  @Override
  public GraphicsPaper frame(double x, double y, double width, double height, Pen pen) {
    return stroke(new Rectangle2D.Double(x, y, width, height), pen);
  }

  @Override
  public GraphicsPaper path(double[] xs, double[] ys, Pen pen) {
    return stroke(through(xs, ys), pen);
  }

  @Override
  public GraphicsPaper area(double[] xs, double[] ys, String fill, Pen pen) {
    GeneralPath area = through(xs, ys);
    area.closePath();
    return fill(area, fill).stroke(area, pen);
  }

  @Override
  public GraphicsPaper disc(double x, double y, double radius, String fill, Pen pen) {
    Shape disc = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    return fill(disc, fill).stroke(disc, pen);
  }

  @Override
  public GraphicsPaper text(double x, double y, double sizeMm, Anchor anchor, String text) {
    return letters(text, sizeMm, anchor, AffineTransform.getTranslateInstance(x, y));
  }

  @Override
  public GraphicsPaper upright(double x, double y, double sizeMm, String text) {
    AffineTransform place = AffineTransform.getTranslateInstance(x, y);
    place.rotate(-Math.PI / 2);
    return letters(text, sizeMm, Anchor.MIDDLE, place);
  }

  private GraphicsPaper letters(String text, double sizeMm, Anchor anchor, AffineTransform place) {
    Lettering lettering = Lettering.shared();
    double widthMm = anchor == Anchor.START ? 0 : lettering.widthMm(text, sizeMm);
    place.translate(anchor == Anchor.END ? -widthMm : -widthMm / 2, 0);
    AffineTransform onPage = new AffineTransform(graphics.getTransform());
    onPage.concatenate(place);
    if (!writer.test(new PlacedText(text, sizeMm, onPage))) {
      graphics.setColor(Color.BLACK);
      graphics.fill(place.createTransformedShape(lettering.outline(text, sizeMm)));
    }
    return this;
  }

  private static GeneralPath through(double[] xs, double[] ys) {
    GeneralPath path = new GeneralPath();
    for (int i = 0; i < xs.length; i++) {
      if (i == 0) {
        path.moveTo(xs[i], ys[i]);
      } else {
        path.lineTo(xs[i], ys[i]);
      }
    }
    return path;
  }

  private GraphicsPaper fill(Shape shape, String colour) {
    if (!colour.equals(NONE)) {
      graphics.setColor(colour(colour));
      graphics.fill(shape);
    }
    return this;
  }

  private GraphicsPaper stroke(Shape shape, Pen pen) {
    graphics.setColor(colour(pen.colour()));
    graphics.setStroke(stroke(pen));
    graphics.draw(shape);
    return this;
  }

  private static BasicStroke stroke(Pen pen) {
    float width = (float) pen.widthMm();
    if (pen.dashes().isEmpty()) {
      return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }
    String[] words = pen.dashes().split(" ");
    float[] dashes = new float[words.length];
    for (int i = 0; i < words.length; i++) {
      dashes[i] = Float.parseFloat(words[i]);
    }
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0);
  }

  private static Color colour(String name) {
    return switch (name) {
      case "black" -> Color.BLACK;
      case "white" -> Color.WHITE;
      default -> Color.decode(name);
    };
  }
}
