package trammel.app.files;

/**
 * Texts in cells of a table that is read back. A text that a spreadsheet would take for a formula
 * is written with an apostrophe in front, which is taken off again here; a text that begins with an
 * apostrophe of its own gets a second one, so that every text comes back as it was.
 */
public final class CsvText {
  private static final String FORMULA_SIGNS = "=+-@\t\r";
  private static final char MARK = '\'';

  private CsvText() {}

  /** A text as {@link Csv} is to be given it. */
  public static String safe(String text) {
    return !text.isEmpty() && text.charAt(0) == MARK ? MARK + text : text;
  }

  /** What a cell means. */
  public static String meant(String cell) {
    boolean marked =
        cell.length() > 1
            && cell.charAt(0) == MARK
            && (cell.charAt(1) == MARK || FORMULA_SIGNS.indexOf(cell.charAt(1)) >= 0);
    return marked ? cell.substring(1) : cell;
  }
}
