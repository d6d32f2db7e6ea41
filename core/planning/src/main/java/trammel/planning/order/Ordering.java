package trammel.planning.order;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.brackets.material.BarMaterial;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.WorkPlan;
import trammel.cutting.background.Progress;
import trammel.cutting.bars.BarStock;
import trammel.cutting.bars.CutBar;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.Item;
import trammel.planning.estimate.BoltLine;
import trammel.planning.estimate.Materials;
import trammel.planning.estimate.PackCount;
import trammel.planning.estimate.PartLine;
import trammel.planning.estimate.PlateCut;
import trammel.planning.estimate.SectionCut;
import trammel.planning.estimate.SupplierCharges;
import trammel.planning.rack.Rack;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.money.Money;

/**
 * Puts the materials of one or many jobs into one order a supplier. Sticks, sheets and packs are
 * whole, several jobs are cut from them together, and what lies on the rack is used first.
 */
public final class Ordering {
  private static final int QUANTITY_PLACES = 3;

  private final Catalog catalog;
  private final QuantityPrinter printer;
  private final Progress progress;
  private final Map<String, List<OrderLine>> bySupplier = new LinkedHashMap<>();
  private final Map<String, List<String>> remarks = new LinkedHashMap<>();
  private final Map<String, Double> longestMm = new LinkedHashMap<>();
  private RackUse rack;

  /**
   * @param catalog what can be bought
   * @param printer prints the sizes of sticks and sheets
   */
  public Ordering(Catalog catalog, QuantityPrinter printer) {
    this(catalog, printer, Progress.UNSEEN);
  }

  /**
   * @param catalog what can be bought
   * @param printer prints the sizes of sticks and sheets
   * @param progress is told how far the cutting plan over many jobs is
   */
  public Ordering(Catalog catalog, QuantityPrinter printer, Progress progress) {
    this.catalog = catalog;
    this.printer = printer;
    this.progress = progress;
  }

  /** The order over all the jobs, everything bought. */
  public MaterialOrder order(List<OrderedJob> jobs) {
    return order(jobs, Rack.EMPTY);
  }

  /**
   * The order over all the jobs, from the rack first.
   *
   * @throws IllegalArgumentException if no stock in the catalog can hold a piece
   */
  public MaterialOrder order(List<OrderedJob> jobs, Rack stock) {
    bySupplier.clear();
    remarks.clear();
    longestMm.clear();
    WorkPlan.Builder together = new WorkPlan.Builder();
    for (OrderedJob job : jobs) {
      together.add(jobs.size() == 1 ? job.plan() : marked(job));
    }
    List<PartLine> own = new ArrayList<>();
    for (OrderedJob job : jobs) {
      job.own().forEach(part -> own.add(jobs.size() == 1 ? part : marked(part, job)));
    }
    Materials materials = Materials.of(together.build(), catalog, stock, own, progress);
    rack = new RackUse(stock, printer);
    rack.cut(materials);
    materials.sections().forEach(this::addSticks);
    materials.plates().forEach(this::addSheets);
    materials.parts().forEach(this::addPart);
    materials.bolts().forEach(this::addBolts);
    return new MaterialOrder(materials, suppliers(), rack, start(jobs));
  }

  private List<SupplierOrder> suppliers() {
    List<SupplierOrder> suppliers = new ArrayList<>(bySupplier.size());
    for (Map.Entry<String, List<OrderLine>> entry : bySupplier.entrySet()) {
      SupplierCharges charges =
          new SupplierCharges(
              catalog.supplier(entry.getKey()),
              SupplierOrder.goods(entry.getValue()),
              longestMm.getOrDefault(entry.getKey(), 0.0));
      List<String> notes = new ArrayList<>(remarks.getOrDefault(entry.getKey(), List.of()));
      notes.addAll(charges.remarks());
      suppliers.add(new SupplierOrder(entry.getKey(), entry.getValue(), charges.charges(), notes));
    }
    return suppliers;
  }

  private static Optional<LocalDate> start(List<OrderedJob> jobs) {
    Optional<LocalDate> first = Optional.empty();
    for (OrderedJob job : jobs) {
      if (job.start().isPresent() && (first.isEmpty() || job.start().get().isBefore(first.get()))) {
        first = job.start();
      }
    }
    return first;
  }

  /** A job's plan with its number before the name of every piece, so that cut pieces find home. */
  private static WorkPlan marked(OrderedJob job) {
    String number = job.number() + " ";
    WorkPlan plan = job.plan();
    WorkPlan.Builder marked = new WorkPlan.Builder();
    plan.parts().forEach(marked::add);
    plan.bolts().forEach(marked::add);
    plan.tubes().forEach(tube -> marked.add(tube.named(number + tube.name())));
    plan.plates().forEach(plate -> marked.add(plate.named(number + plate.plate().name())));
    return marked.build();
  }

