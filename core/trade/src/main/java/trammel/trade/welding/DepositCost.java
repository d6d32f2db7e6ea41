package trammel.trade.welding;

import trammel.trade.given.Given;

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
    Given.between(labourPerHour, 0, MOST_MONEY, "Labour per hour", "Give the rate for an hour.");
    Given.positive(depositKgPerHour, 50, "Weld metal in kg an hour of arc", "MIG is about 1.6.");
    Given.positive(operatingFactor, 1, "Operating factor", "Give a fraction: 0.35.");
    Given.between(fillerPerKg, 0, MOST_MONEY, "Filler price per kg", "Give the price of 1 kg.");
    Given.positive(depositionEfficiency, 1, "Deposition efficiency", "Give a fraction: 0.94.");
    Given.between(gasLitresPerHour, 0, 5000, "Gas in L an hour", "30 cfh is 850 L/h.");
    Given.between(gasPerLitre, 0, MOST_MONEY, "Gas price per litre", "Give the price of 1 L.");
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
