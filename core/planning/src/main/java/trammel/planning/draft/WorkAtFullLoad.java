package trammel.planning.draft;

import java.util.Optional;
import trammel.engine.checks.Check;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Reading;
import trammel.planning.catalog.PlanCheck;

/**
 * A check of what is planned made again with the vehicle at full load: an air spring that is raised
 * for it pushes harder at every height.
 *
 * @param check the name that it has here
 * @param empty the check as it is made empty
 */
record WorkAtFullLoad(PlanCheck check, Check empty) implements CatalogCheck {

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Optional<LayoutAnalysis> loaded = analysis.fullLoad();
    return loaded.isPresent()
        ? empty.read(loaded.get())
        : new Reading.NotApplicable("no load is given");
  }

  @Override
  public Limit limit(Limit general, LayoutAnalysis analysis) {
    return empty.limit(general, analysis);
  }

  @Override
  public String advice() {
    return empty.advice();
  }
}
