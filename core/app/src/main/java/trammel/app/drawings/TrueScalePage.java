package trammel.app.drawings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import trammel.app.drawings.Paper.Anchor;
import trammel.assembly.view.SeenLine;
import trammel.planning.drawings.CheckSquare;
import trammel.trade.plates.Bounds;

/**
 * A sheet of paper with templates at true scale and a check square. What does not fit on one sheet
 * is tiled: the sheets overlap, and crosses of the same name come to lie on each other.
 *
 * @param widthMm width of the paper
 * @param heightMm height of the paper
 * @param heading what is on it
 * @param pieces what is drawn
 * @param remarks what is to be known of these pieces
 * @param square what is measured on the print
 */
public record TrueScalePage(
    double widthMm,
    double heightMm,
    String heading,
    List<Piece> pieces,
    List<String> remarks,
    CheckSquare square)
    implements Drawing {
  /** Room that is kept for the check square. */
  private static final double SQUARE_MM = 50.8;

  private static final double MARGIN_MM = 12;
  private static final double HEAD_MM = 10;
  private static final double LETTERS_MM = 3;
  private static final double SMALL_MM = 2.3;
  private static final double LINE_MM = 3.2;
  private static final double CROSS_MM = 4;

  /** A line along the edge of what is shown belongs to it. */
  private static final double ON_THE_EDGE_MM = 1e-6;

  /** A caption is at least this wide, so that it does not run on over many lines (mm). */
  private static final double CAPTION_MM = 42;

  /** Copies the lists. */
  public TrueScalePage {
    pieces = List.copyOf(pieces);
    remarks = List.copyOf(remarks);
  }

  /** Room for templates on a sheet this wide. */
  public static double roomAcrossMm(double widthMm) {
    return widthMm - 2 * MARGIN_MM;
  }

  /** Room for templates on a sheet this high, over the check square. */
  public static double roomUpMm(double heightMm) {
    return heightMm - 2 * MARGIN_MM - HEAD_MM - SQUARE_MM - 6;
  }

  /** Room that a template takes across a sheet with its caption. */
  public static double acrossMm(TrueScaleTemplate template) {
    return Math.max(template.bounds().widthMm(), CAPTION_MM);
  }

  /** Room that the caption takes under a template. */
  public static double captionMm(TrueScaleTemplate template) {
    return caption(template, acrossMm(template)).size() * LINE_MM + 2;
  }

  private static List<String> caption(TrueScaleTemplate template, double roomMm) {
    List<String> lines = new ArrayList<>(wrapped(template.name(), roomMm));
    lines.addAll(wrapped(template.note(), roomMm));
    return lines;
  }

  /** A text in lines that take no more than some room. */
  private static List<String> wrapped(String text, double roomMm) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && Paper.widthMm(longer, SMALL_MM) > roomMm) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    if (!line.isEmpty()) {
      lines.add(line);
    }
    return lines;
  }

  /**
   * A template, or the part of it that this sheet shows.
   *
   * @param template the whole template
   * @param shown what of the template this sheet shows
   * @param marks the crosses by which it is joined to other sheets
   * @param leftMm where its left edge comes to lie within the room
   * @param topMm where its upper edge comes to lie within the room
   */
  public record Piece(
      TrueScaleTemplate template,
      Bounds shown,
      List<Tiling.Mark> marks,
      double leftMm,
      double topMm) {
    /** Copies the list. */
    public Piece {
      marks = List.copyOf(marks);
    }

    /** A template that a sheet shows whole. */
    public static Piece whole(TrueScaleTemplate template, double leftMm, double topMm) {
      return new Piece(template, template.bounds(), List.of(), leftMm, topMm);
    }

    boolean isTile() {
      return !shown.equals(template.bounds());
    }
  }

  @Override
  public void drawOn(Paper paper) {
    double letters = Paper.fitting(heading, LETTERS_MM, roomAcrossMm(widthMm));
    paper.text(MARGIN_MM, MARGIN_MM + LETTERS_MM, letters, Anchor.START, heading);
    for (Piece piece : pieces) {
      draw(paper, piece);
    }
    double top = heightMm - MARGIN_MM - SQUARE_MM;
    paper.frame(MARGIN_MM, top, square.sideMm(), square.sideMm(), Pen.ACCENT);
    double y = top + LETTERS_MM;
    List<String> notes =
        List.of(
            "Print at 100 %, not fitted to the page.",
            "The square must measure " + square.words() + " both ways.",
            "If it does not, do not use this sheet.");
    for (String note : notes) {
      paper.text(MARGIN_MM + SQUARE_MM + 5, y, LETTERS_MM, Anchor.START, note);
      y += 2 * LETTERS_MM;
    }
    double room = roomAcrossMm(widthMm) - SQUARE_MM - 5;
    for (String remark : remarks) {
      for (String line : wrapped(remark, room)) {
        paper.text(MARGIN_MM + SQUARE_MM + 5, y, SMALL_MM, Anchor.START, line);
        y += LINE_MM;
      }
    }
  }

  private void draw(Paper paper, Piece piece) {
    Place place =
        new Place(MARGIN_MM + piece.leftMm(), MARGIN_MM + HEAD_MM + piece.topMm(), piece.shown());
    for (TrueScaleTemplate.Line line : piece.template().lines()) {
      place.draw(paper, line);
    }
    for (TrueScaleTemplate.Opening hole : piece.template().holes()) {
      if (isWhole(hole, piece.shown())) {
        hole.lines().forEach(line -> place.draw(paper, line));
      }
    }
    for (TrueScaleTemplate.Word word : piece.template().words()) {
      if (contains(piece.shown(), word.xMm(), word.yMm())) {
        paper.text(
            place.x(word.xMm()),
            place.y(word.yMm()) + SMALL_MM / 3,
            SMALL_MM,
            Anchor.MIDDLE,
            word.text());
      }
    }
    for (Tiling.Mark mark : piece.marks()) {
      cross(paper, place.x(mark.xMm()), place.y(mark.yMm()), mark.name());
    }
    if (!piece.isTile()) {
      double y = place.y(piece.shown().minYMm()) + SMALL_MM + 1;
      for (String line : caption(piece.template(), acrossMm(piece.template()))) {
        paper.text(place.left(), y, SMALL_MM, Anchor.START, line);
        y += LINE_MM;
      }
    }
  }

  private static void cross(Paper paper, double x, double y, String name) {
    paper.line(x - CROSS_MM, y, x + CROSS_MM, y, Pen.ACCENT);
    paper.line(x, y - CROSS_MM, x, y + CROSS_MM, Pen.ACCENT);
    paper.text(x + 1, y - 1, SMALL_MM, Anchor.START, name);
  }

  /** Brings what is shown of a template, whose y runs up, to its place on the paper. */
  private record Place(double left, double top, Bounds shown) {
    double x(double xMm) {
      return left + xMm - shown.minXMm();
    }

    double y(double yMm) {
      return top + shown.maxYMm() - yMm;
    }

    void draw(Paper paper, TrueScaleTemplate.Line line) {
      pieces(line, shown)
          .forEach(
              piece ->
                  paper.line(
                      x(piece.fromX()),
                      y(piece.fromY()),
                      x(piece.toX()),
                      y(piece.toY()),
                      line.pen()));
    }
  }

  /** What of a line lies within what is shown. */
  static Stream<SeenLine> pieces(TrueScaleTemplate.Line line, Bounds shown) {
    return IntStream.range(1, line.xs().length)
        .mapToObj(
            i ->
                Clip.within(
                    shown.minXMm() - ON_THE_EDGE_MM,
                    shown.minYMm() - ON_THE_EDGE_MM,
                    shown.maxXMm() + ON_THE_EDGE_MM,
                    shown.maxYMm() + ON_THE_EDGE_MM,
                    new SeenLine(
                        "", line.xs()[i - 1], line.ys()[i - 1], line.xs()[i], line.ys()[i], false)))
        .flatMap(Optional::stream);
  }

  /** A hole is drawn where all of it is shown: half a hole is bored in the wrong place. */
  static boolean isWhole(TrueScaleTemplate.Opening hole, Bounds shown) {
    return contains(shown, hole.bounds().minXMm(), hole.bounds().minYMm())
        && contains(shown, hole.bounds().maxXMm(), hole.bounds().maxYMm());
  }

  private static boolean contains(Bounds shown, double x, double y) {
    return x >= shown.minXMm() && x <= shown.maxXMm() && y >= shown.minYMm() && y <= shown.maxYMm();
  }
}
