package trammel.page.shop;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import trammel.app.desk.Workbench;
import trammel.app.rack.RackFile;
import trammel.page.bench.Bench;
import trammel.page.folder.Change;
import trammel.page.folder.ChangeBook;
import trammel.page.folder.Edit;
import trammel.page.folder.JobEdits;
import trammel.page.folder.Refused;
import trammel.planning.learning.LearnedHours;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TreeEdit;

/**
 * What the shop works with, as tables: each cell is known by a path. Changes are noted, so that a
 * device can take back its own.
 */
public final class ShopTables {
  private final Path book;
  private final CatalogTables catalog;
  private final StockTable stock;
  private final PriceTable prices;
  private final Bench bench;

  /**
   * @param jobs the folder of the jobs
   */
  public ShopTables(Path jobs, Bench bench) {
    this.bench = bench;
    book = jobs.resolve("catalog");
    catalog = new CatalogTables(book, bench);
    stock = new StockTable(bench);
    prices = new PriceTable(book, bench);
  }

  /** Terms, suppliers, extras, operations with their learned hours, limits and practice. */
  public synchronized Map<String, Object> catalog(String device) {
    Map<String, Object> json = steps(device);
    json.put("tables", new TablesJson(catalog.now(), catalog.own(), learned()).tables());
    return json;
  }

  private Optional<LearnedHours> learned() {
    return bench.with(Workbench::learnedAnew);
  }

  /** Prices, line by line. */
  public synchronized Map<String, Object> prices(String device) {
    Map<String, Object> json = steps(device);
    json.put("tables", List.of(TablesJson.prices(prices.lines(), bench.catalog().currency())));
    return json;
  }

  /** What is on the rack. */
  public synchronized Map<String, Object> stock(String device) {
    Map<String, Object> json = steps(device);
    json.put("columns", RackFile.COLUMNS);
    json.put("lines", stock.lines());
    json.put("bars", List.copyOf(bench.catalog().bars().keySet()));
    json.put("plates", List.copyOf(bench.catalog().plates().keySet()));
    return json;
  }

  private Map<String, Object> steps(String device) {
    bench.refresh();
    ChangeBook changes = ChangeBook.of(book);
    Map<String, Object> json = new LinkedHashMap<>();
    changes.toUndo(device).ifPresent(change -> json.put("undo", change.label()));
    changes.toRedo(device).ifPresent(change -> json.put("redo", change.label()));
    return json;
  }

  /**
   * Makes a change of one or many cells, all of them or none.
   *
   * @param json its {@code edits}, {@code label} and {@code group}
   * @return cells that were not as they were seen: nothing was changed then
   */
  public synchronized List<Map<String, Object>> make(String device, ObjectNode json) {
    List<Edit> edits = JobEdits.edits(json);
    if (edits.isEmpty()) {
      return List.of();
    }
    bench.refresh();
    ShopTable table = table(edits);
    List<Map<String, Object>> conflicts = new ArrayList<>();
    for (ShopTable.Conflict one : table.conflicts(edits)) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("path", one.path());
      row.put("now", one.now());
      conflicts.add(row);
    }
    if (conflicts.isEmpty()) {
      List<Edit> noted = table.make(edits);
      if (!noted.isEmpty()) {
        ChangeBook.of(book).add(Change.of(device, json, noted));
      }
    }
    return conflicts;
  }

  private ShopTable table(List<Edit> edits) {
    List<String> kinds = edits.stream().map(edit -> kind(edit.path())).distinct().toList();
    if (kinds.size() > 1) {
      throw new Refused(400, "Prices, stock and the other tables are changed one by one.");
    }
    return switch (kinds.get(0)) {
      case PriceTable.PATH -> prices;
      case StockTable.PATH -> stock;
      default -> catalog;
    };
  }

  private static String kind(String path) {
    String first = TreeEdit.steps(new Location("change", 0, 0, path)).get(0);
    return first.equals(PriceTable.PATH) || first.equals(StockTable.PATH) ? first : "catalog";
  }

  /** Takes the last change of a device back, as far as nobody has changed the same since. */
  public synchronized void undo(String device) {
    ChangeBook changes = ChangeBook.of(book);
    changes
        .toUndo(device)
        .ifPresent(
            change -> {
              List<Edit> back =
                  new ArrayList<>(change.edits().stream().map(Edit::reversed).toList());
              Collections.reverse(back);
              table(back).repeat(back);
              changes.mark(change, true);
            });
  }

  /** Makes the change again that a device took back last. */
  public synchronized void redo(String device) {
    ChangeBook changes = ChangeBook.of(book);
    changes
        .toRedo(device)
        .ifPresent(
            change -> {
              table(change.edits()).repeat(change.edits());
              changes.mark(change, false);
            });
  }

  /**
   * Looks at a supplier's list that was pasted, or takes it in.
   *
   * @param lines its lines, headings first
   * @param told takes the words and whether a price is far off
   */
  public synchronized void list(
      List<List<String>> lines, String source, boolean write, BiConsumer<String, Boolean> told) {
    PriceTable.Taken taken = prices.list(lines, source, write);
    told.accept(taken.headings() + taken.changes(), taken.far());
  }
}
