package trammel.planning.order;

import java.util.List;
import trammel.planning.estimate.Materials;

/**
 * What to order for one or many jobs.
 *
 * @param materials the materials with their cutting plans, over all jobs together
 * @param suppliers one order a supplier
 */
public record MaterialOrder(Materials materials, List<SupplierOrder> suppliers) {
  public MaterialOrder {
    suppliers = List.copyOf(suppliers);
  }
}
