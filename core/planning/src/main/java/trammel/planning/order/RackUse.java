package trammel.planning.order;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import trammel.cutting.bars.BarOffcut;
import trammel.cutting.bars.CutBar;
import trammel.cutting.sheets.CutSheet;
import trammel.cutting.sheets.SheetOffcut;
import trammel.planning.estimate.Materials;
import trammel.planning.estimate.PlateCut;
import trammel.planning.estimate.SectionCut;
import trammel.planning.rack.Rack;
import trammel.reading.quantity.QuantityPrinter;

/** What an order takes off the rack, and what is left over and goes back on it. */
public final class RackUse {
  /** A piece goes back with its length rounded down to this, 1/32 in (mm). */
  private static final double STEP_MM = 25.4 / 32;

  /** What names of sticks and drops that go back start with. */
  private static final String STICK = "R";

  private static final String DROP = "D";

  private final QuantityPrinter printer;
  private final List<String> taken = new ArrayList<>();
  private final List<String> back = new ArrayList<>();
  private Rack rack;
  private int lastStick;
  private int lastDrop;

  RackUse(Rack rack, QuantityPrinter printer) {
    this.rack = rack;
    this.printer = printer;
    lastStick = rack.highestNumber(STICK);
    lastDrop = rack.highestNumber(DROP);
  }

  /** The rack as the order leaves it. */
  public Rack rack() {
    return rack;
  }

  /** What is taken, in words. */
  public List<String> taken() {
    return List.copyOf(taken);
  }

  /** What goes back on the rack, in words, with the name to paint on it. */
  public List<String> back() {
    return List.copyOf(back);
  }

  /** Takes sticks and drops that the cutting plans use and puts useful offcuts back. */
  void cut(Materials materials) {
    for (SectionCut section : materials.sections()) {
      for (CutBar bar : section.plan().bars()) {
        if (bar.stock().remnant()) {
          take(bar.stock().id(), section.material().title());
        }
      }
    }
    for (PlateCut plate : materials.plates()) {
      for (CutSheet sheet : plate.plan().sheets()) {
        if (sheet.stock().remnant()) {
          take(sheet.stock().id(), plate.material().title());
        }
      }
    }
    for (SectionCut section : materials.sections()) {
      for (BarOffcut offcut : section.plan().offcuts()) {
        putStick(section, offcut);
      }
    }
    for (PlateCut plate : materials.plates()) {
      for (SheetOffcut offcut : plate.plan().offcuts()) {
        putDrop(plate, offcut);
      }
    }
  }

  private void take(String name, String what) {
    taken.add(name + ", " + what);
    rack = rack.without(name);
  }

  private void putStick(SectionCut section, BarOffcut offcut) {
    double lengthMm = roundedDown(offcut.lengthMm());
    // Never a name that was on the rack: the piece that bore it may still lie about.
    lastStick++;
    Rack.Stick put = new Rack.Stick(STICK + lastStick, section.material().key(), lengthMm);
    rack = rack.with(put);
    back.add(put.name() + ", " + section.material().title() + ", " + printer.length(lengthMm));
  }

  private void putDrop(PlateCut plate, SheetOffcut offcut) {
    double widthMm = roundedDown(offcut.widthMm());
    double lengthMm = roundedDown(offcut.heightMm());
    lastDrop++;
    Rack.Drop put = new Rack.Drop(DROP + lastDrop, plate.material().key(), widthMm, lengthMm);
    rack = rack.with(put);
    back.add(
        put.name()
            + ", "
            + plate.material().title()
            + ", "
            + printer.length(widthMm)
            + " x "
            + printer.length(lengthMm));
  }

  /** Puts what is left over of a pack into its bin. */
  void putBin(String key, String title, BigDecimal quantity) {
    rack = rack.putting(key, quantity);
    back.add(quantity.stripTrailingZeros().toPlainString() + " x " + title);
  }

  private static double roundedDown(double lengthMm) {
    return Math.floor(lengthMm / STEP_MM + 1e-6) * STEP_MM;
  }

  /**
   * Takes what there is of a bought thing.
   *
   * @param lengthMm length of a bolt (mm); 0 for anything else
   * @return how many are still to be bought
   */
  BigDecimal stillToBuy(String key, double lengthMm, String title, BigDecimal wanted) {
    BigDecimal here = rack.held(key, lengthMm).min(wanted);
    if (here.signum() > 0) {
      rack = rack.taking(key, lengthMm, here);
      taken.add(here.stripTrailingZeros().toPlainString() + " x " + title);
    }
    return wanted.subtract(here);
  }
}
