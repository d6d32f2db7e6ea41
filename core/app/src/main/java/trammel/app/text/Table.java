package trammel.app.text;

import java.util.ArrayList;
import java.util.List;

/** Rows of text in columns that line up. */
public final class Table {
  private static final String GAP = "  ";
  private static final String NOTE_INDENT = "      ";

  private final boolean[] rightAligned;
  private final List<String[]> rows = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  /**
   * @param alignment one letter a column: {@code l} for left, {@code r} for right
   */
  public Table(String alignment) {
    rightAligned = new boolean[alignment.length()];
    for (int i = 0; i < rightAligned.length; i++) {
      rightAligned[i] = alignment.charAt(i) == 'r';
    }
  }

  /** Adds a row. */
  public Table row(String... cells) {
    if (cells.length != rightAligned.length) {
      throw new IllegalArgumentException(
          cells.length + " cells in a table of " + rightAligned.length + " columns");
    }
    rows.add(cells);
    notes.add("");
    return this;
  }

  /** A remark under the last row, broken into lines and set in from it. */
  public Table note(String text) {
    notes.set(notes.size() - 1, text);
    return this;
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /** The rows, each indented and ended by a line feed. */
  public String text(String indent) {
    int[] widths = widths();
    StringBuilder text = new StringBuilder();
    for (int r = 0; r < rows.size(); r++) {
      String[] row = rows.get(r);
      StringBuilder line = new StringBuilder(indent);
      for (int i = 0; i < row.length; i++) {
        line.append(i == 0 ? "" : GAP);
        String padding = " ".repeat(widths[i] - row[i].length());
        line.append(rightAligned[i] ? padding + row[i] : row[i] + padding);
      }
      text.append(line.toString().stripTrailing()).append('\n');
      if (!notes.get(r).isEmpty()) {
        String in = indent + NOTE_INDENT;
        text.append(Paragraph.wrap(notes.get(r), in, in));
      }
    }
    return text.toString();
  }

  private int[] widths() {
    int[] widths = new int[rightAligned.length];
    for (String[] row : rows) {
      for (int i = 0; i < row.length; i++) {
        widths[i] = Math.max(widths[i], row[i].length());
      }
    }
    return widths;
  }
}
