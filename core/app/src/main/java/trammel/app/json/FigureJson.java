package trammel.app.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.planning.figures.Figure;
import trammel.planning.figures.FigureAnswer;
import trammel.planning.figures.FigureOutput;
import trammel.reading.fields.Field;
import trammel.reading.quantity.UnitSystem;

/** Bench figures for machines. */
public final class FigureJson {
  private FigureJson() {}

  /** All figures by name. */
  public static Map<String, Object> list(List<Figure> figures) {
    List<Object> entries = new ArrayList<>(figures.size());
    for (Figure figure : figures) {
      Map<String, Object> entry = heading(figure);
      entry.put("subject", figure.subject());
      entries.add(entry);
    }
    return Map.of("figures", entries);
  }

  /** What goes into a figure and what comes out. */
  public static Map<String, Object> inputs(Figure figure, UnitSystem units) {
    Map<String, Object> json = heading(figure);
    List<Object> inputs = new ArrayList<>();
    for (Field<?> input : figure.inputs()) {
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("key", input.key());
      entry.put("what", input.help());
      entry.put("allowed", input.allowed(units));
      entry.put("unit", input.unit(units));
      entry.put("required", input.isRequired());
      entry.put("default", Figure.standard(input, units).orElse(null));
      inputs.add(entry);
    }
    json.put("inputs", inputs);
    List<Object> results = new ArrayList<>();
    for (FigureOutput output : figure.outputs()) {
      results.add(result(output, units));
    }
    json.put("results", results);
    addOrigin(json, figure);
    json.put("example", figure.example());
    return json;
  }

  /** A figure worked out: every result with its value and its unit. */
  public static Map<String, Object> answers(
      Figure figure, Map<String, String> given, List<FigureAnswer> answers, UnitSystem units) {
    Map<String, Object> json = heading(figure);
    json.put("units", units.word());
    json.put("given", given);
    List<Object> results = new ArrayList<>();
    for (FigureAnswer answer : answers) {
      Map<String, Object> entry = result(answer.output(), units);
      entry.put("value", answer.value(units));
      results.add(entry);
    }
    json.put("results", results);
    addOrigin(json, figure);
    return json;
  }

  private static Map<String, Object> heading(Figure figure) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("figure", figure.name());
    json.put("title", figure.title());
    return json;
  }

  private static Map<String, Object> result(FigureOutput output, UnitSystem units) {
    Map<String, Object> entry = new LinkedHashMap<>();
    entry.put("key", output.key());
    entry.put("title", output.title());
    entry.put("unit", output.unit().symbol(units));
    return entry;
  }

  private static void addOrigin(Map<String, Object> json, Figure figure) {
    json.put("formula", figure.formula());
    json.put("source", figure.source());
  }
}
