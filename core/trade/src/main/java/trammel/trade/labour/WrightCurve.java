package trammel.trade.labour;

import trammel.engine.quantity.Given;

/**
 * Wright's curve: with each doubling of the units made, the mean of all of them falls to the slope.
 *
 * @param firstHours hours of the first unit
 * @param slope fraction after each doubling, 0.5 to 1
 */
public record WrightCurve(double firstHours, double slope) implements LearningCurve {

  public WrightCurve {
    Given.positive("hours of the first unit", firstHours, 1e6, "", "Give the hours it took.");
    LearningCurve.exponent(slope);
  }

  @Override
  public double averageHours(int units) {
    Given.count("number of units", units, 1, MOST_UNITS, "Units count from 1.");
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
