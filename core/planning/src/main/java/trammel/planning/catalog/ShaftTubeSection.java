package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.inches;

import java.util.List;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;

/** The section {@code shaft_tubes}: driveshafts made to length, of tube with new ends, balanced. */
final class ShaftTubeSection extends CatalogSection {
  private static final Field<Double> OUTSIDE =
      Field.lengthMm("outside", "outside diameter of its tube", inches(1), inches(8));
  private static final Field<Double> WALL =
      Field.lengthMm("wall", "wall of its tube", inches(0.03), inches(0.5));

  ShaftTubeSection() {
    super(
        "shaft_tubes",
        "driveshafts of one piece that are made to length, by name of their steel tube",
        List.of(
            Purchase.TITLE,
            OUTSIDE,
            WALL,
            Purchase.PRICE,
            Purchase.SUPPLIER,
            Purchase.LEAD_DAYS,
            Purchase.SOURCE));
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
    String title = values.get(Purchase.TITLE);
    assembly.shaftTubes.put(
        entry.key(), new ShaftTube(entry.key(), title, values.get(OUTSIDE), values.get(WALL)));
    assembly.addItem(
        new Item(
            entry.key(),
            title,
            "each",
            values.get(Purchase.PRICE),
            BoughtAs.OUTSIDE_WORK,
            Purchase.supplier(entry, values),
            Purchase.leadDays(entry, values),
            0),
        entry.location());
  }
}
