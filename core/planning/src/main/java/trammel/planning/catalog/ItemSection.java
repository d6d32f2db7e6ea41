package trammel.planning.catalog;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;

/** The section {@code items}: everything else that is bought. */
final class ItemSection extends CatalogSection {
  private static final Field<String> UNIT =
      Field.text("unit", "what one of it is, such as each, ft or job", 20);
  private static final Field<String> BOUGHT =
      Field.choice("bought", "how it enters the price", List.of("part", "supply", "outside-work"));

  private static final Field<Double> LENGTH =
      Field.lengthMm(
              "length",
              "length by which it is chosen, such as that of a strap between its eyes",
              1,
              5000)
          .optional();

  private static final Field<String> PACK_TITLE =
      Field.text("title", "what the pack is, such as 11 lb spool", 60);
  private static final Field<BigDecimal> PACK_HOLDS =
      Field.money("holds", "how many units are in it");
  private static final Field<FieldValues> PACK =
      Field.section(
              "pack",
              "the pack that it only comes in; orders are for whole packs",
              List.<Field<?>>of(PACK_TITLE, PACK_HOLDS, Purchase.PRICE))
          .optional();
  private static final Field<String> ALTERNATE =
      Field.text("alternate", "name of the item to order while this one is out of stock", 60)
          .optional();

  ItemSection() {
    super(
        "items",
        "things bought by the piece, by name",
        List.of(
            Purchase.TITLE,
            UNIT,
            Purchase.PRICE,
            BOUGHT,
            Purchase.SUPPLIER,
            Purchase.LEAD_DAYS,
            Purchase.MASS,
            LENGTH,
            PACK,
            Purchase.BREAKS,
            Purchase.IN_STOCK,
            ALTERNATE));
  }

  @Override
  boolean isPriced() {
    return true;
  }

  @Override
  boolean isForPlugins() {
    return true;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    assembly.addItem(
        new Item(
            entry.key(),
            values.get(Purchase.TITLE),
            values.get(UNIT),
            values.get(Purchase.PRICE),
            bought(values.get(BOUGHT)),
            Purchase.supplier(entry, values),
            Purchase.leadDays(entry, values),
            values.find(Purchase.MASS).orElse(0.0),
            values.find(LENGTH).map(OptionalDouble::of).orElse(OptionalDouble.empty()),
            selling(values)),
        entry.location());
    if (values.find(ALTERNATE).isPresent()) {
      assembly.alternates.put(values.find(ALTERNATE).get(), values.locationOf(ALTERNATE));
    }
  }

  private static Selling selling(FieldValues values) {
    Optional<FieldValues> pack = values.find(PACK);
    return new Selling(
        pack.isPresent()
            ? Optional.of(
                new Selling.Pack(
                    pack.get().get(PACK_TITLE),
                    pack.get().get(PACK_HOLDS),
                    pack.get().get(Purchase.PRICE)))
            : Optional.empty(),
        Purchase.breaks(values),
        !values.get(Purchase.IN_STOCK),
        values.find(ALTERNATE));
  }

  private static BoughtAs bought(String word) {
    return switch (word) {
      case "part" -> BoughtAs.PART;
      case "supply" -> BoughtAs.SUPPLY;
      default -> BoughtAs.OUTSIDE_WORK;
    };
  }
}
