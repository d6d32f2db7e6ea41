package trammel.brackets.material;

import java.math.BigDecimal;
import java.util.List;
import trammel.engine.quantity.Given;
import trammel.trade.steel.PlateStock;

/**
 * Plate of one thickness and the sheets it is sold in.
 *
 * @param key the name by which plans ask for it
 * @param title what it is, for a cut list
 * @param form its thickness
 * @param yieldMPa minimum yield strength (MPa), above 0
 * @param tensileMPa minimum tensile strength (MPa), above the yield
 * @param sheets the sizes it is sold in
 * @param supplier who delivers it
 * @param leadDays working days from order to delivery
 */
public record PlateMaterial(
    String key,
    String title,
    PlateStock form,
    double yieldMPa,
    double tensileMPa,
    List<Sheet> sheets,
    String supplier,
    int leadDays) {
  /** Sizes no further apart than this are one; they differ by the rounding of inches only. */
  private static final double SAME_SIZE_MM = 0.01;

  public PlateMaterial {
    Given.text("key of a plate", key, "Give it a short name.");
    Given.text("title of plate '" + key + "'", title, "Say what it is.");
    Given.present("thickness of plate '" + key + "'", form, "Give it.");
    Given.positive("yield of plate '" + key + "' in MPa", yieldMPa, 2000, "", "See its standard.");
    Given.within(
        "tensile of plate '" + key + "' in MPa",
        tensileMPa,
        yieldMPa,
        3000,
        "",
        "See its standard.");
    sheets = List.copyOf(sheets);
    Given.count("sheets of plate '" + key + "'", sheets.size(), 1, 50, "Give one at least.");
    Given.text("supplier of plate '" + key + "'", supplier, "Say who delivers it.");
    Given.count("lead time of plate '" + key + "'", leadDays, 0, 365, "Ask the supplier.");
  }

  /** Price of one sheet when this many of this size are ordered. */
  public BigDecimal priceEach(double widthMm, double lengthMm, int count) {
    for (Sheet sheet : sheets) {
      if (Math.abs(sheet.widthMm() - widthMm) < SAME_SIZE_MM
          && Math.abs(sheet.lengthMm() - lengthMm) < SAME_SIZE_MM) {
        return PriceBreak.lowest(sheet.price(), sheet.breaks(), count);
      }
    }
    throw new IllegalArgumentException(
        "plate '"
            + key
            + "' is not sold in sheets of "
            + widthMm
            + " x "
            + lengthMm
            + " mm. Order a size that is.");
  }

  /**
   * One size in which a plate is sold.
   *
   * @param widthMm width (mm), above 0
   * @param lengthMm length (mm), above 0
   * @param price price of the sheet in the catalog's currency
   * @param inStock whether the supplier has it
   * @param breaks lower prices from a number of sheets on
   */
  public record Sheet(
      double widthMm, double lengthMm, BigDecimal price, boolean inStock, List<PriceBreak> breaks) {
    public Sheet {
      breaks = List.copyOf(breaks);
      Given.positive("sheet width", widthMm, 10_000, "mm", "Give the sheet's size.");
      Given.positive("sheet length", lengthMm, 20_000, "mm", "Give the sheet's size.");
      Given.present("price of a sheet", price, "Give an amount.");
    }
  }
}
