package trammel.app.commands;

import java.math.BigDecimal;
import java.util.function.Function;
import trammel.trade.money.Money;

/**
 * A figure of one job in the table over several.
 *
 * @param title head of its column
 * @param key its name for machines, unit included
 * @param value the figure
 * @param adds whether the figures of several jobs add up to something
 * @param print how it is printed
 */
record JobFigure(
    String title, String key, BigDecimal value, boolean adds, Function<BigDecimal, String> print) {

  /** How many of something. */
  static JobFigure count(String title, String key, int count) {
    return new JobFigure(
        title, key, BigDecimal.valueOf(count), true, value -> value.toBigInteger().toString());
  }

  /** A figure of which several jobs make a sum. */
  static JobFigure sum(String title, String key, double value, Function<Double, String> print) {
    return new JobFigure(
        title, key, BigDecimal.valueOf(value), true, v -> print.apply(v.doubleValue()));
  }

  /** A figure that stands for itself. */
  static JobFigure alone(String title, String key, double value, Function<Double, String> print) {
    return new JobFigure(
        title, key, BigDecimal.valueOf(value), false, v -> print.apply(v.doubleValue()));
  }

  /** An amount of money, of which several jobs make a sum. */
  static JobFigure money(String title, String key, Money amount) {
    return new JobFigure(
        title, key, amount.amount(), true, sum -> new Money(sum, amount.currency()).text());
  }
}
