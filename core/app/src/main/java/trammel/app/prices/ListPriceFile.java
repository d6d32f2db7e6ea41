package trammel.app.prices;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.SafeFile;
import trammel.app.json.Json;
import trammel.brackets.material.PriceBreak;
import trammel.ledger.Ledger;
import trammel.ledger.PriceHistory;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogFields;
import trammel.planning.catalog.ListPrice;
import trammel.reading.fields.FieldReader;
import trammel.reading.quantity.Quantities;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentReader;
import trammel.reading.tree.ObjectNode;

/**
 * The file {@code prices.json} in the shop's catalog, which holds what suppliers' lists say and
 * nothing else, so that it can be written anew with every list.
 */
public final class ListPriceFile {
  /** Its name in the shop's catalog. */
  public static final String NAME = "prices.json";

  private static final String SECTION = "list_prices";
  private static final Set<String> OWN_KEYS =
      Set.of("format", "note", "units", "currency", SECTION);
  private static final double SAME_MM = 0.01;

  private final Path file;
  private final Catalog catalog;
  private final String read;

  /**
   * @param folder the shop's catalog
   * @param catalog what it says now, the standard one under it
   * @throws CommandFailure if a file of that name is of the shop's own
   */
  public ListPriceFile(Path folder, Catalog catalog) {
    file = folder.resolve(NAME);
    this.catalog = catalog;
    read = now();
    requireOurs();
  }

  /** Where it is. */
  public Path path() {
    return file;
  }

  /** What it holds; empty where it is not there. */
  private String now() {
    try {
      return Files.exists(file) ? Files.readString(file) : "";
    } catch (IOException unread) {
      throw CommandFailure.couldNotRead(file, unread);
    }
  }

  private void requireOurs() {
    if (!Files.exists(file)) {
      return;
    }
    for (ObjectNode.Member member : DocumentReader.read(file).members()) {
      if (!OWN_KEYS.contains(member.key())) {
        throw CommandFailure.badInput(
            file
                + " holds "
                + member.key()
                + " too, and is written anew with every list. Move that into a file of another"
                + " name.");
      }
    }
  }

  /**
   * What the file is to hold with a list in it.
   *
   * @throws CommandFailure if a price that changes stands in another file of the shop
   * @throws trammel.reading.tree.BadInputException if a catalog does not take something of it
   */
  public String text(PriceList list, LocalDate pricedOn, String source) {
    Map<String, List<PriceList.NewPrice>> byKey = new LinkedHashMap<>();
    for (PriceList.NewPrice price : list.prices()) {
      byKey.computeIfAbsent(price.priced().key(), key -> new ArrayList<>()).add(price);
    }
    Map<String, Object> entries = new LinkedHashMap<>();
    for (ListPrice before : catalog.listPrices().values()) {
      boolean here = before.where().file().equals(file.toString());
      if (byKey.containsKey(before.key()) && !here) {
        throw CommandFailure.badInput(
            before.where().file()
                + ", line "
                + before.where().line()
                + ": a list price of "
                + before.key()
                + " stands here and not in "
                + file
                + ". Take it out, so that the new one counts.");
      }
      if (here) {
        entries.put(before.key(), entry(before));
      }
    }
    byKey.forEach((key, prices) -> entries.put(key, entry(key, prices, pricedOn, source)));
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("format", CatalogFields.FORMAT);
    json.put("note", "Written by trammel prices from suppliers' lists, anew with every list.");
    json.put("units", "us");
    json.put("currency", catalog.currency().getCurrencyCode());
    json.put(SECTION, entries);
    String text = Json.text(json) + "\n";
    requireReadable(text);
    return text;
  }

  /** What a catalog does not take would leave no job of the shop that can be priced. */
  private void requireReadable(String text) {
    ObjectNode root = DocumentReader.read(file.toString(), text);
    FieldReader.readAll(root, CatalogFields.all(), UnitSystem.US);
  }

  private static Map<String, Object> entry(ListPrice listed) {
    Map<String, Object> entry = new LinkedHashMap<>();
    listed.price().ifPresent(price -> entry.put("price", price));
    listed.packPrice().ifPresent(price -> entry.put("pack_price", price));
    listed.nutPrice().ifPresent(price -> entry.put("nut_price", price));
    listed.washerPrice().ifPresent(price -> entry.put("washer_price", price));
    putBreaks(entry, listed.breaks());
    List<Object> sizes = new ArrayList<>();
    listed.sizes().forEach(size -> sizes.add(size(size)));
    putUnlessEmpty(entry, "sizes", sizes);
    putUnlessEmpty(entry, "known_as", List.copyOf(listed.knownAs()));
    entry.put("priced_on", listed.pricedOn().toString());
    entry.put("source", listed.source());
    return entry;
  }

