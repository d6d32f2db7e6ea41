package trammel.plugins.limitingstraps;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import trammel.brackets.Drawn;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.LayoutAnalysis;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Addition;
import trammel.planning.extension.Commission;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;
import trammel.reading.fields.Field;

/** Straps between rails and axle tube that end the droop before a shock does. */
public final class LimitingStraps implements Addition {

  @Override
  public String id() {
    return "limiting-straps";
  }

  @Override
  public String title() {
    return "limiting straps";
  }

  @Override
  public String summary() {
    return "A nylon strap a side, from a tab on the rail to a tab on the axle tube. It comes tight"
        + " at the end of the droop, so that no shock has to carry the axle when it hangs.";
  }

  @Override
  public List<Field<?>> options(Catalog catalog) {
    return StrapOptions.all(catalog);
  }

  @Override
  public List<LimitedCheck> checks(Site site) {
    return List.of(StrapRoom.of(site));
  }

  @Override
  public OptionalDouble endOfDroopMm(LayoutAnalysis analysis, Site site) {
    return StrapRoom.endOfDroopMm(analysis, site);
  }

  /** Two straps a side stretch half as much, so that they hold before anything else gives out. */
  @Override
  public Map<String, String> remedies() {
    return Map.of("droop-end", "{per_side: 2}");
  }

  @Override
  public WorkPlan plan(Commission commission) {
    LayoutAnalysis analysis =
        new LayoutAnalysis(commission.layout(), commission.site().catalog().analysis());
    return Drawn.orRefused(
        () -> new StrapPlan(StrapFit.of(analysis, commission.site()), commission).work());
  }
}
