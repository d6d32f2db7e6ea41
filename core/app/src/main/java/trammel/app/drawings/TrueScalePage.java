package trammel.app.drawings;

import java.util.List;
import trammel.app.drawings.Paper.Anchor;
import trammel.trade.plates.Bounds;

/**
 * A sheet of paper with templates at true scale and a check square. What does not fit on one sheet
 * is tiled: the sheets overlap, and crosses of the same name come to lie on each other.
 *
 * @param widthMm width of the paper
 * @param heightMm height of the paper
 * @param heading what is on it
 * @param pieces what is drawn
 */
public record TrueScalePage(double widthMm, double heightMm, String heading, List<Piece> pieces)
    implements Drawing {
  /** Side of the check square: 2 in. */
  public static final double SQUARE_MM = 50.8;

  /** How far two sheets overlap. */
  public static final double OVERLAP_MM = 12;

  private static final double MARGIN_MM = 12;
  private static final double HEAD_MM = 10;
  private static final double LETTERS_MM = 3;
  private static final double SMALL_MM = 2.5;
  private static final double NAME_MM = 1.8;
  private static final double CROSS_MM = 4;

  /** Copies the list. */
  public TrueScalePage {
    pieces = List.copyOf(pieces);
  }

  /** Room for templates on a sheet this wide. */
  public static double roomAcrossMm(double widthMm) {
    return widthMm - 2 * MARGIN_MM;
  }

  /** Room for templates on a sheet this high, over the check square. */
  public static double roomUpMm(double heightMm) {
    return heightMm - 2 * MARGIN_MM - HEAD_MM - SQUARE_MM - 6;
  }

  /** Room that a template takes across a sheet, with its name in letters that can be read. */
  public static double acrossMm(TrueScaleTemplate template) {
    return Math.max(
        template.bounds().widthMm(), Math.min(90, Paper.widthMm(template.name(), NAME_MM)));
  }

  /**
   * A template, or the part of it that this sheet shows.
   *
   * @param template the whole template
   * @param shown what of the template this sheet shows
   * @param leftMm where its left edge comes to lie within the room
   * @param topMm where its upper edge comes to lie within the room
   */
  public record Piece(TrueScaleTemplate template, Bounds shown, double leftMm, double topMm) {
    /** Whether no line of the template comes to lie in what is shown. */
    public boolean isEmpty() {
      Clip clip = new Clip(shown);
      for (TrueScaleTemplate.Line line : template.lines()) {
        for (int i = 1; i < line.xs().length; i++) {
          if (clip.keep(line.xs()[i - 1], line.ys()[i - 1], line.xs()[i], line.ys()[i]).length
              > 0) {
            return false;
          }
        }
      }
      return true;
    }

    boolean isTile() {
      return shown.widthMm() < template.bounds().widthMm() - 1e-6
          || shown.heightMm() < template.bounds().heightMm() - 1e-6;
    }
  }

  @Override
  public void drawOn(Paper paper) {
    double letters =
        Math.min(
            LETTERS_MM, LETTERS_MM * roomAcrossMm(widthMm) / Paper.widthMm(heading, LETTERS_MM));
    paper.text(MARGIN_MM, MARGIN_MM + LETTERS_MM, letters, Anchor.START, heading);
    for (Piece piece : pieces) {
      draw(paper, piece);
    }
    double top = heightMm - MARGIN_MM - SQUARE_MM;
    paper.frame(MARGIN_MM, top, SQUARE_MM, SQUARE_MM, Pen.ACCENT);
    String[] notes = {
      "Print at 100 %, not fitted to the page.",
      "The square must measure 2 in (50.8 mm) both ways.",
      "If it does not, do not use this sheet.",
      "Crosses of the same name lie on each other where sheets join."
    };
    for (int i = 0; i < notes.length; i++) {
      paper.text(MARGIN_MM + SQUARE_MM + 5, top + 6 + 6 * i, LETTERS_MM, Anchor.START, notes[i]);
    }
  }

  private void draw(Paper paper, Piece piece) {
    double left = MARGIN_MM + piece.leftMm();
    double top = MARGIN_MM + HEAD_MM + piece.topMm();
    Clip clip = new Clip(piece.shown());
    for (TrueScaleTemplate.Line line : piece.template().lines()) {
      for (int i = 1; i < line.xs().length; i++) {
        double[] kept = clip.keep(line.xs()[i - 1], line.ys()[i - 1], line.xs()[i], line.ys()[i]);
        if (kept.length > 0) {
          paper.line(
              left + kept[0] - piece.shown().minXMm(),
              top + piece.shown().maxYMm() - kept[1],
              left + kept[2] - piece.shown().minXMm(),
              top + piece.shown().maxYMm() - kept[3],
              line.pen());
        }
      }
    }
    if (piece.isTile()) {
      crosses(paper, piece, left, top);
    }
    if (!piece.isTile()) {
      String name = piece.template().name();
      double room = acrossMm(piece.template());
      double letters = Math.min(SMALL_MM, SMALL_MM * room / Paper.widthMm(name, SMALL_MM));
      paper.text(left, top + piece.shown().heightMm() + SMALL_MM + 1, letters, Anchor.START, name);
    }
  }

  /** Crosses stand in the middle of each overlap, named by the corner of the tiling. */
  private void crosses(Paper paper, Piece piece, double left, double top) {
    for (TrueScaleTemplate.Mark mark : piece.template().marks()) {
      Bounds shown = piece.shown();
      double x = left + mark.xMm() - shown.minXMm();
      double y = top + shown.maxYMm() - mark.yMm();
      boolean inside =
          mark.xMm() >= shown.minXMm()
              && mark.xMm() <= shown.maxXMm()
              && mark.yMm() >= shown.minYMm()
              && mark.yMm() <= shown.maxYMm();
      if (inside) {
        paper.line(x - CROSS_MM, y, x + CROSS_MM, y, Pen.ACCENT);
        paper.line(x, y - CROSS_MM, x, y + CROSS_MM, Pen.ACCENT);
        paper.text(x + 1, y - 1, SMALL_MM, Anchor.START, mark.name());
      }
    }
  }

  /** Keeps of a line what lies within bounds (Liang and Barsky's way, from memory). */
  private record Clip(Bounds bounds) {
    double[] keep(double x1, double y1, double x2, double y2) {
      double[] p = {x1 - x2, x2 - x1, y1 - y2, y2 - y1};
      double[] q = {
        x1 - bounds.minXMm(), bounds.maxXMm() - x1, y1 - bounds.minYMm(), bounds.maxYMm() - y1
      };
      double from = 0;
      double to = 1;
      for (int i = 0; i < p.length; i++) {
        if (p[i] == 0) {
          if (q[i] < 0) {
            return new double[0];
          }
        } else if (p[i] < 0) {
          from = Math.max(from, q[i] / p[i]);
        } else {
          to = Math.min(to, q[i] / p[i]);
        }
      }
      return from > to
          ? new double[0]
          : new double[] {
            x1 + from * (x2 - x1), y1 + from * (y2 - y1), x1 + to * (x2 - x1), y1 + to * (y2 - y1)
          };
    }
  }
}
