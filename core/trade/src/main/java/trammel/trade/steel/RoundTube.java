package trammel.trade.steel;

import trammel.engine.quantity.Given;

/**
 * Round steel tube.
 *
 * @param outsideMm outside diameter, mm, up to 500
 * @param wallMm wall, mm, less than half the outside diameter
 */
public record RoundTube(double outsideMm, double wallMm) implements SteelSection {

  public RoundTube {
    Given.positive(
        "outside diameter of a tube", outsideMm, 500, "mm", "Measure the tube across its outside.");
    Given.positive(
        "wall of a " + outsideMm + " mm tube in mm",
        wallMm,
        outsideMm / 2 - 1e-9,
        "",
        "Give the wall of the tube, not its bore; for solid steel use round stock.");
  }

  /** Bore, mm. */
  public double insideMm() {
    return outsideMm - 2 * wallMm;
  }

  @Override
  public double sectionAreaMm2() {
    return Math.PI * (outsideMm - wallMm) * wallMm;
  }

  @Override
  public double outsidePerimeterMm() {
    return Math.PI * outsideMm;
  }

  @Override
  public String usName() {
    return ShopLength.inches(outsideMm)
        + " x "
        + ShopLength.decimalInches(wallMm)
        + " wall round tube";
  }

  @Override
  public String metricName() {
    return ShopLength.millimetres(outsideMm)
        + " x "
        + ShopLength.millimetres(wallMm)
        + " mm round tube";
  }
}
