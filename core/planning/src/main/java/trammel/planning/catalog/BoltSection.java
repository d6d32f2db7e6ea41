package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.inches;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import trammel.planning.fields.Field;
import trammel.planning.fields.FieldValues;

/** The section {@code bolts}: bolts by diameter with their nut and washers. */
final class BoltSection extends CatalogSection {
  private static final Field<Double> DIAMETER =
      Field.lengthMm("diameter", "nominal diameter", inches(0.1875), inches(1.5));
  private static final Field<Double> THREADS =
      Field.number("threads_per_inch", "threads per inch", 4, 60);
  private static final Field<Integer> GRADE = Field.count("grade", "strength grade, 5 or 8", 5, 8);
  private static final Field<Double> NUT_HEIGHT =
      Field.lengthMm("nut_height", "height of the lock nut", inches(0.05), inches(1.9));
  private static final Field<Double> WASHER =
      Field.lengthMm("washer", "thickness of one washer", inches(0.01), inches(0.39));
  private static final Field<BigDecimal> NUT_PRICE =
      Field.money("nut_price", "price of a lock nut");
  private static final Field<BigDecimal> WASHER_PRICE =
      Field.money("washer_price", "price of a washer");
  private static final Field<Double> LENGTH =
      Field.lengthMm("length", "length under the head", inches(0.25), inches(30));
  private static final Field<List<FieldValues>> LENGTHS =
      Field.sections(
          "lengths", "stocked lengths, shortest first", List.<Field<?>>of(LENGTH, Purchase.PRICE));

  BoltSection() {
    super(
        "bolts",
        "bolts by diameter, by name",
        List.of(
            Purchase.TITLE,
            DIAMETER,
            THREADS,
            GRADE,
            NUT_HEIGHT,
            WASHER,
            NUT_PRICE,
            WASHER_PRICE,
            LENGTHS,
            Purchase.SUPPLIER,
            Purchase.SOURCE));
  }

  @Override
  boolean isPriced() {
    return true;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    assembly.bolts.put(
        entry.key(),
        new BoltSize(
            entry.key(),
            values.get(Purchase.TITLE),
            values.get(DIAMETER),
            values.get(THREADS),
            values.get(GRADE),
            values.get(NUT_HEIGHT),
            values.get(WASHER),
            lengths(values.get(LENGTHS)),
            values.get(NUT_PRICE),
            values.get(WASHER_PRICE),
            values.get(Purchase.SUPPLIER)));
  }

  private static List<BoltSize.Stocked> lengths(List<FieldValues> written) {
    List<BoltSize.Stocked> lengths = new ArrayList<>(written.size());
    double beforeMm = 0;
    for (FieldValues one : written) {
      double lengthMm = one.get(LENGTH);
      if (lengthMm <= beforeMm) {
        throw new IllegalArgumentException(
            "a stocked length of "
                + lengthMm
                + " mm stands after "
                + beforeMm
                + " mm. List each length once, the shortest first.");
      }
      beforeMm = lengthMm;
      lengths.add(new BoltSize.Stocked(lengthMm, one.get(Purchase.PRICE)));
    }
    return lengths;
  }
}
