package trammel.planning.order;

import java.util.List;
import trammel.planning.money.Money;

/**
 * What goes to one supplier.
 *
 * @param supplier who delivers it
 * @param lines what to order, at least one
 */
public record SupplierOrder(String supplier, List<OrderLine> lines) {
  public SupplierOrder {
    lines = List.copyOf(lines);
    if (lines.isEmpty()) {
      throw new IllegalArgumentException("an order to " + supplier + " needs a line");
    }
  }

  /** Sum of its lines. */
  public Money total() {
    Money total = Money.zero(lines.get(0).amount().currency());
    for (OrderLine line : lines) {
      total = total.plus(line.amount());
    }
    return total;
  }

  /** Working days until its slowest line is there. */
  public int leadDays() {
    int leadDays = 0;
    for (OrderLine line : lines) {
      leadDays = Math.max(leadDays, line.leadDays());
    }
    return leadDays;
  }
}
