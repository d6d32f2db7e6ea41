package trammel.planning.order;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.planning.catalog.BarMaterial;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.Item;
import trammel.planning.cutting.bars.BarStock;
import trammel.planning.cutting.bars.CutBar;
import trammel.planning.estimate.BoltLine;
import trammel.planning.estimate.Estimate;
import trammel.planning.estimate.Materials;
import trammel.planning.estimate.PartLine;
import trammel.planning.estimate.PlateCut;
import trammel.planning.estimate.SectionCut;
import trammel.planning.money.Money;
import trammel.planning.quantity.QuantityPrinter;
import trammel.planning.rack.Rack;
import trammel.planning.work.PlateNeed;
import trammel.planning.work.TubeNeed;
import trammel.planning.work.WorkPlan;

/**
 * Puts the materials of one or many jobs into one order a supplier. Sticks and sheets are whole,
 * and several jobs are cut from them together.
 */
public final class Ordering {
  private static final int QUANTITY_PLACES = 3;

  private final Catalog catalog;
  private final QuantityPrinter printer;
  private final Map<String, List<OrderLine>> bySupplier = new LinkedHashMap<>();
  private RackUse rack;

  /**
   * @param catalog what can be bought
   * @param printer prints the sizes of sticks and sheets
   */
  public Ordering(Catalog catalog, QuantityPrinter printer) {
    this.catalog = catalog;
    this.printer = printer;
  }

  /** The order over all the jobs, with nothing on the rack. */
  public MaterialOrder order(List<Estimate> jobs) {
    return order(jobs, Rack.EMPTY);
  }

  /** The order over all the jobs; what is on the rack is used first. */
  public MaterialOrder order(List<Estimate> jobs, Rack onHand) {
    WorkPlan.Builder together = new WorkPlan.Builder();
    for (Estimate job : jobs) {
      together.add(jobs.size() == 1 ? job.plan() : marked(job));
    }
    Materials materials = Materials.of(together.build(), catalog, onHand);
    rack = new RackUse(onHand, printer);
    rack.cut(materials);
    bySupplier.clear();
    materials.sections().forEach(this::addSticks);
    materials.plates().forEach(this::addSheets);
    materials.parts().forEach(this::addPart);
    materials.bolts().forEach(this::addBolts);
    List<SupplierOrder> suppliers = new ArrayList<>(bySupplier.size());
    bySupplier.forEach((supplier, lines) -> suppliers.add(new SupplierOrder(supplier, lines)));
    return new MaterialOrder(materials, suppliers, rack);
  }

  /** A job's plan with its number before the name of every piece, so that cut pieces find home. */
  private static WorkPlan marked(Estimate job) {
    String number = job.draft().job().header().number() + " ";
    WorkPlan plan = job.plan();
    WorkPlan.Builder marked = new WorkPlan.Builder();
    plan.parts().forEach(marked::add);
    plan.bolts().forEach(marked::add);
    for (TubeNeed tube : plan.tubes()) {
      marked.add(
          new TubeNeed(
              number + tube.name(),
              tube.barKey(),
              tube.cutLengthMm(),
              tube.quantity(),
              tube.ends(),
              tube.copes(),
              tube.why()));
    }
    for (PlateNeed plate : plan.plates()) {
      marked.add(
          new PlateNeed(
              plate.plate().named(number + plate.plate().name()),
              plate.plateKey(),
              plate.quantity(),
              plate.why()));
    }
    return marked.build();
  }

  private void addSticks(SectionCut section) {
    Map<String, Integer> count = new LinkedHashMap<>();
    Map<String, BarStock> stock = new LinkedHashMap<>();
    for (CutBar bar : section.plan().bars()) {
      if (bar.stock().remnant()) {
        continue;
      }
      count.merge(bar.stock().id(), 1, Integer::sum);
      stock.put(bar.stock().id(), bar.stock());
    }
    BarMaterial material = section.material();
    stock.forEach(
        (id, stick) ->
            add(
                material.supplier(),
                material.key(),
                material.title() + ", " + printer.length(stick.lengthMm()),
                BigDecimal.valueOf(count.get(id)),
                "stick",
                stick.price(),
                material.leadDays(),
                section.needs().size() + " cut lengths"));
  }

  private void addSheets(PlateCut cut) {
    for (PlateCut.Bought sheet : cut.bought()) {
      add(
          cut.material().supplier(),
          cut.material().key(),
          cut.material().title()
              + ", "
              + printer.length(sheet.widthMm())
              + " x "
              + printer.length(sheet.lengthMm()),
          BigDecimal.valueOf(sheet.count()),
          "sheet",
          sheet.price(),
          cut.material().leadDays(),
          cut.names());
    }
  }

  private void addPart(PartLine part) {
    Item item = part.item();
    BigDecimal wanted =
        BigDecimal.valueOf(part.quantity()).setScale(QUANTITY_PLACES, RoundingMode.HALF_UP);
    add(
        item.supplier(),
        item.key(),
        item.title(),
        rack.stillToBuy(item.key(), 0, item.title(), wanted),
        item.unit(),
        item.price(),
        item.leadDays(),
        part.why());
  }

  private void addBolts(BoltLine bolt) {
    double lengthMm = bolt.choice().lengthMm();
    String title =
        bolt.size().title() + " x " + printer.length(lengthMm) + ", lock nut, two washers";
    BigDecimal wanted = BigDecimal.valueOf(bolt.quantity());
    add(
        bolt.size().supplier(),
        bolt.size().key(),
        title,
        rack.stillToBuy(bolt.size().key(), lengthMm, title, wanted),
        "set",
        bolt.setPrice(),
        0,
        bolt.where());
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
    if (quantity.signum() == 0) {
      return;
    }
    Money amount = new Money(quantity.multiply(price), catalog.currency());
    bySupplier
        .computeIfAbsent(supplier, name -> new ArrayList<>())
        .add(new OrderLine(key, title, quantity, unit, amount, leadDays, use));
  }
}
