package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.engine.layout.Layout;

/** Judges a layout by checks and tries changes for what is not good. */
public final class Judge {
  private final List<Check> checks;
  private final Map<String, Limit> limits;
  private final AnalysisSettings settings;

  /**
   * @param checks the checks to make
   * @param limits the limit of each check by its short name
   * @param settings what the analysis assumes
   * @throws IllegalArgumentException if a check has no limit
   */
  public Judge(List<Check> checks, Map<String, Limit> limits, AnalysisSettings settings) {
    this.checks = List.copyOf(checks);
    this.limits = Map.copyOf(limits);
    this.settings = settings;
    for (Check check : checks) {
      if (!limits.containsKey(check.id())) {
        throw new IllegalArgumentException(
            "check "
                + check.id()
                + " has no limit; every check needs one. Add it to the limits of the catalog.");
      }
    }
  }

  /** Every check's result on a layout, worst first, with a tried change where one is needed. */
  public List<CheckResult> judge(Layout layout) {
    LayoutAnalysis analysis = new LayoutAnalysis(layout, settings);
    List<CheckResult> results = new ArrayList<>(checks.size());
    for (Check check : checks) {
      result(check, analysis).ifPresent(results::add);
    }
    results.sort(Judge::worstFirst);
    return results;
  }

  private Optional<CheckResult> result(Check check, LayoutAnalysis analysis) {
    Reading reading = check.read(analysis);
    if (reading instanceof Reading.Value value) {
      return Optional.of(judged(finding(check, value, analysis), analysis));
    }
    if (reading instanceof Reading.Unknown unknown) {
      return Optional.of(new CheckResult.NotJudged(check.id(), check.title(), unknown.reason()));
    }
    return Optional.empty();
  }

  private CheckResult judged(Finding finding, LayoutAnalysis analysis) {
    Optional<Change> change =
        finding.verdict() == Verdict.GOOD
            ? Optional.empty()
            : new ChangeSearch(this, analysis, finding).search();
    return new CheckResult.Judged(
        finding.check().id(),
        finding.check().title(),
        finding.check().measure(),
        finding.value(),
        finding.where(),
        finding.limit(),
        finding.verdict(),
        change);
  }

  private Finding finding(Check check, Reading.Value value, LayoutAnalysis analysis) {
    Limit limit = check.limit(limits.get(check.id()), analysis);
    return new Finding(check, value.value(), value.where(), limit, limit.verdict(value.value()));
  }

  /** A check's value, its limit and its verdict; empty when the check yields no value. */
  public Optional<Finding> find(Check check, LayoutAnalysis analysis) {
    return check.read(analysis) instanceof Reading.Value value
        ? Optional.of(finding(check, value, analysis))
        : Optional.empty();
  }

  /** The checks, in the order given. */
  public List<Check> checks() {
    return checks;
  }

  /** What the analysis assumes. */
  public AnalysisSettings settings() {
    return settings;
  }

  private static int worstFirst(CheckResult a, CheckResult b) {
    return Integer.compare(rank(a), rank(b));
  }

  private static int rank(CheckResult result) {
    if (result instanceof CheckResult.Judged judged) {
      return switch (judged.verdict()) {
        case STOP -> 0;
        case LOOK_AGAIN -> 1;
        case GOOD -> 3;
      };
    }
    return 2;
  }

  /**
   * A judged value, before anything is tried to better it.
   *
   * @param check the check
   * @param value its value
   * @param where which part, at which pose
   * @param limit what it is held against
   * @param verdict what the limit says
   */
  public record Finding(Check check, double value, String where, Limit limit, Verdict verdict) {}
}
