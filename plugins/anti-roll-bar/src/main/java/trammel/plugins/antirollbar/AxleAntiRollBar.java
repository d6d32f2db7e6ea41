package trammel.plugins.antirollbar;

import java.util.List;
import java.util.Optional;
import trammel.brackets.Drawn;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.AnalysisSettings;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.layout.AntiRollBar;
import trammel.engine.layout.Layout;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Addition;
import trammel.planning.extension.Commission;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;
import trammel.reading.fields.Field;

/** A splined bar behind the axle that holds the body against roll. */
public final class AxleAntiRollBar implements Addition {

  @Override
  public String id() {
    return "anti-roll-bar";
  }

  @Override
  public String title() {
    return "anti-roll bar";
  }

  @Override
  public String summary() {
    return "A straight splined bar behind the axle in two bearings on the axle tube, an arm at each"
        + " end, and an upright link from each arm to a tab on the rail. It adds to the roll"
        + " stiffness of the rear and leaves the ride as it is.";
  }

  @Override
  public List<Field<?>> options(Catalog catalog) {
    return BarOptions.all(catalog);
  }

  @Override
  public List<LimitedCheck> checks(Site site) {
    return List.of(BarStrength.of(site));
  }

  @Override
  public Layout onto(Layout layout, Site site) {
    return layout.withAntiRollBar(placed(layout, site).asSpring());
  }

  /** Where the layout has it; a layout that has none yet is searched for a place. */
  private static BarPlace placed(Layout layout, Site site) {
    Optional<AntiRollBar> drawn = layout.antiRollBar();
    if (drawn.isPresent()) {
      double plateMm = BarOptions.plate(site.options(), site.catalog()).form().thicknessMm();
      return BarPlace.of(drawn.get(), layout.chassis(), plateMm);
    }
    AnalysisSettings settings = site.catalog().analysis();
    return new BarSearch(new LayoutAnalysis(layout, settings), site).found();
  }

  @Override
  public WorkPlan plan(Commission commission) {
    return Drawn.orRefused(
        () -> new BarPlan(placed(commission.layout(), commission.site()), commission).work());
  }
}
