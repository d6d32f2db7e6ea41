package trammel.planning.arrange;

import java.util.List;
import java.util.Set;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Verdict;
import trammel.planning.estimate.Estimate;
import trammel.planning.job.JobDocument;

/**
 * A layout that was found.
 *
 * @param kind what it is, in a few words: linkage, spring, side of the rails, notch
 * @param changes what makes it out of the job file, in the order in which it is written
 * @param document the job file with the changes made
 * @param estimate its plan and its price, as {@code quote} gives them
 * @param checks every check, worst first
 * @param ofMeasurements ids of the checks that ask of the measurements alone: no layout changes
 *     them, so they do not count against one
 * @param noStopShare share of vehicles, off within the measurements' tolerances, on which it has no
 *     STOP, 0 to 1
 */
public record ArrangedLayout(
    String kind,
    List<LayoutChange> changes,
    JobDocument document,
    Estimate estimate,
    List<CheckResult> checks,
    Set<String> ofMeasurements,
    double noStopShare) {
  public ArrangedLayout {
    changes = List.copyOf(changes);
    checks = List.copyOf(checks);
    ofMeasurements = Set.copyOf(ofMeasurements);
  }

  /** Whether every check of the layout that could be made is good. */
  public boolean passes() {
    return count(Verdict.STOP) == 0 && count(Verdict.LOOK_AGAIN) == 0;
  }

  /** How many checks of the layout have a verdict. */
  public int count(Verdict verdict) {
    return (int)
        open().stream()
            .filter(judged -> judged.verdict() == verdict && !isOfMeasurements(judged))
            .count();
  }

  /** The checks that are not good. */
  public List<CheckResult.Judged> open() {
    return checks.stream()
        .filter(CheckResult.Judged.class::isInstance)
        .map(CheckResult.Judged.class::cast)
        .filter(judged -> judged.verdict() != Verdict.GOOD)
        .toList();
  }

  /** Whether a result is of the measurements alone. */
  public boolean isOfMeasurements(CheckResult.Judged judged) {
    return ofMeasurements.contains(judged.id());
  }
}
