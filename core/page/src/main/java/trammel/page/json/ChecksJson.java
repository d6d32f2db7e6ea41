package trammel.page.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.json.CheckJson;
import trammel.app.text.Amounts;
import trammel.app.text.ChangeText;
import trammel.engine.checks.Change;
import trammel.engine.checks.CheckResult;
import trammel.planning.draft.Draft;

/** Checks as {@code check --json} has them, each with the words in which a screen shows it. */
public final class ChecksJson {
  private ChecksJson() {}

  /** One entry a check, worst first. */
  public static List<Object> of(Draft draft, List<CheckResult> results, Amounts amounts) {
    List<Object> plain = CheckJson.of(draft, results);
    List<Object> entries = new ArrayList<>(plain.size());
    for (int i = 0; i < results.size(); i++) {
      Map<String, Object> entry = new LinkedHashMap<>();
      ((Map<?, ?>) plain.get(i)).forEach((key, value) -> entry.put((String) key, value));
      if (results.get(i) instanceof CheckResult.Judged judged) {
        entry.put("value_text", amounts.value(judged.measure(), judged.value()));
        entry.put("good_text", amounts.good(judged.measure(), judged.limit()));
        entry.put("stop_text", amounts.stop(judged.measure(), judged.limit()));
        judged.change().ifPresent(change -> addWords(entry, change, amounts));
      }
      entries.add(entry);
    }
    return entries;
  }

  private static void addWords(Map<String, Object> entry, Change change, Amounts amounts) {
    entry.put("change_text", new ChangeText(amounts.printer()).words(change));
    entry.put("upsets_text", ChangeText.upsets(change));
  }
}
