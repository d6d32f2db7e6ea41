package trammel.app.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import trammel.app.commandline.CommandFailure;
import trammel.ledger.Ledger;
import trammel.ledger.Purchases;
import trammel.planning.order.MaterialOrder;
import trammel.planning.order.OrderLine;
import trammel.planning.order.SupplierOrder;
import trammel.planning.order.WorkingDays;

/** Keeps orders that were placed in the ledger, each under the number that stands on it. */
public final class PlacedOrders {
  private PlacedOrders() {}

  /**
   * Keeps the orders to all suppliers.
   *
   * @param jobs the numbers of the jobs that they are for
   * @param order the orders
   * @param placed the day on which they are placed
   * @throws CommandFailure if one of that number was placed already
   */
  public static void keep(Ledger ledger, List<String> jobs, MaterialOrder order, LocalDate placed) {
    for (int i = 0; i < order.suppliers().size(); i++) {
      SupplierOrder supplier = order.suppliers().get(i);
      String number = SupplierOrder.number(jobs, i + 1);
      ledger
          .purchases()
          .of(number)
          .ifPresent(
              earlier -> {
                throw CommandFailure.badInput(
                    "Order "
                        + number
                        + " was placed on "
                        + earlier.placedOn()
                        + " already, so nothing was kept. If it was not sent, take it out: trammel"
                        + " book unplace "
                        + number
                        + ".");
              });
      List<Purchases.Line> lines = new ArrayList<>();
      for (OrderLine line : supplier.lines()) {
        lines.add(
            new Purchases.Line(
                line.key(),
                line.title(),
                line.quantity(),
                line.unit(),
                line.amount(),
                BigDecimal.ZERO));
      }
      ledger
          .purchases()
          .place(
              new Purchases.Purchase(
                  number,
                  supplier.supplier(),
                  placed,
                  WorkingDays.after(placed, supplier.leadDays()),
                  jobs,
                  lines));
    }
  }
}
