package trammel.planning.estimate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.brackets.work.TubeNeed;
import trammel.cutting.bars.CutBar;
import trammel.planning.catalog.BoughtAs;
import trammel.planning.catalog.Item;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.money.CostClass;
import trammel.trade.money.CostLine;

/** Writes the cost lines of everything that is bought for a job. */
final class CostSheet {
  private static final int QUANTITY_PLACES = 3;

  private final Currency currency;
  private final QuantityPrinter printer;
  private final List<CostLine> lines = new ArrayList<>();

  CostSheet(Currency currency, QuantityPrinter printer) {
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
    return this;
  }

  private void addSections(List<SectionCut> sections) {
    for (SectionCut section : sections) {
      Map<String, Integer> count = new LinkedHashMap<>();
      Map<String, CutBar> one = new LinkedHashMap<>();
      for (CutBar bar : section.plan().bars()) {
        Integer before = count.get(bar.stock().id());
        count.put(bar.stock().id(), before == null ? 1 : before + 1);
        one.put(bar.stock().id(), bar);
      }
      for (Map.Entry<String, CutBar> stick : one.entrySet()) {
        double lengthMm = stick.getValue().stock().lengthMm();
        String title = section.material().title() + ", " + printer.length(lengthMm) + " stick";
        add(
            section.material().key() + "-" + Math.round(lengthMm),
            title,
            CostClass.STEEL,
            BigDecimal.valueOf(count.get(stick.getKey())),
            Counts.of(count.get(stick.getKey()), "stick"),
            stick.getValue().stock().price(),
            "sawn: " + names(section));
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
            sheet.price(),
            "plates: " + plate.names());
      }
    }
  }

  private void addParts(List<PartLine> parts) {
    for (PartLine part : parts) {
      Item item = part.item();
      BigDecimal quantity = decimal(part.quantity());
      add(
          item.key(),
          item.title(),
          costClass(item.bought()),
          quantity,
          quantity.toPlainString() + " " + item.unit(),
          item.price(),
          part.why());
    }
  }

  private void addBolts(List<BoltLine> bolts) {
    for (BoltLine bolt : bolts) {
      String length = printer.length(bolt.choice().lengthMm());
      add(
          bolt.size().key() + "-" + Math.round(bolt.choice().lengthMm()),
          bolt.size().title() + " x " + length + " bolt, nut, 2 washers",
          CostClass.PARTS,
          BigDecimal.valueOf(bolt.quantity()),
          Counts.of(bolt.quantity(), "set"),
          bolt.setPrice(),
          bolt.where());
    }
  }

  private static CostClass costClass(BoughtAs bought) {
    return switch (bought) {
      case PART -> CostClass.PARTS;
      case SUPPLY -> CostClass.SUPPLIES;
      case OUTSIDE_WORK -> CostClass.OUTSIDE;
    };
  }

  private static BigDecimal decimal(double quantity) {
    return BigDecimal.valueOf(quantity)
        .setScale(QUANTITY_PLACES, RoundingMode.HALF_UP)
        .stripTrailingZeros();
  }

  private void add(
      String key,
      String title,
      CostClass costClass,
      BigDecimal quantity,
      String quantityText,
      BigDecimal unitCost,
      String why) {
    lines.add(new CostLine(key, title, costClass, quantity, quantityText, unitCost, currency, why));
  }
}
