package trammel.planning.draft;

import java.util.List;
import java.util.Optional;
import trammel.engine.checks.Adjustment;
import trammel.engine.checks.Check;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Reading;
import trammel.planning.catalog.PlanCheck;

/**
 * A check of what is planned made again under the blows that a vehicle meets a few times in its
 * life: a pothole, a kerb, a full stop. What it holds them to is its own.
 *
 * @param check the name that it has here
 * @param usual the check as it is made under the usual load cases
 */
record WorkUnderBlows(PlanCheck check, Check usual) implements CatalogCheck {

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Optional<LayoutAnalysis> blows = analysis.underBlows();
    return blows.isPresent()
        ? usual.read(blows.get())
        : new Reading.NotApplicable("no blow is given");
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return analysis.underBlows().map(usual::adjustments).orElse(List.of());
  }

  @Override
  public Limit limit(Limit general, LayoutAnalysis analysis) {
    return usual.limit(general, analysis);
  }

  @Override
  public String advice() {
    return usual.advice();
  }
}
