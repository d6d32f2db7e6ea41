package trammel.page.shop;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.files.Csv;
import trammel.app.files.CsvText;
import trammel.app.prices.ListPriceFile;
import trammel.app.prices.PriceList;
import trammel.app.prices.PriceListReader;
import trammel.app.prices.PriceListText;
import trammel.app.prices.PriceSheet;
import trammel.ledger.Ledger;
import trammel.page.bench.Bench;
import trammel.page.folder.Edit;
import trammel.page.folder.Refused;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problem;
import trammel.reading.tree.TextNode;
import trammel.reading.tree.TreeEdit;

/**
 * Prices of what the shop buys, one line each. A price that is entered is taken as a line of a
 * supplier's list is: into {@code prices.json} of the shop's catalog, what it was into the ledger.
 */
final class PriceTable implements ShopTable {
  /** The first step of the paths of its cells. */
  static final String PATH = "prices";

  private static final String SOURCE = "entered on the page";
  private static final QuantityPrinter PRINTER = new QuantityPrinter(UnitSystem.US);

  private final Path folder;
  private final Bench bench;

  /**
   * @param folder the shop's own catalog, whether or not it is there yet
   */
  PriceTable(Path folder, Bench bench) {
    this.folder = folder;
    this.bench = bench;
  }

  /** The lines. */
  List<PriceSheet.Line> lines() {
    return new PriceSheet(bench.catalog(), PRINTER).lines();
  }

  /** The path of the price of a line. */
  static String path(PriceSheet.Line line) {
    return PATH + ".\"" + line.id() + '"';
  }

  private static String id(Edit edit) {
    List<String> steps = TreeEdit.steps(new Location("change", 0, 0, edit.path()));
    if (steps.size() != 2) {
      throw new Refused(422, "There is no cell '" + edit.path() + "'.");
    }
    return steps.get(1);
  }

  private Map<String, BigDecimal> now() {
    Map<String, BigDecimal> now = new LinkedHashMap<>();
    lines().forEach(line -> now.put(line.id(), line.price()));
    return now;
  }

  private static boolean is(Optional<DocumentNode> text, BigDecimal price) {
    try {
      return new BigDecimal(Cells.text(text)).compareTo(price) == 0;
    } catch (NumberFormatException other) {
      return false;
    }
  }

  @Override
  public List<Conflict> conflicts(List<Edit> asked) {
    Map<String, BigDecimal> now = now();
    List<Conflict> conflicts = new ArrayList<>();
    for (Edit edit : asked) {
      BigDecimal price = now.get(id(edit));
      if (price == null) {
        throw new Refused(422, "Nothing of the catalog is '" + id(edit) + "'.");
      }
      if (!is(edit.from(), price) && !is(edit.to(), price)) {
        conflicts.add(new Conflict(edit.path(), price.toPlainString()));
      }
    }
    return conflicts;
  }

  @Override
  public List<Edit> make(List<Edit> asked) {
    Map<String, BigDecimal> before = now();
    Map<String, String> prices = new LinkedHashMap<>();
    asked.forEach(edit -> prices.put(id(edit), Cells.text(edit.to())));
    take(prices);
    Map<String, BigDecimal> after = now();
    List<Edit> noted = new ArrayList<>();
    for (Edit edit : asked) {
      noted.add(new Edit(edit.path(), amount(before.get(id(edit))), amount(after.get(id(edit)))));
    }
    return noted;
  }

  private static Optional<DocumentNode> amount(BigDecimal price) {
    return Optional.of(new TextNode(new Location("change", 0, 0, ""), price.toPlainString()));
  }

  @Override
  public void repeat(List<Edit> noted) {
    Map<String, BigDecimal> now = now();
    Map<String, String> prices = new LinkedHashMap<>();
    for (Edit edit : noted) {
      if (now.containsKey(id(edit)) && is(edit.from(), now.get(id(edit)))) {
        prices.put(id(edit), Cells.text(edit.to()));
      }
    }
    take(prices);
  }

  private void take(Map<String, String> prices) {
    if (prices.isEmpty()) {
      return;
    }
    List<String> ids = List.copyOf(prices.keySet());
    String list = new PriceSheet(bench.catalog(), PRINTER).list(prices);
    prices.forEach(
        (id, price) -> {
          if (price.isBlank()) {
            throw new BadInputException(
                List.of(
                    problem(id, "nothing", "one price", "Write what it costs, such as 12.50.")));
          }
        });
    PriceList read;
    try {
      read = read(list, "prices.csv");
    } catch (BadInputException wrong) {
      throw new BadInputException(
          wrong.problems().stream()
              .map(
                  one ->
                      problem(
                          ids.get(Math.max(0, Math.min(ids.size() - 1, one.line() - 2))),
                          one.given(),
                          one.allowed(),
                          one.remedy()))
              .toList());
    }
    keep(read, SOURCE);
  }

  private static Problem problem(String id, String given, String allowed, String remedy) {
    return new Problem(
        PATH, 0, PATH + ".\"" + id + '"', given, allowed, remedy, Problem.Severity.ERROR);
  }

  /** What a list says; the name stands for it where something is wrong with it. */
  private PriceList read(String text, String name) {
    return new PriceListReader(Path.of(name), bench.catalog(), PRINTER, Map.of()).read(text);
  }

  private void keep(PriceList list, String source) {
    ListPriceFile prices = new ListPriceFile(folder, bench.catalog());
    LocalDate today = LocalDate.now();
    String content = prices.text(list, today, source);
    try (Ledger ledger =
        bench.with(workbench -> workbench.shopLedger(UnitSystem.US)).open(remark -> {})) {
      prices.keep(ledger, content, list, today, source);
    }
    bench.readAnew();
  }

  /**
   * What a supplier's list says, in the words of {@code prices FILE}.
   *
   * @param far whether a price is so far from what it was that it may be a slip
   */
  record Taken(String headings, String changes, boolean far) {}

  /**
   * Looks at a supplier's list, or takes it in.
   *
   * @param lines the list as it was pasted, headings first
   * @param source where it comes from
   * @param write whether it is taken in
   */
  Taken list(List<List<String>> lines, String source, boolean write) {
    Csv csv = new Csv();
    lines.forEach(line -> csv.row(line.stream().map(CsvText::safe).toArray()));
    PriceList list = read(csv.text(), "the pasted list");
    PriceListText words = new PriceListText(list, PRINTER, bench.catalog().currency());
    Taken taken = new Taken(words.headings(), words.changes(), list.hasFar());
    if (write) {
      keep(list, source);
    }
    return taken;
  }
}
