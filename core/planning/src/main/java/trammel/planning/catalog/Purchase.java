package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.pounds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.brackets.material.PriceBreak;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.UnitSystem;

/** The fields of anything that is bought. */
final class Purchase {
  static final Field<String> TITLE = Field.text("title", "what it is, for lists and orders", 90);
  static final Field<BigDecimal> PRICE = Field.money("price", "price of one");
  static final Field<Boolean> IN_STOCK =
      Field.flag("in_stock", "whether the supplier has it").withDefault(true);
  static final Field<String> SUPPLIER =
      Field.text("supplier", "who delivers it, unless the top of the file says it", 60).optional();
  static final Field<Integer> LEAD_DAYS =
      Field.count(
              "lead_days", "working days to delivery, unless the top of the file says it", 0, 365)
          .optional();
  private static final Field<Integer> BREAK_FROM =
      Field.count("from", "from how many on; packs where there are packs", 2, 1_000_000);
  static final Field<List<FieldValues>> BREAKS =
      Field.sections(
              "breaks",
              "lower prices of one from a number on, for orders",
              List.<Field<?>>of(BREAK_FROM, PRICE))
          .optional();
  static final Field<Double> MASS =
      Field.massKg("mass", "weight of one on the vehicle", 0, pounds(1000)).optional();
  static final Field<String> SOURCE =
      Field.text("source", "where its figures come from, such as own records or invented", 200);

  private Purchase() {}

  /**
   * The supplier of an entry.
   *
   * @throws IllegalArgumentException if neither the entry nor its file says it
   */
  static String supplier(CatalogEntry entry, FieldValues values) {
    Optional<String> own = values.find(SUPPLIER);
    Optional<String> supplier = own.isPresent() ? own : entry.usual().supplier();
    if (supplier.isEmpty()) {
      throw missing(SUPPLIER);
    }
    return supplier.get();
  }

  /**
   * The working days to delivery of an entry.
   *
   * @throws IllegalArgumentException if neither the entry nor its file says them
   */
  static int leadDays(CatalogEntry entry, FieldValues values) {
    Optional<Integer> own = values.find(LEAD_DAYS);
    Optional<Integer> leadDays = own.isPresent() ? own : entry.usual().leadDays();
    if (leadDays.isEmpty()) {
      throw missing(LEAD_DAYS);
    }
    return leadDays.get();
  }

  private static IllegalArgumentException missing(Field<?> field) {
    return new IllegalArgumentException(
        field.key()
            + " stands neither here nor at the top of the file. Add it, such as "
            + field.key()
            + ": "
            + field.example(UnitSystem.US)
            + ".");
  }

  /** The price breaks of an entry, none if it says none. */
  static List<PriceBreak> breaks(FieldValues values) {
    List<PriceBreak> breaks = new ArrayList<>();
    for (FieldValues one : values.find(BREAKS).orElse(List.of())) {
      breaks.add(new PriceBreak(one.get(BREAK_FROM), one.get(PRICE)));
    }
    return breaks;
  }

  /** Adds the priced item of an entry that is bought by the piece as a part. */
  static void addPart(
      String key, String title, FieldValues values, CatalogEntry entry, CatalogAssembly assembly) {
    assembly.addItem(part(key, title, values, values, entry), entry.location());
  }

  /**
   * A part that is bought by the piece.
   *
   * @param priced where its price and weight are written
   * @param bought where its supplier is written
   */
  static Item part(
      String key, String title, FieldValues priced, FieldValues bought, CatalogEntry entry) {
    return new Item(
        key,
        title,
        "each",
        priced.get(PRICE),
        BoughtAs.PART,
        supplier(entry, bought),
        leadDays(entry, bought),
        priced.find(MASS).orElse(0.0));
  }
}
