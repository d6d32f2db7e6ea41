package trammel.planning.drawings;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;
import trammel.trade.plates.Arc;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Edge;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Plate;
import trammel.trade.plates.Point2;

/**
 * Outlines as an ASCII DXF file of release 12, which every cutting table reads. Lengths are mm; the
 * format has no word for units, so a comment and a note on the drawing say it.
 *
 * <p>Layers: {@code CUT_OUTER} outer paths, {@code CUT_INNER} holes, {@code MARK} text and lines
 * that are not cut through. Straight edges are LINE, arcs are ARC, circles are CIRCLE; the edges of
 * a path follow each other end to end.
 *
 * @param outlines what is cut, where it lies on the sheet
 * @param marks lines that are marked only
 * @param notes text
 */
public record DxfDrawing(List<Outline> outlines, List<Edge> marks, List<Note> notes) {
  public static final String CUT_OUTER = "CUT_OUTER";
  public static final String CUT_INNER = "CUT_INNER";
  public static final String MARK = "MARK";

  private static final int PLACES = 6;
  private static final double NOTE_HEIGHT_MM = 5.0;
  private static final double LINE_FEED = 1.6;
  private static final String[] LAYERS = {"0", CUT_OUTER, CUT_INNER, MARK};

  /** Colour numbers of the layers: white, white, red, blue. */
  private static final int[] COLOURS = {7, 7, 1, 5};

  public DxfDrawing {
    outlines = List.copyOf(outlines);
    marks = List.copyOf(marks);
    notes = List.copyOf(notes);
    if (outlines.isEmpty()) {
      throw Dimension.refuse(
          "list of outlines to draw", "empty", "one outline or more", "Add a plate.");
    }
  }

  /** One plate with its name, thickness, material and the units written under it. */
  public static DxfDrawing of(Plate plate) {
    Bounds bounds = plate.outline().bounds();
    List<String> lines =
        List.of(
            plate.name(),
            "thickness " + Decimals.plain(plate.thicknessMm(), 3) + " mm, " + plate.material(),
            "units: millimetres");
    List<Note> notes = new ArrayList<>(lines.size());
    for (int i = 0; i < lines.size(); i++) {
      double belowMm = (i + 1) * LINE_FEED * NOTE_HEIGHT_MM;
      Point2 at = new Point2(bounds.minXMm(), bounds.minYMm() - belowMm);
      notes.add(new Note(at, NOTE_HEIGHT_MM, lines.get(i)));
    }
    return new DxfDrawing(List.of(plate.outline()), List.of(), notes);
  }

  /** The whole file. */
  public String text() {
    StringBuilder out = new StringBuilder(4096);
    try {
      write(out);
    } catch (IOException e) {
      throw new IllegalStateException("writing to memory failed", e);
    }
    return out.toString();
  }

  /** Writes the file; characters outside ASCII are written as question marks. */
  public void write(Appendable out) throws IOException {
    group(out, 999, "all lengths in millimetres");
    writeHeader(out);
    writeTables(out);
    group(out, 0, "SECTION");
    group(out, 2, "ENTITIES");
    for (Outline outline : outlines) {
      for (Loop hole : outline.holeLoops()) {
        writeLoop(out, hole, CUT_INNER);
      }
      writeLoop(out, outline.outer(), CUT_OUTER);
    }
    for (Edge mark : marks) {
      writeEdge(out, mark, MARK);
    }
    for (Note note : notes) {
      writeNote(out, note);
    }
    group(out, 0, "ENDSEC");
    group(out, 0, "EOF");
  }

  private void writeHeader(Appendable out) throws IOException {
    Bounds bounds = outlines.get(0).bounds();
    for (Outline outline : outlines) {
      bounds = bounds.with(outline.bounds());
    }
    group(out, 0, "SECTION");
    group(out, 2, "HEADER");
    group(out, 9, "$ACADVER");
    group(out, 1, "AC1009");
    group(out, 9, "$EXTMIN");
    point(out, 10, bounds.minXMm(), bounds.minYMm());
    group(out, 9, "$EXTMAX");
    point(out, 10, bounds.maxXMm(), bounds.maxYMm());
    group(out, 0, "ENDSEC");
  }

