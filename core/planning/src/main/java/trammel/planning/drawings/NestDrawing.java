package trammel.planning.drawings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import trammel.planning.cutting.sheets.CutSheet;
import trammel.planning.cutting.sheets.PlacedPart;
import trammel.planning.given.Given;
import trammel.planning.plates.Bounds;
import trammel.planning.plates.Edge;
import trammel.planning.plates.Loop;
import trammel.planning.plates.Outline;
import trammel.planning.plates.Placement;
import trammel.planning.plates.Plate;
import trammel.planning.plates.Point2;

/**
 * One sheet with the plates that are cut from it, each where the cutting plan puts it. The lower
 * left corner of the sheet is the origin.
 *
 * @param sheet the sheet and where its parts lie
 * @param plates the plates by name
 * @param title written under the sheet
 */
public record NestDrawing(CutSheet sheet, Map<String, Plate> plates, String title) {
  private static final double NOTE_HEIGHT_MM = 8;
  private static final double LINE_MM = 14;
  private static final int LEGEND_COLUMNS = 3;

  /**
   * @throws IllegalArgumentException if a part of the sheet is not among the plates
   */
  public NestDrawing {
    plates = Map.copyOf(plates);
    Given.text(title, "Title of a nest", "Say which sheet it is.");
    for (PlacedPart part : sheet.parts()) {
      Given.present(
          plates.get(part.partId()), "Plate '" + part.partId() + "' of a nest", "Add its plate.");
    }
  }

  /** The plates as outlines in their places, in the order of the plan. */
  public List<Outline> placed() {
    List<Outline> placed = new ArrayList<>(sheet.parts().size());
    for (PlacedPart part : sheet.parts()) {
      Outline outline = plates.get(part.partId()).outline();
      Outline turned = outline.placed(Placement.turn(Math.toRadians(part.turnDeg())));
      Bounds bounds = turned.bounds();
      placed.add(
          turned.placed(
              Placement.shift(part.xMm() - bounds.minXMm(), part.yMm() - bounds.minYMm())));
    }
    return placed;
  }

  /** For the cutting table; the sheet's edge is only marked. */
  public DxfDrawing dxf() {
    List<Edge> edge = new ArrayList<>(border().outer().edges());
    return new DxfDrawing(placed(), edge, notes());
  }

  /** For the eye. */
  public SvgDrawing svg() {
    List<Outline> outlines = new ArrayList<>(placed());
    outlines.add(border());
    return SvgDrawing.of(outlines, notes());
  }

  private Outline border() {
    double widthMm = sheet.stock().widthMm();
    double heightMm = sheet.stock().heightMm();
    return Outline.solid(
        Loop.through(
            List.of(
                new Point2(0, 0),
                new Point2(widthMm, 0),
                new Point2(widthMm, heightMm),
                new Point2(0, heightMm))));
  }

  /** A number in every plate, and under the sheet what the numbers are. */
  private List<Note> notes() {
    List<Note> notes = new ArrayList<>(2 * sheet.parts().size() + 1);
    notes.add(new Note(new Point2(0, -LINE_MM), NOTE_HEIGHT_MM, title));
    List<String> names = new ArrayList<>();
    List<Outline> placed = placed();
    for (int i = 0; i < placed.size(); i++) {
      String name = sheet.parts().get(i).partId();
      if (!names.contains(name)) {
        names.add(name);
      }
      notes.add(number(placed.get(i), names.indexOf(name) + 1));
    }
    double columnMm = sheet.stock().widthMm() / LEGEND_COLUMNS;
    int rows = (names.size() + LEGEND_COLUMNS - 1) / LEGEND_COLUMNS;
    for (int i = 0; i < names.size(); i++) {
      Point2 at = new Point2(i / rows * columnMm, -(2 + i % rows) * LINE_MM);
      notes.add(new Note(at, NOTE_HEIGHT_MM, (i + 1) + "  " + names.get(i)));
    }
    return notes;
  }

  private static Note number(Outline outline, int number) {
    Bounds bounds = outline.bounds();
    double leastMm = Math.min(bounds.widthMm(), bounds.heightMm());
    double heightMm = Math.min(NOTE_HEIGHT_MM, leastMm / 3);
    Point2 middle = outline.middle();
    Point2 at = new Point2(middle.xMm() - heightMm / 2, middle.yMm() - heightMm / 2);
    return new Note(at, heightMm, Integer.toString(number));
  }
}
