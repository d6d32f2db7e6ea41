package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.inches;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import trammel.brackets.material.BoltSize;
import trammel.engine.strength.BoltGrade;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.trade.hardware.ScrewThread;
import trammel.trade.hardware.ThreadForm;

/** The section {@code bolts}: bolts by diameter with their nut and washers. */
final class BoltSection extends CatalogSection {
  private static final double INCH_MM = 25.4;

  /** The last length of a series counts although inches were converted to mm (mm). */
  private static final double ROUNDING_MM = 1e-6;

  private static final Field<Double> DIAMETER =
      Field.lengthMm("diameter", "nominal diameter", inches(0.1875), inches(1.5));
  private static final Field<Double> THREADS =
      Field.number("threads_per_inch", "of an inch thread, threads per inch", 4, 60).optional();
  private static final Field<Double> PITCH =
      Field.lengthMm("pitch", "of a metric thread (ISO 262), its pitch", 0.5, 4).optional();
  private static final Field<Integer> GRADE =
      Field.count("grade", "of an inch bolt, its strength grade: 5 or 8", 5, 8).optional();
  private static final Field<String> PROPERTY_CLASS =
      Field.choice(
              "property_class",
              "of a metric bolt, its property class by ISO 898-1",
              List.of("8.8", "10.9"))
          .optional();
  private static final Field<Double> NUT_HEIGHT =
      Field.lengthMm("nut_height", "height of the lock nut", inches(0.05), inches(1.9));
  private static final Field<Double> WASHER =
      Field.lengthMm("washer", "thickness of one washer", inches(0.01), inches(0.39));
  private static final Field<BigDecimal> NUT_PRICE =
      Field.money("nut_price", "price of a lock nut");
  private static final Field<BigDecimal> WASHER_PRICE =
      Field.money("washer_price", "price of a washer");
  private static final Field<Double> LENGTH =
      length("length", "length under the head, or the shortest of a series");
  private static final Field<Double> TO =
      length("to", "the longest of a series; needs step").optional();
  private static final Field<Double> STEP =
      Field.lengthMm("step", "from one length of a series to the next", inches(0.03), inches(6))
          .optional();
  private static final Field<BigDecimal> RISE =
      Field.money("rise", "what each step of a series costs more").optional();
  private static final Field<List<FieldValues>> LENGTHS =
      Field.sections(
          "lengths",
          "stocked lengths, one by one or in series, shortest first",
          List.<Field<?>>of(LENGTH, TO, STEP, Purchase.PRICE, RISE));

  BoltSection() {
    super(
        "bolts",
        "bolts by diameter, by name",
        List.of(
            Purchase.TITLE,
            DIAMETER,
            THREADS,
            PITCH,
            GRADE,
            PROPERTY_CLASS,
            NUT_HEIGHT,
            WASHER,
            NUT_PRICE,
            WASHER_PRICE,
            LENGTHS,
            Purchase.SUPPLIER,
            Purchase.LEAD_DAYS,
            Purchase.SOURCE));
  }

  private static Field<Double> length(String key, String help) {
    return Field.lengthMm(key, help, inches(0.25), inches(30));
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
            thread(values),
            grade(values),
            values.get(NUT_HEIGHT),
            values.get(WASHER),
            lengths(values.get(LENGTHS)),
            values.get(NUT_PRICE),
            values.get(WASHER_PRICE),
            Purchase.supplier(entry, values),
            Purchase.leadDays(entry, values)));
  }

  private static ScrewThread thread(FieldValues values) {
    double diameterMm = values.get(DIAMETER);
    String title = values.get(Purchase.TITLE);
    if (values.isWritten(THREADS) == values.isWritten(PITCH)) {
      throw new IllegalArgumentException(
          "a bolt has either threads_per_inch or a metric pitch. Give one of the two.");
    }
    return values.isWritten(THREADS)
        ? new ScrewThread(title, ThreadForm.UNIFIED, diameterMm, INCH_MM / values.get(THREADS))
        : new ScrewThread(title, ThreadForm.METRIC, diameterMm, values.get(PITCH));
  }

  private static BoltGrade grade(FieldValues values) {
    boolean inch = values.isWritten(THREADS);
    if (inch != values.isWritten(GRADE) || inch == values.isWritten(PROPERTY_CLASS)) {
      throw new IllegalArgumentException(
          "a bolt by threads per inch has a grade, a metric one a property_class. Give the one that"
              + " goes with its thread.");
    }
    if (!inch) {
      return values.get(PROPERTY_CLASS).equals("8.8") ? BoltGrade.CLASS_8_8 : BoltGrade.CLASS_10_9;
    }
    return switch (values.get(GRADE)) {
      case 5 -> BoltGrade.GRADE_5;
      case 8 -> BoltGrade.GRADE_8;
      default ->
          throw new IllegalArgumentException(
              "Grade of a bolt is " + values.get(GRADE) + "; give 5 or 8.");
    };
  }

  private static List<BoltSize.Stocked> lengths(List<FieldValues> written) {
    List<BoltSize.Stocked> lengths = new ArrayList<>();
    for (FieldValues one : written) {
      BigDecimal price = one.get(Purchase.PRICE);
      add(lengths, one.get(LENGTH), price);
      if (one.isWritten(TO) || one.isWritten(STEP)) {
        addSeries(lengths, one, price);
      }
    }
    return lengths;
  }

  private static void addSeries(
      List<BoltSize.Stocked> lengths, FieldValues series, BigDecimal firstPrice) {
    if (!series.isWritten(TO) || !series.isWritten(STEP)) {
      throw new IllegalArgumentException(
          "a series of lengths needs both to and step. Add the other, or take both out.");
    }
    double firstMm = series.get(LENGTH);
    double stepMm = series.get(STEP);
    BigDecimal rise = series.find(RISE).orElse(BigDecimal.ZERO);
    BigDecimal price = firstPrice;
    for (int i = 1; firstMm + i * stepMm <= series.get(TO) + ROUNDING_MM; i++) {
      price = price.add(rise);
      add(lengths, firstMm + i * stepMm, price);
    }
  }

  private static void add(List<BoltSize.Stocked> lengths, double lengthMm, BigDecimal price) {
    double beforeMm = lengths.isEmpty() ? 0 : lengths.get(lengths.size() - 1).lengthMm();
    if (lengthMm <= beforeMm) {
      throw new IllegalArgumentException(
          "a stocked length of "
              + lengthMm
              + " mm stands after "
              + beforeMm
              + " mm. List each length once, the shortest first.");
    }
    lengths.add(new BoltSize.Stocked(lengthMm, price));
  }
}
