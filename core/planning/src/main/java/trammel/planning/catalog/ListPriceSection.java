package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.inches;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;

/** The section {@code list_prices}: what suppliers' lists say, over the prices of the entries. */
final class ListPriceSection extends CatalogSection {
  private static final Field<BigDecimal> PRICE =
      Field.money("price", "price of one, for what is bought by the piece").optional();
  private static final Field<BigDecimal> PACK_PRICE =
      Field.money("pack_price", "price of a pack").optional();
  private static final Field<BigDecimal> NUT_PRICE =
      Field.money("nut_price", "for bolts, price of a lock nut").optional();
  private static final Field<BigDecimal> WASHER_PRICE =
      Field.money("washer_price", "for bolts, price of a washer").optional();
  private static final Field<Double> LENGTH =
      Field.lengthMm("length", "length of the stick, the bolt or the sheet", 1, inches(600));
  private static final Field<Double> WIDTH =
      Field.lengthMm("width", "width of the sheet", 1, inches(390)).optional();
  private static final Field<List<FieldValues>> SIZES =
      Field.sections(
              "sizes",
              "prices by size, for sticks, plates and bolts; a size not named keeps its price",
              List.<Field<?>>of(LENGTH, WIDTH, Purchase.PRICE, Purchase.BREAKS))
          .optional();
  private static final Field<List<String>> KNOWN_AS =
      Field.names("known_as", "what the supplier calls it: numbers of its own", 60).optional();
  private static final Field<LocalDate> PRICED_ON = Field.date("priced_on", "day of the price");
  private static final Field<String> SOURCE =
      Field.text("source", "where the price comes from, such as the name of the list", 200);

  ListPriceSection() {
    super(
        "list_prices",
        "prices of suppliers' lists, by the name of an entry of any section, in place of its own;"
            + " trammel prices writes them. A name that no entry has counts for nothing",
        List.of(
            PRICE,
            PACK_PRICE,
            NUT_PRICE,
            WASHER_PRICE,
            Purchase.BREAKS,
            SIZES,
            KNOWN_AS,
            PRICED_ON,
            SOURCE));
  }

  @Override
  boolean isNeeded() {
    return false;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    List<ListPrice.Size> sizes = new ArrayList<>();
    for (FieldValues size : values.find(SIZES).orElse(List.of())) {
      sizes.add(
          new ListPrice.Size(
              size.get(LENGTH),
              size.find(WIDTH).orElse(0.0),
              size.get(Purchase.PRICE),
              Purchase.breaks(size)));
    }
    assembly.listPrices.put(
        entry.key(),
        new ListPrice(
            entry.key(),
            values.find(PRICE),
            values.find(PACK_PRICE),
            values.find(NUT_PRICE),
            values.find(WASHER_PRICE),
            Purchase.breaks(values),
            sizes,
            values.find(KNOWN_AS).orElse(List.of()),
            values.get(PRICED_ON),
            values.get(SOURCE),
            entry.location()));
  }
}
