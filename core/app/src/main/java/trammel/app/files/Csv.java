package trammel.app.files;

/**
 * A table as comma-separated values. Source: RFC 4180. A text that a spreadsheet would take for a
 * formula gets an apostrophe in front, so that opening the file runs nothing.
 */
public final class Csv {
  private static final String LINE_END = "\r\n";
  private static final String FORMULA_SIGNS = "=+-@\t\r";

  private final StringBuilder out = new StringBuilder();

  /**
   * Adds a row.
   *
   * @param cells texts, and numbers which are written as they are
   */
  public Csv row(Object... cells) {
    for (int i = 0; i < cells.length; i++) {
      if (i > 0) {
        out.append(',');
      }
      out.append(cells[i] instanceof Number ? cells[i].toString() : cell(cells[i].toString()));
    }
    out.append(LINE_END);
    return this;
  }

  /** The whole table. */
  public String text() {
    return out.toString();
  }

  static String cell(String text) {
    String harmless =
        !text.isEmpty() && FORMULA_SIGNS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    boolean plain = true;
    for (int i = 0; i < harmless.length() && plain; i++) {
      char c = harmless.charAt(i);
      plain = c != ',' && c != '"' && c != '\n' && c != '\r';
    }
    return plain ? harmless : '"' + harmless.replace("\"", "\"\"") + '"';
  }
}
