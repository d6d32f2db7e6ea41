package trammel.planning.draft;

import java.util.List;
import java.util.Map;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Layout;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Commission;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;
import trammel.reading.fields.Field;

/**
 * The linkage of one job, which plans the job's own layout once: its checks and its estimate both
 * ask for that, at the same time. The layout asked for first is taken to be the job's own. Of
 * changed ones the last is kept: two checks ask for it.
 */
final class PlannedLinkage implements AxleLinkage {
  private final AxleLinkage linkage;
  private Layout planned;
  private WorkPlan plan;
  private Layout last;
  private WorkPlan lastPlan;

  PlannedLinkage(AxleLinkage linkage) {
    this.linkage = linkage;
  }

  @Override
  public String id() {
    return linkage.id();
  }

  @Override
  public String title() {
    return linkage.title();
  }

  @Override
  public String summary() {
    return linkage.summary();
  }

  @Override
  public List<Field<?>> options(Catalog catalog) {
    return linkage.options(catalog);
  }

  @Override
  public AxleGuide propose(Site site) {
    return linkage.propose(site);
  }

  @Override
  public AxleGuide follow(Site site, AxleGuide moved) {
    return linkage.follow(site, moved);
  }

  @Override
  public Map<String, String> declined() {
    return linkage.declined();
  }

  @Override
  public List<LimitedCheck> checks() {
    return linkage.checks();
  }

  @Override
  public WorkPlan plan(Commission commission) {
    synchronized (this) {
      if (planned == null) {
        plan = linkage.plan(commission);
        planned = commission.layout();
      }
      if (commission.layout() == planned) {
        return plan;
      }
      if (commission.layout() == last) {
        return lastPlan;
      }
    }
    WorkPlan made = linkage.plan(commission);
    synchronized (this) {
      last = commission.layout();
      lastPlan = made;
    }
    return made;
  }
}
