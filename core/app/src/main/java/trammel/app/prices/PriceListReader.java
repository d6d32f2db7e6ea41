package trammel.app.prices;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.CsvReader;
import trammel.brackets.material.PriceBreak;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.ListPrice;
import trammel.planning.catalog.Selling;
import trammel.reading.quantity.Quantities;
import trammel.reading.quantity.QuantityFormatException;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problems;

/** Reads a supplier's list, finds out which column is what, and matches its lines to a catalog. */
public final class PriceListReader {
  private static final int PRICE_PLACES = 4;
  private static final Set<String> EACH =
      Set.of("each", "ea", "pc", "pcs", "piece", "pieces", "unit", "1", "stick", "sheet");
  private static final Map<String, Double> UNIT_LENGTHS_MM =
      Map.of("ft", 304.8, "foot", 304.8, "feet", 304.8, "lf", 304.8, "m", 1000.0, "metre", 1000.0);

  private final Path file;
  private final Catalog catalog;
  private final QuantityPrinter printer;
  private final Map<PriceColumn, String> told;
  private final Problems problems = new Problems();
  private final Map<Priced, Gathered> gathered = new LinkedHashMap<>();
  private final List<PriceList.Unknown> unknown = new ArrayList<>();
  private PriceListHead head;

  /**
   * @param file the list
   * @param catalog what it is matched to
   * @param printer its unit system is that of bare lengths
   * @param told headings that were told to be a column
   */
  public PriceListReader(
      Path file, Catalog catalog, QuantityPrinter printer, Map<PriceColumn, String> told) {
    this.file = file;
    this.catalog = catalog;
    this.printer = printer;
    this.told = told;
  }

  /** What the lines of a list say of one thing. */
  private static final class Gathered {
    private Optional<BigDecimal> price = Optional.empty();
    private Optional<BigDecimal> packPrice = Optional.empty();
    private final Map<Integer, BigDecimal> breaks = new TreeMap<>();
    private final Set<String> knownAs = new LinkedHashSet<>();
  }

  /**
   * What the list says.
   *
   * @throws CommandFailure if its headings cannot be told
   * @throws trammel.reading.tree.BadInputException with every line that is wrong
   */
  public PriceList read() {
    return read(CsvReader.rows(file));
  }

  /**
   * What a list says that stands in no file, only under the name of one.
   *
   * @param text the list, as the file would have it
   * @throws CommandFailure if its headings cannot be told
   * @throws trammel.reading.tree.BadInputException with every line that is wrong
   */
  public PriceList read(String text) {
    return read(CsvReader.rows(file, text));
  }

  private PriceList read(List<CsvReader.Row> rows) {
    head = PriceListHead.of(file, rows, told, catalog.currency());
    List<CsvReader.Row> lines = head.below(rows);
    List<Priced> all = Priced.all(catalog);
    for (CsvReader.Row row : lines) {
      if (!cell(row, PriceColumn.PRICE).isEmpty()) {
        read(row, all);
      }
    }
    problems.throwIfErrors();
    return new PriceList(file, lines.size(), head.columns(), head.others(), prices(), unknown);
  }

  private String cell(CsvReader.Row row, PriceColumn column) {
    return head.cell(row, column);
  }

  private void refuse(CsvReader.Row row, PriceColumn column, String allowed, String remedy) {
    String given = cell(row, column);
    problems.error(
        new Location(file.toString(), row.line(), 1, head.heading(column)),
        given.isEmpty() ? "nothing" : "'" + given + "'",
        allowed,
        remedy);
  }

  // Lines

  private void read(CsvReader.Row row, List<Priced> all) {
    List<Priced> named = named(row, all);
    if (named.isEmpty()) {
      unknown.add(new PriceList.Unknown(row.line(), words(row)));
      return;
    }
    String code = catalog.currency().getCurrencyCode();
    String currency = cell(row, PriceColumn.CURRENCY);
    if (!currency.isEmpty() && !currency.equalsIgnoreCase(code)) {
      refuse(row, PriceColumn.CURRENCY, "prices in " + code, "Convert the list, or take it out.");
      return;
    }
    Optional<BigDecimal> price = price(row);
    Optional<Integer> from = from(row);
    if (price.isEmpty() || from.isEmpty()) {
      return;
    }
    for (Priced one : chosen(row, named)) {
      note(row, one, price.get(), from.get());
    }
  }

