package trammel.app.documents;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.drawings.Drawing;
import trammel.app.text.Stops;
import trammel.planning.catalog.Letterhead;

/** What a template is filled with: words, tables and drawings by name. */
final class DocumentModel {
  private final Map<String, Object> values = new LinkedHashMap<>();
  private final Map<String, Drawing> drawings = new LinkedHashMap<>();
  private final Map<String, String> labels = new LinkedHashMap<>();

  /** Puts a word, a list of words or a flag. */
  DocumentModel put(String name, Object value) {
    values.put(name, value);
    return this;
  }

  /** Puts a table, nothing if it has no rows. */
  DocumentModel put(String name, Grid grid) {
    values.put(name, grid.isEmpty() ? null : grid.model());
    return this;
  }

  /** Puts what the checks say stop to; it stands under the heading. */
  DocumentModel put(Stops stops) {
    values.put("hasStops", !stops.isEmpty());
    values.put("stopHeadline", Stops.HEADLINE);
    values.put("stops", texts(stops.sentences()));
    return this;
  }

  /** Puts what stands at the head of a paper that leaves the shop. */
  DocumentModel put(Letterhead letterhead) {
    Map<String, Object> head = new LinkedHashMap<>();
    head.put("name", letterhead.name());
    head.put("lines", texts(letterhead.lines()));
    head.put("logo", letterhead.logo().map(LogoPicture::dataAddress).orElse(""));
    values.put("letterhead", head);
    return this;
  }

  /**
   * Puts a drawing.
   *
   * @param label what it shows, in words
   */
  DocumentModel put(String name, Drawing drawing, String label) {
    values.put(name, figure(drawing, label));
    return this;
  }

  /**
   * A drawing within a list of a model.
   *
   * @param label what it shows, in words
   */
  Map<String, Object> figure(Drawing drawing, String label) {
    String id = "d" + drawings.size();
    drawings.put(id, drawing);
    labels.put(id, label);
    Map<String, Object> figure = new LinkedHashMap<>();
    figure.put("drawing", id);
    figure.put("width", Double.toString(drawing.widthMm()));
    figure.put("height", Double.toString(drawing.heightMm()));
    return figure;
  }

  /** Texts, each in an entry of its own. */
  static List<Map<String, Object>> texts(List<String> texts) {
    List<Map<String, Object>> list = new ArrayList<>(texts.size());
    for (String text : texts) {
      list.add(Map.of("text", text));
    }
    return list;
  }

  Map<String, Object> values() {
    return values;
  }

  Map<String, Drawing> drawings() {
    return drawings;
  }

  /** What a drawing shows, by the same names. */
  Map<String, String> labels() {
    return labels;
  }
}
