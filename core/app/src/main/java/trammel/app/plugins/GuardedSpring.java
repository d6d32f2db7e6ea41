package trammel.app.plugins;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Bar;
import trammel.planning.extension.Commission;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;
import trammel.planning.extension.SpringMount;
import trammel.planning.extension.SpringSet;

/** A spring mount of a plugin, known by what its jar lists and run only when it is asked. */
final class GuardedSpring extends GuardedExtension<SpringMount> implements SpringMount {
  GuardedSpring(PluginCode<SpringMount> code) {
    super(code);
  }

  @Override
  public SpringSet propose(Site site, AxleGuide guide) {
    SpringSet set = code.ask("its springs", spring -> spring.propose(site, guide));
    if (set.springs().isEmpty()) {
      throw code.unusable("its springs", "it has none");
    }
    refuseNamesTwice(set, guide.bars());
    return set;
  }

  /** Bars, springs and shocks of a layout share one set of names. */
  private void refuseNamesTwice(SpringSet set, List<Bar> bars) {
    Set<String> names = new HashSet<>();
    bars.forEach(bar -> names.add(bar.name()));
    set.springs().forEach(spring -> names.add(spring.name()));
    set.shocks().forEach(shock -> names.add(shock.name()));
    if (names.size() != bars.size() + set.springs().size() + set.shocks().size()) {
      throw code.unusable("its springs", "two parts of the layout have the same name");
    }
  }

  @Override
  public List<LimitedCheck> checks() {
    return GuardedCheck.all(code, SpringMount::checks);
  }

  @Override
  public WorkPlan plan(Commission commission) {
    return code.ask("its plan of the work", spring -> spring.plan(commission));
  }
}
