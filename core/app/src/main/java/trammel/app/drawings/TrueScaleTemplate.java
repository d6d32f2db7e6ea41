package trammel.app.drawings;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.plates.Arc;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Edge;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Point2;
import trammel.trade.tubes.Cope;

/**
 * A template at true scale.
 *
 * @param name what it is for
 * @param bounds what it covers
 * @param lines its lines (mm, y up)
 * @param marks crosses by which tiles of it are joined
 */
public record TrueScaleTemplate(String name, Bounds bounds, List<Line> lines, List<Mark> marks) {
  private static final double CHORD_MM = 0.01;
  private static final double CENTRE_MM = 2.5;
  private static final double HOLD_MM = 25;
  private static final int STEPS = 180;

  /** Copies the lists. */
  public TrueScaleTemplate {
    lines = List.copyOf(lines);
    marks = List.copyOf(marks);
  }

  /**
   * A line through points.
   *
   * @param xs to the right (mm)
   * @param ys up (mm)
   * @param pen how it is drawn
   */
  public record Line(double[] xs, double[] ys, Pen pen) {}

  /**
   * A cross at which tiles are joined.
   *
   * @param name its name
   * @param xMm to the right (mm)
   * @param yMm up (mm)
   */
  public record Mark(String name, double xMm, double yMm) {}

  /** A plate, its round holes with centre crosses to punch through. */
  public static TrueScaleTemplate of(String name, Outline outline) {
    List<Line> lines = new ArrayList<>();
    lines.add(closed(outline.outer().polygon(CHORD_MM)));
    for (Loop hole : outline.holeLoops()) {
      lines.add(closed(hole.polygon(CHORD_MM)));
      for (Edge edge : hole.edges()) {
        if (edge instanceof Arc arc) {
          Point2 c = arc.centre();
          lines.add(straight(c.xMm() - CENTRE_MM, c.yMm(), c.xMm() + CENTRE_MM, c.yMm()));
          lines.add(straight(c.xMm(), c.yMm() - CENTRE_MM, c.xMm(), c.yMm() + CENTRE_MM));
        }
      }
    }
    return new TrueScaleTemplate(name, outline.bounds(), lines, List.of());
  }

  /** A wrap for a coped tube, cut along its edge and taped round the tube. */
  public static TrueScaleTemplate of(String name, Cope cope) {
    double roundMm = 2 * Math.PI * cope.branchRadiusMm();
    double topMm = cope.depthMm() + HOLD_MM;
    List<Point2> edge = new ArrayList<>(cope.wrap(STEPS));
    edge.add(new Point2(roundMm, topMm));
    edge.add(new Point2(0, topMm));
    Loop loop = Loop.through(edge);
    List<Line> lines = new ArrayList<>();
    lines.add(closed(loop.polygon(CHORD_MM)));
    for (int quarter = 1; quarter < 4; quarter++) {
      double x = roundMm * quarter / 4;
      lines.add(straight(x, topMm - 8, x, topMm));
    }
    return new TrueScaleTemplate(name, loop.bounds(), lines, List.of());
  }

  /** The same with marks to join tiles by. */
  public TrueScaleTemplate with(List<Mark> newMarks) {
    return new TrueScaleTemplate(name, bounds, lines, newMarks);
  }

  private static Line straight(double x1, double y1, double x2, double y2) {
    return new Line(new double[] {x1, x2}, new double[] {y1, y2}, Pen.FINE);
  }

  private static Line closed(List<Point2> points) {
    int count = points.size();
    double[] xs = new double[count + 1];
    double[] ys = new double[count + 1];
    for (int i = 0; i <= count; i++) {
      xs[i] = points.get(i % count).xMm();
      ys[i] = points.get(i % count).yMm();
    }
    return new Line(xs, ys, Pen.FINE);
  }
}
