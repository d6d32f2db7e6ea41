package trammel.app.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import trammel.app.text.CheckText;
import trammel.engine.uncertainty.CheckChance;
import trammel.engine.uncertainty.FigureShare;
import trammel.engine.uncertainty.UncertaintyResult;

/** The chance of each check for machines. */
public final class UncertaintyJson {
  private UncertaintyJson() {}

  /** Samples, seed and one entry a check, the likeliest to stop first. */
  public static Map<String, Object> of(UncertaintyResult result) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("samples", result.samples());
    json.put("seed", result.seed());
    json.put("impossible", result.impossible());
    List<Object> checks = new ArrayList<>(result.checks().size());
    for (CheckChance chance : result.checks()) {
      checks.add(check(chance));
    }
    json.put("checks", checks);
    return json;
  }

  private static Map<String, Object> check(CheckChance chance) {
    Map<String, Object> entry = new LinkedHashMap<>();
    entry.put("check", chance.id());
    entry.put("title", chance.title());
    entry.put("verdict", CheckText.word(chance.verdict()).toLowerCase(Locale.ROOT));
    entry.put("value", chance.value());
    entry.put("standard_deviation", chance.standardDeviation());
    entry.put("unit", CheckJson.unit(chance.measure()));
    entry.put("chance_not_good", chance.notGoodShare());
    entry.put("chance_stop", chance.stopShare());
    List<Object> figures = new ArrayList<>(chance.figures().size());
    for (FigureShare share : chance.figures()) {
      Map<String, Object> figure = new LinkedHashMap<>();
      figure.put("figure", share.figure().name());
      figure.put("origin", share.figure().origin().name().toLowerCase(Locale.ROOT));
      figure.put("how", share.figure().how());
      figure.put("share", share.share());
      figures.add(figure);
    }
    entry.put("figures", figures);
    return entry;
  }
}
