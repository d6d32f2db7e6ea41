package trammel.planning.catalog;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import trammel.brackets.material.BarMaterial;
import trammel.brackets.material.BoltSize;
import trammel.brackets.material.PlateMaterial;

/** Puts the prices of suppliers' lists in the place of those that the entries have. */
final class ListedPrices {
  private final CatalogAssembly assembly;

  ListedPrices(CatalogAssembly assembly) {
    this.assembly = assembly;
  }

  /** Reports prices of sizes that the entry is not sold in. */
  void apply() {
    for (ListPrice listed : assembly.listPrices.values()) {
      assembly.items.computeIfPresent(listed.key(), (key, item) -> priced(item, listed));
      assembly.bars.computeIfPresent(listed.key(), (key, bar) -> priced(bar, listed));
      assembly.plates.computeIfPresent(listed.key(), (key, plate) -> priced(plate, listed));
      assembly.bolts.computeIfPresent(listed.key(), (key, bolt) -> priced(bolt, listed));
    }
  }

  private static Item priced(Item item, ListPrice listed) {
    Selling selling = item.selling();
    boolean changed = listed.price().isPresent() || listed.packPrice().isPresent();
    return changed
        ? new Item(
            item.key(),
            item.title(),
            item.unit(),
            listed.price().orElse(item.price()),
            item.bought(),
            item.supplier(),
            item.leadDays(),
            item.massKg(),
            item.lengthMm(),
            new Selling(
                selling
                    .pack()
                    .map(
                        pack ->
                            new Selling.Pack(
                                pack.title(),
                                pack.holds(),
                                listed.packPrice().orElse(pack.price()))),
                listed.breaks(),
                selling.outOfStock(),
                selling.alternate()))
        : item;
  }

  private BarMaterial priced(BarMaterial bar, ListPrice listed) {
    List<BarMaterial.Stick> sticks = new ArrayList<>();
    for (BarMaterial.Stick stick : bar.sticks()) {
      Optional<ListPrice.Size> size = size(listed, stick.lengthMm(), 0);
      sticks.add(
          size.map(
                  found ->
                      new BarMaterial.Stick(
                          stick.lengthMm(), found.price(), stick.inStock(), found.breaks()))
              .orElse(stick));
    }
    refuseOthers(listed, size -> sticks.stream().anyMatch(one -> size.is(one.lengthMm(), 0)));
    return new BarMaterial(
        bar.key(), bar.title(), bar.form(), bar.yieldMPa(), sticks, bar.supplier(), bar.leadDays());
  }

  private PlateMaterial priced(PlateMaterial plate, ListPrice listed) {
    List<PlateMaterial.Sheet> sheets = new ArrayList<>();
    for (PlateMaterial.Sheet sheet : plate.sheets()) {
      Optional<ListPrice.Size> size = size(listed, sheet.lengthMm(), sheet.widthMm());
      sheets.add(
          size.map(
                  found ->
                      new PlateMaterial.Sheet(
                          sheet.widthMm(),
                          sheet.lengthMm(),
                          found.price(),
                          sheet.inStock(),
                          found.breaks()))
              .orElse(sheet));
    }
    refuseOthers(
        listed, size -> sheets.stream().anyMatch(one -> size.is(one.lengthMm(), one.widthMm())));
    return new PlateMaterial(
        plate.key(),
        plate.title(),
        plate.form(),
        plate.yieldMPa(),
        plate.tensileMPa(),
        sheets,
        plate.supplier(),
        plate.leadDays());
  }

  private BoltSize priced(BoltSize bolt, ListPrice listed) {
    List<BoltSize.Stocked> lengths = new ArrayList<>();
    for (BoltSize.Stocked stocked : bolt.lengths()) {
      BigDecimal price =
          size(listed, stocked.lengthMm(), 0).map(ListPrice.Size::price).orElse(stocked.price());
      lengths.add(new BoltSize.Stocked(stocked.lengthMm(), price));
    }
    refuseOthers(listed, size -> lengths.stream().anyMatch(one -> size.is(one.lengthMm(), 0)));
    return bolt.priced(
        lengths,
        listed.nutPrice().orElse(bolt.nutPrice()),
        listed.washerPrice().orElse(bolt.washerPrice()));
  }

  private static Optional<ListPrice.Size> size(ListPrice listed, double lengthMm, double widthMm) {
    return listed.sizes().stream().filter(size -> size.is(lengthMm, widthMm)).findFirst();
  }

  private void refuseOthers(ListPrice listed, Predicate<ListPrice.Size> sold) {
    for (ListPrice.Size size : listed.sizes()) {
      if (!sold.test(size)) {
        assembly.refuseSize(listed, size);
      }
    }
  }
}
