package trammel.app.json;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.book.CourseJson;
import trammel.app.ledger.TableChange;
import trammel.ledger.Tacking;
import trammel.planning.learning.ClosedJob;
import trammel.planning.rack.Rack;

/** The shop's ledger for machines. */
public final class LedgerJson {
  private LedgerJson() {}

  /** What is in a ledger. */
  public static Map<String, Object> contents(
      Path file,
      int version,
      List<ClosedJob> jobs,
      Rack rack,
      int movements,
      int priceChanges,
      List<Tacking> tackings) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("ledger", file.toString());
    json.put("version", version);
    List<Object> closed = new ArrayList<>();
    for (ClosedJob job : jobs) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("job", job.number());
      row.put("closed", job.closed().toString());
      row.put("quoted_hours", job.quotedHours());
      job.wholeHours().ifPresent(hours -> row.put("used_hours", hours));
      closed.add(row);
    }
    json.put("closed_jobs", closed);
    json.put("sticks", rows(rack.sticks(), LedgerJson::stick));
    json.put("drops", rows(rack.drops(), LedgerJson::drop));
    json.put("bins", rows(rack.bins(), LedgerJson::bin));
    json.put("movements", movements);
    json.put("price_changes", priceChanges);
    List<Object> tacked = new ArrayList<>();
    tackings.forEach(tacking -> tacked.add(CourseJson.tacking(tacking)));
    json.put("tackings", tacked);
    return json;
  }

  private static <T> List<Object> rows(
      List<T> all, java.util.function.Function<T, Map<String, Object>> row) {
    List<Object> rows = new ArrayList<>();
    all.forEach(one -> rows.add(row.apply(one)));
    return rows;
  }

  private static Map<String, Object> stick(Rack.Stick stick) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("name", stick.name());
    row.put("item", stick.barKey());
    row.put("length_mm", stick.lengthMm());
    return row;
  }

  private static Map<String, Object> drop(Rack.Drop drop) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("name", drop.name());
    row.put("item", drop.plateKey());
    row.put("length_mm", drop.lengthMm());
    row.put("width_mm", drop.widthMm());
    return row;
  }

  private static Map<String, Object> bin(Rack.Bin bin) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("item", bin.key());
    row.put("length_mm", bin.lengthMm());
    row.put("quantity", bin.quantity());
    return row;
  }

  /** What a check found. */
  public static Map<String, Object> findings(Path file, List<String> findings) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("ledger", file.toString());
    json.put("sound", findings.isEmpty());
    json.put("findings", findings);
    return json;
  }

  /** What a table would change, or has changed. */
  public static Map<String, Object> change(TableChange change, boolean done) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("table", change.table());
    json.put("changes", change.lines());
    json.put("applied", done);
    return json;
  }

  /** A file that was written, and one that was kept; either may be missing. */
  public static Map<String, Object> files(Map<String, Path> files) {
    Map<String, Object> json = new LinkedHashMap<>();
    files.forEach((what, file) -> json.put(what, file.toString()));
    return json;
  }
}
