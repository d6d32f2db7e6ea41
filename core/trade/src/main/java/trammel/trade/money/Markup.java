package trammel.trade.money;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import trammel.engine.quantity.Given;

/**
 * What is added to a cost, as a fraction of the cost. Margin is the same money as a fraction of the
 * price: a 25 % markup is a 20 % margin.
 *
 * @param fraction 0 to 10; 0.25 for 25 %
 * @param statedMargin the margin of the price from which it was reckoned; empty where the markup
 *     itself was stated
 */
public record Markup(BigDecimal fraction, Optional<BigDecimal> statedMargin) {

  /** Nothing added. */
  public static final Markup NONE = new Markup(BigDecimal.ZERO);

  /** A markup stated as such. */
  public Markup(BigDecimal fraction) {
    this(fraction, Optional.empty());
  }

  public Markup {
    Given.decimal("markup", fraction, 0, 10, "Give a fraction of the cost: 0.25 for 25 %.");
  }

  /**
   * The markup that leaves a margin: margin / (1 − margin).
   *
   * @param margin fraction of the price, 0 to 0.9
   * @throws IllegalArgumentException outside that range
   */
  public static Markup ofMargin(BigDecimal margin) {
    checkedMargin(margin);
    return new Markup(
        margin.divide(BigDecimal.ONE.subtract(margin), MathContext.DECIMAL64), Optional.of(margin));
  }

  /** The margin it leaves: markup / (1 + markup). */
  public BigDecimal margin() {
    return fraction.divide(BigDecimal.ONE.add(fraction), MathContext.DECIMAL64);
  }

  /** What is added to a cost, rounded half up. */
  public Money on(Money cost) {
    return on(cost, Rounding.USUAL);
  }

  /** What is added to a cost, rounded as the shop rounds. */
  Money on(Money cost, Rounding rounding) {
    return rounding.part(cost, fraction);
  }

  static BigDecimal checkedMargin(BigDecimal margin) {
    Given.decimal("margin", margin, 0, 1, "Give a fraction of the price: 0.20 for 20 %.");
    if (margin.compareTo(new BigDecimal("0.9")) > 0) {
      throw new IllegalArgumentException(
          "Margin was given as "
              + margin.toPlainString()
              + "; allowed is 0 to 0.9 of the price. Give a smaller margin, or a markup.");
    }
    return margin;
  }
}
