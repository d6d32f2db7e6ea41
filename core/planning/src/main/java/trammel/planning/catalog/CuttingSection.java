package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.inches;

import java.util.List;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;

/** The section {@code cutting}: how the shop cuts. */
final class CuttingSection extends CatalogSection {
  private static final Field<Double> SAW_KERF = kerf("saw_kerf", "what the saw takes");
  private static final Field<Double> SAW_TRIM =
      Field.lengthMm("saw_trim", "trimmed off the mill end of a stick", 0, inches(12));
  private static final Field<Double> TABLE_KERF = kerf("table_kerf", "what the plate cutter takes");
  private static final Field<Double> LEAD_IN_ROOM =
      Field.lengthMm(
          "lead_in_room",
          "between plates on a sheet for the torch to pierce and run in, beside the kerf",
          0,
          inches(3));
  private static final Field<Double> SHEET_MARGIN =
      Field.lengthMm("sheet_margin", "kept free along a sheet's edge", 0, inches(6));
  private static final Field<Double> USEFUL_STICK =
      Field.lengthMm(
          "useful_stick", "offcut of a stick that goes back on the rack", inches(1), inches(240));
  private static final Field<Double> USEFUL_SHEET =
      Field.lengthMm(
          "useful_sheet", "least side of a sheet's offcut that goes back", inches(1), inches(96));

  private static final Field<String> CUT_FILE_UNITS =
      Field.choice(
              "cut_file_units",
              "units of the DXF files for the cutting table; job: inches in a job in US units",
              CutFileUnits.words())
          .withDefault(CutFileUnits.MILLIMETRES.word());

  CuttingSection() {
    super(
        "cutting",
        "how the shop cuts",
        List.of(
            SAW_KERF,
            SAW_TRIM,
            TABLE_KERF,
            LEAD_IN_ROOM,
            SHEET_MARGIN,
            USEFUL_STICK,
            USEFUL_SHEET,
            CUT_FILE_UNITS,
            Purchase.SOURCE));
  }

  private static Field<Double> kerf(String key, String help) {
    return Field.lengthMm(key, help, 0, inches(0.75));
  }

  @Override
  boolean isSingle() {
    return true;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    assembly.cutting =
        Optional.of(
            new CuttingPractice(
                values.get(SAW_KERF),
                values.get(SAW_TRIM),
                values.get(TABLE_KERF),
                values.get(LEAD_IN_ROOM),
                values.get(SHEET_MARGIN),
                values.get(USEFUL_STICK),
                values.get(USEFUL_SHEET),
                CutFileUnits.ofWord(values.get(CUT_FILE_UNITS))));
  }
}
