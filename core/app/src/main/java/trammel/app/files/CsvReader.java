package trammel.app.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;
import trammel.reading.tree.Location;
import trammel.reading.tree.PlainText;
import trammel.reading.tree.Problems;

/**
 * Reads a table as any spreadsheet saves it: cells parted by comma, semicolon or tab, quoted cells
 * and cells with line breaks included (RFC 4180), in UTF-8, UTF-16 or Latin-1. Lines end as on any
 * system; blanks about a cell, those without a width too, are no part of it.
 */
public final class CsvReader {
  /** A file that is no table may have one in every cell. */
  private static final int MOST_TROUBLES = 10;

  /** Blanks that are not white space to the language: no-break spaces, marks without a width. */
  private static final String MORE_BLANKS = "\u00a0\u2007\u202f\u200b\ufeff";

  private final String text;
  private final char between;
  private int at;
  private int line = 1;

  private CsvReader(String text, char between) {
    this.between = between;
    this.text = text.startsWith("\ufeff") ? text.substring(1) : text;
  }

  /**
   * A row.
   *
   * @param line the line of the file on which it starts, from 1
   * @param cells its cells, without the blanks about them
   * @param decimalCommas true where the cells are parted in the way of places that write decimals
   *     with a comma
   */
  public record Row(int line, List<String> cells, boolean decimalCommas) {
    public Row {
      cells = List.copyOf(cells);
    }

    /** A cell; empty beyond the end of the row. */
    public String cell(int index) {
      return index < cells.size() ? cells.get(index) : "";
    }

    /** A cell that holds a plain number, its decimals behind a point. */
    public String number(int index) {
      String cell = cell(index);
      return decimalCommas && cell.matches("[-+]?\\d*,\\d+") ? cell.replace(',', '.') : cell;
    }

    private Row onOneLine() {
      return new Row(line, cells.stream().map(CsvReader::onOneLine).toList(), decimalCommas);
    }
  }

  /**
   * All rows of a file that are not blank, parted as its first line is. A line break in a cell is
   * read as a blank.
   *
   * @throws CommandFailure if it cannot be read, or a quoted cell does not end where it should
   * @throws trammel.reading.tree.BadInputException if a cell has a character that does not show
   */
  public static List<Row> rows(Path file) {
    return rows(file, TableText.of(file));
  }

  /**
   * All rows of a text that are not blank, as of a file with this text.
   *
   * @param file the name under which it is told what is wrong
   * @throws CommandFailure if a quoted cell does not end where it should
   * @throws trammel.reading.tree.BadInputException if a cell has a character that does not show
   */
  public static List<Row> rows(Path file, String text) {
    try {
      List<Row> rows = withoutSeparatorLine(onOneLine(rows(text, TableText.between(text))));
      refuseOutOfPlace(file, rows);
      return rows;
    } catch (IllegalArgumentException broken) {
      throw CommandFailure.badInput(file + ", " + broken.getMessage());
    }
  }

  /** The rows without one that only says what stands between the cells. */
  static List<Row> withoutSeparatorLine(List<Row> all) {
    boolean told = !all.isEmpty() && all.get(0).cell(0).startsWith(TableText.SEPARATOR_LINE);
    return told ? all.subList(1, all.size()) : all;
  }

  /** The rows with a blank in place of each line break that stands in a cell. */
  static List<Row> onOneLine(List<Row> rows) {
    return rows.stream().map(Row::onOneLine).toList();
  }

  private static String onOneLine(String cell) {
    return cell.indexOf('\n') < 0 && cell.indexOf('\r') < 0
        ? cell
        : cell.replaceAll("\\s*[\r\n]+\\s*", " ");
  }

  /** Refuses cells that are not one line of characters that show. */
  static void refuseOutOfPlace(Path file, List<Row> rows) {
    Problems problems = new Problems();
    for (Row row : rows) {
      for (int i = 0; i < row.cells().size(); i++) {
        Optional<String> trouble = PlainText.troubleOfLine(row.cell(i));
        if (trouble.isPresent() && problems.errors().size() < MOST_TROUBLES) {
          String heading = row == rows.get(0) ? "" : rows.get(0).cell(i);
          problems.error(
              new Location(
                  file.toString(),
                  row.line(),
                  i + 1,
                  heading.isEmpty() ? "column " + (i + 1) : heading),
              trouble.get(),
              "one line of letters, digits and signs that show",
              "Take it out of the cell.");
        }
      }
    }
    problems.throwIfErrors();
  }

  /**
   * All rows of a text that are not blank.
   *
   * @throws IllegalArgumentException if a quoted cell does not end where it should; the message
   *     names its line
   */
  public static List<Row> rows(String text) {
    return rows(text, ',');
  }

  /**
   * All rows of a text that are not blank.
   *
   * @param between what stands between two cells
   * @throws IllegalArgumentException if a quoted cell does not end where it should; the message
   *     names its line
   */
  public static List<Row> rows(String text, char between) {
    return new CsvReader(text, between).read();
  }

  private List<Row> read() {
    List<Row> rows = new ArrayList<>();
    while (at < text.length()) {
      Row row = row();
      if (!row.cells.stream().allMatch(String::isEmpty)) {
        rows.add(row);
      }
    }
    return rows;
  }

  private Row row() {
    int start = line;
    List<String> cells = new ArrayList<>();
    do {
      cells.add(isQuoted() ? quoted(start) : plain());
    } while (skip(between));
    boolean ended = skip('\r');
    if (skip('\n') || ended) {
      line++;
    }
    return new Row(start, cells, between != ',');
  }

  private boolean skip(char expected) {
    if (at < text.length() && text.charAt(at) == expected) {
      at++;
      return true;
    }
    return false;
  }

  private String plain() {
    int from = at;
    while (at < text.length() && !isEnd(text.charAt(at))) {
      at++;
    }
    return stripped(text.substring(from, at));
  }

  private boolean isEnd(char c) {
    return c == between || c == '\r' || c == '\n';
  }

  /** Goes to the quotation mark that the next cell begins with, if it does. */
  private boolean isQuoted() {
    int mark = at;
    while (mark < text.length() && text.charAt(mark) == ' ') {
      mark++;
    }
    boolean quoted = mark < text.length() && text.charAt(mark) == '"';
    at = quoted ? mark : at;
    return quoted;
  }

  private static String stripped(String cell) {
    int from = 0;
    int to = cell.length();
    while (from < to && isBlank(cell.charAt(from))) {
      from++;
    }
    while (to > from && isBlank(cell.charAt(to - 1))) {
      to--;
    }
    return cell.substring(from, to);
  }

  private static boolean isBlank(char c) {
    return Character.isWhitespace(c) || MORE_BLANKS.indexOf(c) >= 0;
  }

  private String quoted(int start) {
    StringBuilder cell = new StringBuilder();
    at++;
    while (at < text.length()) {
      char c = text.charAt(at++);
      if (c == '\n') {
        line++;
      }
      if (c != '"') {
        cell.append(c);
      } else if (!skip('"')) {
        if (!plain().isEmpty()) {
          throw new IllegalArgumentException(
              "line "
                  + start
                  + ": something stands behind a closing quotation mark. Write a quotation mark"
                  + " within a quoted cell twice.");
        }
        return stripped(cell.toString());
      } else {
        cell.append('"');
      }
    }
    throw new IllegalArgumentException(
        "line " + start + ": a quotation mark is opened and never closed. Close it.");
  }
}
