package trammel.brackets.material;

import java.math.BigDecimal;
import java.util.List;
import trammel.trade.given.Given;
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
    Given.text(key, "Key of a plate", "Give it a short name.");
    Given.text(title, "Title of plate '" + key + "'", "Say what it is.");
    Given.present(form, "Thickness of plate '" + key + "'", "Give it.");
    Given.positive(yieldMPa, 2000, "Yield of plate '" + key + "' in MPa", "See its standard.");
    Given.between(
        tensileMPa, yieldMPa, 3000, "Tensile of plate '" + key + "' in MPa", "See its standard.");
    sheets = List.copyOf(sheets);
    Given.count(sheets.size(), 1, 50, "Sheets of plate '" + key + "'", "Give one at least.");
    Given.text(supplier, "Supplier of plate '" + key + "'", "Say who delivers it.");
    Given.count(leadDays, 0, 365, "Lead time of plate '" + key + "'", "Ask the supplier.");
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
      Given.positive(widthMm, 10_000, "Sheet width in mm", "Give the sheet's size.");
      Given.positive(lengthMm, 20_000, "Sheet length in mm", "Give the sheet's size.");
      Given.present(price, "Price of a sheet", "Give an amount.");
    }
  }
}
