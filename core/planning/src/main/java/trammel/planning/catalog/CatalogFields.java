package trammel.planning.catalog;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import trammel.reading.fields.Field;

/** All fields of a catalog file, as data. */
public final class CatalogFields {
  /** What {@code format} must say. */
  public static final String FORMAT = "trammel-catalog/1";

  private static final int LONGEST_NOTE = 400;

  static final Field<String> FORMAT_FIELD =
      Field.choice("format", "what kind of file this is", List.of(FORMAT));
  static final Field<String> NOTE =
      Field.note("note", "anything to say about the file", LONGEST_NOTE).optional();
  static final Field<String> UNITS =
      Field.choice("units", "what bare numbers in this file mean", List.of("us", "metric"))
          .withDefault("us");
  static final Field<Currency> CURRENCY =
      Field.currency("currency", "currency of the prices; the same in every file").optional();
  static final Field<String> PRICES =
      Field.text("prices", "where the prices come from; needed if there are any", LONGEST_NOTE)
          .optional();
  static final Field<LocalDate> PRICED_ON =
      Field.date("priced_on", "day of the prices; a quote tells when they are old").optional();
  static final Field<String> SUPPLIER =
      Field.text("supplier", "supplier of every entry that names none", 60).optional();
  static final Field<Integer> LEAD_DAYS =
      Field.count("lead_days", "working days to delivery where an entry says none", 0, 365)
          .optional();

  private CatalogFields() {}

  /** The fields of a catalog file; groups hold the others as their children. */
  public static List<Field<?>> all() {
    List<Field<?>> all = head();
    for (CatalogSection section : sections()) {
      all.add(
          section.isSingle()
              ? Field.section(section.key(), section.help(), section.fields()).optional()
              : Field.namedSections(section.key(), section.help(), section.fields()).optional());
    }
    return List.copyOf(all);
  }

  /** The fields of a file, its sections kept as written. */
  static List<Field<?>> top(List<CatalogSection> sections) {
    List<Field<?>> top = head();
    for (CatalogSection section : sections) {
      top.add(Field.options(section.key(), section.help()).optional());
    }
    return top;
  }

  private static List<Field<?>> head() {
    return new ArrayList<>(
        List.of(FORMAT_FIELD, NOTE, UNITS, CURRENCY, PRICES, PRICED_ON, SUPPLIER, LEAD_DAYS));
  }

  /** The sections in the order in which they are assembled: what others refer to comes first. */
  static List<CatalogSection> sections() {
    return List.of(
        new SteelSection(),
        new BarSection(),
        new PlateSection(),
        new BoltSection(),
        new ItemSection(),
        new EndSection(),
        new CoilSection(),
        new AirSpringSection(),
        new ShockSection(),
        new ShaftTubeSection(),
        new OperationSection(),
        new SupplierSection(),
        new LimitSection(),
        new AnalysisSection(),
        new WeldingSection(),
        new CuttingSection(),
        new PlateCuttingSection(),
        new ShopExtraSection(),
        new ListPriceSection(),
        new ShopSection());
  }
}
