package trammel.planning.order;

import java.util.List;
import trammel.planning.estimate.Materials;

/**
 * What to order for one or many jobs.
 *
 * @param materials the materials with their cutting plans, over all jobs together
 * @param suppliers one order a supplier
 * @param rack what comes off the rack and goes back on it
 */
public record MaterialOrder(Materials materials, List<SupplierOrder> suppliers, RackUse rack) {
  public MaterialOrder {
    suppliers = List.copyOf(suppliers);
  }
}
