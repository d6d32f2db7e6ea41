package trammel.app.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.planning.estimate.Explanation;

/** How figures of a price came about, for machines. */
public final class WhyJson {
  private WhyJson() {}

  /** One entry a figure. */
  public static Map<String, Object> of(String job, List<Explanation> explanations) {
    List<Object> figures = new ArrayList<>();
    for (Explanation one : explanations) {
      List<Object> steps = new ArrayList<>();
      for (Explanation.Step step : one.steps()) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("step", step.text());
        if (!step.figure().isEmpty()) {
          entry.put("figure", step.figure());
        }
        steps.add(entry);
      }
      Map<String, Object> figure = new LinkedHashMap<>();
      figure.put("line", one.name());
      figure.put("title", one.title());
      figure.put("amount", one.amount().amount());
      figure.put("currency", one.amount().currency().getCurrencyCode());
      figure.put("steps", steps);
      figures.add(figure);
    }
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("job", job);
    json.put("why", figures);
    return json;
  }
}
