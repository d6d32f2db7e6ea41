package trammel.planning.drawings;

import java.util.List;
import trammel.trade.plates.Arc;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Edge;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Outline;

/**
 * Writes a drawing as DXF of release 2000, with every table that the release asks for (DXF
 * Reference, AC1015: tables, blocks, objects), each thing under a handle of its own.
 */
final class DxfFile {
  private static final int PLACES = 6;
  private static final String MODEL = "*Model_Space";
  private static final String PAPER = "*Paper_Space";

  /** Layers and their colour numbers: white, white, red, green, blue. */
  private static final List<String> LAYERS =
      List.of(
          "0",
          DxfDrawing.CUT_OUTER,
          DxfDrawing.CUT_INNER,
          DxfDrawing.PART_NUMBERS,
          DxfDrawing.BORDER);

  private static final int[] COLOURS = {7, 7, 1, 3, 5};

  /** From where another program may give out handles: higher than any here. */
  private static final String SEED = "FFFFFF";

  private final DxfDrawing drawing;
  private final StringBuilder out = new StringBuilder(16_384);
  private int handles = 0x10;
  private String model = "";
  private String paper = "";

  DxfFile(DxfDrawing drawing) {
    this.drawing = drawing;
  }

  String text() {
    group(999, "all lengths in " + drawing.units().words());
    header();
    section("CLASSES");
    group(0, "ENDSEC");
    tables();
    blocks();
    entities();
    objects();
    group(0, "EOF");
    return out.toString();
  }

  // Sections

  private void header() {
    Bounds bounds = drawing.bounds();
    section("HEADER");
    variable("$ACADVER", 1, "AC1015");
    variable("$DWGCODEPAGE", 3, "ANSI_1252");
    variable("$HANDSEED", 5, SEED);
    variable("$INSUNITS", 70, Integer.toString(drawing.units().insertUnits()));
    variable("$MEASUREMENT", 70, Integer.toString(drawing.units().measurement()));
    group(9, "$EXTMIN");
    point(10, bounds.minXMm(), bounds.minYMm());
    group(9, "$EXTMAX");
    point(10, bounds.maxXMm(), bounds.maxYMm());
    group(0, "ENDSEC");
  }

  private void variable(String name, int code, String value) {
    group(9, name);
    group(code, value);
  }

  private void tables() {
    section("TABLES");
    String viewports = table("VPORT", 1);
    entry("VPORT", viewports, "AcDbViewportTableRecord", "*ACTIVE");
    endTable();
    String lineTypes = table("LTYPE", 3);
    for (String name : List.of("ByBlock", "ByLayer", "Continuous")) {
      entry("LTYPE", lineTypes, "AcDbLinetypeTableRecord", name);
      group(3, "");
      group(72, "65");
      group(73, "0");
      group(40, "0");
    }
    endTable();
    String layers = table("LAYER", LAYERS.size());
    for (int i = 0; i < LAYERS.size(); i++) {
      entry("LAYER", layers, "AcDbLayerTableRecord", LAYERS.get(i));
      group(62, Integer.toString(COLOURS[i]));
      group(6, "Continuous");
    }
    endTable();
    String styles = table("STYLE", 1);
    entry("STYLE", styles, "AcDbTextStyleTableRecord", "Standard");
    group(40, "0");
    group(41, "1");
    group(50, "0");
    group(71, "0");
    group(42, "2.5");
    group(3, "txt");
    group(4, "");
    endTable();
    table("VIEW", 0);
    endTable();
    table("UCS", 0);
    endTable();
    String applications = table("APPID", 1);
    entry("APPID", applications, "AcDbRegAppTableRecord", "ACAD");
    endTable();
    table("DIMSTYLE", 0);
    group(100, "AcDbDimStyleTable");
    endTable();
    String records = table("BLOCK_RECORD", 2);
    model = entry("BLOCK_RECORD", records, "AcDbBlockTableRecord", MODEL);
    paper = entry("BLOCK_RECORD", records, "AcDbBlockTableRecord", PAPER);
    endTable();
    group(0, "ENDSEC");
  }

  private String table(String name, int entries) {
    group(0, "TABLE");
    group(2, name);
    String handle = handle("0");
    group(100, "AcDbSymbolTable");
    group(70, Integer.toString(entries));
    return handle;
  }

  private void endTable() {
    group(0, "ENDTAB");
  }

  private String entry(String kind, String owner, String subclass, String name) {
    group(0, kind);
    String handle = handle(owner);
    group(100, "AcDbSymbolTableRecord");
    group(100, subclass);
    group(2, name);
    if (!kind.equals("BLOCK_RECORD")) {
      group(70, "0");
    }
    return handle;
  }

