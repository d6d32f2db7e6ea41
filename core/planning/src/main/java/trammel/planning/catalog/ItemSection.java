package trammel.planning.catalog;

import java.util.List;
import trammel.planning.fields.Field;
import trammel.planning.fields.FieldValues;

/** The section {@code items}: everything else that is bought. */
final class ItemSection extends CatalogSection {
  private static final Field<String> UNIT =
      Field.text("unit", "what one of it is, such as each, ft or job", 20);
  private static final Field<String> BOUGHT =
      Field.choice("bought", "how it enters the price", List.of("part", "supply", "outside-work"));

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
            Purchase.MASS));
  }

  @Override
  boolean isPriced() {
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
            values.find(Purchase.MASS).orElse(0.0)),
        entry.location());
  }

  private static BoughtAs bought(String word) {
    return switch (word) {
      case "part" -> BoughtAs.PART;
      case "supply" -> BoughtAs.SUPPLY;
      default -> BoughtAs.OUTSIDE_WORK;
    };
  }
}
