package trammel.app.drawings;

import java.util.List;
import java.util.function.Consumer;
import trammel.app.drawings.Paper.Anchor;
import trammel.reading.quantity.UnitSystem;

/**
 * A sheet of the shop drawings, lying: Letter where inches are read, A4 elsewhere, with frame,
 * title block and notes.
 *
 * @param units the reader's
 * @param block what the sheet says of itself
 * @param scale scale of its views
 * @param notes what is to be known to read it
 * @param body draws the rest, between {@link #LEFT_MM}, {@link #TOP_MM} and {@link #bottomMm}
 */
public record ShopSheet(
    UnitSystem units, TitleBlock block, String scale, List<String> notes, Consumer<Paper> body)
    implements Drawing {
  static final double EDGE_MM = 8;
  static final double LEFT_MM = 12;
  static final double TOP_MM = 12;
  private static final double LETTERS_MM = 2.3;
  private static final double NOTE_ROW_MM = 3;

  /** Scales that a shop's ruler reads (inches; ISO 5455 and between). */
  private static final List<Integer> US_SCALES = List.of(1, 2, 3, 4, 6, 8, 10, 12, 16, 24, 32, 48);

  private static final List<Integer> METRIC_SCALES = List.of(1, 2, 3, 4, 5, 8, 10, 15, 20, 25, 50);

  /** Copies the notes. */
  public ShopSheet {
    notes = List.copyOf(notes);
  }

  static boolean thirdAngle(UnitSystem units) {
    return units == UnitSystem.US;
  }

  static double widthMm(UnitSystem units) {
    return thirdAngle(units) ? 279.4 : 297;
  }

  static double heightMm(UnitSystem units) {
    return thirdAngle(units) ? 215.9 : 210;
  }

  /** Right end of the body (mm). */
  static double rightMm(UnitSystem units) {
    return widthMm(units) - LEFT_MM;
  }

  /** Lower end of the body (mm). */
  static double bottomMm(UnitSystem units) {
    return heightMm(units) - EDGE_MM - TitleBlock.HEIGHT_MM - 2;
  }

  /** The largest usual scale, one to so many, at which so much fits. */
  static int oneTo(UnitSystem units, double least) {
    return (thirdAngle(units) ? US_SCALES : METRIC_SCALES)
        .stream().filter(scale -> scale >= least).findFirst().orElse((int) Math.ceil(least));
  }

  @Override
  public double widthMm() {
    return widthMm(units);
  }

  @Override
  public double heightMm() {
    return heightMm(units);
  }

  @Override
  public void drawOn(Paper paper) {
    paper.frame(EDGE_MM, EDGE_MM, widthMm() - 2 * EDGE_MM, heightMm() - 2 * EDGE_MM, Pen.OUTLINE);
    double blockY = heightMm() - EDGE_MM - TitleBlock.HEIGHT_MM;
    block.drawOn(
        paper, widthMm() - EDGE_MM - TitleBlock.WIDTH_MM, blockY, scale, thirdAngle(units));
    double roomMm = widthMm() - 2 * EDGE_MM - TitleBlock.WIDTH_MM - 4;
    double y = blockY + 3;
    for (String note : notes) {
      for (String line : Paper.lines(note, LETTERS_MM, roomMm)) {
        paper.text(EDGE_MM + 2, y, LETTERS_MM, Anchor.START, line);
        y += NOTE_ROW_MM;
      }
    }
    body.accept(paper);
  }
}
