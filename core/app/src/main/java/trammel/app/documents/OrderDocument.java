package trammel.app.documents;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.text.Amounts;
import trammel.app.text.Stops;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.SupplierTerms;
import trammel.planning.estimate.Charge;
import trammel.planning.estimate.Counts;
import trammel.planning.order.MaterialOrder;
import trammel.planning.order.OrderLine;
import trammel.planning.order.SupplierOrder;
import trammel.planning.order.WorkingDays;
import trammel.reading.quantity.UnitSystem;

/** A material order, a page or more for each supplier, each with its number, day and addresses. */
public final class OrderDocument {
  private static final String TO_WRITE = "\u00a0";

  private final List<String> jobs;
  private final MaterialOrder order;
  private final LocalDate placed;
  private final Catalog catalog;
  private final Stops stops;

  private OrderDocument(
      List<String> jobs, MaterialOrder order, LocalDate placed, Catalog catalog, Stops stops) {
    this.jobs = List.copyOf(jobs);
    this.order = order;
    this.placed = placed;
    this.catalog = catalog;
    this.stops = stops;
  }

  /**
   * The document.
   *
   * @param jobs the numbers of the jobs it is for
   * @param order what is ordered
   * @param placed the day on which it is placed
   * @param catalog the shop that orders, and where its suppliers are
   * @param units which paper to print it on
   * @param stops what the checks of the jobs say stop to
   */
  public static PaperDocument of(
      List<String> jobs,
      MaterialOrder order,
      LocalDate placed,
      Catalog catalog,
      UnitSystem units,
      Stops stops) {
    String numbers = String.join(", ", jobs);
    DocumentModel model = new DocumentModel();
    model.put("title", "Material order " + numbers);
    model.put("foot", JobPaper.shortened(stops.before("Material order for " + numbers)));
    model.put("suppliers", new OrderDocument(jobs, order, placed, catalog, stops).suppliers());
    return new PaperDocument("order", model, units);
  }

  private List<Map<String, Object>> suppliers() {
    List<Map<String, Object>> suppliers = new ArrayList<>();
    for (SupplierOrder supplier : order.suppliers()) {
      suppliers.add(supplier(supplier, suppliers.size() + 1));
    }
    return suppliers;
  }

  private Map<String, Object> supplier(SupplierOrder supplier, int count) {
    Optional<SupplierTerms> terms =
        Optional.ofNullable(catalog.suppliers().get(supplier.supplier()));
    // Each goes to another house: letterhead, heading and what stops the job stand on every one.
    DocumentModel head = new DocumentModel().put(catalog.shop().letterhead()).put(stops);
    Map<String, Object> model = new LinkedHashMap<>(head.values());
    model.put("heading", "Material order");
    model.put("supplier", supplier.supplier());
    model.put("number", SupplierOrder.number(jobs, count));
    model.put("placed", placed.toString());
    model.put("jobs", String.join(", ", jobs));
    model.put(
        "to",
        supplier.supplier()
            + terms.flatMap(SupplierTerms::address).map(address -> ", " + address).orElse(""));
    model.put("account", terms.flatMap(SupplierTerms::account).orElse(TO_WRITE));
    model.put(
        "deliver",
        catalog.shop().name()
            + catalog.shop().letterhead().address().map(address -> ", " + address).orElse(""));
    model.put(
        "lead",
        Counts.of(supplier.leadDays(), "working day")
            + ", "
            + WorkingDays.after(placed, supplier.leadDays()));
    model.put("break", count == 1 ? "" : "newpage");
    model.put("lines", grid(supplier).model());
    model.put("remarks", DocumentModel.texts(supplier.remarks()));
    return model;
  }

  /** A price of one: cents at least, and every part of a cent that the supplier asks. */
  private static String each(BigDecimal price) {
    BigDecimal plain = price.stripTrailingZeros();
    return plain.setScale(Math.max(2, plain.scale())).toPlainString();
  }

  private static Grid grid(SupplierOrder supplier) {
    Grid grid =
        new Grid(
            "bllrr", new int[] {11, 22, 41, 12, 14}, "how many", "unit", "what", "each", "amount");
    for (OrderLine line : supplier.lines()) {
      grid.row(
          Amounts.plain(line.quantity().doubleValue()),
          line.unit(),
          line.title(),
          each(line.price()),
          line.amount().text());
    }
    for (Charge charge : supplier.charges()) {
      grid.row("", "", charge.title(), "", charge.amount().text());
    }
    grid.total("", "", "together, before tax", "", supplier.total().text());
    return grid;
  }
}
