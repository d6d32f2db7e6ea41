package trammel.app.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import trammel.app.commandline.CommandFailure;

/** Reads comma-separated values, quoted cells and cells with line breaks included (RFC 4180). */
public final class CsvReader {
  private final String text;
  private int at;
  private int line = 1;

  private CsvReader(String text) {
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
   * All rows of a file that are not blank.
   *
   * @throws CommandFailure if it cannot be read, or a quoted cell does not end
   */
  public static List<Row> rows(Path file) {
    try {
      return rows(Files.readString(file, StandardCharsets.UTF_8));
    } catch (IOException refused) {
      throw CommandFailure.couldNotRead(file, refused);
    } catch (IllegalArgumentException broken) {
      throw CommandFailure.badInput(file + ", " + broken.getMessage());
    }
  }

  /**
   * All rows of a text that are not blank.
   *
   * @throws IllegalArgumentException if a quoted cell does not end; the message names its line
   */
  public static List<Row> rows(String text) {
    return new CsvReader(text).read();
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
      cells.add(text.startsWith("\"", at) ? quoted(start) : plain());
    } while (skip(','));
    skip('\r');
    if (skip('\n')) {
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
    while (at < text.length() && ",\r\n".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    return text.substring(from, at).strip();
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
        plain();
        return cell.toString().strip();
      } else {
        cell.append('"');
      }
    }
    throw new IllegalArgumentException(
        "line " + start + ": a quotation mark is opened and never closed. Close it.");
  }
}
