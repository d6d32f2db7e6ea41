package trammel.app.cutfile;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as a cut file shows them. */
final class CutNumbers {
  /** The cutters tell lengths apart down to this many decimals. */
  private static final int DECIMALS = 6;

  private CutNumbers() {}

  /** Without the noise of the arithmetic and without trailing zeros. */
  static BigDecimal plain(double value) {
    return plain(BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN));
  }

  /** Without trailing zeros. */
  static BigDecimal plain(BigDecimal value) {
    BigDecimal stripped = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }

  /** Every digit: outlines that touch must not be moved into each other by rounding. */
  static BigDecimal exact(double value) {
    return plain(BigDecimal.valueOf(value));
  }
}
