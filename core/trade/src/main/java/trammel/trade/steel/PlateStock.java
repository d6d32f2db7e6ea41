package trammel.trade.steel;

import trammel.engine.quantity.Given;

/**
 * Plate bought by thickness and area.
 *
 * @param thicknessMm thickness, mm, up to 100
 */
public record PlateStock(double thicknessMm) implements SteelStock {

  public PlateStock {
    Given.positive(
        "thickness of a plate", thicknessMm, 100, "mm", "Give the thickness of the plate itself.");
  }

  /** Mass per area, kg/mm². */
  public double kgPerMm2() {
    return thicknessMm * Steel.KG_PER_MM3;
  }

  /**
   * Mass of a piece.
   *
   * @param areaMm2 net area, mm², up to 100 m²
   * @return mass, kg
   * @throws IllegalArgumentException when the area is outside the range
   */
  public double massKg(double areaMm2) {
    Given.within("area of a plate in mm²", areaMm2, 0, 1e8, "", "Give the area of one piece.");
    return areaMm2 * kgPerMm2();
  }

  @Override
  public String usName() {
    return ShopLength.inches(thicknessMm) + " plate";
  }

  @Override
  public String metricName() {
    return ShopLength.millimetres(thicknessMm) + " mm plate";
  }
}
