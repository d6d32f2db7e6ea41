package trammel.cutting.internal;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Checks of lengths and prices, and how they are written in messages. */
public final class Quantities {
  private static final int MESSAGE_DECIMALS = 3;

  /** Lengths above this are taken for a slip of the unit: one kilometre. */
  private static final double LONGEST_MM = 1e6;

  private static final BigDecimal HIGHEST_PRICE = BigDecimal.valueOf(1_000_000);
  private static final int PRICE_DECIMALS = 6;

  private Quantities() {}

  /** A length as messages show it: at most three decimals, no trailing zeros, with the unit. */
  public static String millimetres(double lengthMm) {
    return BigDecimal.valueOf(lengthMm)
            .setScale(MESSAGE_DECIMALS, RoundingMode.HALF_EVEN)
            .stripTrailingZeros()
            .toPlainString()
        + " mm";
  }

  /**
   * Refuses a length that is not a number above zero.
   *
   * @param what the thing measured, as the message names it
   */
  public static void requirePositiveLength(double lengthMm, String what) {
    requireLength(lengthMm, what);
    if (lengthMm == 0) {
      throw new IllegalArgumentException(
          what + " is 0 mm; it must be above 0 mm. Give its length.");
    }
  }

  /**
   * Refuses a length that is negative, not finite, or above one kilometre.
   *
   * @param what the thing measured, as the message names it
   */
  public static void requireLength(double lengthMm, String what) {
    if (!Double.isFinite(lengthMm)) {
      throw new IllegalArgumentException(
          what + " is " + lengthMm + "; it must be a number in mm. Give a length of 0 mm or more.");
    }
    if (lengthMm < 0 || lengthMm > LONGEST_MM) {
      throw new IllegalArgumentException(
          what
              + " is "
              + millimetres(lengthMm)
              + "; it must be from 0 mm to "
              + millimetres(LONGEST_MM)
              + ". Check the sign and the unit.");
    }
  }

  /** Refuses an empty name. */
  public static void requireName(String name, String what) {
    if (name.isBlank()) {
      throw new IllegalArgumentException(what + " has no name. Give it one, such as \"240 in\".");
    }
  }

  /** Refuses a price that is negative, above a million, or finer than a millionth. */
  public static void requirePrice(BigDecimal price, String what) {
    if (price.signum() < 0 || price.compareTo(HIGHEST_PRICE) > 0) {
      throw new IllegalArgumentException(
          what
              + " has the price "
              + price.toPlainString()
              + "; it must be from 0 to "
              + HIGHEST_PRICE.toPlainString()
              + ". Use 0 for stock that is already paid for.");
    }
    if (price.stripTrailingZeros().scale() > PRICE_DECIMALS) {
      throw new IllegalArgumentException(
          what
              + " has the price "
              + price.toPlainString()
              + "; it may have at most "
              + PRICE_DECIMALS
              + " decimals. Round it.");
    }
  }

  /**
   * Refuses more pieces than can be planned one by one.
   *
   * @param count how many pieces there are
   * @param most how many there may be
   */
  public static void requireCount(long count, long most) {
    if (count > most) {
      throw new IllegalArgumentException(
          "there are "
              + count
              + " pieces to cut; one plan takes at most "
              + most
              + ". Check the quantities, or split the order.");
    }
  }
}
