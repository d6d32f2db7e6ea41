package trammel.planning.catalog;

import trammel.reading.fields.FieldDocumentation;

/** What a catalog file may hold, generated from its fields. */
public final class CatalogReference {
  private CatalogReference() {}

  /** The reference of the catalog file in Markdown: a table for every group. */
  public static String markdown() {
    return "# Catalog file\n\n"
        + "A catalog is a folder of JSON (`.json`) or YAML (`.yaml`, `.yml`) files with the keys"
        + " below. Any section may stand in any file, and a section may be split over files; in one"
        + " folder every name stands once. Quantities are written with their unit: `1 1/2 in`,"
        + " `20 ft`, `60 ksi`, `180 lb/in`, `0.5 h`, `4 %`. A number without unit takes the units of"
        + " its file.\n\n"
        + "A shop's own folder is read after the standard one. It may add entries, and it may name a"
        + " standard entry again with only the keys that differ, such as its own price. The key of a"
        + " coil spring is the name of its family, a hyphen and the name of its rate.\n\n"
        + FieldDocumentation.of(CatalogFields.all());
  }
}
