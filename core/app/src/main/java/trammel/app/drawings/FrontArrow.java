package trammel.app.drawings;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import trammel.app.drawings.Paper.Anchor;

/** An arrow to the vehicle's front, which every view of it has on its left. */
final class FrontArrow {
  private static final double LETTERS_MM = 2.3;
  private static final double HEAD_MM = 3.5;
  private static final double TAIL_MM = 7;
  private static final double WIDTH_MM = 18.5;
  private static final double HALF_MM = 1.6;
  private static final double STEP_MM = 1.5;
  private static final String WORD = "FRONT";

  /** One line through its letters is as bad as so many behind its shaft. */
  private static final int THROUGH_LETTERS = 100;

  private FrontArrow() {}

  /**
   * Draws it in a view, as low and as far to the left as nothing lies under it. In a view that is
   * full it crosses the fewest lines, and no words; rather lines behind its shaft than one through
   * its letters.
   *
   * @param lines what else is drawn there, on the paper
   * @param words where words stand
   */
  static void drawOn(
      Paper paper, ViewWindow window, List<Line2D> lines, List<? extends Rectangle2D> words) {
    double left = window.paperX() + 1;
    double lowest = window.paperY() + window.heightMm() - 2 * HALF_MM;
    double rightmost = window.paperX() + window.widthMm() - WIDTH_MM;
    double bestX = left;
    double bestY = lowest;
    long fewest = Long.MAX_VALUE;
    for (double y = lowest; y > window.paperY() + HALF_MM && fewest > 0; y -= STEP_MM) {
      for (double x = left; x < rightmost && fewest > 0; x += STEP_MM) {
        Rectangle2D box = new Rectangle2D.Double(x - 0.5, y - HALF_MM, WIDTH_MM + 1, 2 * HALF_MM);
        if (words.stream().anyMatch(box::intersects)) {
          continue;
        }
        Rectangle2D letters =
            new Rectangle2D.Double(x + TAIL_MM, y - HALF_MM, WIDTH_MM - TAIL_MM, 2 * HALF_MM);
        long crossed =
            lines.stream().filter(box::intersectsLine).limit(fewest).count()
                + THROUGH_LETTERS * lines.stream().filter(letters::intersectsLine).count();
        if (crossed < fewest) {
          fewest = crossed;
          bestX = x;
          bestY = y;
        }
      }
    }
    draw(paper, bestX, bestY);
  }

  private static void draw(Paper paper, double x, double y) {
    paper.area(
        new double[] {x, x + HEAD_MM, x + HEAD_MM},
        new double[] {y, y - 1.2, y + 1.2},
        "black",
        Pen.FINE);
    paper.line(x + HEAD_MM, y, x + TAIL_MM, y, Pen.EXISTING);
    paper.text(x + TAIL_MM + 1, y + LETTERS_MM / 3, LETTERS_MM, Anchor.START, WORD);
  }
}
