package trammel.brackets.material;

import java.math.BigDecimal;
import java.util.List;
import trammel.engine.layout.BarTube;
import trammel.engine.quantity.Given;
import trammel.trade.steel.RoundTube;
import trammel.trade.steel.SteelSection;

/**
 * A section sold by the stick.
 *
 * @param key the name by which options and plans ask for it
 * @param title what it is, for a cut list
 * @param form the section
 * @param yieldMPa minimum yield strength (MPa), above 0
 * @param sticks the lengths it is sold in
 * @param supplier who delivers it
 * @param leadDays working days from order to delivery
 */
public record BarMaterial(
    String key,
    String title,
    SteelSection form,
    double yieldMPa,
    List<Stick> sticks,
    String supplier,
    int leadDays) {
  /** Sizes no further apart than this are one; they differ by the rounding of inches only. */
  private static final double SAME_SIZE_MM = 0.01;

  public BarMaterial {
    Given.text("key of a section", key, "Give it a short name.");
    Given.text("title of section '" + key + "'", title, "Say what it is.");
    Given.present("form of section '" + key + "'", form, "Give its sizes.");
    Given.positive(
        "yield of section '" + key + "' in MPa", yieldMPa, 2000, "", "See its standard.");
    sticks = List.copyOf(sticks);
    Given.count("lengths of section '" + key + "'", sticks.size(), 1, 50, "Give one at least.");
    Given.text("supplier of section '" + key + "'", supplier, "Say who delivers it.");
    Given.count("lead time of section '" + key + "'", leadDays, 0, 365, "Ask the supplier.");
  }

  /**
   * The tube as the engine sees it.
   *
   * @throws IllegalArgumentException if this section is not a round tube
   */
  public BarTube tube() {
    if (form instanceof RoundTube round) {
      return new BarTube(round.outsideMm(), round.wallMm(), yieldMPa);
    }
    throw new IllegalArgumentException(
        "section '" + key + "' is no round tube; a bar needs one. Choose another section.");
  }

  /** Price of one stick when this many of this length are ordered. */
  public BigDecimal priceEach(double lengthMm, int count) {
    for (Stick stick : sticks) {
      if (Math.abs(stick.lengthMm() - lengthMm) < SAME_SIZE_MM) {
        return PriceBreak.lowest(stick.price(), stick.breaks(), count);
      }
    }
    throw new IllegalArgumentException(
        "section '"
            + key
            + "' is not sold in sticks of "
            + lengthMm
            + " mm. Order a length that is.");
  }

  /**
   * One length in which a section is sold.
   *
   * @param lengthMm length (mm), above 0
   * @param price price of the stick in the catalog's currency
   * @param inStock whether the supplier has it
   * @param breaks lower prices from a number of sticks on
   */
  public record Stick(double lengthMm, BigDecimal price, boolean inStock, List<PriceBreak> breaks) {
    public Stick {
      breaks = List.copyOf(breaks);
      Given.positive("stick length", lengthMm, 20_000, "mm", "Give the mill length.");
      Given.present("price of a stick", price, "Give an amount.");
    }
  }
}
