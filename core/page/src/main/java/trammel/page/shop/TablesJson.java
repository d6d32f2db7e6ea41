package trammel.page.shop;

import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import trammel.app.prices.PriceSheet;
import trammel.page.json.FieldsJson;
import trammel.page.json.ProblemsJson;
import trammel.planning.catalog.Catalog;
import trammel.planning.learning.LearnedHours;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldKind;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.EmptyNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TreeEdit;
import trammel.trade.labour.Operation;

/** The sections of a catalog as tables of cells. */
final class TablesJson {
  /** The sections that are shown, each with the name of its table. */
  private static final Map<String, String> SHOWN = new LinkedHashMap<>();

  static {
    SHOWN.put("shop", "Rates and terms");
    SHOWN.put("extras", "Extras");
    SHOWN.put("suppliers", "Suppliers");
    SHOWN.put("operations", "Hours");
    SHOWN.put("limits", "Limits");
    SHOWN.put("welding", "Welding");
    SHOWN.put("cutting", "Cutting");
  }

  private final WholeCatalog whole;
  private final OwnCatalog own;
  private final Optional<LearnedHours> learned;

  TablesJson(WholeCatalog whole, OwnCatalog own, Optional<LearnedHours> learned) {
    this.whole = whole;
    this.own = own;
    this.learned = learned;
  }

  /** Whether the page has a table of a section. */
  static boolean isShown(String section) {
    return SHOWN.containsKey(section);
  }

  /** All tables. */
  List<Object> tables() {
    List<Object> tables = new ArrayList<>();
    SHOWN.forEach((key, title) -> tables.add(table(key, title)));
    return tables;
  }

  private Map<String, Object> table(String key, String title) {
    Field<?> section = Cells.section(key).orElseThrow();
    boolean single = section.kind() == FieldKind.SECTION;
    Map<String, Object> table = new LinkedHashMap<>();
    table.put("key", key);
    table.put("title", title);
    table.put("help", section.help());
    List<Object> rows = new ArrayList<>();
    List<Object> adds = new ArrayList<>();
    if (single) {
      table.put("columns", List.of(Map.of("title", "value")));
      lines(section, key, rows, adds);
    } else {
      table.put("columns", columns(section, key));
      entries(section, key, rows);
      if (!key.equals("limits")) {
        adds.add(add(key, section.help(), Optional.empty(), section));
      }
    }
    table.put("rows", rows);
    table.put("adds", adds);
    table.put("problems", ProblemsJson.of(whole.problems()));
    return table;
  }

  private static Map<String, Object> add(
      String path, String title, Optional<Integer> next, Field<?> group) {
    Map<String, Object> add = new LinkedHashMap<>();
    add.put("path", path);
    add.put("title", title);
    next.ifPresent(place -> add.put("place", place));
    add.put("fields", FieldsJson.of(group.children(), UnitSystem.US));
    return add;
  }

  // A section that is one entry: a line for each of its keys

  private void lines(Field<?> group, String path, List<Object> rows, List<Object> adds) {
    for (Field<?> field : group.children()) {
      String at = path + "." + field.key();
      if (field.kind() == FieldKind.SECTION) {
        lines(field, at, rows, adds);
      } else if (field.kind() == FieldKind.SECTION_LIST) {
        int count = entriesAt(at);
        for (int i = 0; i < count; i++) {
          String entry = at + "[" + i + "]";
          for (Field<?> inner : field.children()) {
            rows.add(line(inner, entry + "." + inner.key(), (i + 1) + ": " + inner.help(), entry));
          }
        }
        adds.add(add(at, field.help(), Optional.of(count), field));
      } else {
        rows.add(line(field, at, field.help(), ""));
      }
    }
  }

  private int entriesAt(String path) {
    return find(path).orElse(null) instanceof ListNode list ? list.entries().size() : 0;
  }

