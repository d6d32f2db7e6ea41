package trammel.trade.steel;

import trammel.engine.quantity.Given;

/**
 * Flat bar.
 *
 * @param widthMm width, mm, up to 500
 * @param thicknessMm thickness, mm, not more than the width
 */
public record FlatBar(double widthMm, double thicknessMm) implements SteelSection {

  public FlatBar {
    Given.positive("width of flat stock", widthMm, 500, "mm", "Wider steel is bought as plate.");
    Given.positive(
        "thickness of a " + widthMm + " mm flat stock in mm",
        thicknessMm,
        widthMm,
        "",
        "Give the width first, then the thickness.");
  }

  @Override
  public double sectionAreaMm2() {
    return widthMm * thicknessMm;
  }

  @Override
  public double outsidePerimeterMm() {
    return 2 * (widthMm + thicknessMm);
  }

  @Override
  public String usName() {
    return ShopLength.inches(thicknessMm) + " x " + ShopLength.inches(widthMm) + " flat stock";
  }

  @Override
  public String metricName() {
    return ShopLength.millimetres(thicknessMm)
        + " x "
        + ShopLength.millimetres(widthMm)
        + " mm flat stock";
  }
}
