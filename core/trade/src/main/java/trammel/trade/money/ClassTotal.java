package trammel.trade.money;

import java.util.List;

/**
 * Price of all lines of one class.
 *
 * @param costClass the class
 * @param cost what they cost the shop
 * @param price what the customer pays for them before tax
 * @param lines the lines that add up to both
 */
public record ClassTotal(CostClass costClass, Money cost, Money price, List<PriceLine> lines) {

  public ClassTotal {
    lines = List.copyOf(lines);
  }

  /** What of their price is not cost. */
  public Money profit() {
    return price.minus(cost);
  }
}
