package trammel.app.documents;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A table of a document. A column is declared by a letter and its share of the width: {@code l} to
 * the left, {@code r} to the right (numbers), {@code b} to the right and big.
 */
final class Grid {
  private final List<Map<String, Object>> columns = new ArrayList<>();
  private final List<Body> bodies = new ArrayList<>();
  private final String kinds;

  /** A group of at most this many rows stays on one page, */
  private static final int KEPT = 14;

  /** if its remarks make it no longer than this many lines, of so many letters about. */
  private static final int KEPT_LINES = 30;

  private static final int LETTERS = 55;

  private record Body(boolean titled, List<Map<String, Object>> rows) {}

  /**
   * @param kinds a letter a column
   * @param shares width of each column, percent
   * @param heads what stands over each column; may be empty
   */
  Grid(String kinds, int[] shares, String... heads) {
    this.kinds = kinds;
    for (int i = 0; i < shares.length; i++) {
      Map<String, Object> column = new LinkedHashMap<>();
      column.put("share", shares[i]);
      column.put("head", i < heads.length ? heads[i] : "");
      column.put("kind", kind(i));
      columns.add(column);
    }
  }

  private String kind(int column) {
    return Character.toString(kinds.charAt(column));
  }

  /** Adds a row. */
  Grid row(String... cells) {
    add(line("", 0, "", cells));
    return this;
  }

  /** Adds a row with a remark in small letters under one of its cells; none if it is empty. */
  Grid noted(int column, String note, String... cells) {
    add(line("", column, note, cells));
    return this;
  }

  private void add(Map<String, Object> row) {
    if (bodies.isEmpty()) {
      bodies.add(new Body(false, new ArrayList<>()));
    }
    bodies.get(bodies.size() - 1).rows().add(row);
  }

  /** Adds a row that sums up what is over it. */
  Grid total(String... cells) {
    add(line("total", 0, "", cells));
    return this;
  }

  /** Adds a heading across the table. */
  Grid group(String title) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("group", title);
    row.put("line", false);
    row.put("columns", columns.size());
    List<Map<String, Object>> rows = new ArrayList<>();
    rows.add(row);
    bodies.add(new Body(true, rows));
    return this;
  }

  private Map<String, Object> line(String style, int noted, String note, String... cells) {
    List<Map<String, Object>> line = new ArrayList<>();
    for (int i = 0; i < cells.length; i++) {
      Map<String, Object> cell = new LinkedHashMap<>();
      // A percentage is not broken before its sign.
      cell.put("text", cells[i].replace(" %", "\u00a0%"));
      cell.put("kind", kind(i));
      cell.put("head", columns.get(i).get("head"));
      cell.put("remark", i == noted ? note : "");
      line.add(cell);
    }
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("group", "");
    row.put("style", style);
    row.put("line", true);
    row.put("cells", line);
    return row;
  }

  /** Whether it has no rows. */
  boolean isEmpty() {
    return bodies.isEmpty();
  }

  private static boolean isShort(Body body) {
    return body.rows().size() <= KEPT
        && body.rows().stream().mapToInt(Grid::lines).sum() <= KEPT_LINES;
  }

  private static int lines(Map<String, Object> row) {
    int lines = 1;
    if (row.get("cells") instanceof List<?> cells) {
      for (Object cell : cells) {
        lines += ((Map<?, ?>) cell).get("remark").toString().length() / LETTERS;
      }
    }
    return lines;
  }

  /** The table as the template takes it. */
  Map<String, Object> model() {
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("columns", columns);
    List<Map<String, Object>> parts = new ArrayList<>();
    for (Body body : bodies) {
      String style = body.titled() && isShort(body) ? "keep" : "";
      parts.add(Map.of("style", style, "rows", body.rows()));
    }
    model.put("bodies", parts);
    boolean headed = false;
    for (Map<String, Object> column : columns) {
      headed |= !column.get("head").equals("");
    }
    model.put("headed", headed);
    model.put("form", headed ? "headed" : "plain");
    return model;
  }
}
