package trammel.trade.steel;

import trammel.engine.quantity.Given;

/** Steel bought by length: tube, flat or round stock. */
public sealed interface SteelSection extends SteelStock
    permits RoundTube, RectangularTube, FlatBar, RoundBar {

  /** Area of steel in the cross-section, mm². */
  double sectionAreaMm2();

  /** Outer surface per length, mm (mm² per mm): what is cleaned and painted. */
  double outsidePerimeterMm();

  /** Mass per length, kg/m. */
  default double kgPerMetre() {
    return sectionAreaMm2() * 1000.0 * Steel.KG_PER_MM3;
  }

  /**
   * Mass of one piece.
   *
   * @param lengthMm length of the piece, 0 to 100 000 mm
   * @return mass, kg
   * @throws IllegalArgumentException when the length is outside the range
   */
  default double massKg(double lengthMm) {
    Given.within(
        "length of a piece of stock",
        lengthMm,
        0,
        100_000,
        "mm",
        "Give the cut length of one piece.");
    return lengthMm / 1000.0 * kgPerMetre();
  }
}
