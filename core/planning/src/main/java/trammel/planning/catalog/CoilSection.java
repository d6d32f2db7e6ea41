package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.inches;
import static trammel.planning.catalog.CatalogUnits.poundsPerInch;

import java.util.List;
import java.util.Map;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.QuantityPrinter;

/**
 * The section {@code coils}: coil springs of one free length, each in several rates. The spring's
 * key is that of its family, a hyphen and that of its rate.
 */
final class CoilSection extends CatalogSection {
  private static final Field<Double> FREE_LENGTH =
      Field.lengthMm("free_length", "length without load", inches(3), inches(40));
  private static final Field<Double> OUTSIDE =
      Field.lengthMm("outside", "outside diameter", inches(1), inches(12));
  private static final Field<Double> RATE =
      Field.rateNPerMm("rate", "rate", poundsPerInch(10), poundsPerInch(3000));
  private static final Field<Double> SOLID =
      Field.lengthMm("solid", "length coil-bound", inches(0.5), inches(39));
  private static final Field<Map<String, FieldValues>> RATES =
      Field.namedSections(
          "rates",
          "the rates it comes in, by name",
          List.<Field<?>>of(RATE, SOLID, Purchase.PRICE, Purchase.MASS));

  CoilSection() {
    super(
        "coils",
        "coil springs for shocks, by name of the family",
        List.of(
            Purchase.TITLE,
            FREE_LENGTH,
            OUTSIDE,
            RATES,
            Purchase.SUPPLIER,
            Purchase.LEAD_DAYS,
            Purchase.SOURCE));
  }

  @Override
  boolean isPriced() {
    return true;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    QuantityPrinter printer = new QuantityPrinter(entry.units());
    for (Map.Entry<String, FieldValues> one : values.get(RATES).entrySet()) {
      FieldValues spring = one.getValue();
      String key = entry.key() + "-" + one.getKey();
      String title = values.get(Purchase.TITLE) + ", " + printer.rate(spring.get(RATE));
      assembly.coils.put(
          key,
          new CoilOverSpring(
              key,
              title,
              spring.get(RATE),
              values.get(FREE_LENGTH),
              spring.get(SOLID),
              values.get(OUTSIDE) / 2));
      assembly.addItem(Purchase.part(key, title, spring, values, entry), spring.location());
    }
  }
}