  private Optional<BigDecimal> price(CsvReader.Row row) {
    try {
      return Optional.of(
          ListedAmount.read(cell(row, PriceColumn.PRICE), catalog.currency(), row.decimalCommas()));
    } catch (IllegalArgumentException refused) {
      refuse(row, PriceColumn.PRICE, "one price", refused.getMessage());
      return Optional.empty();
    }
  }

  private Optional<Integer> from(CsvReader.Row row) {
    String cell = cell(row, PriceColumn.FROM);
    if (cell.isEmpty()) {
      return Optional.of(1);
    }
    if (cell.matches("\\d{1,7}") && Integer.parseInt(cell) > 0) {
      return Optional.of(Integer.parseInt(cell));
    }
    refuse(row, PriceColumn.FROM, "a whole number from 1 on", "Write from how many on it counts.");
    return Optional.empty();
  }

  private String words(CsvReader.Row row) {
    String item = cell(row, PriceColumn.ITEM);
    String title = cell(row, PriceColumn.TITLE);
    return item.isEmpty() || title.isEmpty() ? item + title : item + ", " + title;
  }

  /** What the line may be of, by its name in the catalog, the supplier's number, or its title. */
  private List<Priced> named(CsvReader.Row row, List<Priced> all) {
    String item = cell(row, PriceColumn.ITEM);
    String title = plain(cell(row, PriceColumn.TITLE));
    List<Priced> byName =
        all.stream().filter(one -> !item.isEmpty() && one.name().equalsIgnoreCase(item)).toList();
    if (!byName.isEmpty()) {
      return byName;
    }
    Optional<ListPrice> known =
        catalog.listPrices().values().stream()
            .filter(listed -> listed.knownAs().contains(item))
            .findFirst();
    if (known.isPresent()) {
      return all.stream().filter(one -> one.name().equals(known.get().key())).toList();
    }
    return all.stream()
        .filter(one -> !title.isEmpty())
        .filter(
            one ->
                plain(one.title()).equals(title)
                    || plain(PriceWords.title(one, printer)).equals(title))
        .toList();
  }

  private static String plain(String title) {
    return title.toLowerCase(Locale.ROOT).strip().replaceAll("\\s+", " ");
  }

  /** Of what a line may be of, what its size says. */
  private List<Priced> chosen(CsvReader.Row row, List<Priced> named) {
    if (!named.get(0).isSized()) {
      return named;
    }
    Optional<double[]> size;
    try {
      size = size(row);
    } catch (QuantityFormatException refused) {
      refuse(
          row,
          head.has(PriceColumn.LENGTH) ? PriceColumn.LENGTH : PriceColumn.SIZE,
          refused.allowed(),
          refused.remedy());
      return List.of();
    }
    if (size.isEmpty()) {
      boolean byLength =
          named.get(0).isStick()
              && UNIT_LENGTHS_MM.containsKey(cell(row, PriceColumn.UNIT).toLowerCase(Locale.ROOT));
      if (named.size() == 1 || byLength) {
        return named;
      }
      refuse(
          row,
          PriceColumn.LENGTH,
          "a size, one of those in which the catalog has it",
          named.get(0).isStick()
              ? "Write the length of the stick, or ft in the column unit."
              : "Write the size.");
      return List.of();
    }
    double[] given = size.get();
    List<Priced> chosen =
        named.stream()
            .filter(one -> is(one, given[0], given[1]) || is(one, given[1], given[0]))
            .toList();
    if (chosen.isEmpty()) {
      unknown.add(
          new PriceList.Unknown(row.line(), words(row) + ": a size that the catalog has not"));
    }
    return chosen;
  }

  private static boolean is(Priced one, double lengthMm, double widthMm) {
    return new ListPrice.Size(one.lengthMm(), one.widthMm(), BigDecimal.ZERO, List.of())
        .is(lengthMm, widthMm);
  }

  /** Length and width (mm), width 0 where none is given; empty where the line gives no size. */
  private Optional<double[]> size(CsvReader.Row row) {
    String length = cell(row, PriceColumn.LENGTH);
    if (!length.isEmpty()) {
      String width = cell(row, PriceColumn.WIDTH);
      return Optional.of(new double[] {mm(length), width.isEmpty() ? 0 : mm(width)});
    }
    String[] sides = cell(row, PriceColumn.SIZE).split("\\s*[x\u00d7*]\\s*");
    if (sides.length == 2) {
      String unit = sides[1].replaceAll("^[\\d\\s./-]+", "");
      boolean bare = sides[0].matches("[\\d\\s./-]+");
      return Optional.of(new double[] {mm(bare ? sides[0] + " " + unit : sides[0]), mm(sides[1])});
    }
    return sides[0].isEmpty() ? Optional.empty() : Optional.of(new double[] {mm(sides[0]), 0});
  }

