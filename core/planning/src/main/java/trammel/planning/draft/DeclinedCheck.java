package trammel.planning.draft;

import trammel.engine.checks.Check;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;

/**
 * A check that a linkage declines: it has no value, and a reason in its place.
 *
 * @param check the check
 * @param reason why it says nothing about this linkage
 */
record DeclinedCheck(Check check, String reason) implements Check {
  @Override
  public String id() {
    return check.id();
  }

  @Override
  public String title() {
    return check.title();
  }

  @Override
  public Measure measure() {
    return check.measure();
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    return new Reading.NotApplicable(reason);
  }
}
