package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.inches;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.brackets.material.PlateMaterial;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.trade.steel.PlateStock;

/** The section {@code plates}: plate by the sheet or drop. */
final class PlateSection extends CatalogSection {
  private static final Field<Double> THICKNESS =
      Field.lengthMm("thickness", "thickness", inches(0.02), inches(2));
  private static final Field<Double> WIDTH = side("width");
  private static final Field<Double> LENGTH = side("length");
  private static final Field<List<FieldValues>> SHEETS =
      Field.sections(
          "sheets",
          "the sizes it is sold in",
          List.<Field<?>>of(WIDTH, LENGTH, Purchase.PRICE, Purchase.BREAKS, Purchase.IN_STOCK));

  PlateSection() {
    super(
        "plates",
        "plate by thickness, by name",
        List.of(
            Purchase.TITLE,
            THICKNESS,
            BarSection.STEEL,
            SHEETS,
            Purchase.SUPPLIER,
            Purchase.LEAD_DAYS));
  }

  private static Field<Double> side(String key) {
    return Field.lengthMm(key, key + " of the sheet", inches(2), inches(390));
  }

  @Override
  boolean isPriced() {
    return true;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    Optional<CatalogAssembly.Steel> steel =
        assembly.steel(values.get(BarSection.STEEL), values.locationOf(BarSection.STEEL));
    if (steel.isEmpty()) {
      return;
    }
    List<PlateMaterial.Sheet> sheets = new ArrayList<>();
    for (FieldValues sheet : values.get(SHEETS)) {
      sheets.add(
          new PlateMaterial.Sheet(
              sheet.get(WIDTH),
              sheet.get(LENGTH),
              sheet.get(Purchase.PRICE),
              sheet.get(Purchase.IN_STOCK),
              Purchase.breaks(sheet)));
    }
    assembly.plates.put(
        entry.key(),
        new PlateMaterial(
            entry.key(),
            values.get(Purchase.TITLE),
            new PlateStock(values.get(THICKNESS)),
            steel.get().yieldMPa(),
            steel.get().tensileMPa(),
            sheets,
            Purchase.supplier(entry, values),
            Purchase.leadDays(entry, values)));
  }
}
