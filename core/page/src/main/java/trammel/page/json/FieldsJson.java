package trammel.page.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import trammel.planning.catalog.Catalog;
import trammel.planning.draft.Extensions;
import trammel.planning.extension.Extension;
import trammel.reading.fields.Field;
import trammel.reading.quantity.UnitSystem;

/** The fields of a job file as data, so that a form is made from the same declarations. */
public final class FieldsJson {
  private FieldsJson() {}

  /** Fields with what may stand in them, groups with their fields. */
  public static List<Object> of(List<Field<?>> fields, UnitSystem units) {
    List<Object> rows = new ArrayList<>(fields.size());
    for (Field<?> field : fields) {
      rows.add(of(field, units));
    }
    return rows;
  }

  private static Map<String, Object> of(Field<?> field, UnitSystem units) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("key", field.key());
    row.put("help", field.help());
    row.put("kind", field.kind().name().toLowerCase(Locale.ROOT));
    row.put("required", field.isRequired());
    field.datum().ifPresent(datum -> row.put("datum", datum));
    if (field.children().isEmpty()) {
      row.put("allowed", field.allowed(units));
      row.put("example", field.example(units));
      row.put("unit", field.unit(units));
    } else {
      row.put("fields", of(field.children(), units));
    }
    field.defaultText(units).ifPresent(text -> row.put("default", text));
    if (!field.choices().isEmpty()) {
      row.put("choices", field.choices());
    }
    return row;
  }

  /** What is installed, with its options, as {@code layouts --json} names it. */
  public static Map<String, Object> layouts(
      Extensions extensions, Catalog catalog, List<String> leftOut, UnitSystem units) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("linkages", all(extensions.linkages(), catalog, units));
    json.put("springs", all(extensions.springs(), catalog, units));
    json.put("additions", all(extensions.additions(), catalog, units));
    json.put("left_out", leftOut);
    return json;
  }

  private static List<Object> all(
      List<? extends Extension> extensions, Catalog catalog, UnitSystem units) {
    List<Object> rows = new ArrayList<>();
    for (Extension one : extensions) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("id", one.id());
      row.put("title", one.title());
      row.put("summary", one.summary());
      row.put("options", of(one.options(catalog), units));
      rows.add(row);
    }
    return rows;
  }
}
