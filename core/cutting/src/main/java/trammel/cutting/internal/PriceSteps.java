package trammel.cutting.internal;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;

/** Prices as whole numbers of the largest step that divides them all: sums of them are exact. */
public final class PriceSteps {
  private final int scale;
  private final BigInteger step;

  /**
   * @param prices all prices that will be asked for, 0 or more
   */
  public PriceSteps(List<BigDecimal> prices) {
    int finest = 0;
    for (BigDecimal price : prices) {
      finest = Math.max(finest, price.scale());
    }
    BigInteger common = BigInteger.ZERO;
    for (BigDecimal price : prices) {
      common = common.gcd(price.setScale(finest).unscaledValue());
    }
    this.scale = finest;
    this.step = common;
  }

  /** True when every price is 0, so that prices tell nothing apart. */
  public boolean allFree() {
    return step.signum() == 0;
  }

  /**
   * @param price one of the prices that the steps were made for
   * @return whole steps; 0 when all are free
   * @throws ArithmeticException when there are more than a {@code long} holds
   */
  public long of(BigDecimal price) {
    return allFree() ? 0 : price.setScale(scale).unscaledValue().divide(step).longValueExact();
  }

  /** The money that a number of steps is; 0 when all prices are free. */
  public BigDecimal money(long steps) {
    return new BigDecimal(step, scale).multiply(BigDecimal.valueOf(steps));
  }
}
