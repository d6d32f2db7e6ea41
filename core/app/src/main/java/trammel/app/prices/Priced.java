package trammel.app.prices;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.brackets.material.BarMaterial;
import trammel.brackets.material.BoltSize;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.material.PriceBreak;
import trammel.ledger.PriceHistory;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.Item;
import trammel.planning.catalog.Selling;

/**
 * Something in the catalog that has a price of its own.
 *
 * @param key name of its entry
 * @param title what it is, without its size
 * @param of what of the entry the price is of
 * @param lengthMm length of a stick, a bolt or a sheet (mm); 0 for anything else
 * @param widthMm width of a sheet (mm); 0 for anything else
 * @param unit what one of it is
 * @param price what one costs now
 * @param breaks lower prices from a number on
 * @param pack the pack that it only comes in
 * @param supplier who delivers it
 */
record Priced(
    String key,
    String title,
    PriceHistory.Of of,
    double lengthMm,
    double widthMm,
    String unit,
    BigDecimal price,
    List<PriceBreak> breaks,
    Optional<Selling.Pack> pack,
    String supplier) {
  private static final String EACH = "each";
  private static final String STICK = "stick";

  /** True if it is told from others of its entry by its size. */
  boolean isSized() {
    return lengthMm > 0;
  }

  /** True for a stick, of which a list may give the price of a foot. */
  boolean isStick() {
    return unit.equals(STICK);
  }

  /** True if it may have lower prices from a number on: bolts and what goes with them have none. */
  boolean mayHaveBreaks() {
    return of == PriceHistory.Of.ONE && !(isSized() && unit.equals(EACH));
  }

  /** Everything that a catalog has a price of. */
  static List<Priced> all(Catalog catalog) {
    List<Priced> all = new ArrayList<>();
    catalog.items().values().forEach(item -> all.add(of(item)));
    catalog.bars().values().forEach(bar -> add(all, bar));
    catalog.plates().values().forEach(plate -> add(all, plate));
    catalog.bolts().values().forEach(bolt -> add(all, bolt));
    return all;
  }

  private static Priced of(Item item) {
    return new Priced(
        item.key(),
        item.title(),
        PriceHistory.Of.ONE,
        0,
        0,
        item.unit(),
        item.price(),
        item.selling().breaks(),
        item.selling().pack(),
        item.supplier());
  }

  private static void add(List<Priced> all, BarMaterial bar) {
    for (BarMaterial.Stick stick : bar.sticks()) {
      all.add(
          sized(
              bar.key(),
              bar.title(),
              stick.lengthMm(),
              0,
              STICK,
              stick.price(),
              stick.breaks(),
              bar.supplier()));
    }
  }

  private static void add(List<Priced> all, PlateMaterial plate) {
    for (PlateMaterial.Sheet sheet : plate.sheets()) {
      all.add(
          sized(
              plate.key(),
              plate.title(),
              sheet.lengthMm(),
              sheet.widthMm(),
              "sheet",
              sheet.price(),
              sheet.breaks(),
              plate.supplier()));
    }
  }

  private static void add(List<Priced> all, BoltSize bolt) {
    for (BoltSize.Stocked stocked : bolt.lengths()) {
      all.add(
          sized(
              bolt.key(),
              bolt.title(),
              stocked.lengthMm(),
              0,
              EACH,
              stocked.price(),
              List.of(),
              bolt.supplier()));
    }
    all.add(small(bolt, PriceHistory.Of.NUT, "lock nut", bolt.nutPrice()));
    all.add(small(bolt, PriceHistory.Of.WASHER, "washer", bolt.washerPrice()));
  }

  private static Priced sized(
      String key,
      String title,
      double lengthMm,
      double widthMm,
      String unit,
      BigDecimal price,
      List<PriceBreak> breaks,
      String supplier) {
    return new Priced(
        key,
        title,
        PriceHistory.Of.ONE,
        lengthMm,
        widthMm,
        unit,
        price,
        breaks,
        Optional.empty(),
        supplier);
  }

  private static Priced small(BoltSize bolt, PriceHistory.Of of, String word, BigDecimal price) {
    return new Priced(
        bolt.key(),
        bolt.title() + ", " + word,
        of,
        0,
        0,
        EACH,
        price,
        List.of(),
        Optional.empty(),
        bolt.supplier());
  }

  /** The name under which a list names it: that of its entry, for nut and washer with its word. */
  String name() {
    return of == PriceHistory.Of.NUT || of == PriceHistory.Of.WASHER ? key + "-" + of.word() : key;
  }
}
