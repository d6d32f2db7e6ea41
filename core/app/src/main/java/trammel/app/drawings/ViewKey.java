package trammel.app.drawings;

import java.util.List;
import trammel.app.drawings.Paper.Anchor;

/**
 * What the numbers and letters in the views of a job stand for.
 *
 * @param entries each number or letter with its words
 */
public record ViewKey(List<String> entries) implements Drawing {
  private static final double LETTERS_MM = 2.5;
  private static final double ROW_MM = 3.6;
  private static final double LEFT_MM = 3;
  private static final double INDENT_MM = 4;
  private static final double AIR_MM = 3;

  /** Copies the list. */
  public ViewKey {
    entries = List.copyOf(entries);
  }

  private static List<String> lines(String entry) {
    return Paper.lines(entry, LETTERS_MM, Paper.BODY_WIDTH_MM - LEFT_MM - INDENT_MM);
  }

  @Override
  public double widthMm() {
    return Paper.BODY_WIDTH_MM;
  }

  @Override
  public double heightMm() {
    return entries.stream().mapToInt(entry -> lines(entry).size()).sum() * ROW_MM + AIR_MM;
  }

  @Override
  public void drawOn(Paper paper) {
    drawOn(paper, 0);
  }

  private void drawOn(Paper paper, double topMm) {
    double y = topMm + ROW_MM;
    for (String entry : entries) {
      double x = LEFT_MM;
      for (String line : lines(entry)) {
        paper.text(x, y, LETTERS_MM, Anchor.START, line);
        x = LEFT_MM + INDENT_MM;
        y += ROW_MM;
      }
    }
  }

  /** A view with this key under it, for a file of its own. */
  public Drawing under(LayoutView view) {
    return new Keyed(view, this);
  }

  private record Keyed(LayoutView view, ViewKey key) implements Drawing {
    @Override
    public double widthMm() {
      return view.widthMm();
    }

    @Override
    public double heightMm() {
      return view.heightMm() + key.heightMm();
    }

    @Override
    public void drawOn(Paper paper) {
      view.drawOn(paper);
      key.drawOn(paper, view.heightMm());
    }
  }
}
