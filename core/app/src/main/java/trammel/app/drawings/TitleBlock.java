package trammel.app.drawings;

import java.util.List;
import trammel.app.drawings.Paper.Anchor;

/**
 * The block in the lower right corner that says what a sheet is of (ISO 7200, ASME Y14.1).
 *
 * @param shop whose drawing it is
 * @param job number of the job
 * @param vehicle what it is built on
 * @param title what the sheet shows
 * @param date day of the job
 * @param units what lengths are in
 * @param sheet which sheet of the set it is, 1 for the first
 * @param sheets how many there are
 */
public record TitleBlock(
    String shop,
    String job,
    String vehicle,
    String title,
    String date,
    String units,
    int sheet,
    int sheets) {
  static final double WIDTH_MM = 144;
  static final double HEIGHT_MM = 19;
  private static final double LABEL_MM = 2.2;
  private static final double TEXT_MM = 2.8;
  private static final double SMALL_MM = 2.3;
  private static final double PAD_MM = 1.2;

  /** One box of the block: how wide and high, its label and what stands in it. */
  private record Cell(double x, double y, double width, double height, String label, String text) {}

  /** The same of another sheet. */
  TitleBlock of(String otherTitle, int number, int count) {
    return new TitleBlock(shop, job, vehicle, otherTitle, date, units, number, count);
  }

  /** Draws it with its upper left corner at a point. */
  void drawOn(Paper paper, double x, double y, String scale, boolean thirdAngle) {
    double row = HEIGHT_MM / 2;
    List<Cell> cells =
        List.of(
            new Cell(0, 0, 68, row, "shop", shop),
            new Cell(68, 0, 24, row, "job", job),
            new Cell(92, 0, 26, row, "date", date),
            new Cell(118, 0, 26, row, "revision", ""),
            new Cell(0, row, 68, row, title, vehicle),
            new Cell(68, row, 22, row, "scale", scale),
            new Cell(90, row, 22, row, "lengths in", units),
            new Cell(112, row, 16, row, "sheet", sheet + " of " + sheets),
            new Cell(128, row, 16, row, "projection", ""));
    for (Cell cell : cells) {
      paper.frame(x + cell.x, y + cell.y, cell.width, cell.height, Pen.FRAME);
      double left = x + cell.x + PAD_MM;
      double roomMm = cell.width - 2 * PAD_MM;
      paper.text(left, y + cell.y + 3, LABEL_MM, Anchor.START, cell.label);
      text(paper, cell.text, left, y + cell.y, roomMm);
    }
    symbol(paper, x + 136, y + row + 6.4, thirdAngle);
  }

  /** In one line, as large as it fits; a long text in two, only a longer one cut short. */
  private static void text(Paper paper, String text, double x, double y, double roomMm) {
    double sizeMm = Paper.fitting(text, TEXT_MM, roomMm);
    if (sizeMm >= SMALL_MM) {
      paper.text(x, y + 7.6, sizeMm, Anchor.START, text);
      return;
    }
    List<String> lines = Paper.lines(text, SMALL_MM, roomMm);
    String rest = String.join(" ", lines.subList(1, lines.size()));
    paper.text(x, y + 5.8, SMALL_MM, Anchor.START, lines.get(0));
    paper.text(x, y + 8.5, SMALL_MM, Anchor.START, Paper.cut(rest, SMALL_MM, roomMm));
  }

  /**
   * The symbol of the projection (ISO 5456-2, ASME Y14.3): a cone cut off, seen from its side and
   * from an end. In third angle the end that is seen stands on its own side.
   */
  private static void symbol(Paper paper, double x, double y, boolean thirdAngle) {
    double large = 2.2;
    double small = 1.1;
    double circlesX = thirdAngle ? x - 3.6 : x + 3.6;
    double coneX = thirdAngle ? x + 3.6 : x - 3.6;
    paper.disc(circlesX, y, large, "none", Pen.EXISTING);
    paper.disc(circlesX, y, small, "none", Pen.EXISTING);
    double leftHalf = small;
    double rightHalf = large;
    double[] xs = {coneX - large, coneX + large, coneX + large, coneX - large};
    double[] ys = {y - leftHalf, y - rightHalf, y + rightHalf, y + leftHalf};
    paper.area(xs, ys, "none", Pen.EXISTING);
    paper.line(x - 7, y, x + 7, y, Pen.FINE);
  }
}
