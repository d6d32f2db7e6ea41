package trammel.page.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import trammel.reading.tree.Problem;

/** What is wrong with fields, each by its path. */
public final class ProblemsJson {
  private ProblemsJson() {}

  /** One entry a problem. */
  public static List<Object> of(List<Problem> problems) {
    return problems.stream().<Object>map(ProblemsJson::of).toList();
  }

  private static Map<String, Object> of(Problem problem) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("field", problem.field());
    row.put("line", problem.line());
    row.put("given", problem.given());
    row.put("allowed", problem.allowed());
    row.put("remedy", problem.remedy());
    row.put("severity", problem.severity().name().toLowerCase(Locale.ROOT));
    return row;
  }
}
