package trammel.app.text;

import java.util.ArrayList;
import java.util.List;
import trammel.planning.estimate.Counts;
import trammel.planning.estimate.Estimate;
import trammel.planning.money.Money;
import trammel.planning.order.MaterialOrder;
import trammel.planning.order.OrderLine;
import trammel.planning.order.SupplierOrder;

/** A material order on a screen. */
public final class OrderText {
  private OrderText() {}

  /** One block a supplier. */
  public static String text(List<Estimate> jobs, MaterialOrder order) {
    List<String> numbers = new ArrayList<>();
    for (Estimate job : jobs) {
      numbers.add(job.draft().job().header().number());
    }
    StringBuilder text =
        new StringBuilder("MATERIAL ORDER for ").append(String.join(", ", numbers)).append('\n');
    Money total = null;
    for (SupplierOrder supplier : order.suppliers()) {
      total = total == null ? supplier.total() : total.plus(supplier.total());
      text.append('\n').append(supplier.supplier()).append(", there in ");
      text.append(Counts.of(supplier.leadDays(), "working day")).append('\n');
      Table table = new Table("rllr");
      for (OrderLine line : supplier.lines()) {
        table.row(
            Amounts.plain(line.quantity().doubleValue()),
            line.unit(),
            line.title(),
            line.amount().text());
      }
      table.row("", "", "together", supplier.total().text());
      text.append(table.text("  "));
    }
    if (total != null) {
      text.append("\nTOTAL at catalog prices, before tax: ").append(total.text()).append('\n');
    }
    append(text, "FROM THE RACK", order.rack().taken());
    append(text, "BACK TO THE RACK, paint the name on", order.rack().back());
    return text.append("\nCatalog prices are invented examples unless the shop's own are set.\n")
        .toString();
  }

  private static void append(StringBuilder text, String title, List<String> lines) {
    if (lines.isEmpty()) {
      return;
    }
    text.append('\n').append(title).append('\n');
    for (String line : lines) {
      text.append("  ").append(line).append('\n');
    }
  }
}
