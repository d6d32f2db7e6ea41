package trammel.planning.catalog;

import java.time.LocalDate;
import java.util.Currency;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trammel.brackets.material.BarMaterial;
import trammel.brackets.material.BoltSize;
import trammel.brackets.material.EndFitting;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.material.Shock;
import trammel.engine.checks.AnalysisSettings;
import trammel.engine.checks.Limit;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problems;
import trammel.trade.labour.Operation;
import trammel.trade.money.PriceShare;
import trammel.trade.welding.WeldPractice;

/** The parts of a catalog as they are read, section by section. */
final class CatalogAssembly {
  /** A bolt fits a hole that was converted between units and back (mm). */
  private static final double SAME_BOLT_MM = 0.01;

  final Problems problems;
  final Currency currency;
  final Map<String, Steel> steels = new LinkedHashMap<>();
  final Map<String, Item> items = new LinkedHashMap<>();
  final Map<String, EndFitting> ends = new LinkedHashMap<>();
  final Map<String, BarMaterial> bars = new LinkedHashMap<>();
  final Map<String, PlateMaterial> plates = new LinkedHashMap<>();
  final Map<String, BoltSize> bolts = new LinkedHashMap<>();
  final Map<String, CoilOverSpring> coils = new LinkedHashMap<>();
  final Map<String, AirSpring> airSprings = new LinkedHashMap<>();
  final Map<String, Shock> shocks = new LinkedHashMap<>();
  final Map<String, ShaftTube> shaftTubes = new LinkedHashMap<>();
  final Map<String, Operation> operations = new LinkedHashMap<>();
  final Map<String, ShopExtra> extras = new LinkedHashMap<>();
  final Map<String, SupplierTerms> suppliers = new LinkedHashMap<>();

  /** Prices of suppliers' lists, by the name of the entry that they are of. */
  final Map<String, ListPrice> listPrices = new LinkedHashMap<>();

  /** Items named in place of others, with where that is written. */
  final Map<String, Location> alternates = new LinkedHashMap<>();

  final Map<String, Limit> limits = new LinkedHashMap<>();

  /** Entries that have been refused, by section and name: who refers to them is not to blame. */
  private final Set<String> refused = new HashSet<>();

  Optional<WeldPractice> welding = Optional.empty();
  Optional<CuttingPractice> cutting = Optional.empty();
  Optional<PlateCutting> plateCutting = Optional.empty();
  Optional<AnalysisSettings> analysis = Optional.empty();
  Optional<Shop> shop = Optional.empty();

  /**
   * A grade of steel.
   *
   * @param yieldMPa minimum yield strength (MPa)
   * @param tensileMPa minimum tensile strength (MPa)
   */
  record Steel(double yieldMPa, double tensileMPa) {}

  CatalogAssembly(Currency currency, Problems problems) {
    this.currency = currency;
    this.problems = problems;
  }

  /** Notes that an entry has been refused and its problem reported. */
  void refuse(CatalogSection section, CatalogEntry entry) {
    refused.add(Location.child(section.key(), entry.key()));
    refused.add(section.key());
  }

  /** Adds a priced item; its name must not be taken by an entry of another section. */
  void addItem(Item item, Location where) {
    if (items.put(item.key(), item) != null) {
      problems.error(
          where,
          "'" + item.key() + "' as a second priced item",
          "a name of its own for everything with a price in items, ends, coils, air_springs,"
              + " shocks and shaft_tubes",
          "Give one of the two another name.");
    }
  }

  /** The named steel, or empty after the problem was reported. */
  Optional<Steel> steel(String key, Location where) {
    Steel steel = steels.get(key);
    if (steel == null && !refused.contains(Location.child("steels", key))) {
      problems.error(
          where,
          "'" + key + "'",
          "a steel of the catalog: " + String.join(", ", steels.keySet()),
          "Choose one of these, or add it to steels.");
    }
    return Optional.ofNullable(steel);
  }

  /** Reports an item that an entry needs and the catalog does not have. */
  void requireItem(String key, Location where) {
    if (!items.containsKey(key) && !refused.contains(Location.child("items", key))) {
      problems.error(
          where,
          "'" + key + "'",
          "the name of an entry in items",
          "Add '" + key + "' to items with its price, or name another.");
    }
  }

  /** Reports an operation that an entry needs and the catalog does not have. */
  void requireOperation(String key, Location where) {
    if (!operations.containsKey(key) && !refused.contains(Location.child("operations", key))) {
      problems.error(
          where,
          "'" + key + "'",
          "the name of an entry in operations",
          "Add '" + key + "' to operations with its hours, or name another.");
    }
  }

  /** Reports a list price of a size that its entry is not sold in. */
  void refuseSize(ListPrice listed, ListPrice.Size size) {
    problems.error(
        listed.where().inside("sizes"),
        "a price of "
            + listed.key()
            + " in "
            + (size.widthMm() > 0 ? millimetres(size.widthMm()) + " x " : "")
            + millimetres(size.lengthMm()),
        "a size that its entry has",
        "Take the size out, or add it to the entry.");
  }

  private static String millimetres(double lengthMm) {
    return Math.round(lengthMm * 10) / 10.0 + " mm";
  }

  /** The rules that are a share of the price. */
  List<PriceShare> shares() {
    return extras.values().stream()
        .filter(extra -> extra.share().isPresent())
        .map(
            extra ->
                new PriceShare(
                    extra.key(),
                    extra.title(),
                    extra.share().get(),
                    "the shop bills it on every job"))
        .toList();
  }

  /** Reports a bolt hole for which the catalog has no bolt. */
  void requireBolt(double diameterMm, String given, Location where) {
    StringBuilder sizes = new StringBuilder();
    for (BoltSize bolt : bolts.values()) {
      if (Math.abs(bolt.diameterMm() - diameterMm) <= SAME_BOLT_MM) {
        return;
      }
      sizes.append(sizes.isEmpty() ? "" : ", ").append(bolt.title());
    }
    if (refused.contains("bolts")) {
      return;
    }
    problems.error(
        where,
        given,
        sizes.isEmpty() ? "the diameter of a bolt in bolts" : "the diameter of one of: " + sizes,
        "Add bolts of this diameter to bolts, or correct it.");
  }

  Catalog catalog(Map<String, LocalDate> priceDates, List<String> priceSources) {
    return new Catalog(
        currency,
        items,
        ends,
        bars,
        plates,
        bolts,
        coils,
        airSprings,
        shocks,
        shaftTubes,
        operations,
        suppliers,
        welding.orElseThrow(),
        cutting.orElseThrow(),
        plateCutting.orElseThrow(),
        extras,
        listPrices,
        limits,
        analysis.orElseThrow(),
        shop.orElseThrow(),
        priceDates,
        priceSources);
  }
}
