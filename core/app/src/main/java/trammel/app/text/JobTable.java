package trammel.app.text;

import java.util.List;

/** The table over several jobs on a screen. */
public final class JobTable {
  private JobTable() {}

  /** Heads, a row a job, and the totals under them if there are any. */
  public static String text(List<String> heads, List<List<String>> rows, List<String> totals) {
    Table table = new Table("l" + "r".repeat(heads.size() - 2) + "l");
    table.row(heads.toArray(String[]::new));
    for (List<String> row : rows) {
      table.row(row.toArray(String[]::new));
    }
    if (!totals.isEmpty()) {
      table.row(totals.toArray(String[]::new));
    }
    return "ALL JOBS\n" + table.text("  ");
  }
}
