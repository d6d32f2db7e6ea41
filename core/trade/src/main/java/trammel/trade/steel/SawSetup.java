package trammel.trade.steel;

import trammel.engine.quantity.Given;

/**
 * How fast the shop's saw cuts.
 *
 * @param rateMm2PerMin area cut per minute, mm²/min
 * @param handlingMin time to load, measure and clamp each cut, minutes
 */
public record SawSetup(double rateMm2PerMin, double handlingMin) {

  public SawSetup {
    Given.positive(
        "cutting rate of the saw in mm²/min",
        rateMm2PerMin,
        100_000,
        "",
        "A small dry band saw cuts about 650 to 1900 mm²/min of mild steel.");
    Given.within(
        "handling time per saw cut in minutes",
        handlingMin,
        0,
        120,
        "",
        "Give minutes for one cut.");
  }

  /**
   * Time at the saw: n (A / rate + handling).
   *
   * @param cuts number of cuts
   * @param areaMm2 area of steel in one cut, mm²
   * @return minutes
   * @throws IllegalArgumentException on a negative number of cuts or an area that is not positive
   */
  public double minutes(int cuts, double areaMm2) {
    Given.count("number of saw cuts", cuts, 0, 100_000, "Count every cut, trim cuts included.");
    Given.positive(
        "area of one saw cut in mm²",
        areaMm2,
        250_000,
        "",
        "Give the steel in the section, not bore.");
    return cuts * (areaMm2 / rateMm2PerMin + handlingMin);
  }
}
