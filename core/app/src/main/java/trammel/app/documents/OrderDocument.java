package trammel.app.documents;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.text.Amounts;
import trammel.app.text.Stops;
import trammel.planning.estimate.Counts;
import trammel.planning.order.Charge;
import trammel.planning.order.MaterialOrder;
import trammel.planning.order.OrderLine;
import trammel.planning.order.SupplierOrder;
import trammel.reading.quantity.UnitSystem;

/** A material order, a page or more for each supplier. */
public final class OrderDocument {
  private OrderDocument() {}

  /**
   * The document.
   *
   * @param jobs the numbers of the jobs it is for
   * @param shop name of the shop that orders
   * @param order what is ordered
   * @param units which paper to print it on
   * @param stops what the checks of the jobs say stop to
   */
  public static PaperDocument of(
      List<String> jobs, String shop, MaterialOrder order, UnitSystem units, Stops stops) {
    String numbers = String.join(", ", jobs);
    DocumentModel model = new DocumentModel();
    model.put("heading", "Material order");
    model.put("title", "Material order " + numbers);
    model.put("foot", JobPaper.shortened(stops.before("Material order for " + numbers)));
    model.put(stops);
    model.put("jobs", numbers);
    model.put("shop", shop);
    List<Map<String, Object>> suppliers = new ArrayList<>();
    for (SupplierOrder supplier : order.suppliers()) {
      suppliers.add(supplier(supplier, suppliers.isEmpty()));
    }
    model.put("suppliers", suppliers);
    return new PaperDocument("order", model, units);
  }

  private static Map<String, Object> supplier(SupplierOrder supplier, boolean first) {
    Grid grid =
        new Grid("brll" + "r", new int[] {11, 10, 47, 20, 12}, "", "unit", "what", "key", "amount");
    for (OrderLine line : supplier.lines()) {
      grid.row(
          Amounts.plain(line.quantity().doubleValue()),
          line.unit(),
          line.title(),
          line.key(),
          line.amount().text());
    }
    for (Charge charge : supplier.charges()) {
      grid.row("", "", charge.title(), "", charge.amount().text());
    }
    grid.total("", "", "together, before tax", "", supplier.total().text());
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("supplier", supplier.supplier());
    model.put("lead", Counts.of(supplier.leadDays(), "working day"));
    model.put("break", first ? "" : "newpage");
    model.put("lines", grid.model());
    model.put("remarks", DocumentModel.texts(supplier.remarks()));
    return model;
  }
}