  private Map<String, Object> line(Field<?> field, String path, String title, String entry) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("id", path);
    row.put("title", title);
    row.put("help", field.allowed(UnitSystem.US));
    if (!entry.isEmpty()) {
      row.put("out", entry);
    }
    row.put("cells", List.of(cell(field, path)));
    return row;
  }

  // A section of entries: a line for each, a column for each of their keys

  private static List<Field<?>> flat(Field<?> section) {
    return section.children().stream()
        .filter(
            field -> field.kind() != FieldKind.SECTION_LIST && field.kind() != FieldKind.SECTION)
        .<Field<?>>map(field -> field)
        .toList();
  }

  private List<Object> columns(Field<?> section, String key) {
    List<Object> columns = new ArrayList<>();
    for (Field<?> field : flat(section)) {
      Map<String, Object> column = new LinkedHashMap<>();
      column.put("title", field.key().replace('_', ' '));
      column.put("help", field.help() + ": " + field.allowed(UnitSystem.US));
      columns.add(column);
    }
    if (key.equals("operations")) {
      Map<String, Object> column = new LinkedHashMap<>();
      column.put("title", "as learned");
      column.put("help", "hours of one as the shop's closed jobs tell them, on average");
      columns.add(column);
    }
    return columns;
  }

  private void entries(Field<?> section, String key, List<Object> rows) {
    ObjectNode group =
        whole
            .root()
            .findObject(key)
            .orElseGet(() -> ObjectNode.empty(new Location(key, 0, 0, key)));
    for (ObjectNode.Member member : group.members()) {
      String entry = WholeCatalog.path(key, member.key());
      List<Object> cells = new ArrayList<>();
      for (Field<?> field : flat(section)) {
        cells.add(cell(field, entry + "." + field.key()));
      }
      if (key.equals("operations")) {
        cells.add(Map.of("value", learned(member.key()), "fixed", true));
      }
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("id", entry);
      row.put("title", member.key());
      if (own.holding(entry).isPresent()) {
        row.put("out", entry);
      }
      row.put("cells", cells);
      rows.add(row);
    }
  }

  private String learned(String key) {
    Optional<Operation> operation =
        whole.catalog().map(Catalog::operations).map(operations -> operations.get(key));
    int jobs = learned.map(hours -> hours.jobs(key)).orElse(0);
    if (operation.isEmpty() || jobs == 0) {
      return "";
    }
    double mean = learned.get().of(operation.get()).hoursPerUnit().mean();
    return String.format(Locale.ROOT, "%.2f h of %d %s", mean, jobs, jobs == 1 ? "job" : "jobs");
  }

  // Cells

  private Optional<DocumentNode> find(String path) {
    return new TreeEdit(new Location("catalog", 0, 0, path))
        .find(whole.root())
        .filter(node -> !(node instanceof EmptyNode));
  }

  private Map<String, Object> cell(Field<?> field, String path) {
    Map<String, Object> cell = new LinkedHashMap<>();
    cell.put("path", path);
    cell.put("value", Cells.text(find(path)));
    cell.put("own", own.holding(path).isPresent());
    field
        .defaultText(UnitSystem.US)
        .filter(text -> field.kind() != FieldKind.CHOICES)
        .ifPresent(text -> cell.put("default", text));
    if (field.kind() == FieldKind.CHOICE) {
      cell.put("choices", field.choices());
    }
    return cell;
  }

  // Prices

  /** Prices as a table of one column that is filled in. */
  static Map<String, Object> prices(List<PriceSheet.Line> lines, Currency currency) {
    Map<String, Object> table = new LinkedHashMap<>();
    table.put("key", PriceTable.PATH);
    table.put("title", "Prices");
    table.put("help", "what the shop pays, in " + currency.getCurrencyCode());
    table.put(
        "columns",
        List.of(
            Map.of("title", "price"),
            Map.of("title", "of"),
            Map.of("title", "supplier"),
            Map.of("title", "since"),
            Map.of("title", "from")));
    List<Object> rows = new ArrayList<>();
    for (PriceSheet.Line line : lines) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("id", PriceTable.path(line));
      row.put("title", line.title());
      row.put(
          "cells",
          List.of(
              Map.of("path", PriceTable.path(line), "value", line.price().toPlainString()),
              fixed(line.unit()),
              fixed(line.supplier()),
              fixed(line.pricedOn().map(Object::toString).orElse("")),
              fixed(line.source())));
      rows.add(row);
    }
    table.put("rows", rows);
    table.put("adds", List.of());
    table.put("problems", List.of());
    return table;
  }

  private static Map<String, Object> fixed(String text) {
    return Map.of("value", text, "fixed", true);
  }
}
