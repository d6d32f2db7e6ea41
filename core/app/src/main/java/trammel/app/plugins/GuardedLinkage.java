package trammel.app.plugins;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Bar;
import trammel.engine.mechanism.MechanismFaultException;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Commission;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;

/** A linkage of a plugin, known by what its jar lists and run only when it is asked. */
final class GuardedLinkage extends GuardedExtension<AxleLinkage> implements AxleLinkage {
  /** A rigid axle has six freedoms; two are the travel, and each bar takes one of the others. */
  private static final int LEAST_BARS = 4;

  GuardedLinkage(PluginCode<AxleLinkage> code) {
    super(code);
  }

  @Override
  public AxleGuide propose(Site site) {
    AxleGuide guide = code.ask("its bars", linkage -> linkage.propose(site));
    List<Bar> bars = guide.bars();
    Set<String> names = new HashSet<>();
    for (Bar bar : bars) {
      names.add(bar.name());
    }
    if (names.size() != bars.size()) {
      throw code.unusable("its bars", "two of them have the same name");
    }
    if (guide.isPlain() && bars.size() < LEAST_BARS) {
      throw code.unusable("its bars", "it has " + bars.size() + ", and four hold an axle");
    }
    try {
      guide.motion(site.chassis());
    } catch (MechanismFaultException unmoving) {
      throw code.unusable("its bodies and joints", unmoving.getMessage());
    }
    return guide;
  }

  @Override
  public AxleGuide follow(Site site, AxleGuide moved) {
    return code.ask("what belongs to its bars", linkage -> linkage.follow(site, moved));
  }

  @Override
  public Map<String, String> declined() {
    return code.ask("the checks it declines", AxleLinkage::declined);
  }

  @Override
  public List<LimitedCheck> checks() {
    return GuardedCheck.all(code, AxleLinkage::checks);
  }

  @Override
  public WorkPlan plan(Commission commission) {
    return code.ask("its plan of the work", linkage -> linkage.plan(commission));
  }
}
