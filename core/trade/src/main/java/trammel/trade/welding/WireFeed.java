package trammel.trade.welding;

import trammel.engine.quantity.Given;

/**
 * Wire from a spool.
 *
 * @param diameterMm wire diameter, mm
 * @param feedMmPerMin wire feed speed, mm/min
 * @param wireMmPerKg length of wire in a kilogram, mm
 */
public record WireFeed(double diameterMm, double feedMmPerMin, double wireMmPerKg)
    implements Filler {

  public WireFeed {
    Given.positive("wire diameter", diameterMm, 4, "mm", "0.035 in wire is 0.9 mm.");
    Given.positive("wire feed in mm/min", feedMmPerMin, 50_000, "", "220 in/min is 5588 mm/min.");
    Given.positive(
        "length of wire in a kilogram",
        wireMmPerKg,
        1e7,
        "mm",
        "0.035 in solid steel wire has about 204 000 mm in a kilogram.");
  }

  /** Solid steel wire; the length in a kilogram follows from its diameter. */
  public static WireFeed solidSteel(double diameterMm, double feedMmPerMin) {
    Given.positive("wire diameter", diameterMm, 4, "mm", "0.035 in wire is 0.9 mm.");
    double sectionMm2 = Math.PI * diameterMm * diameterMm / 4;
    return new WireFeed(diameterMm, feedMmPerMin, 1 / (sectionMm2 * WeldMetal.KG_PER_MM3));
  }

  @Override
  public double meltOffKgPerHour() {
    return feedMmPerMin * 60 / wireMmPerKg;
  }
}
