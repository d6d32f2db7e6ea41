package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.inches;

import java.math.BigDecimal;
import java.util.List;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;

/** The section {@code suppliers}: what each asks for an order beside its prices. */
final class SupplierSection extends CatalogSection {
  private static final Field<BigDecimal> MINIMUM =
      Field.money("minimum_order", "least value of an order").optional();
  private static final Field<BigDecimal> SMALL =
      Field.money("small_order_charge", "added to an order under the least value").optional();
  private static final Field<BigDecimal> FREIGHT =
      Field.money("freight", "freight of an order").optional();
  private static final Field<BigDecimal> FREE =
      Field.money("freight_free_from", "value of an order from which freight is free").optional();
  private static final Field<Double> LONG =
      Field.lengthMm(
              "over_length", "length beyond which a stick is over-length", inches(6), inches(600))
          .optional();
  private static final Field<BigDecimal> LONG_CHARGE =
      Field.money("over_length_charge", "added once to an order with an over-length stick")
          .optional();

  private static final Field<String> ADDRESS =
      Field.text("address", "where orders are sent, as it stands on them", 200).optional();
  private static final Field<String> ACCOUNT =
      Field.text("account", "the shop's number with the supplier", 60).optional();

  SupplierSection() {
    super(
        "suppliers",
        "what suppliers ask for an order beside their prices, by the name that entries give",
        List.of(MINIMUM, SMALL, FREIGHT, FREE, LONG, LONG_CHARGE, ADDRESS, ACCOUNT));
  }

  @Override
  boolean isNeeded() {
    return false;
  }

  @Override
  boolean isPriced() {
    return true;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    assembly.suppliers.put(
        entry.key(),
        new SupplierTerms(
            entry.key(),
            values.find(MINIMUM),
            values.find(SMALL),
            values.find(FREIGHT),
            values.find(FREE),
            values.find(LONG),
            values.find(LONG_CHARGE),
            values.find(ADDRESS),
            values.find(ACCOUNT)));
  }
}
