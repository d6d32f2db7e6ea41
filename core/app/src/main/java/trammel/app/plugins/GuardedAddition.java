package trammel.app.plugins;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.layout.Layout;
import trammel.planning.extension.Addition;
import trammel.planning.extension.Commission;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;

/** An addition of a plugin, known by what its jar lists and run only when it is asked. */
final class GuardedAddition extends GuardedExtension<Addition> implements Addition {
  GuardedAddition(PluginCode<Addition> code) {
    super(code);
  }

  @Override
  public List<LimitedCheck> checks(Site site) {
    return GuardedCheck.all(code, addition -> addition.checks(site));
  }

  @Override
  public Layout onto(Layout layout, Site site) {
    return code.ask("the layout with it", addition -> addition.onto(layout, site));
  }

  @Override
  public OptionalDouble endOfDroopMm(LayoutAnalysis analysis, Site site) {
    return code.ask("the end of its droop", addition -> addition.endOfDroopMm(analysis, site));
  }

  @Override
  public Map<String, String> remedies() {
    return code.ask("what it mends", Addition::remedies);
  }

  @Override
  public WorkPlan plan(Commission commission) {
    return code.ask("its plan of the work", addition -> addition.plan(commission));
  }
}