  private static PartLine marked(PartLine part, OrderedJob job) {
    return new PartLine(
        part.item(), part.quantity(), Phrase.of("{}: {}", job.number(), part.why()));
  }

  private void addSticks(SectionCut section) {
    BarMaterial material = section.material();
    Map<String, Integer> count = new LinkedHashMap<>();
    Map<String, BarStock> stock = new LinkedHashMap<>();
    for (CutBar bar : section.plan().bars()) {
      if (!bar.stock().remnant()) {
        count.merge(bar.stock().id(), 1, Integer::sum);
        stock.put(bar.stock().id(), bar.stock());
      }
    }
    for (Map.Entry<String, BarStock> entry : stock.entrySet()) {
      BarStock stick = entry.getValue();
      longestMm.merge(material.supplier(), stick.lengthMm(), Math::max);
      add(
          material.supplier(),
          material.key(),
          material.title() + ", " + printer.length(stick.lengthMm()),
          BigDecimal.valueOf(count.get(entry.getKey())),
          "stick",
          material.priceEach(stick.lengthMm(), count.get(entry.getKey())),
          material.leadDays(),
          section.needs().size() + " cut lengths");
    }
  }

  private void addSheets(PlateCut cut) {
    PlateMaterial material = cut.material();
    for (PlateCut.Bought sheet : cut.bought()) {
      add(
          material.supplier(),
          material.key(),
          material.title() + ", " + size(sheet.widthMm(), sheet.lengthMm()),
          BigDecimal.valueOf(sheet.count()),
          "sheet",
          material.priceEach(sheet.widthMm(), sheet.lengthMm(), sheet.count()),
          material.leadDays(),
          count(cut) + " plates to cut");
    }
  }

  private static int count(PlateCut cut) {
    int count = 0;
    for (PlateNeed need : cut.needs()) {
      count += need.quantity();
    }
    return count;
  }

  private String size(double widthMm, double lengthMm) {
    return printer.length(widthMm) + " x " + printer.length(lengthMm);
  }

  private void addPart(PartLine part) {
    Item asked = part.item();
    BigDecimal need =
        BigDecimal.valueOf(part.quantity()).setScale(QUANTITY_PLACES, RoundingMode.HALF_UP);
    need = rack.stillToBuy(asked.key(), 0, asked.title(), need);
    if (need.signum() == 0) {
      return;
    }
    Item item = inStock(asked);
    PackCount count = PackCount.of(item, need);
    add(
        item.supplier(),
        item.key(),
        item.title(),
        count.quantity(),
        count.unit(),
        count.price(),
        item.leadDays(),
        part.why().in(printer));
    BigDecimal left = count.units().subtract(need);
    if (left.signum() > 0) {
      rack.putBin(item.key(), item.title(), left);
    }
  }

  /** The item itself, or its alternate while it is out of stock; what that means is remarked. */
  private Item inStock(Item asked) {
    Item taken = catalog.inStock(asked);
    if (taken != asked) {
      remark(
          taken.supplier(),
          taken.title()
              + " in place of "
              + asked.title()
              + ", which is out of stock: check"
              + " that it fits.");
    } else if (asked.selling().outOfStock()) {
      remark(
          asked.supplier(),
          asked.title()
              + " is out of stock and the catalog has no alternate in stock. Ask for"
              + " the day of delivery.");
    }
    return taken;
  }

  private void remark(String supplier, String text) {
    remarks.computeIfAbsent(supplier, name -> new ArrayList<>()).add(text);
  }

  private void addBolts(BoltLine bolt) {
    String title =
        bolt.size().title()
            + " x "
            + printer.length(bolt.choice().lengthMm())
            + ", lock nut, two washers";
    BigDecimal need =
        rack.stillToBuy(
            bolt.size().key(),
            bolt.choice().lengthMm(),
            title,
            BigDecimal.valueOf(bolt.quantity()));
    if (need.signum() > 0) {
      add(
          bolt.size().supplier(),
          bolt.size().key(),
          title,
          need,
          "set",
          bolt.setPrice(),
          bolt.size().leadDays(),
          bolt.where());
    }
  }

  private void add(
      String supplier,
      String key,
      String title,
      BigDecimal quantity,
      String unit,
      BigDecimal price,
      int leadDays,
      String use) {
    Money amount = new Money(quantity.multiply(price), catalog.currency());
    bySupplier
        .computeIfAbsent(supplier, name -> new ArrayList<>())
        .add(new OrderLine(key, title, quantity, unit, price, amount, leadDays, use));
  }
}
