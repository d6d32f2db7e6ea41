package trammel.app.drawings;

import java.util.ArrayList;
import java.util.List;
import trammel.app.drawings.Paper.Anchor;

/** A table on a drawing; what is too long for its column goes on in the next line. */
final class SheetTable {
  private static final double LETTERS_MM = 2.3;
  private static final double LINE_MM = 2.9;
  private static final double PAD_MM = 0.9;
  private static final double SIDE_MM = 1;

  private final String title;
  private final List<Column> columns;
  private final List<List<List<String>>> rows = new ArrayList<>();
  private final List<List<String>> head = new ArrayList<>();

  /**
   * A column.
   *
   * @param head its heading
   * @param widthMm its width (mm)
   * @param number true for numbers, which end at its right edge
   */
  record Column(String head, double widthMm, boolean number) {
    static Column words(String head, double widthMm) {
      return new Column(head, widthMm, false);
    }

    static Column number(String head, double widthMm) {
      return new Column(head, widthMm, true);
    }
  }

  SheetTable(String title, List<Column> columns) {
    this.title = title;
    this.columns = List.copyOf(columns);
    columns.forEach(column -> head.add(lines(column.head(), column)));
  }

  private static List<String> lines(String text, Column column) {
    return Paper.lines(text, LETTERS_MM, column.widthMm() - 2 * SIDE_MM);
  }

  void row(String... cells) {
    List<List<String>> row = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      row.add(column.number() ? List.of(cells[i]) : lines(cells[i], column));
    }
    rows.add(row);
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  double widthMm() {
    return columns.stream().mapToDouble(Column::widthMm).sum();
  }

  private static double heightMm(List<List<String>> row) {
    return row.stream().mapToInt(List::size).max().orElse(1) * LINE_MM + PAD_MM;
  }

  /** Height with all its rows (mm). */
  double heightMm() {
    return heightMm(0, rows.size());
  }

  /** Height of some of its rows with the head (mm). */
  double heightMm(int first, int next) {
    return headMm() + rows.subList(first, next).stream().mapToDouble(SheetTable::heightMm).sum();
  }

  /** The first row, from one on, that no longer fits into so much height. */
  int fits(int first, double roomMm) {
    int next = first;
    double heightMm = headMm();
    while (next < rows.size() && heightMm + heightMm(rows.get(next)) <= roomMm + 1e-9) {
      heightMm += heightMm(rows.get(next++));
    }
    return next;
  }

  private double headMm() {
    return LINE_MM + PAD_MM + heightMm(head);
  }

  /**
   * Draws rows from one on, as many as there is room for.
   *
   * @param first the first row drawn
   * @param roomMm how high it may be
   */
  void drawOn(Paper paper, double x, double y, int first, double roomMm) {
    double lineY = y + LINE_MM;
    paper.text(x, lineY, LETTERS_MM + 0.3, Anchor.START, title);
    lineY += PAD_MM;
    lineY = draw(paper, head, x, lineY);
    paper.line(x, lineY, x + widthMm(), lineY, Pen.FRAME);
    int next = fits(first, roomMm);
    for (List<List<String>> row : rows.subList(first, next)) {
      lineY = draw(paper, row, x, lineY);
      paper.line(x, lineY, x + widthMm(), lineY, Pen.GRID);
    }
  }

  /** Draws all of it. */
  void drawOn(Paper paper, double x, double y) {
    drawOn(paper, x, y, 0, Double.MAX_VALUE);
  }

  int size() {
    return rows.size();
  }

  private double draw(Paper paper, List<List<String>> row, double x, double y) {
    double left = x;
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      double lineY = y;
      for (String line : row.get(i)) {
        lineY += LINE_MM;
        if (!line.isEmpty()) {
          double at = column.number() ? left + column.widthMm() - SIDE_MM : left + SIDE_MM;
          paper.text(at, lineY, LETTERS_MM, column.number() ? Anchor.END : Anchor.START, line);
        }
      }
      left += column.widthMm();
    }
    return y + heightMm(row);
  }
}
