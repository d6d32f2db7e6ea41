package trammel.trade.labour;

import trammel.trade.given.Given;

/**
 * Wright's curve: with each doubling of the units made, the mean of all of them falls to the slope.
 *
 * @param firstHours hours of the first unit
 * @param slope fraction after each doubling, 0.5 to 1
 */
public record WrightCurve(double firstHours, double slope) implements LearningCurve {

  public WrightCurve {
    Given.positive(firstHours, 1e6, "Hours of the first unit", "Give the hours it took.");
    LearningCurve.exponent(slope);
  }

  @Override
  public double averageHours(int units) {
    Given.count(units, 1, MOST_UNITS, "Number of units", "Units count from 1.");
    return firstHours * Math.pow(units, LearningCurve.exponent(slope));
  }

  @Override
  public double totalHours(int units) {
    return units * averageHours(units);
  }

  @Override
  public double unitHours(int unit) {
    return unit == 1 ? firstHours : totalHours(unit) - totalHours(unit - 1);
  }
}
