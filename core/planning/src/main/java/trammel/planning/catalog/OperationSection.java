package trammel.planning.catalog;

import java.util.List;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.trade.labour.Operation;
import trammel.trade.labour.ThreePoint;

/** The section {@code operations}: standard hours. */
final class OperationSection extends CatalogSection {
  private static final double MOST_HOURS = 1000;

  private static final Field<String> PER =
      Field.text("per", "what is counted, singular: job, bracket, cut", 40);
  private static final Field<Double> LOW = hours("low", "least hours that are still realistic");
  private static final Field<Double> LIKELY = hours("likely", "most likely hours");
  private static final Field<Double> HIGH = hours("high", "most hours that are still realistic");
  private static final Field<List<String>> FACTORS =
      Field.choices("factors", "what makes it take longer", List.of("rust", "access", "finish"))
          .withDefault(List.of());

  OperationSection() {
    super(
        "operations",
        "standard operations with their hours, by name",
        List.of(Purchase.TITLE, PER, LOW, LIKELY, HIGH, FACTORS, Purchase.SOURCE));
  }

  private static Field<Double> hours(String key, String help) {
    return Field.timeHours(key, help + ", for one", 0, MOST_HOURS);
  }

  @Override
  boolean isForPlugins() {
    return true;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    assembly.operations.put(
        entry.key(),
        new Operation(
            entry.key(),
            values.get(Purchase.TITLE),
            values.get(PER),
            new ThreePoint(values.get(LOW), values.get(LIKELY), values.get(HIGH)),
            values.get(FACTORS),
            values.get(Purchase.SOURCE)));
  }
}
