package trammel.app.documents;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.files.FileSet;
import trammel.app.fitup.FitUpForm;
import trammel.app.text.Cautions;
import trammel.engine.checks.LayoutAnalysis;
import trammel.planning.estimate.BoltLine;
import trammel.planning.estimate.Counts;
import trammel.planning.estimate.Estimate;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.Target;
import trammel.planning.job.JobHeader;
import trammel.planning.labour.OperationLine;
import trammel.planning.money.ClassTotal;
import trammel.planning.money.CostBuildUp;
import trammel.planning.money.CostClass;
import trammel.planning.money.Money;
import trammel.planning.money.PriceLine;
import trammel.planning.order.Charge;
import trammel.planning.order.MaterialOrder;
import trammel.planning.order.OrderLine;
import trammel.planning.order.SupplierOrder;
import trammel.planning.quantity.DecimalText;
import trammel.planning.quantity.QuantityPrinter;
import trammel.planning.quantity.UnitSystem;
import trammel.planning.welding.SeamEstimate;

/** The documents of one job: the customer's quote, the shop's cost sheet, orders, floor packet. */
public final class JobDocuments {
  private static final double QUOTE_SKETCH_MM = 75;
  private static final double FLOOR_SKETCH_MM = 95;

  private final Estimate estimate;
  private final QuantityPrinter printer;
  private final String shop;
  private final LayoutSketches sketches;

  /**
   * @param estimate the job
   * @param analysis its layout
   * @param shop name of the shop
   * @param units the units to show
   */
  public JobDocuments(Estimate estimate, LayoutAnalysis analysis, String shop, UnitSystem units) {
    this.estimate = estimate;
    this.shop = shop;
    printer = new QuantityPrinter(units);
    sketches = new LayoutSketches(analysis);
  }

  /**
   * Adds the quote, the cost sheet, the order and the floor packet, each as HTML and as PDF.
   *
   * @param order what is to be ordered
   * @param options the same job done otherwise, to stand in the quote
   */
  public void addTo(FileSet files, MaterialOrder order, List<QuoteOption> options) {
    add(files, "quote", quote(options));
    add(files, "cost-sheet", costSheet());
    add(files, "material-order", order(order));
    add(files, "floor-packet", floorPacket());
  }

  private static void add(FileSet files, String name, Page page) {
    files.add(name + ".html", page.html());
    files.add(name + ".pdf", page.pdf());
  }

  private Page page(String template, String title, String forWords) {
    JobHeader header = estimate.draft().job().header();
    return new Page(template, title)
        .put("shop", shop)
        .put("number", header.number())
        .put("vehicle", header.vehicle())
        .put("for", forWords)
        .put("customer", header.customer())
        .put("date", header.date().toString())
        .put("cautions", Cautions.lines());
  }

  Page quote(List<QuoteOption> options) {
    CostBuildUp price = estimate.price();
    Page page = page("quote", "Quote", "for");
    page.put("linkage", estimate.draft().linkage().title());
    page.put("spring", estimate.draft().spring().title());
    page.put("scope", scope());
    page.put(sketches.side(), QUOTE_SKETCH_MM);
    putTotals(page);
    page.put("classes", groups());
    page.put("deposit", price.deposit().text());
    page.put("progress", progress(price));
    page.put("balance", price.balance().text());
    int days = price.terms().validDays();
    page.put("validDays", days);
    page.put("validUntil", estimate.draft().job().header().date().plusDays(days).toString());
    page.put("examplePrices", "Example prices are invented unless the shop's own are set.");
    page.put("hasOptions", !options.isEmpty());
    List<Object> rows = new ArrayList<>();
    for (QuoteOption option : options) {
      Money difference = option.total().minus(price.total());
      String sign = difference.amount().signum() > 0 ? "+" : "";
      rows.add(
          Map.of(
              "label", option.label(),
              "total", option.total().text(),
              "difference", sign + difference.text(),
              "hours", hours(option.hours())));
    }
    page.put("options", rows);
    return page;
  }

  /** What is done, in the words of the operations, in two columns. */
  private List<Object> scope() {
    List<OperationLine> lines = estimate.hours().lines();
    int rows = (lines.size() + 1) / 2;
    List<Object> scope = new ArrayList<>(rows);
    for (int i = 0; i < rows; i++) {
      String right = rows + i < lines.size() ? lines.get(rows + i).operation().title() : "";
      scope.add(Map.of("left", lines.get(i).operation().title(), "right", right));
    }
    return scope;
  }

