package trammel.planning.fitup;

import java.util.List;
import trammel.engine.quantity.Given;

/**
 * What was read for one target after tacking.
 *
 * @param id the target
 * @param values every time it was read (mm or rad), one at least
 */
public record TackReading(String id, List<Double> values) {
  public TackReading {
    Given.text("name of a reading", id, "Use the name on the fit-up sheet.");
    values = List.copyOf(values);
    Given.count("readings of '" + id + "'", values.size(), 1, 100, "Enter one at least.");
    for (double value : values) {
      Given.within("reading of '" + id + "'", value, -1e5, 1e5, "", "Measure it again.");
    }
  }

  double mean() {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.size();
  }

  /** Largest less smallest. */
  double spread() {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      least = Math.min(least, value);
      most = Math.max(most, value);
    }
    return most - least;
  }
}