  private void blocks() {
    section("BLOCKS");
    block(MODEL, model);
    block(PAPER, paper);
    group(0, "ENDSEC");
  }

  private void block(String name, String owner) {
    group(0, "BLOCK");
    handle(owner);
    group(100, "AcDbEntity");
    group(8, "0");
    group(100, "AcDbBlockBegin");
    group(2, name);
    group(70, "0");
    point(10, 0, 0);
    group(3, name);
    group(1, "");
    group(0, "ENDBLK");
    handle(owner);
    group(100, "AcDbEntity");
    group(8, "0");
    group(100, "AcDbBlockEnd");
  }

  private void entities() {
    section("ENTITIES");
    for (Outline outline : drawing.outlines()) {
      for (Loop hole : outline.holeLoops()) {
        hole.edges().forEach(edge -> edge(edge, DxfDrawing.CUT_INNER));
      }
      outline.outer().edges().forEach(edge -> edge(edge, DxfDrawing.CUT_OUTER));
    }
    drawing.border().forEach(edge -> edge(edge, DxfDrawing.BORDER));
    drawing.numbers().forEach(note -> note(note, DxfDrawing.PART_NUMBERS));
    drawing.legend().forEach(note -> note(note, DxfDrawing.BORDER));
    group(0, "ENDSEC");
  }

  /** The root of what is named, and the groups that every drawing has. */
  private void objects() {
    section("OBJECTS");
    group(0, "DICTIONARY");
    String root = handle("0");
    group(100, "AcDbDictionary");
    group(3, "ACAD_GROUP");
    String groups = Integer.toHexString(handles).toUpperCase(java.util.Locale.ROOT);
    group(350, groups);
    group(0, "DICTIONARY");
    handle(root);
    group(100, "AcDbDictionary");
    group(0, "ENDSEC");
  }

  // Entities

  private void edge(Edge edge, String layer) {
    if (edge instanceof Arc arc) {
      arc(arc, layer);
      return;
    }
    entity("LINE", layer);
    group(100, "AcDbLine");
    point(10, edge.from().xMm(), edge.from().yMm());
    point(11, edge.to().xMm(), edge.to().yMm());
  }

  /** An ARC always runs anticlockwise, so one that does not is written from its end. */
  private void arc(Arc arc, String layer) {
    entity(arc.fullCircle() ? "CIRCLE" : "ARC", layer);
    group(100, "AcDbCircle");
    point(10, arc.centre().xMm(), arc.centre().yMm());
    group(40, length(arc.radiusMm()));
    if (!arc.fullCircle()) {
      Arc forward = arc.anticlockwise() ? arc : arc.reversed();
      group(100, "AcDbArc");
      // Twelve places keep the ends of large arcs as exact as their coordinates.
      group(50, Decimals.plain(degrees(forward.startRad()), 2 * PLACES));
      group(51, Decimals.plain(degrees(forward.startRad() + forward.sweepRad()), 2 * PLACES));
    }
  }

  private void note(Note note, String layer) {
    entity("TEXT", layer);
    group(100, "AcDbText");
    point(10, note.at().xMm(), note.at().yMm());
    group(40, length(note.heightMm()));
    group(1, ascii(note.text()));
    group(100, "AcDbText");
  }

  private void entity(String kind, String layer) {
    group(0, kind);
    handle(model);
    group(100, "AcDbEntity");
    group(8, layer);
  }

  // Groups

  private void section(String name) {
    group(0, "SECTION");
    group(2, name);
  }

  private String handle(String owner) {
    String handle = Integer.toHexString(handles++).toUpperCase(java.util.Locale.ROOT);
    group(5, handle);
    group(330, owner);
    return handle;
  }

  private void point(int code, double xMm, double yMm) {
    group(code, length(xMm));
    group(code + 10, length(yMm));
    group(code + 20, "0");
  }

  private String length(double lengthMm) {
    // An inch needs two places more to be as exact as a millimetre.
    int places = drawing.units() == DxfUnits.INCHES ? PLACES + 2 : PLACES;
    return Decimals.plain(drawing.units().of(lengthMm), places);
  }

  private static double degrees(double angleRad) {
    double degrees = Math.toDegrees(angleRad) % 360.0;
    return degrees < 0.0 ? degrees + 360.0 : degrees;
  }

  private static String ascii(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      plain.append(Character.isWhitespace(c) ? ' ' : c > ' ' && c < 127 ? c : '?');
    }
    return plain.toString();
  }

  private void group(int code, String value) {
    out.append(code).append('\n').append(value).append('\n');
  }
}
