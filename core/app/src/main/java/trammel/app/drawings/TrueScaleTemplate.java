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
 * @param note what it is cut from and what is bored in it
 * @param bounds what it covers
 * @param lines its outer lines (mm, y up)
 * @param holes what is bored or cut in it; never shown in part
 * @param words words within it
 */
public record TrueScaleTemplate(
    String name,
    String note,
    Bounds bounds,
    List<Line> lines,
    List<Opening> holes,
    List<Word> words) {
  private static final double CHORD_MM = 0.01;
  private static final double CENTRE_MM = 2.5;
  private static final double HOLD_MM = 25;
  private static final int STEPS = 180;

  /** A curve shallower than this leaves no room for a word under it (mm). */
  private static final double ROOM_FOR_A_WORD_MM = 6;

  /** Copies the lists. */
  public TrueScaleTemplate {
    lines = List.copyOf(lines);
    holes = List.copyOf(holes);
    words = List.copyOf(words);
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
   * A hole with the cross at its middle.
   *
   * @param bounds what it covers
   * @param lines its lines
   */
  public record Opening(Bounds bounds, List<Line> lines) {
    /** Copies the list. */
    public Opening {
      lines = List.copyOf(lines);
    }
  }

  /**
   * A word, its middle at a point.
   *
   * @param text the word
   * @param xMm to the right (mm)
   * @param yMm up (mm)
   */
  public record Word(String text, double xMm, double yMm) {}

  /** A plate, its round holes with centre crosses to punch through. */
  public static TrueScaleTemplate of(String name, String note, Outline outline) {
    List<Opening> holes = new ArrayList<>();
    for (Loop hole : outline.holeLoops()) {
      List<Line> lines = new ArrayList<>(List.of(closed(hole.polygon(CHORD_MM))));
      for (Edge edge : hole.edges()) {
        if (edge instanceof Arc arc) {
          Point2 c = arc.centre();
          lines.add(straight(c.xMm() - CENTRE_MM, c.yMm(), c.xMm() + CENTRE_MM, c.yMm()));
          lines.add(straight(c.xMm(), c.yMm() - CENTRE_MM, c.xMm(), c.yMm() + CENTRE_MM));
        }
      }
      holes.add(new Opening(hole.bounds(), lines));
    }
    List<Line> outer = List.of(closed(outline.outer().polygon(CHORD_MM)));
    return new TrueScaleTemplate(name, note, outline.bounds(), outer, holes, List.of());
  }

  /**
   * A wrap for a coped tube, cut along its edge and taped round the tube. The paper lies on what is
   * kept; what shows between its curve and the tube's end is waste.
   */
  public static TrueScaleTemplate of(String name, String note, Cope cope) {
    double roundMm = 2 * Math.PI * cope.branchRadiusMm();
    double topMm = cope.depthMm() + HOLD_MM;
    List<Point2> curve = cope.wrap(STEPS);
    List<Point2> edge = new ArrayList<>(curve);
    edge.add(new Point2(roundMm, topMm));
    edge.add(new Point2(0, topMm));
    Loop loop = Loop.through(edge);
    List<Line> lines = new ArrayList<>();
    lines.add(closed(loop.polygon(CHORD_MM)));
    for (int quarter = 1; quarter < 4; quarter++) {
      double x = roundMm * quarter / 4;
      lines.add(straight(x, topMm - 8, x, topMm));
    }
    List<Word> words = new ArrayList<>();
    words.add(new Word("KEEP: paper on the tube", roundMm / 2, topMm - HOLD_MM / 2));
    Point2 deepest =
        curve.stream().reduce((one, other) -> one.yMm() > other.yMm() ? one : other).orElseThrow();
    if (deepest.yMm() > ROOM_FOR_A_WORD_MM) {
      words.add(new Word("waste", deepest.xMm(), deepest.yMm() / 2));
    }
    return new TrueScaleTemplate(name, note, loop.bounds(), lines, List.of(), words);
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
