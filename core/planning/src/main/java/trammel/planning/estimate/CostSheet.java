package trammel.planning.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import trammel.brackets.work.TubeNeed;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.BoughtAs;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.Item;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.money.CostClass;
import trammel.trade.money.CostLine;

/** Writes the cost lines of everything that is bought for a job. */
final class CostSheet {
  private final Catalog catalog;
  private final Currency currency;
  private final QuantityPrinter printer;
  private final List<CostLine> lines = new ArrayList<>();

  CostSheet(Catalog catalog, Currency currency, QuantityPrinter printer) {
    this.catalog = catalog;
    this.currency = currency;
    this.printer = printer;
  }

  List<CostLine> lines() {
    return List.copyOf(lines);
  }

  CostSheet add(Materials materials) {
    addSections(materials.sections());
    addPlates(materials.plates());
    addParts(materials.parts());
    addBolts(materials.bolts());
    addCharges(materials);
    return this;
  }

  CostSheet add(List<CostLine> others) {
    lines.addAll(others);
    return this;
  }

  private void addSections(List<SectionCut> sections) {
    for (SectionCut section : sections) {
      for (Purchases.Sticks sticks : Purchases.sticks(section)) {
        add(
            section.material().key() + "-" + Math.round(sticks.lengthMm()),
            section.material().title() + ", " + printer.length(sticks.lengthMm()) + " stick",
            CostClass.STEEL,
            BigDecimal.valueOf(sticks.count()),
            Counts.of(sticks.count(), "stick"),
            sticks.priceEach(),
            Phrase.of("sawn: {}", names(section)));
      }
    }
  }

  private static String names(SectionCut section) {
    StringBuilder names = new StringBuilder();
    for (TubeNeed need : section.needs()) {
      names
          .append(names.length() == 0 ? "" : ", ")
          .append(need.quantity())
          .append(" x ")
          .append(need.name());
    }
    return names.toString();
  }

  private void addPlates(List<PlateCut> plates) {
    for (PlateCut plate : plates) {
      for (PlateCut.Bought sheet : plate.bought()) {
        String size = printer.length(sheet.widthMm()) + " x " + printer.length(sheet.lengthMm());
        add(
            plate.material().key()
                + "-"
                + Math.round(sheet.widthMm())
                + "x"
                + Math.round(sheet.lengthMm()),
            plate.material().title() + ", " + size,
            CostClass.STEEL,
            BigDecimal.valueOf(sheet.count()),
            Counts.of(sheet.count(), "sheet"),
            Purchases.priceEach(plate.material(), sheet),
            Phrase.of("plates: {}", plate.names()));
      }
    }
  }

  private void addParts(List<PartLine> parts) {
    for (PartLine part : parts) {
      Item item = catalog.inStock(part.item());
      BigDecimal needed = Purchases.needed(part);
      PackCount count = PackCount.of(item, needed);
      String units = plain(needed) + " " + item.unit();
      if (count.leavesRest(needed) && !catalog.shop().billsPackRests()) {
        addPart(item, needed, units, item.price(), part.why());
      } else if (item.selling().pack().isPresent()) {
        addPart(
            item,
            count.quantity(),
            plain(count.quantity()) + " x " + count.unit(),
            count.price(),
            Phrase.of("{} needed: {}", units, part.why()));
      } else {
        addPart(
            item,
            count.quantity(),
            plain(count.quantity()) + " " + item.unit(),
            count.price(),
            part.why());
      }
    }
  }

  private void addPart(
      Item item, BigDecimal quantity, String quantityText, BigDecimal price, Phrase why) {
    add(item.key(), item.title(), costClass(item.bought()), quantity, quantityText, price, why);
  }

  /** The key of the line of a size of bolts. */
  static String key(BoltLine bolt) {
    return bolt.size().key() + "-" + Math.round(bolt.choice().lengthMm());
  }

  private void addBolts(List<BoltLine> bolts) {
    for (BoltLine bolt : bolts) {
      String length = printer.length(bolt.choice().lengthMm());
      add(
          key(bolt),
          bolt.size().title() + " x " + length + " bolt, nut, 2 washers",
          CostClass.PARTS,
          BigDecimal.valueOf(bolt.quantity()),
          Counts.of(bolt.quantity(), "set"),
          bolt.setPrice(),
          Phrase.text(bolt.where()));
    }
  }

  private static CostClass costClass(BoughtAs bought) {
    return switch (bought) {
      case PART -> CostClass.PARTS;
      case SUPPLY -> CostClass.SUPPLIES;
      case OUTSIDE_WORK -> CostClass.OUTSIDE;
    };
  }

  /** What each supplier adds to the order of this job alone. */
  private void addCharges(Materials materials) {
    Purchases purchases = Purchases.of(materials, catalog);
    for (String supplier : purchases.suppliers()) {
      for (Charge charge : purchases.charges(supplier).charges()) {
        add(
            charge.key() + "-" + supplier.toLowerCase(Locale.ROOT).replace(' ', '-'),
            supplier + ", " + charge.title(),
            CostClass.FREIGHT,
            BigDecimal.ONE,
            "1 order",
            charge.amount().amount(),
            Phrase.of("the supplier's terms, for what this job orders by itself"));
      }
    }
  }

  private static String plain(BigDecimal quantity) {
    BigDecimal stripped = quantity.stripTrailingZeros();
    return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
  }

  private void add(
      String key,
      String title,
      CostClass costClass,
      BigDecimal quantity,
      String quantityText,
      BigDecimal unitCost,
      Phrase why) {
    lines.add(new CostLine(key, title, costClass, quantity, quantityText, unitCost, currency, why));
  }
}
