package trammel.trade.labour;

import trammel.engine.quantity.Given;

/** How hours fall when the same thing is made again and again. */
public sealed interface LearningCurve permits WrightCurve, CrawfordCurve {

  /** Most units for which a total is worked out. */
  int MOST_UNITS = 1_000_000;

  /** Hours of the n-th unit alone. */
  double unitHours(int unit);

  /** Hours of units 1 to n together. */
  double totalHours(int units);

  /** Mean hours of units 1 to n. */
  double averageHours(int units);

  /**
   * Exponent of a learning curve: ln(slope) / ln 2.
   *
   * @param slope hours after each doubling as a fraction, 0.5 to 1: 0.85 for an 85 % curve
   */
  static double exponent(double slope) {
    Given.within("slope of a learning curve", slope, 0.5, 1, "", "An 85 % curve is 0.85.");
    return Math.log(slope) / Math.log(2);
  }
}
