package trammel.planning.drawings;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes numbers as plain decimals, never with an exponent. */
final class Decimals {
  private Decimals() {}

  /** The number to the given places at most, without trailing zeros and without a minus zero. */
  static String plain(double value, int places) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_EVEN);
    if (rounded.signum() == 0) {
      return "0";
    }
    return rounded.stripTrailingZeros().toPlainString();
  }
}
