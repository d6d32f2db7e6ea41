package trammel.planning.order;

import java.util.List;
import trammel.planning.estimate.Charge;
import trammel.trade.money.Money;

/**
 * What goes to one supplier.
 *
 * @param supplier who delivers it
 * @param lines what to order, at least one
 * @param charges what the supplier adds
 * @param remarks what to look at before it is sent
 */
public record SupplierOrder(
    String supplier, List<OrderLine> lines, List<Charge> charges, List<String> remarks) {
  public SupplierOrder {
    lines = List.copyOf(lines);
    charges = List.copyOf(charges);
    remarks = List.copyOf(remarks);
    if (lines.isEmpty()) {
      throw new IllegalArgumentException("an order to " + supplier + " needs a line");
    }
  }

  /**
   * The number that stands on an order.
   *
   * @param jobs the numbers of the jobs that it is for
   * @param count which of their orders it is, from 1
   */
  public static String number(List<String> jobs, int count) {
    return String.join("+", jobs) + "-" + count;
  }

  /** Sum of its lines. */
  public Money goods() {
    return goods(lines);
  }

  static Money goods(List<OrderLine> lines) {
    Money total = Money.zero(lines.get(0).amount().currency());
    for (OrderLine line : lines) {
      total = total.plus(line.amount());
    }
    return total;
  }

  /** Lines and charges together. */
  public Money total() {
    Money total = goods();
    for (Charge charge : charges) {
      total = total.plus(charge.amount());
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
