package trammel.app.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import trammel.app.text.CheckText;
import trammel.engine.checks.Change;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Detail;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Verdict;
import trammel.planning.draft.Draft;
import trammel.planning.draft.FieldChange;
import trammel.planning.draft.FieldChanges;

/** The results of checks for machines. */
public final class CheckJson {
  private CheckJson() {}

  /** One entry a check, worst first. */
  public static List<Object> of(Draft draft, List<CheckResult> results) {
    List<Object> entries = new ArrayList<>(results.size());
    for (CheckResult result : results) {
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("check", result.id());
      entry.put("title", result.title());
      if (result instanceof CheckResult.Judged judged) {
        addJudged(entry, judged, draft);
      } else if (result instanceof CheckResult.NotJudged open) {
        entry.put("verdict", "not judged");
        entry.put("reason", open.reason().in(draft.printer()));
      }
      entries.add(entry);
    }
    return entries;
  }

  private static void addJudged(Map<String, Object> entry, CheckResult.Judged judged, Draft draft) {
    entry.put("verdict", CheckText.word(judged.verdict()).toLowerCase(Locale.ROOT));
    entry.put("value", judged.value());
    entry.put("unit", unit(judged.measure()));
    entry.put("where", judged.where().in(draft.printer()));
    if (!judged.details().isEmpty()) {
      entry.put("details", judged.details().stream().map(CheckJson::detail).toList());
    }
    Limit limit = judged.limit();
    put(entry, "good_min", limit.goodMin());
    put(entry, "good_max", limit.goodMax());
    put(entry, "stop_min", limit.stopMin());
    put(entry, "stop_max", limit.stopMax());
    entry.put("source", limit.source());
    judged.change().ifPresent(change -> addChange(entry, change, draft));
    if (judged.change().isEmpty()
        && judged.verdict() != Verdict.GOOD
        && !judged.advice().isEmpty()) {
      entry.put("advice", judged.advice());
    }
  }

  private static Map<String, Object> detail(Detail detail) {
    Map<String, Object> entry = new LinkedHashMap<>();
    entry.put("what", detail.words());
    entry.put("value", detail.value());
    entry.put("unit", unit(detail.measure()));
    return entry;
  }

  private static void addChange(Map<String, Object> entry, Change change, Draft draft) {
    entry.put("change", change(change, draft));
    entry.put("makes_worse", change.upsets());
    entry.put("brings_stop", change.bringsStop());
  }

  private static List<Object> change(Change change, Draft draft) {
    List<Object> fields = new ArrayList<>();
    for (FieldChange field : new FieldChanges(draft).of(change)) {
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("field", field.path());
      entry.put("value", field.value());
      fields.add(entry);
    }
    return fields;
  }

  /** The unit in which values of a kind are given. */
  static String unit(Measure measure) {
    return switch (measure) {
      case LENGTH -> "mm";
      case ANGLE -> "rad";
      case FREQUENCY -> "Hz";
      case ANGULAR_ACCELERATION -> "rad/s2";
      case SHARE, FACTOR, COUNT -> "1";
      case PRESSURE, STRESS -> "MPa";
      case FORCE -> "N";
      case TORQUE, ENERGY -> "Nmm";
      case RATE -> "N/mm";
      case MASS -> "kg";
      case SPEED -> "m/s";
      case ROTATION -> "rpm";
    };
  }

  private static void put(Map<String, Object> entry, String key, double limit) {
    if (!Double.isInfinite(limit)) {
      entry.put(key, limit);
    }
  }
}
