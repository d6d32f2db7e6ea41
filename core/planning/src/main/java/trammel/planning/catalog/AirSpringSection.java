package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.inches;
import static trammel.planning.catalog.CatalogUnits.psi;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.springs.AirSpringPoint;
import trammel.engine.springs.AirSpringSize;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.UnitSystem;

/** The section {@code air_springs}: air springs with their load-height tables. */
final class AirSpringSection extends CatalogSection {
  private static final Field<Double> OUTSIDE =
      Field.lengthMm("outside", "largest outside diameter inflated", inches(1.5), inches(30));
  private static final Field<Double> HIGHEST_PRESSURE =
      Field.pressureMPa(
          "highest_pressure", "highest working pressure above the atmosphere", psi(10), psi(600));
  private static final Field<Double> HEIGHT =
      Field.lengthMm("height", "height between its faces", inches(0.5), inches(40));
  private static final Field<Double> AREA =
      Field.number(
          "area",
          "effective area, load over pressure: in² in a file in us units, cm² in a metric one",
          0.5,
          5000);
  private static final Field<Double> VOLUME =
      Field.number(
          "volume", "inner volume: in³ in a file in us units, cm³ in a metric one", 0.5, 200_000);
  private static final Field<List<FieldValues>> TABLE =
      Field.sections(
          "table",
          "effective area and volume by height, lowest first",
          List.<Field<?>>of(HEIGHT, AREA, VOLUME));

  AirSpringSection() {
    super(
        "air_springs",
        "air springs, by name",
        List.of(
            Purchase.TITLE,
            OUTSIDE,
            HIGHEST_PRESSURE,
            TABLE,
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
    assembly.airSprings.put(
        entry.key(),
        new AirSpring(
            entry.key(),
            title,
            new AirSpringSize(title, table(values.get(TABLE), entry.units())),
            values.get(OUTSIDE) / 2,
            values.get(HIGHEST_PRESSURE)));
    Purchase.addPart(entry.key(), title, values, entry, assembly);
  }

  private static List<AirSpringPoint> table(List<FieldValues> rows, UnitSystem units) {
    List<AirSpringPoint> table = new ArrayList<>(rows.size());
    for (FieldValues row : rows) {
      table.add(
          new AirSpringPoint(
              row.get(HEIGHT),
              CatalogUnits.areaMm2(row.get(AREA), units),
              CatalogUnits.volumeMm3(row.get(VOLUME), units)));
    }
    return table;
  }
}
