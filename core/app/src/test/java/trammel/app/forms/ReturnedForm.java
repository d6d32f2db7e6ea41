package trammel.app.forms;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import trammel.app.files.CsvReader;

/**
 * A printed form as it comes back: cells are filled in, and whatever saved it has parted the cells
 * in its own way, moved lines and columns, taken lines out and added columns of notes. It writes
 * its file by itself and shares nothing with the code that reads it back.
 */
final class ReturnedForm {
  private static final String[] LINE_ENDS = {"\r\n", "\n", "\r"};
  private static final String[] BETWEEN = {",", ";", "\t"};
  private static final String[] NOTES = {
    "asked the customer first", "rust; see photo", "3, maybe 4", "he said \"no\"", "=1+2"
  };

  private final Random random;
  private final List<String> head;
  private final List<Map<String, String>> rows = new ArrayList<>();
  private final String between;
  private final Map<String, Integer> lines = new HashMap<>();

  /**
   * @param form the form as it is printed
   */
  ReturnedForm(String form, Random random) {
    this.random = random;
    List<CsvReader.Row> printed = CsvReader.rows(form);
    head = new ArrayList<>(printed.get(0).cells());
    for (CsvReader.Row row : printed.subList(1, printed.size())) {
      Map<String, String> cells = new HashMap<>();
      for (int i = 0; i < head.size(); i++) {
        cells.put(head.get(i), row.cell(i));
      }
      rows.add(cells);
    }
    between = BETWEEN[random.nextInt(BETWEEN.length)];
  }

  /** True where it comes from a place that writes decimals with a comma. */
  boolean decimalCommas() {
    return !between.equals(",");
  }

  /** The lines below the first, by the names of their columns. */
  List<Map<String, String>> rows() {
    return rows;
  }

  /** Takes a line out. */
  void takeOut(Map<String, String> row) {
    rows.remove(row);
  }

  /** Moves lines and columns about, and adds notes. */
  void shuffle() {
    if (random.nextBoolean()) {
      Collections.shuffle(rows, random);
    }
    if (random.nextInt(3) == 0) {
      Collections.shuffle(head, random);
    }
    if (random.nextInt(3) == 0) {
      head.add(random.nextInt(head.size() + 1), "notes of mine");
      for (Map<String, String> row : rows) {
        if (random.nextInt(4) == 0) {
          row.put("notes of mine", NOTES[random.nextInt(NOTES.length)]);
        }
      }
    }
  }

  /** Writes it as some program would. */
  Path write(Path file) throws IOException {
    String end = LINE_ENDS[random.nextInt(LINE_ENDS.length)];
    StringBuilder text = new StringBuilder();
    int line = 1;
    if (random.nextInt(6) == 0) {
      text.append("sep=").append(between).append(end);
      line++;
    }
    boolean quoteAll = random.nextInt(3) == 0;
    text.append(row(head, quoteAll)).append(end);
    line++;
    for (Map<String, String> row : rows) {
      if (random.nextInt(12) == 0) {
        text.append(between.repeat(random.nextInt(head.size()))).append(end);
        line++;
      }
      List<String> cells = head.stream().map(name -> row.getOrDefault(name, "")).toList();
      lines.put(key(row), line);
      text.append(row(cells, quoteAll)).append(end);
      line++;
    }
    if (random.nextInt(8) == 0) {
      text.setLength(text.length() - end.length());
    }
    return Files.write(file, encoded(text.toString()));
  }

  private byte[] encoded(String text) {
    int way = random.nextInt(6);
    Charset signs = way == 0 ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_8;
    return (way < 3 ? "\ufeff" + text : text).getBytes(signs);
  }

  /** The line of the file on which a row was written. */
  int line(Map<String, String> row) {
    return lines.get(key(row));
  }

  private static String key(Map<String, String> row) {
    return row.toString();
  }

  private String row(List<String> cells, boolean quoteAll) {
    List<String> written = new ArrayList<>();
    for (String cell : cells) {
      boolean must =
          cell.contains(between) || cell.contains("\n") || cell.contains("\"") || quoteAll;
      String blank =
          random.nextInt(6) == 0 ? new String[] {" ", "  ", "\u00a0"}[random.nextInt(3)] : "";
      written.add(must ? "\"" + cell.replace("\"", "\"\"") + "\"" : blank + cell + blank);
    }
    return String.join(between, written);
  }
}