  private double mm(String length) {
    return Quantities.parse(length.strip(), QuantityKind.LENGTH, printer.system());
  }

  // Prices

  private void note(CsvReader.Row row, Priced one, BigDecimal listed, int from) {
    Gathered all = gathered.computeIfAbsent(one, priced -> new Gathered());
    String item = cell(row, PriceColumn.ITEM);
    if (!item.isEmpty() && !item.equalsIgnoreCase(one.name())) {
      all.knownAs.add(item);
    }
    String unit = cell(row, PriceColumn.UNIT).toLowerCase(Locale.ROOT);
    if (from > 1 && !one.mayHaveBreaks()) {
      refuse(
          row,
          PriceColumn.FROM,
          "one price, as bolts, nuts and washers have no other from a number on",
          "Leave the price that you pay, and take the other lines out.");
    } else if (one.isStick() && UNIT_LENGTHS_MM.containsKey(unit)) {
      BigDecimal lengths = BigDecimal.valueOf(one.lengthMm() / UNIT_LENGTHS_MM.get(unit));
      put(row, all, coins(listed.multiply(lengths)), from);
    } else if (one.pack().isPresent()) {
      notePack(row, one, all, listed, from, unit);
    } else if (unit.isEmpty() || unit.equals(one.unit()) || isEach(unit) && isEach(one.unit())) {
      put(row, all, listed, from);
    } else {
      refuse(
          row,
          PriceColumn.UNIT,
          "a price by the " + one.unit() + ", as the catalog has it",
          "Convert the price, or empty the cell if it is by the " + one.unit() + ".");
    }
  }

  private static boolean isEach(String unit) {
    return EACH.contains(unit);
  }

  private void notePack(
      CsvReader.Row row, Priced one, Gathered all, BigDecimal listed, int from, String unit) {
    Selling.Pack pack = one.pack().orElseThrow();
    if (unit.equals(one.unit()) && from == 1) {
      put(row, all, listed, from);
      all.packPrice = Optional.of(coins(listed.multiply(pack.holds())));
    } else if (unit.equals(plain(pack.title())) || unit.equals("pack")) {
      if (from == 1) {
        put(row, all, listed.divide(pack.holds(), PRICE_PLACES, RoundingMode.HALF_UP), from);
        all.packPrice = Optional.of(listed);
      } else {
        put(row, all, listed, from);
      }
    } else {
      refuse(
          row,
          PriceColumn.UNIT,
          one.unit() + " or " + pack.title() + ", so that it is known what the price is of",
          "Write it into a column unit.");
    }
  }

  private BigDecimal coins(BigDecimal amount) {
    return amount.setScale(catalog.currency().getDefaultFractionDigits(), RoundingMode.HALF_UP);
  }

  private void put(CsvReader.Row row, Gathered all, BigDecimal price, int from) {
    Optional<BigDecimal> before = from == 1 ? all.price : Optional.ofNullable(all.breaks.get(from));
    if (before.isPresent() && before.get().compareTo(price) != 0) {
      refuse(
          row,
          PriceColumn.PRICE,
          "one price for one thing; an earlier line says " + before.get().toPlainString(),
          "Take one of the lines out.");
    } else if (from == 1) {
      all.price = Optional.of(price);
    } else {
      all.breaks.put(from, price);
    }
  }

  private List<PriceList.NewPrice> prices() {
    List<PriceList.NewPrice> prices = new ArrayList<>();
    gathered.forEach(
        (one, all) -> {
          List<PriceBreak> breaks = new ArrayList<>();
          all.breaks.forEach((from, price) -> breaks.add(new PriceBreak(from, price)));
          Optional<BigDecimal> pack =
              all.packPrice.isPresent() || one.pack().isEmpty()
                  ? all.packPrice
                  : Optional.of(one.pack().get().price());
          prices.add(
              new PriceList.NewPrice(
                  one, all.price.orElse(one.price()), pack, breaks, Set.copyOf(all.knownAs)));
        });
    return prices;
  }
}
