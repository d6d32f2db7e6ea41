package trammel.planning.drawings;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Edge;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Plate;
import trammel.trade.plates.Point2;

/**
 * Outlines as an ASCII DXF file of release 2000 (AC1015), the first that says what its numbers
 * mean.
 *
 * <p>Layers: {@code CUT_OUTER} outer paths and {@code CUT_INNER} holes, nothing but geometry;
 * {@code PART_NUMBERS} texts within the plates, which a marker may write; {@code BORDER} the
 * sheet's edge and what is written under it, which no table traces. Straight edges are LINE, arcs
 * are ARC, circles are CIRCLE; the edges of a path follow each other end to end.
 *
 * @param outlines what is cut, where it lies on the sheet (mm)
 * @param numbers part numbers within the outlines (mm)
 * @param border lines that are not cut (mm)
 * @param legend what is written beside (mm)
 * @param units what the numbers of the file mean
 */
public record DxfDrawing(
    List<Outline> outlines,
    List<Note> numbers,
    List<Edge> border,
    List<Note> legend,
    DxfUnits units) {
  public static final String CUT_OUTER = "CUT_OUTER";
  public static final String CUT_INNER = "CUT_INNER";
  public static final String PART_NUMBERS = "PART_NUMBERS";
  public static final String BORDER = "BORDER";

  private static final double NOTE_HEIGHT_MM = 5.0;
  private static final double LINE_FEED = 1.6;
  private static final int PLACES = 4;

  public DxfDrawing {
    outlines = List.copyOf(outlines);
    numbers = List.copyOf(numbers);
    border = List.copyOf(border);
    legend = List.copyOf(legend);
    if (outlines.isEmpty()) {
      throw Dimension.refuse(
          "list of outlines to draw", "empty", "one outline or more", "Add a plate.");
    }
  }

  /** One plate with its name, thickness, material and the units written under it. */
  public static DxfDrawing of(Plate plate, DxfUnits units) {
    Bounds bounds = plate.outline().bounds();
    List<String> lines =
        List.of(
            plate.name(),
            "thickness "
                + Decimals.plain(units.of(plate.thicknessMm()), PLACES)
                + " "
                + units.word()
                + ", "
                + plate.material(),
            "units: " + units.words());
    List<Note> legend = new ArrayList<>(lines.size());
    for (int i = 0; i < lines.size(); i++) {
      double belowMm = (i + 1) * LINE_FEED * NOTE_HEIGHT_MM;
      Point2 at = new Point2(bounds.minXMm(), bounds.minYMm() - belowMm);
      legend.add(new Note(at, NOTE_HEIGHT_MM, lines.get(i)));
    }
    return new DxfDrawing(List.of(plate.outline()), List.of(), List.of(), legend, units);
  }

  /** The whole file; characters outside ASCII are written as question marks. */
  public String text() {
    return new DxfFile(this).text();
  }

  /** What all outlines cover (mm). */
  Bounds bounds() {
    Bounds bounds = outlines.get(0).bounds();
    for (Outline outline : outlines) {
      bounds = bounds.with(outline.bounds());
    }
    return bounds;
  }
}