  private void putTotals(Page page) {
    CostBuildUp price = estimate.price();
    List<String> taxed = new ArrayList<>();
    for (ClassTotal total : price.classTotals()) {
      if (price.terms().tax().isDueOn(total.costClass())) {
        taxed.add(total.costClass().title());
      }
    }
    page.put("subtotal", price.subtotal().text());
    page.put("tax", price.tax().text());
    page.put("taxRate", printer.percent(price.terms().tax().rate().doubleValue()));
    page.put("taxed", taxed.isEmpty() ? "nothing" : String.join(" and ", taxed));
    page.put("total", price.total().text());
  }

  /** What the customer sees of the build-up: goods, outside work, the shop's own work. */
  private List<Object> groups() {
    Money goods = Money.zero(estimate.price().terms().currency());
    Money outside = goods;
    Money work = goods;
    for (ClassTotal total : estimate.price().classTotals()) {
      CostClass costClass = total.costClass();
      if (costClass == CostClass.STEEL || costClass == CostClass.PARTS) {
        goods = goods.plus(total.price());
      } else if (costClass == CostClass.OUTSIDE) {
        outside = outside.plus(total.price());
      } else {
        work = work.plus(total.price());
      }
    }
    List<Object> groups = new ArrayList<>();
    addGroup(groups, "steel and parts", goods);
    addGroup(groups, "work done outside the shop", outside);
    addGroup(groups, "work of the shop, with its supplies", work);
    return groups;
  }

  private static void addGroup(List<Object> groups, String title, Money price) {
    if (!price.isZero()) {
      groups.add(Map.of("title", title, "price", price.text()));
    }
  }

  Page costSheet() {
    Page page = page("cost-sheet", "Cost sheet", "for");
    putTotals(page);
    List<Object> classes = new ArrayList<>();
    for (ClassTotal total : estimate.price().classTotals()) {
      List<Object> lines = new ArrayList<>();
      for (PriceLine line : total.lines()) {
        lines.add(
            Map.of(
                "title", line.line().title(),
                "quantity", line.line().quantityText(),
                "how", line.how(),
                "cost", line.cost().text(),
                "price", line.price().text()));
      }
      classes.add(
          Map.of(
              "title", total.costClass().title(),
              "lines", lines,
              "cost", total.cost().text(),
              "price", total.price().text()));
    }
    page.put("classes", classes);
    page.put("meanHours", hours(estimate.hours().meanHours()));
    page.put("p50Hours", hours(estimate.hours().p50Hours()));
    page.put("p80Hours", hours(estimate.hours().p80Hours()));
    page.put("p90Hours", hours(estimate.hours().p90Hours()));
    if (estimate.closedJobs() > 0) {
      page.put("learned", "learned from " + Counts.of(estimate.closedJobs(), "closed job"));
    }
    List<Object> rows = new ArrayList<>();
    for (OperationLine line : estimate.hours().lines()) {
      rows.add(
          Map.of(
              "title", line.operation().title(),
              "driver", line.driverText(),
              "low", hours(line.hours().low()),
              "likely", hours(line.hours().likely()),
              "high", hours(line.hours().high()),
              "mean", hours(line.hours().mean())));
    }
    page.put("hours", rows);
    return page;
  }

  private static String hours(double hours) {
    return DecimalText.fixed(hours, 1);
  }

  private static List<Object> progress(CostBuildUp price) {
    List<Object> rows = new ArrayList<>();
    for (int i = 0; i < price.terms().progress().size(); i++) {
      rows.add(
          Map.of(
              "when", price.terms().progress().get(i).when(),
              "amount", price.progress().get(i).text()));
    }
    return rows;
  }

