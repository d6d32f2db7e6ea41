package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.pounds;

import java.math.BigDecimal;
import trammel.planning.fields.Field;
import trammel.planning.fields.FieldValues;

/** The fields of anything that is bought. */
final class Purchase {
  static final Field<String> TITLE = Field.text("title", "what it is, for lists and orders", 90);
  static final Field<BigDecimal> PRICE = Field.money("price", "price of one");
  static final Field<String> SUPPLIER =
      Field.text("supplier", "who delivers it; may stand once at the top of the file", 60);
  static final Field<Integer> LEAD_DAYS =
      Field.count(
          "lead_days", "working days to delivery; may stand once at the top of the file", 0, 365);
  static final Field<Double> MASS =
      Field.massKg("mass", "weight of one on the vehicle", 0, pounds(1000)).optional();
  static final Field<String> SOURCE =
      Field.text("source", "where its figures come from, such as own records or invented", 200);

  private Purchase() {}

  /** The priced item of an entry that is bought by the piece as a part. */
  static Item part(String key, String title, FieldValues priced, FieldValues bought) {
    return new Item(
        key,
        title,
        "each",
        priced.get(PRICE),
        BoughtAs.PART,
        bought.get(SUPPLIER),
        bought.get(LEAD_DAYS),
        priced.find(MASS).orElse(0.0));
  }
}
