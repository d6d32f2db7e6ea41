package trammel.trade.welding;

import trammel.trade.given.Given;

/**
 * When a purchase that makes weld metal cheaper has paid for itself (ESAB, Basic Welding Filler
 * Metal Technology, lesson IX).
 *
 * @param price price of the purchase
 * @param savedPerKg what it saves on each kilogram of weld metal, same currency
 * @param depositKgPerHour weld metal laid in an hour of arc, kg/h
 * @param operatingFactor part of the clock that the arc burns, above 0 to 1
 */
public record EquipmentPayback(
    double price, double savedPerKg, double depositKgPerHour, double operatingFactor) {

  public EquipmentPayback {
    Given.positive(price, 1e9, "Price of equipment", "Give what is paid for it.");
    Given.positive(savedPerKg, 1e9, "Saving per kg", "Without a saving it never pays back.");
    Given.positive(depositKgPerHour, 50, "Weld metal in kg an hour of arc", "MIG is about 1.6.");
    Given.positive(operatingFactor, 1, "Operating factor", "Give a fraction: 0.35.");
  }

  /** Weld metal to lay before it is paid, kg. */
  public double depositKg() {
    return price / savedPerKg;
  }

  /** Clock hours at the torch until then. */
  public double clockHours() {
    return depositKg() / (depositKgPerHour * operatingFactor);
  }
}
