package trammel.app.drawings;

import java.util.ArrayList;
import java.util.List;
import trammel.app.drawings.Paper.Anchor;
import trammel.cutting.sheets.PlacedPart;
import trammel.planning.drawings.NestDrawing;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Point2;

/**
 * A sheet with the plates that are cut from it, numbered.
 *
 * @param nest the sheet with its plates
 */
public record NestPicture(NestDrawing nest) implements Drawing {
  private static final double WIDTH_MM = Paper.BODY_WIDTH_MM;
  private static final double MOST_MM = 120;
  private static final double LETTERS_MM = 2.6;
  private static final double LINE_MM = 3.6;
  private static final int COLUMNS = 3;

  private double scale() {
    return Math.min(
        WIDTH_MM / nest.sheet().stock().widthMm(), MOST_MM / nest.sheet().stock().heightMm());
  }

  private List<String> names() {
    List<String> names = new ArrayList<>();
    for (PlacedPart part : nest.sheet().parts()) {
      if (!names.contains(part.partId())) {
        names.add(part.partId());
      }
    }
    return names;
  }

  private int rows() {
    return (names().size() + COLUMNS - 1) / COLUMNS;
  }

  @Override
  public double widthMm() {
    return WIDTH_MM;
  }

  @Override
  public double heightMm() {
    return nest.sheet().stock().heightMm() * scale() + 3 + rows() * LINE_MM;
  }

  @Override
  public void drawOn(Paper paper) {
    double scale = scale();
    double sheetMm = nest.sheet().stock().heightMm();
    paper.frame(
        0.2, 0.2, nest.sheet().stock().widthMm() * scale - 0.4, sheetMm * scale - 0.4, Pen.OUTLINE);
    List<String> names = names();
    List<Outline> placed = nest.placed();
    for (int i = 0; i < placed.size(); i++) {
      Bounds bounds = placed.get(i).bounds();
      double left = bounds.minXMm() * scale;
      double top = (sheetMm - bounds.maxYMm()) * scale;
      new PlateBoard.Shift(left, top, bounds, scale).draw(paper, placed.get(i));
      String number = Integer.toString(names.indexOf(nest.sheet().parts().get(i).partId()) + 1);
      double least = Math.min(bounds.widthMm(), bounds.heightMm()) * scale;
      double letters = Math.min(LETTERS_MM, Math.max(1.4, 0.6 * least));
      Point2 middle = placed.get(i).middle();
      paper.text(
          middle.xMm() * scale,
          (sheetMm - middle.yMm()) * scale + letters / 3,
          letters,
          Anchor.MIDDLE,
          number);
    }
    for (int i = 0; i < names.size(); i++) {
      double x = i / rows() * WIDTH_MM / COLUMNS;
      double y = sheetMm * scale + 4 + i % rows() * LINE_MM;
      String text = (i + 1) + "  " + names.get(i);
      double room = WIDTH_MM / COLUMNS - 2;
      double letters = Math.min(LETTERS_MM, LETTERS_MM * room / Paper.widthMm(text, LETTERS_MM));
      paper.text(x, y, letters, Anchor.START, text);
    }
  }
}
