package trammel.planning.catalog;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.brackets.material.BarMaterial;
import trammel.brackets.material.BoltSize;
import trammel.brackets.material.BoltSizes;
import trammel.brackets.material.EndFitting;
import trammel.brackets.material.MissingEntryException;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.material.Shock;
import trammel.engine.checks.AnalysisSettings;
import trammel.engine.checks.Limit;
import trammel.engine.quantity.Given;
import trammel.trade.labour.Operation;
import trammel.trade.welding.WeldPractice;

/**
 * Everything a plan draws on, each entry under its key.
 *
 * @param currency the currency of every price
 * @param items priced items
 * @param ends joints for bars
 * @param bars sections sold by the stick
 * @param plates plates by thickness
 * @param bolts bolts by diameter
 * @param coils coil springs
 * @param airSprings air springs
 * @param shocks shocks
 * @param shaftTubes driveshafts that are made to length; there may be none
 * @param operations standard operations
 * @param suppliers what suppliers ask for an order beside their prices; not all need be there
 * @param welding how the shop welds
 * @param cutting how the shop cuts
 * @param plateCutting how the shop has its plates cut
 * @param extras what the shop bills by rules of its own
 * @param listPrices what suppliers' lists say, by the name of the entry; entries have these prices
 * @param limits the limit of each check
 * @param analysis what the checks assume
 * @param shop whose catalog it is, with the shop's usual terms
 * @param priceDates the day of the prices of each file that says it
 * @param priceSources where the prices come from, in the words of the files
 */
public record Catalog(
    Currency currency,
    Map<String, Item> items,
    Map<String, EndFitting> ends,
    Map<String, BarMaterial> bars,
    Map<String, PlateMaterial> plates,
    Map<String, BoltSize> bolts,
    Map<String, CoilOverSpring> coils,
    Map<String, AirSpring> airSprings,
    Map<String, Shock> shocks,
    Map<String, ShaftTube> shaftTubes,
    Map<String, Operation> operations,
    Map<String, SupplierTerms> suppliers,
    WeldPractice welding,
    CuttingPractice cutting,
    PlateCutting plateCutting,
    Map<String, ShopExtra> extras,
    Map<String, ListPrice> listPrices,
    Map<String, Limit> limits,
    AnalysisSettings analysis,
    Shop shop,
    Map<String, LocalDate> priceDates,
    List<String> priceSources) {
  public Catalog {
    Given.present("currency of the catalog", currency, "Give its ISO 4217 code.");
    items = ordered(items);
    ends = ordered(ends);
    bars = ordered(bars);
    plates = ordered(plates);
    bolts = ordered(bolts);
    coils = ordered(coils);
    airSprings = ordered(airSprings);
    shocks = ordered(shocks);
    shaftTubes = ordered(shaftTubes);
    operations = ordered(operations);
    suppliers = ordered(suppliers);
    extras = ordered(extras);
    listPrices = ordered(listPrices);
    limits = ordered(limits);
    Given.present("welding practice", welding, "Give the shop's.");
    Given.present("cutting practice", cutting, "Give the shop's.");
    Given.present("plate cutting", plateCutting, "Give the shop's.");
    Given.present("analysis settings", analysis, "Give the design speed and load cases.");
    Given.present("shop of the catalog", shop, "Give its name and terms.");
    priceDates = ordered(priceDates);
    priceSources = List.copyOf(priceSources);
  }

  /**
   * The files and suppliers' lists whose prices are old on a day, as the shop counts it, each with
   * the day of its prices.
   */
  public Map<String, LocalDate> oldPrices(LocalDate day) {
    Map<String, LocalDate> old = new LinkedHashMap<>();
    for (Map.Entry<String, LocalDate> file : priceDates.entrySet()) {
      if (file.getValue().plusDays(shop.priceDays()).isBefore(day)) {
        old.put(file.getKey(), file.getValue());
      }
    }
    for (ListPrice listed : listPrices.values()) {
      if (listed.pricedOn().plusDays(shop.priceDays()).isBefore(day)) {
        old.merge(
            listed.where().file() + ", " + listed.source(),
            listed.pricedOn(),
            (one, other) -> one.isBefore(other) ? one : other);
      }
    }
    return old;
  }

  private static <T> Map<String, T> ordered(Map<String, T> entries) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(entries));
  }

  /** A priced item. */
  public Item item(String key) {
    return find(items, key, "priced item");
  }

  /** The item itself, or its alternate in stock while it is out of stock itself. */
  public Item inStock(Item asked) {
    if (!asked.selling().outOfStock()) {
      return asked;
    }
    return asked
        .selling()
        .alternate()
        .map(this::item)
        .filter(other -> !other.selling().outOfStock())
        .orElse(asked);
  }

  /** A joint for a bar. */
  public EndFitting end(String key) {
    return find(ends, key, "joint");
  }

  /** A section sold by the stick. */
  public BarMaterial bar(String key) {
    return find(bars, key, "section");
  }

  /** A plate by its key. */
  public PlateMaterial plate(String key) {
    return find(plates, key, "plate");
  }

  /** The bolt sizes to choose from. */
  public BoltSizes boltSizes() {
    return BoltSizes.of(bolts.values());
  }

  /** Bolts of a diameter by their key. */
  public BoltSize bolt(String key) {
    return find(bolts, key, "bolt size");
  }

  /** A coil spring. */
  public CoilOverSpring coil(String key) {
    return find(coils, key, "coil spring");
  }

  /** An air spring. */
  public AirSpring airSpring(String key) {
    return find(airSprings, key, "air spring");
  }

  /** A shock. */
  public Shock shock(String key) {
    return find(shocks, key, "shock");
  }

  /** A standard operation. */
  public Operation operation(String key) {
    return find(operations, key, "operation");
  }

  /** What a supplier asks for an order; nothing if the catalog does not say. */
  public SupplierTerms supplier(String name) {
    SupplierTerms terms = suppliers.get(name);
    return terms == null ? SupplierTerms.none(name) : terms;
  }

  private static <T> T find(Map<String, T> entries, String key, String kind) {
    T found = entries.get(key);
    if (found == null) {
      throw new MissingEntryException(
          "the catalog has no "
              + kind
              + " '"
              + key
              + "'; it has "
              + String.join(", ", entries.keySet())
              + ". Add it to the catalog or choose one of these.");
    }
    return found;
  }
}
