package trammel.brackets.material;

import java.math.BigDecimal;
import java.util.List;
import trammel.engine.quantity.Given;

/**
 * A lower price from a number on.
 *
 * @param from from how many on, of what is ordered: packs where there are packs
 * @param price price of one then
 */
public record PriceBreak(int from, BigDecimal price) {
  public PriceBreak {
    Given.count("number of a price break", from, 2, 1_000_000, "From 2 on.");
    Given.decimal("price of a price break", price, 0, 1_000_000_000, "Give the price of one.");
  }

  /** The lowest price of one that this many get. */
  static BigDecimal lowest(BigDecimal single, List<PriceBreak> breaks, int count) {
    BigDecimal lowest = single;
    for (PriceBreak lower : breaks) {
      if (count >= lower.from()) {
        lowest = lowest.min(lower.price());
      }
    }
    return lowest;
  }
}
