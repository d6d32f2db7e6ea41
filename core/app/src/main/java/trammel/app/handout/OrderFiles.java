package trammel.app.handout;

import java.time.LocalDate;
import java.util.List;
import trammel.app.commandline.CommandFailure;
import trammel.app.documents.OrderDocument;
import trammel.app.documents.PaperDocument;
import trammel.app.files.Csv;
import trammel.app.files.FileSet;
import trammel.app.json.Json;
import trammel.app.json.OrderJson;
import trammel.app.text.OrderText;
import trammel.app.text.Stops;
import trammel.planning.catalog.Catalog;
import trammel.planning.estimate.Charge;
import trammel.planning.order.MaterialOrder;
import trammel.planning.order.OrderLine;
import trammel.planning.order.SupplierOrder;
import trammel.reading.quantity.UnitSystem;

/**
 * The orders as files: all of them on paper, and for each supplier a table, the same for machines,
 * and a sheet to print.
 */
public final class OrderFiles {
  private final List<String> jobs;
  private final MaterialOrder order;
  private final LocalDate placed;
  private final Catalog catalog;
  private final UnitSystem units;
  private final Stops stops;

  /**
   * @param jobs the numbers of the jobs
   * @param order the order over all of them
   * @param placed the day on which it is placed
   * @param catalog the shop that orders, and where its suppliers are
   * @param units which paper to print it on
   * @param stops what the checks of the jobs say stop to
   */
  public OrderFiles(
      List<String> jobs,
      MaterialOrder order,
      LocalDate placed,
      Catalog catalog,
      UnitSystem units,
      Stops stops) {
    this.jobs = List.copyOf(jobs);
    this.order = order;
    this.placed = placed;
    this.catalog = catalog;
    this.units = units;
    this.stops = stops;
  }

  /** Adds the order on paper, a page or more for each supplier, and three files a supplier. */
  public void addTo(FileSet files) {
    PaperDocument paper = OrderDocument.of(jobs, order, placed, catalog, units, stops);
    files.add("material-order.pdf", paper.pdf());
    files.add("material-order.html", paper.html());
    for (SupplierOrder supplier : order.suppliers()) {
      String name = "order-" + FileSet.safeName(supplier.supplier());
      if (files.names().contains(name + ".csv")) {
        throw CommandFailure.badInput(
            "Two suppliers of the catalog are alike but for signs: '"
                + supplier.supplier()
                + "' and another both give the file "
                + name
                + ". Write their names alike, or tell them apart.");
      }
      files.add(name + ".csv", csv(supplier, stops));
      files.add(
          name + ".json", Json.text(OrderJson.supplier(jobs, order, supplier, placed, stops)));
      files.add(name + ".txt", OrderText.sheet(jobs, order, supplier, placed, stops));
    }
  }

  static String csv(SupplierOrder supplier, Stops stops) {
    Csv csv =
        new Csv()
            .row(
                "supplier",
                "item",
                "title",
                "quantity",
                "unit",
                "price_each",
                "amount",
                "currency",
                "lead_days",
                "use",
                "stops");
    for (OrderLine line : supplier.lines()) {
      csv.row(
          supplier.supplier(),
          line.key(),
          line.title(),
          line.quantity(),
          line.unit(),
          line.price(),
          line.amount().amount(),
          line.amount().currency().getCurrencyCode(),
          line.leadDays(),
          line.use(),
          stops.line());
    }
    for (Charge charge : supplier.charges()) {
      csv.row(
          supplier.supplier(),
          "",
          charge.title(),
          1,
          "",
          charge.amount().amount(),
          charge.amount().amount(),
          charge.amount().currency().getCurrencyCode(),
          "",
          "",
          stops.line());
    }
    return csv.text();
  }
}
