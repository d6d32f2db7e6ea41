package trammel.engine.checks;

import java.util.List;

/**
 * A check of strength made again under the blows that a vehicle meets a few times in its life: a
 * pothole, a kerb, a full stop. Its limit is its own, for what bends then must still hold.
 *
 * @param usual the check as it is made under the usual load cases, under the name that it has here
 */
record UnderBlows(Check usual) implements Check {

  @Override
  public String id() {
    return usual.id();
  }

  @Override
  public String title() {
    return usual.title();
  }

  @Override
  public Measure measure() {
    return usual.measure();
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    return analysis.underBlows().isPresent()
        ? usual.read(analysis.underBlows().get())
        : new Reading.NotApplicable("no blow is given");
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return analysis.underBlows().isPresent()
        ? usual.adjustments(analysis.underBlows().get())
        : List.of();
  }

  @Override
  public String advice() {
    return usual.advice();
  }
}
