package trammel.page.shop;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.desk.ShopCatalog;
import trammel.app.desk.Workbench;
import trammel.app.rack.RackFile;
import trammel.page.bench.Bench;
import trammel.page.folder.Change;
import trammel.page.folder.ChangeBook;
import trammel.page.folder.Edit;
import trammel.page.folder.JobEdits;
import trammel.page.folder.Plain;
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
  private final Path folder;
  private final CatalogTables catalog;
  private final StockTable stock;
  private final PriceTable prices;
  private final Bench bench;

  /**
   * @param jobs the folder of the jobs
   */
  public ShopTables(Path jobs, Bench bench) {
    this.bench = bench;
    folder = ShopCatalog.place(jobs);
    catalog = new CatalogTables(folder, bench);
    stock = new StockTable(bench);
    prices = new PriceTable(folder, bench);
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
    ChangeBook changes = ChangeBook.of(folder);
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
        ChangeBook.of(folder).add(Change.of(device, json, noted));
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
    ChangeBook changes = ChangeBook.of(folder);
    changes
        .toUndo(device)
        .ifPresent(
            change -> {
              table(change.edits()).repeat(change.back());
              changes.mark(change, true);
            });
  }

  /** Makes the change again that a device took back last. */
  public synchronized void redo(String device) {
    ChangeBook changes = ChangeBook.of(folder);
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
   * @param json its {@code lines}, headings first, its {@code source}, and {@code write} to take it
   *     in
   * @return what it changes, in words
   */
  public synchronized Map<String, Object> list(ObjectNode json) {
    boolean write = Plain.flag(json, "write");
    PriceTable.Taken taken =
        prices.list(Cells.lines(json.find("lines")), Plain.text(json, "source"), write);
    Map<String, Object> answer = new LinkedHashMap<>();
    answer.put("words", taken.headings() + taken.changes());
    answer.put("far_off", taken.far());
    answer.put("written", write);
    return answer;
  }
}
