package trammel.plugins.wattslinkage;

import java.util.List;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.Limit;
import trammel.engine.layout.AxleGuide;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Commission;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;
import trammel.reading.fields.Field;

/**
 * Two lower and two upper bars in planes along the rails, and a Watt's linkage behind the axle: a
 * rocker on a pin that the axle carries, with two links to the rails.
 */
public final class WattsLinkage implements AxleLinkage {
  private static final String COMMON = "common practice, no source";

  @Override
  public String id() {
    return "watts-linkage";
  }

  @Override
  public String title() {
    return "Four links and a Watt's linkage";
  }

  @Override
  public String summary() {
    return "Two lower and two upper bars run along the rails, inside or outside them; a rocker"
        + " behind the axle with a link to each rail keeps the axle central through all its travel."
        + " More work than a lateral bar, and it needs room behind the housing.";
  }

  @Override
  public List<Field<?>> options(Catalog catalog) {
    return WattsOptions.fields(catalog);
  }

  @Override
  public AxleGuide propose(Site site) {
    return new WattsProposal(site).guide();
  }

  @Override
  public List<LimitedCheck> checks() {
    return List.of(
        new LimitedCheck(
            new DeadPoint(), Limit.atLeast(Math.toRadians(45), Math.toRadians(20), COMMON)),
        new LimitedCheck(
            new RockerSwing(),
            Limit.atMost(
                Math.toRadians(20),
                RockerForm.SWING_RAD,
                "stop: the room between the spacers beside the rocker; good: " + COMMON)),
        new LimitedCheck(new RockerStrength(), Limit.atLeast(2, 1.3, COMMON)),
        new LimitedCheck(new PivotBoltStrength(), Limit.atLeast(3, 2, COMMON)));
  }

  @Override
  public WorkPlan plan(Commission commission) {
    return new WattsWork(commission).plan();
  }
}
