package trammel.app.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import trammel.engine.checks.Verdict;
import trammel.engine.quantity.ReaderUnits;
import trammel.planning.arrange.ArrangedLayout;
import trammel.planning.arrange.Arrangement;
import trammel.planning.arrange.Conflict;
import trammel.planning.arrange.LayoutChange;
import trammel.planning.arrange.OptionChanges;
import trammel.planning.estimate.Estimate;

/** What a search for layouts found, for machines. */
public final class ArrangeJson {
  private ArrangeJson() {}

  /** The layouts, the best first, and why none passes where none does. */
  public static Map<String, Object> of(String job, Arrangement found, ReaderUnits units) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("job", job);
    json.put("passes", found.passes());
    json.put("tried", found.tried());
    json.put("cut_short", found.cutShort());
    json.put("layouts", found.layouts().stream().map(ArrangeJson::layout).toList());
    found.conflict().ifPresent(conflict -> json.put("conflict", conflict(conflict, units)));
    json.put("remarks", found.remarks());
    return json;
  }

  /** Changes of options that make checks good, by the check. */
  public static Map<String, Object> of(OptionChanges.Found found) {
    Map<String, Object> byCheck = new TreeMap<>();
    found
        .byCheck()
        .forEach(
            (check, together) -> {
              List<Object> rows = new ArrayList<>();
              for (LayoutChange change : together) {
                Map<String, Object> row = new LinkedHashMap<>();
                row.put("field", change.path());
                row.put("after", change.after());
                rows.add(row);
              }
              byCheck.put(check, rows);
            });
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("tried", found.tried());
    json.put("by_check", byCheck);
    return json;
  }

  private static Map<String, Object> layout(ArrangedLayout layout) {
    Estimate estimate = layout.estimate();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", layout.kind());
    json.put("passes", layout.passes());
    json.put("subtotal", estimate.price().subtotal().amount());
    json.put("total", estimate.price().total().amount());
    json.put("mean_h", estimate.hours().meanHours());
    json.put("steel_kg", estimate.materials().steelMassKg());
    json.put("stop", layout.count(Verdict.STOP));
    json.put("look_again", layout.count(Verdict.LOOK_AGAIN));
    json.put("no_stop_share", layout.noStopShare());
    json.put("changes", changes(layout.changes()));
    json.put("checks", CheckJson.of(estimate.draft(), layout.checks()));
    return json;
  }

  private static List<Object> changes(List<LayoutChange> changes) {
    List<Object> rows = new ArrayList<>();
    for (LayoutChange change : changes) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("field", change.path());
      change.before().ifPresent(before -> row.put("before", before));
      row.put("after", change.after());
      row.put("reason", change.reason());
      rows.add(row);
    }
    return rows;
  }

  private static Map<String, Object> conflict(Conflict conflict, ReaderUnits units) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("remaining", conflict.remaining().stream().map(one -> one.in(units)).toList());
    json.put("ways", conflict.ways().stream().map(way -> changes(way.relaxed())).toList());
    return json;
  }
}
