package trammel.planning.draft;

import trammel.engine.checks.Check;
import trammel.engine.checks.Measure;
import trammel.planning.catalog.PlanCheck;

/** A check that goes by the name, title and kind of value under which the catalog has its limit. */
interface CatalogCheck extends Check {
  /** Which one. */
  PlanCheck check();

  @Override
  default String id() {
    return check().id();
  }

  @Override
  default String title() {
    return check().title();
  }

  @Override
  default Measure measure() {
    return check().measure();
  }
}
