package trammel.cutting.bars;

import java.math.BigDecimal;
import java.util.OptionalInt;
import trammel.cutting.internal.Quantities;

/**
 * One length in which a section can be had: bought new, or a remnant on the rack.
 *
 * @param id what the shop calls it; unique within a problem
 * @param lengthMm whole length, mm
 * @param price price of one bar; 0 for a remnant that is already paid for
 * @param available how many there are; empty for as many as needed
 * @param remnant true for a piece from the rack
 */
public record BarStock(
    String id, double lengthMm, BigDecimal price, OptionalInt available, boolean remnant) {
  /**
   * @throws IllegalArgumentException when a value is impossible
   */
  public BarStock {
    Quantities.requireName(id, "a stock length");
    Quantities.requirePositiveLength(lengthMm, "the stock " + id);
    Quantities.requirePrice(price, "the stock " + id);
    if (available.isPresent() && available.getAsInt() < 0) {
      throw new IllegalArgumentException(
          "the stock "
              + id
              + " has "
              + available.getAsInt()
              + " bars available; it must be 0 or more. Leave it open for as many as needed.");
    }
  }

  /** A length that can be bought in any number. */
  public static BarStock bought(String id, double lengthMm, BigDecimal price) {
    return new BarStock(id, lengthMm, price, OptionalInt.empty(), false);
  }

  /** Remnants of one length from the rack, already paid for. */
  public static BarStock remnant(String id, double lengthMm, int available) {
    return new BarStock(id, lengthMm, BigDecimal.ZERO, OptionalInt.of(available), true);
  }
}
