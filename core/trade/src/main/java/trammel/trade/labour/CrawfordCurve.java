package trammel.trade.labour;

import trammel.engine.quantity.Given;

/**
 * Crawford's curve: with each doubling of the units made, the hours of the next one fall to the
 * slope.
 *
 * @param firstHours hours of the first unit
 * @param slope fraction after each doubling, 0.5 to 1
 */
public record CrawfordCurve(double firstHours, double slope) implements LearningCurve {

  public CrawfordCurve {
    Given.positive("hours of the first unit", firstHours, 1e6, "", "Give the hours it took.");
    LearningCurve.exponent(slope);
  }

  @Override
  public double unitHours(int unit) {
    Given.count("unit", unit, 1, MOST_UNITS, "Units count from 1.");
    return firstHours * Math.pow(unit, LearningCurve.exponent(slope));
  }

  @Override
  public double totalHours(int units) {
    Given.count("number of units", units, 1, MOST_UNITS, "Units count from 1.");
    double exponent = LearningCurve.exponent(slope);
    double total = 0;
    for (int unit = 1; unit <= units; unit++) {
      total += firstHours * Math.pow(unit, exponent);
    }
    return total;
  }

  @Override
  public double averageHours(int units) {
    return totalHours(units) / units;
  }
}
