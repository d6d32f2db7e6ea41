package trammel.trade.welding;

import trammel.engine.quantity.Given;

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
    Given.positive("price of equipment", price, 1e9, "", "Give what is paid for it.");
    Given.positive("saving per kg", savedPerKg, 1e9, "", "Without a saving it never pays back.");
    Given.positive(
        "weld metal in kg an hour of arc", depositKgPerHour, 50, "", "MIG is about 1.6.");
    Given.positive("operating factor", operatingFactor, 1, "", "Give a fraction: 0.35.");
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
