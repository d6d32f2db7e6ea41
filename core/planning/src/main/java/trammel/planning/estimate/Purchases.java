package trammel.planning.estimate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.brackets.material.BarMaterial;
import trammel.brackets.material.PlateMaterial;
import trammel.cutting.bars.BarStock;
import trammel.cutting.bars.CutBar;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.Item;
import trammel.trade.money.Money;

/**
 * What the materials of one job cost at each supplier when nothing is on the rack: whole sticks,
 * sheets and packs at the prices that their numbers get, and what each supplier adds to the order.
 */
final class Purchases {
  private static final int QUANTITY_PLACES = 3;

  private final Catalog catalog;
  private final Map<String, Money> goods = new LinkedHashMap<>();
  private final Map<String, Double> longestMm = new LinkedHashMap<>();

  Purchases(Catalog catalog) {
    this.catalog = catalog;
  }

  /** The purchases of everything in the materials. */
  static Purchases of(Materials materials, Catalog catalog) {
    Purchases purchases = new Purchases(catalog);
    materials.sections().forEach(purchases::add);
    materials.plates().forEach(purchases::add);
    materials.parts().forEach(purchases::add);
    materials.bolts().forEach(purchases::add);
    return purchases;
  }

  /** So many sticks of a length. */
  record Sticks(double lengthMm, int count, BigDecimal priceEach) {}

  /** The sticks to buy for a section, by length; what comes from the rack is not among them. */
  static List<Sticks> sticks(SectionCut section) {
    Map<String, Integer> count = new LinkedHashMap<>();
    Map<String, BarStock> stock = new LinkedHashMap<>();
    for (CutBar bar : section.plan().bars()) {
      if (!bar.stock().remnant()) {
        count.merge(bar.stock().id(), 1, Integer::sum);
        stock.put(bar.stock().id(), bar.stock());
      }
    }
    BarMaterial material = section.material();
    List<Sticks> sticks = new ArrayList<>(stock.size());
    stock.forEach(
        (id, stick) ->
            sticks.add(
                new Sticks(
                    stick.lengthMm(),
                    count.get(id),
                    material.priceEach(stick.lengthMm(), count.get(id)))));
    return sticks;
  }

  /** The price of one sheet when this many are bought. */
  static BigDecimal priceEach(PlateMaterial material, PlateCut.Bought sheet) {
    return material.priceEach(sheet.widthMm(), sheet.lengthMm(), sheet.count());
  }

  /** How much of a part is needed, as orders count it. */
  static BigDecimal needed(PartLine part) {
    return BigDecimal.valueOf(part.quantity()).setScale(QUANTITY_PLACES, RoundingMode.HALF_UP);
  }

  private void add(SectionCut section) {
    String supplier = section.material().supplier();
    for (Sticks sticks : sticks(section)) {
      longestMm.merge(supplier, sticks.lengthMm(), Math::max);
      add(supplier, BigDecimal.valueOf(sticks.count()).multiply(sticks.priceEach()));
    }
  }

  private void add(PlateCut plate) {
    for (PlateCut.Bought sheet : plate.bought()) {
      add(
          plate.material().supplier(),
          BigDecimal.valueOf(sheet.count()).multiply(priceEach(plate.material(), sheet)));
    }
  }

  private void add(PartLine part) {
    Item item = catalog.inStock(part.item());
    add(item.supplier(), PackCount.of(item, needed(part)).cost());
  }

  private void add(BoltLine bolt) {
    add(bolt.size().supplier(), BigDecimal.valueOf(bolt.quantity()).multiply(bolt.setPrice()));
  }

  private void add(String supplier, BigDecimal amount) {
    goods.merge(supplier, new Money(amount, catalog.currency()), Money::plus);
  }

  /** The suppliers, in the order in which they were first needed. */
  List<String> suppliers() {
    return List.copyOf(goods.keySet());
  }

  /** What a supplier adds to the order. */
  SupplierCharges charges(String supplier) {
    return new SupplierCharges(
        catalog.supplier(supplier), goods(supplier), longestMm.getOrDefault(supplier, 0.0));
  }

  /** Goods and charges of one supplier. */
  Money total(String supplier) {
    return goods(supplier).plus(charges(supplier).sum());
  }

  private Money goods(String supplier) {
    return goods.getOrDefault(supplier, Money.zero(catalog.currency()));
  }
}
