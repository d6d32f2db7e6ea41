package trammel.planning.catalog;

import java.math.BigDecimal;
import java.util.OptionalDouble;
import trammel.engine.quantity.Given;

/**
 * Something bought by the piece, the foot or the job, at an example price.
 *
 * @param key the name by which plans ask for it
 * @param title what it is, for a parts list
 * @param unit what one of it is, such as {@code each} or {@code ft}
 * @param price price of one unit in the catalog's currency, 0 or more
 * @param bought which class of cost it is
 * @param supplier who delivers it
 * @param leadDays working days from order to delivery, 0 or more
 * @param massKg mass of one unit on the finished vehicle (kg), 0 or more
 * @param lengthMm length by which it is chosen, such as that of a strap (mm), above 0; empty for
 *     what is not chosen by length
 * @param selling packs, price breaks and whether it is in stock
 */
public record Item(
    String key,
    String title,
    String unit,
    BigDecimal price,
    BoughtAs bought,
    String supplier,
    int leadDays,
    double massKg,
    OptionalDouble lengthMm,
    Selling selling) {
  public Item {
    Given.text("key of an item", key, "Give it a short name.");
    Given.text("title of item '" + key + "'", title, "Say what it is.");
    Given.text("unit of item '" + key + "'", unit, "Say what one of it is, such as each.");
    Given.present("price of item '" + key + "'", price, "Give an amount.");
    Given.present("selling of item '" + key + "'", selling, "Say how it is sold.");
    Given.present("class of item '" + key + "'", bought, "Give part, supply or outside work.");
    Given.text("supplier of item '" + key + "'", supplier, "Say who delivers it.");
    Given.count("lead time of item '" + key + "' in days", leadDays, 0, 365, "Ask the supplier.");
    Given.within("mass of item '" + key + "' in kg", massKg, 0, 1000, "", "Weigh one.");
    if (lengthMm.isPresent()) {
      Given.positive(
          "length of item '" + key + "' in mm", lengthMm.getAsDouble(), 20_000, "", "Measure one.");
    }
    if (price.signum() < 0) {
      throw new IllegalArgumentException(
          "Price of item '" + key + "' is " + price + "; it must be 0 or more. Correct it.");
    }
  }

  /** An item sold by the piece at one price. */
  public Item(
      String key,
      String title,
      String unit,
      BigDecimal price,
      BoughtAs bought,
      String supplier,
      int leadDays,
      double massKg) {
    this(
        key,
        title,
        unit,
        price,
        bought,
        supplier,
        leadDays,
        massKg,
        OptionalDouble.empty(),
        Selling.PLAIN);
  }
}
