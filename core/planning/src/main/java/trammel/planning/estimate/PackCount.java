package trammel.planning.estimate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import trammel.brackets.material.PriceBreak;
import trammel.planning.catalog.Item;
import trammel.planning.catalog.Selling;

/**
 * How much of an item to order for a need: whole packs where it comes in packs, and the number of a
 * price break where buying more costs less.
 *
 * @param quantity how many packs, or units where there are no packs
 * @param unit what one of them is
 * @param price price of one at this number
 * @param units how many units of the catalog that is
 */
public record PackCount(BigDecimal quantity, String unit, BigDecimal price, BigDecimal units) {

  /** What to order of an item for so many of its units. */
  public static PackCount of(Item item, BigDecimal need) {
    Selling selling = item.selling();
    BigDecimal holds = selling.pack().isPresent() ? selling.pack().get().holds() : BigDecimal.ONE;
    BigDecimal count =
        selling.pack().isPresent() ? need.divide(holds, 0, RoundingMode.CEILING) : need;
    BigDecimal price = selling.pack().isPresent() ? selling.pack().get().price() : item.price();
    BigDecimal bestPrice = price;
    BigDecimal bestCount = count;
    for (PriceBreak lower : selling.breaks()) {
      BigDecimal number = count.max(BigDecimal.valueOf(lower.from()));
      if (number.multiply(lower.price()).compareTo(bestCount.multiply(bestPrice)) < 0) {
        bestCount = number;
        bestPrice = lower.price();
      }
    }
    String unit = selling.pack().isPresent() ? selling.pack().get().title() : item.unit();
    return new PackCount(bestCount, unit, bestPrice, bestCount.multiply(holds));
  }

  /** Whether more is bought than was needed. */
  boolean leavesRest(BigDecimal need) {
    return units.compareTo(need) > 0;
  }

  /** What it costs, unrounded. */
  BigDecimal cost() {
    return quantity.multiply(price);
  }
}
