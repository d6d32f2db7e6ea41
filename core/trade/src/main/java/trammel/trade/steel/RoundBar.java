package trammel.trade.steel;

import trammel.engine.quantity.Given;

/**
 * Solid round stock.
 *
 * @param diameterMm diameter, mm, up to 500
 */
public record RoundBar(double diameterMm) implements SteelSection {

  public RoundBar {
    Given.positive(
        "diameter of round stock", diameterMm, 500, "mm", "Measure it across its outside.");
  }

  @Override
  public double sectionAreaMm2() {
    return Math.PI * diameterMm * diameterMm / 4;
  }

  @Override
  public double outsidePerimeterMm() {
    return Math.PI * diameterMm;
  }

  @Override
  public String usName() {
    return ShopLength.inches(diameterMm) + " round stock";
  }

  @Override
  public String metricName() {
    return ShopLength.millimetres(diameterMm) + " mm round stock";
  }
}
