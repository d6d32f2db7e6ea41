package trammel.app.json;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.text.Stops;
import trammel.planning.estimate.Charge;
import trammel.planning.order.MaterialOrder;
import trammel.planning.order.OrderLine;
import trammel.planning.order.SupplierOrder;
import trammel.planning.order.WorkingDays;

/** A material order for machines. */
public final class OrderJson {
  private OrderJson() {}

  /** One entry a supplier, then what comes off the rack and goes back on it. */
  public static Map<String, Object> of(
      List<String> jobs, MaterialOrder order, LocalDate placed, Stops stops) {
    List<Object> suppliers = new ArrayList<>();
    for (SupplierOrder supplier : order.suppliers()) {
      suppliers.add(entry(order, supplier, placed));
    }
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("jobs", List.copyOf(jobs));
    json.put(StopsJson.FIELD, StopsJson.of(stops));
    json.put("placed", placed.toString());
    order.start().ifPresent(start -> json.put("start", start.toString()));
    json.put("suppliers", suppliers);
    order.total().ifPresent(total -> json.put("total", total.amount()));
    json.put("from_rack", order.rack().taken());
    json.put("back_to_rack", order.rack().back());
    return json;
  }

  /** The order of one supplier alone. */
  public static Map<String, Object> supplier(
      List<String> jobs,
      MaterialOrder order,
      SupplierOrder supplier,
      LocalDate placed,
      Stops stops) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("jobs", List.copyOf(jobs));
    json.put(StopsJson.FIELD, StopsJson.of(stops));
    json.put("placed", placed.toString());
    json.putAll(entry(order, supplier, placed));
    return json;
  }

  private static Map<String, Object> entry(
      MaterialOrder order, SupplierOrder supplier, LocalDate placed) {
    Map<String, Object> entry = new LinkedHashMap<>();
    entry.put("supplier", supplier.supplier());
    entry.put("lead_days", supplier.leadDays());
    entry.put("there", WorkingDays.after(placed, supplier.leadDays()).toString());
    order
        .start()
        .ifPresent(
            start ->
                entry.put("order_by", WorkingDays.orderBy(start, supplier.leadDays()).toString()));
    entry.put("goods", supplier.goods().amount());
    entry.put("total", supplier.total().amount());
    entry.put("currency", supplier.total().currency().getCurrencyCode());
    entry.put("lines", lines(supplier));
    entry.put("charges", charges(supplier));
    entry.put("remarks", supplier.remarks());
    return entry;
  }

  private static List<Object> charges(SupplierOrder supplier) {
    List<Object> charges = new ArrayList<>();
    for (Charge charge : supplier.charges()) {
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("title", charge.title());
      entry.put("amount", charge.amount().amount());
      charges.add(entry);
    }
    return charges;
  }

  private static List<Object> lines(SupplierOrder supplier) {
    List<Object> lines = new ArrayList<>();
    for (OrderLine line : supplier.lines()) {
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("item", line.key());
      entry.put("title", line.title());
      entry.put("quantity", line.quantity());
      entry.put("unit", line.unit());
      entry.put("price_each", line.price());
      entry.put("amount", line.amount().amount());
      entry.put("lead_days", line.leadDays());
      entry.put("use", line.use());
      lines.add(entry);
    }
    return lines;
  }
}
