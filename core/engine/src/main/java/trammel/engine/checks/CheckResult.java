package trammel.engine.checks;

import java.util.List;
import java.util.Optional;
import trammel.engine.quantity.Phrase;

/** What became of one check. */
public sealed interface CheckResult {

  /** Short name of the check. */
  String id();

  /** What is checked. */
  String title();

  /**
   * A value was judged.
   *
   * @param id short name of the check
   * @param title what is checked
   * @param measure what kind of quantity the value is
   * @param value the value
   * @param where which part, at which pose
   * @param details the figures behind it
   * @param limit what it is held against
   * @param verdict what the limit says
   * @param change what to change, tried by the engine; empty when the value is good or when no
   *     single change within reach makes it so
   * @param advice what to do where no single change makes it good; may be empty
   */
  record Judged(
      String id,
      String title,
      Measure measure,
      double value,
      Phrase where,
      List<Detail> details,
      Limit limit,
      Verdict verdict,
      Optional<Change> change,
      String advice)
      implements CheckResult {
    public Judged {
      details = List.copyOf(details);
    }

    /** How far inside the good range the value is; negative outside it. */
    public double margin() {
      return limit.margin(value);
    }
  }

  /**
   * The check could not be made.
   *
   * @param id short name of the check
   * @param title what is checked
   * @param reason what is missing and what to do
   */
  record NotJudged(String id, String title, Phrase reason) implements CheckResult {}
}
