package trammel.cutting.sheets;

import java.math.BigDecimal;
import java.util.OptionalInt;
import trammel.cutting.internal.Quantities;

/**
 * One size of sheet: bought new, or a drop on the rack.
 *
 * @param id what the shop calls it
 * @param widthMm side along x, mm; grain runs along it where grain matters
 * @param heightMm side along y, mm
 * @param price price of one sheet; 0 for a drop that is already paid for
 * @param available how many there are; empty for as many as needed
 * @param remnant true for a drop from the rack
 */
public record SheetStock(
    String id,
    double widthMm,
    double heightMm,
    BigDecimal price,
    OptionalInt available,
    boolean remnant) {
  /**
   * @throws IllegalArgumentException when a value is impossible
   */
  public SheetStock {
    Quantities.requireName(id, "a sheet");
    Quantities.requirePositiveLength(widthMm, "the width of the sheet " + id);
    Quantities.requirePositiveLength(heightMm, "the height of the sheet " + id);
    Quantities.requirePrice(price, "the sheet " + id);
    if (available.isPresent() && available.getAsInt() < 0) {
      throw new IllegalArgumentException(
          "the sheet "
              + id
              + " has "
              + available.getAsInt()
              + " available; it must be 0 or more. Leave it open for as many as needed.");
    }
  }

  /** A size that can be bought in any number. */
  public static SheetStock bought(String id, double widthMm, double heightMm, BigDecimal price) {
    return new SheetStock(id, widthMm, heightMm, price, OptionalInt.empty(), false);
  }

  /** Drops of one size from the rack, already paid for. */
  public static SheetStock remnant(String id, double widthMm, double heightMm, int available) {
    return new SheetStock(id, widthMm, heightMm, BigDecimal.ZERO, OptionalInt.of(available), true);
  }
}
