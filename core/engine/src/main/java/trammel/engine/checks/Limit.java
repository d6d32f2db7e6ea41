package trammel.engine.checks;

import trammel.engine.quantity.Given;

/**
 * The range in which a value is good and the wider range outside which it says stop. An end that
 * does not limit is infinite.
 *
 * @param goodMin least good value
 * @param goodMax greatest good value
 * @param stopMin below this it says stop, at most the least good value
 * @param stopMax above this it says stop, at least the greatest good value
 * @param source where the limit comes from
 */
public record Limit(double goodMin, double goodMax, double stopMin, double stopMax, String source) {
  /** Share of a limit by which rounding may carry a value past it. */
  private static final double ROUNDING = 1e-9;

  public Limit {
    Given.text("source of the limit", source);
    if (!(stopMin <= goodMin && goodMin <= goodMax && goodMax <= stopMax)) {
      throw new IllegalArgumentException(
          "limit has good "
              + goodMin
              + " to "
              + goodMax
              + " and stop outside "
              + stopMin
              + " to "
              + stopMax
              + "; the good range must lie inside the stop range. Check the limit's figures.");
    }
  }

  /** A limit from above: good up to one value, stop over another. */
  public static Limit atMost(double good, double stop, String source) {
    return new Limit(Double.NEGATIVE_INFINITY, good, Double.NEGATIVE_INFINITY, stop, source);
  }

  /** A limit from below: good from one value on, stop under another. */
  public static Limit atLeast(double good, double stop, String source) {
    return new Limit(good, Double.POSITIVE_INFINITY, stop, Double.POSITIVE_INFINITY, source);
  }

  /** What this limit says of a value. */
  public Verdict verdict(double value) {
    if (!(value >= stopMin - slack(stopMin) && value <= stopMax + slack(stopMax))) {
      return Verdict.STOP;
    }
    if (value >= goodMin - slack(goodMin) && value <= goodMax + slack(goodMax)) {
      return Verdict.GOOD;
    }
    return Verdict.LOOK_AGAIN;
  }

  /** How far inside the good range a value is; negative outside it. */
  public double margin(double value) {
    return Math.min(value - goodMin, goodMax - value);
  }

  private static double slack(double end) {
    return Double.isInfinite(end) ? 0 : ROUNDING * (1 + Math.abs(end));
  }
}
