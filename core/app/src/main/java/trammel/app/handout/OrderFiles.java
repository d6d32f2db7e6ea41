package trammel.app.handout;

import java.time.LocalDate;
import java.util.List;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.Csv;
import trammel.app.files.FileSet;
import trammel.app.json.Json;
import trammel.app.json.OrderJson;
import trammel.app.text.OrderText;
import trammel.planning.order.Charge;
import trammel.planning.order.MaterialOrder;
import trammel.planning.order.OrderLine;
import trammel.planning.order.SupplierOrder;

/** The orders as files: for each supplier a table, the same for machines, and a sheet to print. */
public final class OrderFiles {
  private final List<String> jobs;
  private final MaterialOrder order;
  private final LocalDate placed;

  /**
   * @param jobs the numbers of the jobs
   * @param order the order over all of them
   * @param placed the day on which it is placed
   */
  public OrderFiles(List<String> jobs, MaterialOrder order, LocalDate placed) {
    this.jobs = List.copyOf(jobs);
    this.order = order;
    this.placed = placed;
  }

  /** Adds three files a supplier, named after it. */
  public void addTo(FileSet files) {
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
      files.add(name + ".csv", csv(supplier));
      files.add(name + ".json", Json.text(OrderJson.supplier(jobs, order, supplier, placed)));
      files.add(name + ".txt", OrderText.sheet(jobs, order, supplier, placed));
    }
  }

  static String csv(SupplierOrder supplier) {
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
                "use");
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
          line.use());
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
          "");
    }
    return csv.text();
  }
}
