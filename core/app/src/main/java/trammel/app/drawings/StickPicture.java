package trammel.app.drawings;

import java.util.List;
import trammel.app.drawings.Paper.Anchor;
import trammel.cutting.bars.CutBar;
import trammel.cutting.bars.PlacedPiece;
import trammel.reading.quantity.QuantityPrinter;

/**
 * Sticks with the lengths that are sawn from them.
 *
 * @param bars the sticks
 * @param printer prints values in the reader's units
 */
public record StickPicture(List<CutBar> bars, QuantityPrinter printer) implements Drawing {
  private static final double WIDTH_MM = Paper.BODY_WIDTH_MM;
  private static final double ROW_MM = 15;
  private static final double BAR_MM = 6;
  private static final double LETTERS_MM = 2.4;

  /** Copies the list. */
  public StickPicture {
    bars = List.copyOf(bars);
  }

  @Override
  public double widthMm() {
    return WIDTH_MM;
  }

  @Override
  public double heightMm() {
    return bars.size() * ROW_MM;
  }

  @Override
  public void drawOn(Paper paper) {
    double longestMm = 1;
    for (CutBar bar : bars) {
      longestMm = Math.max(longestMm, bar.stock().lengthMm());
    }
    double scale = (WIDTH_MM - 1) / longestMm;
    for (int i = 0; i < bars.size(); i++) {
      draw(paper, bars.get(i), i * ROW_MM, scale);
    }
  }

  private void draw(Paper paper, CutBar bar, double y, double scale) {
    double lengthMm = bar.stock().lengthMm();
    paper.text(
        0.3, y + LETTERS_MM + 0.5, LETTERS_MM, Anchor.START, "stick " + printer.length(lengthMm));
    paper.text(
        lengthMm * scale,
        y + LETTERS_MM + 0.5,
        LETTERS_MM,
        Anchor.END,
        "left " + printer.length(bar.offcutMm()));
    paper.frame(0.3, y + 4.5, lengthMm * scale, BAR_MM, Pen.OUTLINE);
    for (PlacedPiece piece : bar.pieces()) {
      double from = 0.3 + piece.atMm() * scale;
      double width = piece.lengthMm() * scale;
      double[] xs = {from, from + width, from + width, from};
      double[] ys = {y + 4.5, y + 4.5, y + 4.5 + BAR_MM, y + 4.5 + BAR_MM};
      paper.area(xs, ys, "#e4e4e4", Pen.OUTLINE);
      String text = printer.length(piece.lengthMm());
      double letters =
          Math.min(LETTERS_MM, LETTERS_MM * width / (1 + Paper.widthMm(text, LETTERS_MM)));
      paper.text(
          from + width / 2, y + 4.5 + BAR_MM / 2 + letters / 3, letters, Anchor.MIDDLE, text);
    }
  }
}
