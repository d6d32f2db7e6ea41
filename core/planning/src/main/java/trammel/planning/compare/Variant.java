package trammel.planning.compare;

import java.util.List;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Verdict;
import trammel.planning.estimate.Estimate;

/**
 * A job with some of its fields varied.
 *
 * @param label the varied values, such as {@code mounting=outboard}
 * @param estimate the job as it comes out
 * @param checks the results of its checks
 */
public record Variant(String label, Estimate estimate, List<CheckResult> checks) {
  public Variant {
    checks = List.copyOf(checks);
  }

  /** How many checks have a verdict. */
  public int count(Verdict verdict) {
    int count = 0;
    for (CheckResult result : checks) {
      if (result instanceof CheckResult.Judged judged && judged.verdict() == verdict) {
        count++;
      }
    }
    return count;
  }
}
