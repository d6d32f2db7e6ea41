package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.engine.layout.Layout;
import trammel.engine.quantity.Phrase;

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
    return judge(layout, true);
  }

  /**
   * Every check's result on a layout, worst first, without a change tried: most of the time of
   * {@link #judge(Layout)} goes into those, and where only the verdicts count nobody reads them.
   */
  public List<CheckResult> verdicts(Layout layout) {
    return judge(layout, false);
  }

  private List<CheckResult> judge(Layout layout, boolean tryChanges) {
    LayoutAnalysis analysis = new LayoutAnalysis(layout, settings);
    List<Reading> readings = new ArrayList<>(checks.size());
    List<Finding> found = new ArrayList<>(checks.size());
    for (Check check : checks) {
      Reading reading = check.read(analysis);
      readings.add(reading);
      if (reading instanceof Reading.Value value) {
        found.add(finding(check, value, analysis));
      }
    }
    List<List<CheckResult>> byRank = List.of(room(), room(), room(), room());
    int next = 0;
    for (int i = 0; i < checks.size(); i++) {
      if (readings.get(i) instanceof Reading.Value) {
        CheckResult result = judged(found.get(next++), found, analysis, tryChanges);
        byRank.get(rank(result)).add(result);
      } else if (readings.get(i) instanceof Reading.Unknown unknown) {
        Check check = checks.get(i);
        CheckResult result = new CheckResult.NotJudged(check.id(), check.title(), unknown.reason());
        byRank.get(rank(result)).add(result);
      }
    }
    List<CheckResult> results = new ArrayList<>(checks.size());
    for (List<CheckResult> alike : byRank) {
      results.addAll(alike);
    }
    return results;
  }

  private List<CheckResult> room() {
    return new ArrayList<>(checks.size());
  }

  private CheckResult judged(
      Finding finding, List<Finding> found, LayoutAnalysis analysis, boolean tryChanges) {
    Optional<Change> change =
        !tryChanges || finding.verdict() == Verdict.GOOD
            ? Optional.empty()
            : new ChangeSearch(this, analysis, found, finding).search();
    return new CheckResult.Judged(
        finding.check().id(),
        finding.check().title(),
        finding.check().measure(),
        finding.value(),
        finding.where(),
        details(finding, analysis),
        finding.limit(),
        finding.verdict(),
        change,
        finding.check().advice());
  }

  private static List<Detail> details(Finding finding, LayoutAnalysis analysis) {
    List<Detail> further = finding.check().details(analysis);
    if (further.isEmpty()) {
      return finding.details();
    }
    List<Detail> details = new ArrayList<>(finding.details());
    details.addAll(further);
    return details;
  }

  private Finding finding(Check check, Reading.Value value, LayoutAnalysis analysis) {
    Limit limit = check.limit(limits.get(check.id()), analysis);
    return new Finding(
        check, value.value(), value.where(), value.details(), limit, limit.verdict(value.value()));
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
   * @param details the figures behind it
   * @param limit what it is held against
   * @param verdict what the limit says
   */
  public record Finding(
      Check check,
      double value,
      Phrase where,
      List<Detail> details,
      Limit limit,
      Verdict verdict) {}
}
