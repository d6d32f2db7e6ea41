package trammel.app.drawings;

import java.util.List;
import trammel.app.drawings.Paper.Anchor;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Point2;

/**
 * Small pictures of plates side by side, each with its name and size.
 *
 * @param plates the plates, twelve at most
 */
public record PlateBoard(List<Entry> plates) implements Drawing {
  /** How many fit. */
  public static final int MOST = 12;

  private static final int COLUMNS = 3;
  private static final double WIDTH_MM = Paper.BODY_WIDTH_MM;
  private static final double CELL_HEIGHT_MM = 50;
  private static final double CAPTION_MM = 10;
  private static final double LETTERS_MM = 2.5;
  private static final double CHORD_MM = 0.3;

  /**
   * One plate.
   *
   * @param outline its outline
   * @param name its name, with how many there are
   * @param size its size and holes in words
   */
  public record Entry(Outline outline, String name, String size) {}

  /** Copies the list. */
  public PlateBoard {
    plates = List.copyOf(plates);
    if (plates.isEmpty() || plates.size() > MOST) {
      throw new IllegalArgumentException(
          "a board was given " + plates.size() + " plates; it takes 1 to " + MOST + ".");
    }
  }

  @Override
  public double widthMm() {
    return WIDTH_MM;
  }

  @Override
  public double heightMm() {
    return (plates.size() + COLUMNS - 1) / COLUMNS * CELL_HEIGHT_MM;
  }

  @Override
  public void drawOn(Paper paper) {
    double cellMm = WIDTH_MM / COLUMNS;
    for (int i = 0; i < plates.size(); i++) {
      draw(paper, plates.get(i), i % COLUMNS * cellMm, i / COLUMNS * CELL_HEIGHT_MM, cellMm);
    }
  }

  private static void draw(Paper paper, Entry entry, double x, double y, double cellMm) {
    Bounds bounds = entry.outline().bounds();
    double roomX = cellMm - 6;
    double roomY = CELL_HEIGHT_MM - CAPTION_MM - 5;
    double scale = Math.min(1, Math.min(roomX / bounds.widthMm(), roomY / bounds.heightMm()));
    double left = x + (cellMm - bounds.widthMm() * scale) / 2;
    double top = y + CAPTION_MM + (roomY - bounds.heightMm() * scale) / 2;
    Shift shift = new Shift(left, top, bounds, scale);
    shift.draw(paper, entry.outline());
    double letters = fitting(entry.name(), cellMm - 3);
    paper.text(x + cellMm / 2, y + 4, letters, Anchor.MIDDLE, entry.name());
    paper.text(
        x + cellMm / 2, y + 8, fitting(entry.size(), cellMm - 3), Anchor.MIDDLE, entry.size());
  }

  private static double fitting(String text, double roomMm) {
    return Math.min(LETTERS_MM, LETTERS_MM * roomMm / Paper.widthMm(text, LETTERS_MM));
  }

  /** Brings an outline, whose y runs up, to its place on the paper. */
  record Shift(double left, double top, Bounds bounds, double scale) {
    void draw(Paper paper, Outline outline) {
      area(paper, outline.outer(), "#f1f1f1");
      for (Loop hole : outline.holeLoops()) {
        area(paper, hole, "white");
      }
    }

    private void area(Paper paper, Loop loop, String fill) {
      List<Point2> points = loop.polygon(CHORD_MM);
      double[] xs = new double[points.size()];
      double[] ys = new double[points.size()];
      for (int i = 0; i < xs.length; i++) {
        xs[i] = left + (points.get(i).xMm() - bounds.minXMm()) * scale;
        ys[i] = top + (bounds.maxYMm() - points.get(i).yMm()) * scale;
      }
      paper.area(xs, ys, fill, Pen.OUTLINE);
    }
  }
}