  /** What the list says over what an earlier one said of the same entry. */
  private Map<String, Object> entry(
      String key, List<PriceList.NewPrice> prices, LocalDate pricedOn, String source) {
    ListPrice before = catalog.listPrices().get(key);
    Set<String> knownAs = new LinkedHashSet<>();
    List<ListPrice.Size> sizes = new ArrayList<>();
    Map<String, Object> entry = new LinkedHashMap<>();
    if (before != null) {
      knownAs.addAll(before.knownAs());
      sizes.addAll(before.sizes());
      before.price().ifPresent(price -> entry.put("price", price));
      before.packPrice().ifPresent(price -> entry.put("pack_price", price));
      before.nutPrice().ifPresent(price -> entry.put("nut_price", price));
      before.washerPrice().ifPresent(price -> entry.put("washer_price", price));
    }
    for (PriceList.NewPrice price : prices) {
      knownAs.addAll(price.knownAs());
      if (price.priced().isSized()) {
        sizes.removeIf(size -> size.is(price.priced().lengthMm(), price.priced().widthMm()));
        sizes.add(
            new ListPrice.Size(
                price.priced().lengthMm(),
                price.priced().widthMm(),
                price.price(),
                price.breaks()));
      } else {
        putPrice(entry, price);
      }
    }
    List<Object> written = new ArrayList<>();
    sizes.forEach(size -> written.add(size(size)));
    putUnlessEmpty(entry, "sizes", written);
    putUnlessEmpty(entry, "known_as", List.copyOf(knownAs));
    entry.put("priced_on", pricedOn.toString());
    entry.put("source", source);
    return entry;
  }

  private static void putPrice(Map<String, Object> entry, PriceList.NewPrice price) {
    switch (price.priced().of()) {
      case NUT -> entry.put("nut_price", price.price());
      case WASHER -> entry.put("washer_price", price.price());
      default -> {
        entry.put("price", price.price());
        price.packPrice().ifPresent(pack -> entry.put("pack_price", pack));
        putBreaks(entry, price.breaks());
      }
    }
  }

  private static Map<String, Object> size(ListPrice.Size size) {
    Map<String, Object> written = new LinkedHashMap<>();
    if (size.widthMm() > 0) {
      written.put("width", length(size.widthMm()));
    }
    written.put("length", length(size.lengthMm()));
    written.put("price", size.price());
    putBreaks(written, size.breaks());
    return written;
  }

  /** In inches where that is what it is, else in millimetres. */
  private static String length(double lengthMm) {
    String inches = QuantityPrinter.inches(lengthMm);
    boolean exact =
        Math.abs(Quantities.parse(inches, QuantityKind.LENGTH, UnitSystem.US) - lengthMm) < SAME_MM;
    return exact
        ? inches
        : BigDecimal.valueOf(Math.round(lengthMm * 1000), 3).stripTrailingZeros().toPlainString()
            + " mm";
  }

  private static void putBreaks(Map<String, Object> into, List<PriceBreak> breaks) {
    List<Object> written = new ArrayList<>();
    for (PriceBreak one : breaks) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("from", one.from());
      row.put("price", one.price());
      written.add(row);
    }
    putUnlessEmpty(into, "breaks", written);
  }

  private static void putUnlessEmpty(Map<String, Object> into, String key, List<Object> list) {
    if (!list.isEmpty()) {
      into.put(key, list);
    }
  }

  /**
   * Writes a list into the file, and what the prices were into the ledger: both or neither.
   *
   * @param content what the file is to hold, by {@link #text}
   * @throws CommandFailure if another program changed the file since it was read
   */
  public void keep(
      Ledger ledger, String content, PriceList list, LocalDate pricedOn, String source) {
    ledger.asOne(
        () -> {
          if (!now().equals(read)) {
            throw CommandFailure.badInput(
                file + " was changed by another program at this moment. Do it again.");
          }
          ledger.prices().add(changes(list, pricedOn, source));
          write(content);
          return null;
        });
  }

  private void write(String content) {
    try {
      Files.createDirectories(file.getParent());
    } catch (IOException refused) {
      throw CommandFailure.couldNotWrite(file.getParent(), refused);
    }
    SafeFile.write(file, content);
  }

  /** The changes of a list for the ledger. */
  private List<PriceHistory.Change> changes(PriceList list, LocalDate pricedOn, String source) {
    List<PriceHistory.Change> changes = new ArrayList<>();
    String code = catalog.currency().getCurrencyCode();
    for (PriceList.NewPrice price : list.changes()) {
      Priced priced = price.priced();
      add(changes, priced, priced.of(), 1, priced.price(), price.price(), code, pricedOn, source);
      if (priced.pack().isPresent()) {
        add(
            changes,
            priced,
            PriceHistory.Of.PACK,
            1,
            priced.pack().get().price(),
            price.packPrice().orElseThrow(),
            code,
            pricedOn,
            source);
      }
      PriceHistory.Of of = priced.pack().isPresent() ? PriceHistory.Of.PACK : priced.of();
      for (PriceBreak one : price.breaks()) {
        BigDecimal was =
            priced.breaks().stream()
                .filter(old -> old.from() == one.from())
                .map(PriceBreak::price)
                .findFirst()
                .orElse(null);
        add(changes, priced, of, one.from(), was, one.price(), code, pricedOn, source);
      }
    }
    return changes;
  }

  private static void add(
      List<PriceHistory.Change> changes,
      Priced priced,
      PriceHistory.Of of,
      int from,
      BigDecimal was,
      BigDecimal price,
      String code,
      LocalDate pricedOn,
      String source) {
    if (was == null || was.compareTo(price) != 0) {
      changes.add(
          new PriceHistory.Change(
              priced.key(),
              priced.lengthMm(),
              priced.widthMm(),
              of,
              from,
              Optional.ofNullable(was),
              price,
              code,
              pricedOn,
              source));
    }
  }
}
