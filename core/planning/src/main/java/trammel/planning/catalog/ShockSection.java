package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.inches;

import java.util.List;
import trammel.brackets.material.Shock;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;

/** The section {@code shocks}: shocks by stroke and length. */
final class ShockSection extends CatalogSection {
  private static final Field<Double> CLOSED =
      Field.lengthMm("closed", "eye to eye, fully closed", inches(3), inches(60));
  private static final Field<Double> OPEN =
      Field.lengthMm("open", "eye to eye, fully open", inches(3), inches(100));
  private static final Field<Double> BODY =
      Field.lengthMm("body", "outside diameter", inches(0.5), inches(12));
  private static final Field<Boolean> COIL_OVER =
      Field.flag("coil_over", "true if a coil spring sits on it");
  private static final Field<Double> BOLT =
      Field.lengthMm("bolt", "diameter of its mounting bolts", inches(0.1875), inches(1.5));
  private static final Field<Double> EYE_WIDTH =
      Field.lengthMm("eye_width", "width of its eyes between the tabs", inches(0.25), inches(6));

  ShockSection() {
    super(
        "shocks",
        "shocks, by name",
        List.of(
            Purchase.TITLE,
            CLOSED,
            OPEN,
            BODY,
            COIL_OVER,
            BOLT,
            EYE_WIDTH,
            Purchase.PRICE,
            Purchase.MASS,
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
    String title = values.get(Purchase.TITLE);
    assembly.shocks.put(
        entry.key(),
        new Shock(
            entry.key(),
            title,
            values.get(CLOSED),
            values.get(OPEN),
            values.get(BODY) / 2,
            values.get(COIL_OVER),
            values.get(BOLT),
            values.get(EYE_WIDTH)));
    Purchase.addPart(entry.key(), title, values, entry, assembly);
    assembly.requireBolt(values.get(BOLT), "a bolt of its own diameter", values.locationOf(BOLT));
  }
}
