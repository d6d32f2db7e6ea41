package trammel.planning.figures;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import trammel.reading.quantity.UnitSystem;

/** The value of one result. */
public sealed interface FigureAnswer {
  /** The result it is the value of. */
  FigureOutput output();

  /** The value with its unit, for people. */
  String text(UnitSystem units);

  /** The value for machines, in the unit of the result: a number or a word. */
  Object value(UnitSystem units);

  /**
   * A measured or calculated quantity.
   *
   * @param inside value in the unit inside the tool
   */
  record Quantity(FigureOutput output, double inside) implements FigureAnswer {
    private static final int DIGITS = 5;
    private static final double LARGE = 1e5;

    @Override
    public String text(UnitSystem units) {
      String symbol = output.unit().symbol(units);
      return digits(value(units)) + (symbol.isEmpty() ? "" : " " + symbol);
    }

    @Override
    public Double value(UnitSystem units) {
      return output.unit().shown(inside, units);
    }

    /** Five figures, or all before the decimal point. */
    static String digits(double value) {
      BigDecimal exact = new BigDecimal(value);
      BigDecimal rounded =
          Math.abs(value) >= LARGE
              ? exact.setScale(0, RoundingMode.HALF_UP)
              : exact.round(new MathContext(DIGITS, RoundingMode.HALF_UP));
      return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
  }

  /**
   * An exact amount of money.
   *
   * @param amount the amount
   */
  record Amount(FigureOutput output, BigDecimal amount) implements FigureAnswer {
    @Override
    public String text(UnitSystem units) {
      return amount.toPlainString();
    }

    @Override
    public BigDecimal value(UnitSystem units) {
      return amount;
    }
  }

  /**
   * A word.
   *
   * @param word the word
   */
  record Word(FigureOutput output, String word) implements FigureAnswer {
    @Override
    public String text(UnitSystem units) {
      return word;
    }

    @Override
    public String value(UnitSystem units) {
      return word;
    }
  }
}
