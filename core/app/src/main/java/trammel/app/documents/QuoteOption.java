package trammel.app.documents;

import java.util.List;
import trammel.engine.checks.CheckResult;
import trammel.planning.estimate.Estimate;

/**
 * Another way to do the job.
 *
 * @param label what is different, in the customer's words
 * @param estimate the job done this way
 * @param results its checks
 */
public record QuoteOption(String label, Estimate estimate, List<CheckResult> results) {
  /** Copies the list. */
  public QuoteOption {
    results = List.copyOf(results);
  }
}
