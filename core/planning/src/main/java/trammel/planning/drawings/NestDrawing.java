package trammel.planning.drawings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import trammel.cutting.sheets.CutSheet;
import trammel.cutting.sheets.PlacedPart;
import trammel.engine.quantity.Given;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Edge;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Placement;
import trammel.trade.plates.Plate;
import trammel.trade.plates.Point2;

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
  private static final int MOST_COLUMNS = 3;

  /** Room that a letter takes along its line, as a part of its height; plain fonts take less. */
  private static final double LETTER_WIDTH = 0.75;

  /**
   * @throws IllegalArgumentException if a part of the sheet is not among the plates
   */
  public NestDrawing {
    plates = Map.copyOf(plates);
    Given.text("title of a nest", title, "Say which sheet it is.");
    for (PlacedPart part : sheet.parts()) {
      Given.present(
          "plate '" + part.partId() + "' of a nest", plates.get(part.partId()), "Add its plate.");
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

  /** For the cutting table; the sheet's edge and the legend are on a layer of their own. */
  public DxfDrawing dxf(DxfUnits units) {
    List<Edge> edge = new ArrayList<>(border().outer().edges());
    return new DxfDrawing(placed(), numbers(), edge, legend(), units);
  }

  /** For the eye. */
  public SvgDrawing svg() {
    List<Outline> outlines = new ArrayList<>(placed());
    outlines.add(border());
    List<Note> notes = new ArrayList<>(numbers());
    notes.addAll(legend());
    return SvgDrawing.of(outlines, notes);
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

  /** A number in every plate. */
  private List<Note> numbers() {
    List<Note> numbers = new ArrayList<>(sheet.parts().size());
    List<String> names = names();
    List<Outline> placed = placed();
    for (int i = 0; i < placed.size(); i++) {
      String name = sheet.parts().get(i).partId();
      numbers.add(number(placed.get(i), names.indexOf(name) + 1));
    }
    return numbers;
  }

  /** Under the sheet, which it is and what the numbers are. */
  private List<Note> legend() {
    List<Note> legend = new ArrayList<>();
    legend.add(new Note(new Point2(0, -LINE_MM), NOTE_HEIGHT_MM, title));
    legend.addAll(key(names()));
    return legend;
  }

  private List<String> names() {
    return sheet.parts().stream().map(PlacedPart::partId).distinct().toList();
  }

  /** What the numbers are, in as many columns as the longest name leaves room for. */
  private List<Note> key(List<String> names) {
    List<String> lines = new ArrayList<>();
    int longest = 1;
    for (int i = 0; i < names.size(); i++) {
      lines.add((i + 1) + "  " + names.get(i));
      longest = Math.max(longest, lines.get(i).length() + 1);
    }
    double widthMm = sheet.stock().widthMm();
    int room = (int) (widthMm / (longest * LETTER_WIDTH * NOTE_HEIGHT_MM));
    int columns = Math.max(1, Math.min(MOST_COLUMNS, room));
    int rows = (lines.size() + columns - 1) / columns;
    List<Note> key = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Point2 at = new Point2(i / rows * widthMm / columns, -(2 + i % rows) * LINE_MM);
      key.add(new Note(at, NOTE_HEIGHT_MM, lines.get(i)));
    }
    return key;
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
