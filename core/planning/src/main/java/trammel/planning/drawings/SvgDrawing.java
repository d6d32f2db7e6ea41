package trammel.planning.drawings;

import java.util.List;
import trammel.trade.given.Dimension;
import trammel.trade.plates.Arc;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Edge;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Point2;

/**
 * Outlines as SVG at true size: one user unit is one millimetre on paper, y points up as on the
 * plate.
 *
 * @param outlines what is drawn
 * @param notes text
 * @param marginMm white border about them
 * @param strokeMm width of the lines
 */
public record SvgDrawing(
    List<Outline> outlines, List<Note> notes, double marginMm, double strokeMm) {
  private static final int PLACES = 6;
  private static final double MARGIN_MM = 5;
  private static final double HAIRLINE_MM = 0.2;

  /** Width of a letter over the height of a capital, on the generous side. */
  private static final double CHARACTER_WIDTH = 0.9;

  public SvgDrawing {
    outlines = List.copyOf(outlines);
    notes = List.copyOf(notes);
    if (outlines.isEmpty()) {
      throw Dimension.refuse(
          "list of outlines to draw", "empty", "one outline or more", "Add a plate.");
    }
    Dimension.notNegativeMm("margin", marginMm);
    Dimension.positiveMm("line width", strokeMm);
  }

  /** One outline with a 5 mm border and hairlines. */
  public static SvgDrawing of(Outline outline) {
    return new SvgDrawing(List.of(outline), List.of(), MARGIN_MM, HAIRLINE_MM);
  }

  /** Outlines with text among them, a 5 mm border and hairlines. */
  public static SvgDrawing of(List<Outline> outlines, List<Note> notes) {
    return new SvgDrawing(outlines, notes, MARGIN_MM, HAIRLINE_MM);
  }

  /** The whole file. */
  public String text() {
    Bounds bounds = outlines.get(0).bounds();
    for (Outline outline : outlines) {
      bounds = bounds.with(outline.bounds());
    }
    for (Note note : notes) {
      bounds = bounds.with(room(note));
    }
    double leftMm = bounds.minXMm() - marginMm;
    double topMm = bounds.maxYMm() + marginMm;
    String width = number(bounds.widthMm() + 2.0 * marginMm);
    String height = number(bounds.heightMm() + 2.0 * marginMm);
    StringBuilder out = new StringBuilder(2048);
    out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").append(width);
    out.append("mm\" height=\"").append(height).append("mm\" viewBox=\"0 0 ");
    out.append(width).append(' ').append(height).append("\">\n");
    out.append("<g fill=\"none\" stroke=\"black\" stroke-width=\"");
    out.append(number(strokeMm)).append("\">\n");
    for (Outline outline : outlines) {
      out.append("<path d=\"");
      appendLoop(out, outline.outer(), leftMm, topMm);
      for (Loop hole : outline.holeLoops()) {
        out.append(' ');
        appendLoop(out, hole, leftMm, topMm);
      }
      out.append("\"/>\n");
    }
    out.append("</g>\n<g font-family=\"sans-serif\" fill=\"black\">\n");
    for (Note note : notes) {
      appendNote(out, note, leftMm, topMm);
    }
    return out.append("</g>\n</svg>\n").toString();
  }

  /** About the room that a line of text takes. */
  private static Bounds room(Note note) {
    double endMm = note.at().xMm() + CHARACTER_WIDTH * note.heightMm() * note.text().length();
    return new Bounds(
        note.at().xMm(),
        note.at().yMm() - note.heightMm() / 2,
        endMm,
        note.at().yMm() + note.heightMm());
  }

  private static void appendNote(StringBuilder out, Note note, double leftMm, double topMm) {
    out.append("<text x=\"").append(number(note.at().xMm() - leftMm));
    out.append("\" y=\"").append(number(topMm - note.at().yMm()));
    // Capitals are about seven tenths of the size by which a font goes.
    out.append("\" font-size=\"").append(number(note.heightMm() / 0.7)).append("\">");
    appendEscaped(out, note.text());
    out.append("</text>\n");
  }

  private static void appendEscaped(StringBuilder out, String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '&' -> out.append("&amp;");
        default -> out.append(c < ' ' ? ' ' : c);
      }
    }
  }

  private static void appendLoop(StringBuilder out, Loop loop, double leftMm, double topMm) {
    out.append('M');
    appendPoint(out, loop.edges().get(0).from(), leftMm, topMm);
    for (Edge edge : loop.edges()) {
      if (edge instanceof Arc arc) {
        // Two halves: an arc command cannot say a full circle, nor well one near it.
        appendArc(out, arc, arc.at(0.5), leftMm, topMm);
        appendArc(out, arc, arc.to(), leftMm, topMm);
      } else {
        out.append(" L");
        appendPoint(out, edge.to(), leftMm, topMm);
      }
    }
    out.append(" Z");
  }

  private static void appendArc(
      StringBuilder out, Arc arc, Point2 end, double leftMm, double topMm) {
    String radius = number(arc.radiusMm());
    out.append(" A").append(radius).append(' ').append(radius).append(" 0 0 ");
    out.append(arc.anticlockwise() ? '0' : '1').append(' ');
    appendPoint(out, end, leftMm, topMm);
  }

  private static void appendPoint(StringBuilder out, Point2 point, double leftMm, double topMm) {
    out.append(number(point.xMm() - leftMm)).append(' ').append(number(topMm - point.yMm()));
  }

  private static String number(double value) {
    return Decimals.plain(value, PLACES);
  }
}
