package trammel.planning.draft;

import java.util.Objects;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.Layout;
import trammel.planning.extension.Addition;
import trammel.planning.extension.Commission;
import trammel.planning.extension.Site;

/**
 * An addition that a job asks for.
 *
 * @param addition what is added
 * @param site what it works from
 */
public record ChosenAddition(Addition addition, Site site) {
  public ChosenAddition {
    Objects.requireNonNull(addition, "addition");
    Objects.requireNonNull(site, "site");
  }

  /** Its work on a layout. */
  WorkPlan plan(Layout layout) {
    return addition.plan(new Commission(layout, site.at(layout.chassis())));
  }
}
