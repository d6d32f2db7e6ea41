package trammel.trade.welding;

import trammel.engine.quantity.Given;

/**
 * What a kilogram of weld metal costs (ESAB, Filler Metal Data Handbook, section 8). All money in
 * one currency, unrounded.
 *
 * @param labourPerHour labour and overhead for an hour of the clock
 * @param depositKgPerHour weld metal laid in an hour of arc, kg/h
 * @param operatingFactor part of the clock that the arc burns, above 0 to 1
 * @param fillerPerKg price of a kilogram of filler
 * @param depositionEfficiency part of the bought filler that ends in the weld, above 0 to 1
 * @param gasLitresPerHour shielding gas in an hour of arc, L/h
 * @param gasPerLitre price of a litre of gas
 */
public record DepositCost(
    double labourPerHour,
    double depositKgPerHour,
    double operatingFactor,
    double fillerPerKg,
    double depositionEfficiency,
    double gasLitresPerHour,
    double gasPerLitre) {

  private static final double MOST_MONEY = 1e9;

  public DepositCost {
    Given.within("labour per hour", labourPerHour, 0, MOST_MONEY, "", "Give the rate for an hour.");
    Given.positive(
        "weld metal in kg an hour of arc", depositKgPerHour, 50, "", "MIG is about 1.6.");
    Given.positive("operating factor", operatingFactor, 1, "", "Give a fraction: 0.35.");
    Given.within("filler price per kg", fillerPerKg, 0, MOST_MONEY, "", "Give the price of 1 kg.");
    Given.positive("deposition efficiency", depositionEfficiency, 1, "", "Give a fraction: 0.94.");
    Given.within("gas in L an hour", gasLitresPerHour, 0, 5000, "", "30 cfh is 850 L/h.");
    Given.within("gas price per litre", gasPerLitre, 0, MOST_MONEY, "", "Give the price of 1 L.");
  }

  /** Labour and overhead for a kilogram of weld metal. */
  public double labourPerKg() {
    return labourPerHour / (depositKgPerHour * operatingFactor);
  }

  /** Filler for a kilogram of weld metal. */
  public double fillerPerDepositKg() {
    return fillerPerKg / depositionEfficiency;
  }

  /** Gas for a kilogram of weld metal. */
  public double gasPerKg() {
    return gasLitresPerHour * gasPerLitre / depositKgPerHour;
  }

  /** All of it for a kilogram of weld metal. */
  public double perKg() {
    return labourPerKg() + fillerPerDepositKg() + gasPerKg();
  }
}
