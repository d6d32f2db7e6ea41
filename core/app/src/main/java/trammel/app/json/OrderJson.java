package trammel.app.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.planning.estimate.Estimate;
import trammel.planning.order.MaterialOrder;
import trammel.planning.order.OrderLine;
import trammel.planning.order.SupplierOrder;

/** A material order for machines. */
public final class OrderJson {
  private OrderJson() {}

  /** One entry a supplier. */
  public static Map<String, Object> of(List<Estimate> jobs, MaterialOrder order) {
    List<Object> numbers = new ArrayList<>();
    for (Estimate job : jobs) {
      numbers.add(job.draft().job().header().number());
    }
    List<Object> suppliers = new ArrayList<>();
    for (SupplierOrder supplier : order.suppliers()) {
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("supplier", supplier.supplier());
      entry.put("lead_days", supplier.leadDays());
      entry.put("total", supplier.total().amount());
      entry.put("currency", supplier.total().currency().getCurrencyCode());
      entry.put("lines", lines(supplier));
      suppliers.add(entry);
    }
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("jobs", numbers);
    json.put("suppliers", suppliers);
    json.put("from_rack", order.rack().taken());
    json.put("back_to_rack", order.rack().back());
    return json;
  }

  private static List<Object> lines(SupplierOrder supplier) {
    List<Object> lines = new ArrayList<>();
    for (OrderLine line : supplier.lines()) {
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("item", line.key());
      entry.put("title", line.title());
      entry.put("quantity", line.quantity());
      entry.put("unit", line.unit());
      entry.put("amount", line.amount().amount());
      entry.put("lead_days", line.leadDays());
      entry.put("use", line.use());
      lines.add(entry);
    }
    return lines;
  }
}
