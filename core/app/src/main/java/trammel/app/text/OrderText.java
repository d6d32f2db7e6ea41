package trammel.app.text;

import java.time.LocalDate;
import java.util.List;
import trammel.planning.estimate.Charge;
import trammel.planning.estimate.Counts;
import trammel.planning.order.MaterialOrder;
import trammel.planning.order.OrderLine;
import trammel.planning.order.SupplierOrder;
import trammel.planning.order.WorkingDays;

/** A material order on a screen or on paper. */
public final class OrderText {
  private static final String INDENT = "  ";

  private OrderText() {}

  /** One block a supplier, then what comes off the rack and goes back on it. */
  public static String text(List<String> jobs, MaterialOrder order, LocalDate placed, Stops stops) {
    StringBuilder text =
        new StringBuilder("MATERIAL ORDER for ")
            .append(String.join(", ", jobs))
            .append("\n\n")
            .append(stops.text());
    text.setLength(text.length() - 1);
    for (SupplierOrder supplier : order.suppliers()) {
      text.append('\n').append(block(order, supplier, placed));
    }
    if (order.suppliers().isEmpty()) {
      text.append("\nNothing to buy: all of it is on the rack.\n");
    }
    append(text, "FROM THE RACK", order.rack().taken());
    append(text, "BACK TO THE RACK, paint the name on", order.rack().back());
    order
        .total()
        .ifPresent(
            total ->
                text.append("\nTOTAL at catalog prices, before tax: ")
                    .append(total.text())
                    .append('\n'));
    return text.append("Catalog prices are invented examples unless the shop's own are set.\n")
        .toString();
  }

  /** A sheet to print for one supplier. */
  public static String sheet(
      List<String> jobs,
      MaterialOrder order,
      SupplierOrder supplier,
      LocalDate placed,
      Stops stops) {
    return stops.text()
        + "ORDER\n"
        + "  placed "
        + placed
        + ", for "
        + String.join(", ", jobs)
        + "\n\n"
        + block(order, supplier, placed)
        + "\n  Prices are those of the shop's catalog, before tax; what counts is your"
        + " confirmation.\n\n  ordered by ____________________   confirmed for"
        + " ____________________\n";
  }

  private static String block(MaterialOrder order, SupplierOrder supplier, LocalDate placed) {
    StringBuilder text = new StringBuilder();
    text.append(supplier.supplier()).append(", there in ");
    text.append(Counts.of(supplier.leadDays(), "working day")).append('\n');
    Table table = new Table("rllr");
    for (OrderLine line : supplier.lines()) {
      table.row(
          Amounts.plain(line.quantity().doubleValue()),
          line.unit(),
          line.title(),
          line.amount().text());
    }
    for (Charge charge : supplier.charges()) {
      table.row("", "", charge.title(), charge.amount().text());
    }
    table.row("", "", "together", supplier.total().text());
    text.append(table.text(INDENT));
    for (String remark : supplier.remarks()) {
      text.append(Paragraph.wrap(remark, INDENT + "! ", INDENT + INDENT));
    }
    order.start().ifPresent(start -> text.append(timing(supplier, placed, start)));
    return text.toString();
  }

  private static String timing(SupplierOrder supplier, LocalDate placed, LocalDate start) {
    LocalDate there = WorkingDays.after(placed, supplier.leadDays());
    if (there.isBefore(start)) {
      return INDENT
          + "placed "
          + placed
          + " it is there on "
          + there
          + ", before the start on "
          + start
          + "; order by "
          + WorkingDays.orderBy(start, supplier.leadDays())
          + "\n";
    }
    return INDENT
        + "! TOO LATE for the start on "
        + start
        + ": placed "
        + placed
        + " it is there on "
        + there
        + ". Start after that, or find it elsewhere.\n";
  }

  private static void append(StringBuilder text, String title, List<String> lines) {
    if (lines.isEmpty()) {
      return;
    }
    text.append('\n').append(title).append('\n');
    for (String line : lines) {
      text.append(INDENT).append(line).append('\n');
    }
  }
}
