package trammel.planning.catalog;

import java.math.BigDecimal;
import java.util.List;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;

/** The section {@code extras}: what the shop bills by rules of its own. */
final class ShopExtraSection extends CatalogSection {
  private static final Field<String> PER =
      Field.text("per", "job for every job, or the operation whose quantity it goes by", 60)
          .withDefault(ShopExtra.EVERY_JOB);
  private static final Field<String> ITEM =
      Field.text("item", "name of the item that is billed", 60).optional();
  private static final Field<String> OPERATION =
      Field.text("operation", "name of the operation that is billed", 60).optional();
  private static final Field<BigDecimal> QUANTITY =
      Field.money("quantity", "how many for each").withDefault(BigDecimal.ONE);
  private static final Field<BigDecimal> SHARE =
      Field.exactPercent("share", "share of the price before tax, such as the fee of a card", 0, 1)
          .optional();

  ShopExtraSection() {
    super(
        "extras",
        "what the shop bills by rules of its own: on every job, for each notch, as a share",
        List.of(Purchase.TITLE, PER, ITEM, OPERATION, QUANTITY, SHARE));
  }

  @Override
  boolean isNeeded() {
    return false;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    values.find(ITEM).ifPresent(item -> assembly.requireItem(item, values.locationOf(ITEM)));
    values
        .find(OPERATION)
        .ifPresent(operation -> assembly.requireOperation(operation, values.locationOf(OPERATION)));
    if (!values.get(PER).equals(ShopExtra.EVERY_JOB)) {
      assembly.requireOperation(values.get(PER), values.locationOf(PER));
    }
    assembly.extras.put(
        entry.key(),
        new ShopExtra(
            entry.key(),
            values.get(Purchase.TITLE),
            values.get(PER),
            values.find(ITEM),
            values.find(OPERATION),
            values.get(QUANTITY),
            values.find(SHARE)));
  }
}
