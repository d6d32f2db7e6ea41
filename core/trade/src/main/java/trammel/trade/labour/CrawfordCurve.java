package trammel.trade.labour;

import trammel.trade.given.Given;

/**
 * Crawford's curve: with each doubling of the units made, the hours of the next one fall to the
 * slope.
 *
 * @param firstHours hours of the first unit
 * @param slope fraction after each doubling, 0.5 to 1
 */
public record CrawfordCurve(double firstHours, double slope) implements LearningCurve {

  public CrawfordCurve {
    Given.positive(firstHours, 1e6, "Hours of the first unit", "Give the hours it took.");
    LearningCurve.exponent(slope);
  }

  @Override
  public double unitHours(int unit) {
    Given.count(unit, 1, MOST_UNITS, "Unit", "Units count from 1.");
    return firstHours * Math.pow(unit, LearningCurve.exponent(slope));
  }

  @Override
  public double totalHours(int units) {
    Given.count(units, 1, MOST_UNITS, "Number of units", "Units count from 1.");
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
