package trammel.planning.order;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import trammel.planning.estimate.Materials;
import trammel.trade.money.Money;

/**
 * What to order for one or many jobs.
 *
 * @param materials the materials with their cutting plans, over all jobs together
 * @param suppliers one order a supplier
 * @param rack what comes off the rack and goes back on it
 * @param start the first day on which one of the jobs is to start
 */
public record MaterialOrder(
    Materials materials, List<SupplierOrder> suppliers, RackUse rack, Optional<LocalDate> start) {
  public MaterialOrder {
    suppliers = List.copyOf(suppliers);
  }

  /** The lines of all suppliers. */
  public List<OrderLine> lines() {
    return suppliers.stream().flatMap(supplier -> supplier.lines().stream()).toList();
  }

  /** Sum over all suppliers, charges included; empty if there is nothing to buy. */
  public Optional<Money> total() {
    Optional<Money> total = Optional.empty();
    for (SupplierOrder supplier : suppliers) {
      total = Optional.of(total.isEmpty() ? supplier.total() : total.get().plus(supplier.total()));
    }
    return total;
  }
}
