package trammel.app.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;
import trammel.reading.tree.Location;
import trammel.reading.tree.PlainText;
import trammel.reading.tree.Problems;

/**
 * Reads comma-separated values, quoted cells and cells with line breaks included (RFC 4180). Lines
 * end as on any system; blanks about a cell, those without a width too, are no part of it.
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
   */
  public record Row(int line, List<String> cells) {
    public Row {
      cells = List.copyOf(cells);
    }

    /** A cell; empty beyond the end of the row. */
    public String cell(int index) {
      return index < cells.size() ? cells.get(index) : "";
    }
  }

  /**
   * All rows of a file that are not blank. Every cell of a form is one line.
   *
   * @throws CommandFailure if it cannot be read, or a quoted cell does not end where it should
   * @throws trammel.reading.tree.BadInputException if a cell has a line break or a character that
   *     does not show
   */
  public static List<Row> rows(Path file) {
    try {
      List<Row> rows = rows(Files.readString(file, StandardCharsets.UTF_8));
      refuseOutOfPlace(file, rows);
      return rows;
    } catch (IOException refused) {
      throw CommandFailure.couldNotRead(file, refused);
    } catch (IllegalArgumentException broken) {
      throw CommandFailure.badInput(file + ", " + broken.getMessage());
    }
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
    return new Row(start, cells);
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
