package trammel.app.prices;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.files.Csv;
import trammel.app.files.CsvText;
import trammel.app.rack.RackFile;
import trammel.brackets.material.PriceBreak;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.ListPrice;
import trammel.planning.catalog.Selling;
import trammel.reading.quantity.QuantityPrinter;

/** Everything of a catalog that has a price, line by line, as a table that can be filled in. */
public final class PriceSheet {
  private static final String PACK = "pack";

  private final Catalog catalog;
  private final QuantityPrinter printer;
  private final List<Priced> all;

  /**
   * @param printer prints lengths; what is read back is in its unit system
   */
  public PriceSheet(Catalog catalog, QuantityPrinter printer) {
    this.catalog = catalog;
    this.printer = printer;
    all = Priced.all(catalog);
  }

  /**
   * A line.
   *
   * @param id tells it from all others: the name of what is priced, and its size
   * @param title what it is, with its size
   * @param unit what the price is of
   * @param price the price now; of a pack where it only comes in packs
   * @param supplier who delivers it
   * @param pricedOn day of a price from a list
   * @param source where a price from a list comes from; empty for one of the catalog
   */
  public record Line(
      String id,
      String title,
      String unit,
      BigDecimal price,
      String supplier,
      Optional<LocalDate> pricedOn,
      String source) {}

  /** The lines, in the order of the catalog. */
  public List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    for (Priced one : all) {
      Optional<ListPrice> listed = Optional.ofNullable(catalog.listPrices().get(one.key()));
      lines.add(
          new Line(
              id(one),
              PriceWords.title(one, printer),
              one.pack().map(Selling.Pack::title).orElse(one.unit()),
              price(one),
              one.supplier(),
              listed.map(ListPrice::pricedOn),
              listed.map(ListPrice::source).orElse("")));
    }
    return lines;
  }

  private static BigDecimal price(Priced one) {
    return one.pack().map(Selling.Pack::price).orElse(one.price());
  }

  private String id(Priced one) {
    return one.isSized() ? id(one.name(), one.lengthMm(), one.widthMm(), printer) : one.name();
  }

  /**
   * The id of a line.
   *
   * @param name the name of what is priced
   * @param lengthMm its length (mm); 0 for what has one size
   * @param widthMm its width (mm); 0 for all but sheets
   */
  public static String id(String name, double lengthMm, double widthMm, QuantityPrinter printer) {
    if (lengthMm <= 0) {
      return name;
    }
    String length = RackFile.length(lengthMm, printer);
    return name
        + ", "
        + (widthMm > 0 ? RackFile.length(widthMm, printer) + " x " + length : length);
  }

  /**
   * A list with new prices, as {@link PriceListReader} reads it: a line for each, in their order,
   * and behind them the lower prices from a number on, which stay.
   *
   * @param prices new prices as they were typed, by the line's id
   * @throws IllegalArgumentException if a line is none of the sheet
   */
  public String list(Map<String, String> prices) {
    Csv csv = new Csv().row("item", "width", "length", "unit", "from", "price");
    List<Priced> changed = new ArrayList<>();
    prices.forEach(
        (id, price) -> {
          Priced one =
              all.stream()
                  .filter(priced -> id(priced).equals(id))
                  .findFirst()
                  .orElseThrow(
                      () ->
                          new IllegalArgumentException("Nothing of the catalog is '" + id + "'."));
          changed.add(one);
          add(csv, one, "", price);
        });
    for (Priced one : changed) {
      for (PriceBreak lower : one.breaks()) {
        add(csv, one, String.valueOf(lower.from()), lower.price().toPlainString());
      }
    }
    return csv.text();
  }

  private void add(Csv csv, Priced one, String from, String price) {
    csv.row(
        CsvText.safe(one.name()),
        one.widthMm() > 0 ? RackFile.length(one.widthMm(), printer) : "",
        one.isSized() ? RackFile.length(one.lengthMm(), printer) : "",
        one.pack().isPresent() ? PACK : "",
        from,
        CsvText.safe(price));
  }
}
