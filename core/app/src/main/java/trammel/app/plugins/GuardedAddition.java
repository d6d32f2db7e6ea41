package trammel.app.plugins;

import java.util.List;
import trammel.brackets.work.WorkPlan;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Addition;
import trammel.planning.extension.Commission;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;
import trammel.reading.fields.Field;

/** An addition of a plugin, known by what its jar lists and run only when it is asked. */
final class GuardedAddition implements Addition {
  private final PluginCode<Addition> code;

  GuardedAddition(PluginCode<Addition> code) {
    this.code = code;
  }

  @Override
  public String id() {
    return code.id();
  }

  @Override
  public String title() {
    return code.askText("its title", Addition::title);
  }

  @Override
  public String summary() {
    return code.askText("its summary", Addition::summary);
  }

  @Override
  public List<Field<?>> options(Catalog catalog) {
    return code.askList("its options", addition -> addition.options(catalog));
  }

  @Override
  public List<LimitedCheck> checks(Site site) {
    return GuardedCheck.all(code, addition -> addition.checks(site));
  }

  @Override
  public WorkPlan plan(Commission commission) {
    return code.ask("its plan of the work", addition -> addition.plan(commission));
  }
}