  private static void writeTables(Appendable out) throws IOException {
    group(out, 0, "SECTION");
    group(out, 2, "TABLES");
    startTable(out, "LTYPE", 1);
    group(out, 0, "LTYPE");
    group(out, 2, "CONTINUOUS");
    group(out, 70, "0");
    group(out, 3, "Solid line");
    group(out, 72, "65");
    group(out, 73, "0");
    group(out, 40, "0");
    group(out, 0, "ENDTAB");
    startTable(out, "LAYER", LAYERS.length);
    for (int i = 0; i < LAYERS.length; i++) {
      group(out, 0, "LAYER");
      group(out, 2, LAYERS[i]);
      group(out, 70, "0");
      group(out, 62, Integer.toString(COLOURS[i]));
      group(out, 6, "CONTINUOUS");
    }
    group(out, 0, "ENDTAB");
    group(out, 0, "ENDSEC");
  }

  private static void startTable(Appendable out, String name, int entries) throws IOException {
    group(out, 0, "TABLE");
    group(out, 2, name);
    group(out, 70, Integer.toString(entries));
  }

  private static void writeLoop(Appendable out, Loop loop, String layer) throws IOException {
    for (Edge edge : loop.edges()) {
      writeEdge(out, edge, layer);
    }
  }

  private static void writeEdge(Appendable out, Edge edge, String layer) throws IOException {
    if (edge instanceof Arc arc) {
      writeArc(out, arc, layer);
    } else {
      group(out, 0, "LINE");
      group(out, 8, layer);
      point(out, 10, edge.from().xMm(), edge.from().yMm());
      point(out, 11, edge.to().xMm(), edge.to().yMm());
    }
  }

  /** An ARC always runs anticlockwise, so one that does not is written from its end. */
  private static void writeArc(Appendable out, Arc arc, String layer) throws IOException {
    group(out, 0, arc.fullCircle() ? "CIRCLE" : "ARC");
    group(out, 8, layer);
    point(out, 10, arc.centre().xMm(), arc.centre().yMm());
    group(out, 40, Decimals.plain(arc.radiusMm(), PLACES));
    if (!arc.fullCircle()) {
      Arc forward = arc.anticlockwise() ? arc : arc.reversed();
      // Twelve places keep the ends of large arcs as exact as their coordinates.
      group(out, 50, Decimals.plain(degrees(forward.startRad()), 2 * PLACES));
      group(out, 51, Decimals.plain(degrees(forward.startRad() + forward.sweepRad()), 2 * PLACES));
    }
  }

  private static double degrees(double angleRad) {
    double degrees = Math.toDegrees(angleRad) % 360.0;
    return degrees < 0.0 ? degrees + 360.0 : degrees;
  }

  private static void writeNote(Appendable out, Note note) throws IOException {
    group(out, 0, "TEXT");
    group(out, 8, MARK);
    point(out, 10, note.at().xMm(), note.at().yMm());
    group(out, 40, Decimals.plain(note.heightMm(), PLACES));
    group(out, 1, ascii(note.text()));
  }

  private static String ascii(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      plain.append(Character.isWhitespace(c) ? ' ' : c > ' ' && c < 127 ? c : '?');
    }
    return plain.toString();
  }

  private static void point(Appendable out, int code, double xMm, double yMm) throws IOException {
    group(out, code, Decimals.plain(xMm, PLACES));
    group(out, code + 10, Decimals.plain(yMm, PLACES));
    group(out, code + 20, "0");
  }

  private static void group(Appendable out, int code, String value) throws IOException {
    out.append(Integer.toString(code)).append('\n').append(value).append('\n');
  }
}
