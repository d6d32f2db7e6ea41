package trammel.planning.learning;

import java.util.OptionalDouble;
import trammel.engine.quantity.Given;

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
    Given.text("key of a closed operation", key, "Use its key in the catalog.");
    Given.positive(
        "standard hours of '" + key + "'", standardHours, MOST_HOURS, "", "See the plan.");
    Given.within(
        "deviation of the hours of '" + key + "'",
        deviationHours,
        0,
        MOST_HOURS,
        "",
        "See the plan.");
    if (usedHours.isPresent()) {
      Given.positive(
          "hours used for '" + key + "'",
          usedHours.getAsDouble(),
          MOST_HOURS,
          "",
          "Leave out none.");
    }
  }

  /** Deviation over mean, never quite 0: no hours repeat exactly. */
  double variation() {
    return Math.max(LEAST_VARIATION, deviationHours / standardHours);
  }

  private static final double LEAST_VARIATION = 0.02;
}
