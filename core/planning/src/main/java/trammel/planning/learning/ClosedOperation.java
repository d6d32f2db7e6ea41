package trammel.planning.learning;

import java.util.OptionalDouble;
import trammel.trade.given.Given;

/**
 * One operation of a closed job.
 *
 * @param key key of the operation in the catalog
 * @param standardHours mean hours by the catalog, the job's own factors in them (h), above 0
 * @param deviationHours their standard deviation by the catalog (h), 0 or more
 * @param usedHours hours really used (h), above 0; empty where they were not written down apart
 */
public record ClosedOperation(
    String key, double standardHours, double deviationHours, OptionalDouble usedHours) {
  private static final double MOST_HOURS = 100_000;

  public ClosedOperation {
    Given.text(key, "Key of a closed operation", "Use its key in the catalog.");
    Given.positive(standardHours, MOST_HOURS, "Standard hours of '" + key + "'", "See the plan.");
    Given.between(
        deviationHours, 0, MOST_HOURS, "Deviation of the hours of '" + key + "'", "See the plan.");
    if (usedHours.isPresent()) {
      Given.positive(
          usedHours.getAsDouble(), MOST_HOURS, "Hours used for '" + key + "'", "Leave out none.");
    }
  }

  /** Deviation over mean, never quite 0: no hours repeat exactly. */
  double variation() {
    return Math.max(LEAST_VARIATION, deviationHours / standardHours);
  }

  private static final double LEAST_VARIATION = 0.02;
}
