package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.psi;

import java.util.List;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;

/** The section {@code steels}: grades with their least strengths. */
final class SteelSection extends CatalogSection {
  private static final Field<Double> YIELD =
      Field.pressureMPa("yield", "least yield strength of the grade", psi(10_000), psi(250_000));
  private static final Field<Double> TENSILE =
      Field.pressureMPa("tensile", "least tensile strength", psi(20_000), psi(300_000));

  SteelSection() {
    super(
        "steels",
        "grades of steel by name",
        List.of(Purchase.TITLE, YIELD, TENSILE, Purchase.SOURCE));
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    double yieldMPa = values.get(YIELD);
    double tensileMPa = values.get(TENSILE);
    if (tensileMPa < yieldMPa) {
      throw new IllegalArgumentException(
          "the tensile strength is below the yield strength. Look both up again.");
    }
    assembly.steels.put(entry.key(), new CatalogAssembly.Steel(yieldMPa, tensileMPa));
  }
}