  Page order(MaterialOrder order) {
    Page page = page("order", "Material order", "for");
    List<Object> suppliers = new ArrayList<>();
    for (SupplierOrder supplier : order.suppliers()) {
      List<Object> lines = new ArrayList<>();
      for (OrderLine line : supplier.lines()) {
        lines.add(
            Map.of(
                "quantity", plain(line.quantity()),
                "unit", line.unit(),
                "title", line.title(),
                "amount", line.amount().text()));
      }
      for (Charge charge : supplier.charges()) {
        lines.add(
            Map.of(
                "quantity",
                "",
                "unit",
                "",
                "title",
                charge.title(),
                "amount",
                charge.amount().text()));
      }
      suppliers.add(
          Map.of(
              "supplier", supplier.supplier(),
              "remarks", supplier.remarks(),
              "lead", Counts.of(supplier.leadDays(), "working day"),
              "lines", lines,
              "total", supplier.total().text()));
    }
    return page.put("suppliers", suppliers);
  }

  private static String plain(BigDecimal quantity) {
    return DecimalText.trimmed(quantity.doubleValue(), 2);
  }

  Page floorPacket() {
    Page page = page("floor-packet", "Floor packet", "for");
    page.put(sketches.side(), FLOOR_SKETCH_MM);
    page.put(sketches.plan(), FLOOR_SKETCH_MM);
    page.put(sketches.rear(), FLOOR_SKETCH_MM);
    page.put("parts", parts());
    List<Object> operations = new ArrayList<>();
    for (OperationLine line : estimate.hours().lines()) {
      operations.add(
          Map.of(
              "title", line.operation().title(),
              "driver", line.driverText(),
              "likely", hours(line.hours().likely())));
    }
    page.put("operations", operations);
    putFitUp(page, FitUpSheet.of(estimate.draft()));
    page.put("welds", welds());
    page.put("bolts", bolts());
    return page;
  }

  private List<Object> parts() {
    List<String> names = sketches.names();
    List<Object> parts = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      parts.add(Map.of("number", i + 1, "name", names.get(i), "last", i == names.size() - 1));
    }
    return parts;
  }

  private void putFitUp(Page page, FitUpSheet sheet) {
    List<Object> struts = new ArrayList<>();
    for (int i = 0; i < sheet.struts().size(); i++) {
      FitUpSheet.Strut strut = sheet.struts().get(i);
      struts.add(
          Map.of(
              "name", strut.name(),
              "length", printer.length(strut.lengthMm()),
              "last", i == sheet.struts().size() - 1));
    }
    page.put("struts", struts);
    List<Object> angles = new ArrayList<>();
    for (FitUpSheet.FinderAngle angle : sheet.angles()) {
      angles.add(
          Map.of(
              "what", angle.what(),
              "stands", printer.angle(angle.onStandsRad(), 1),
              "rail", printer.angle(angle.fromFrameRad(), 1),
              "ride", printer.angle(angle.atRideRad(), 1)));
    }
    page.put("angles", angles);
    Map<String, List<Object>> byGroup = new LinkedHashMap<>();
    for (Target target : sheet.targets()) {
      byGroup
          .computeIfAbsent(target.group(), group -> new ArrayList<>())
          .add(
              Map.of(
                  "what", target.what(),
                  "plan", FitUpForm.value(target, target.plan(), printer),
                  "within", FitUpForm.value(target, target.tolerance(), printer)));
    }
    List<Object> brackets = new ArrayList<>();
    byGroup.forEach((group, targets) -> brackets.add(Map.of("name", group, "targets", targets)));
    page.put("brackets", brackets);
  }

  private List<Object> welds() {
    List<Object> welds = new ArrayList<>();
    for (SeamEstimate line : estimate.welds().lines()) {
      double lengthMm = line.seam().lengthMm();
      welds.add(
          Map.of(
              "name", line.seam().name(),
              "count", line.seam().count(),
              "kind", line.seam().joint().title(),
              "size", printer.length(line.seam().joint().sizeMm()),
              "length", lengthMm > 0 ? printer.length(lengthMm) : "",
              "position", line.seam().position().title() + ", " + line.seam().place().title()));
    }
    return welds;
  }

  private List<Object> bolts() {
    List<Object> bolts = new ArrayList<>();
    for (BoltLine bolt : estimate.materials().bolts()) {
      bolts.add(
          Map.of(
              "quantity", bolt.quantity(),
              "size", bolt.size().title() + " x " + printer.length(bolt.choice().lengthMm()),
              "torque", printer.torque(bolt.torqueNmm()),
              "grip", printer.length(bolt.gripMm()),
              "where", bolt.where()));
    }
    return bolts;
  }
}
