package trammel.plugins.torquearm;

import java.util.List;
import trammel.brackets.Drawn;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.AxleGuide;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Commission;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;
import trammel.reading.fields.Field;

/**
 * Two lower bars along the rails, a lateral bar behind the axle, and an arm welded to the axle tube
 * that reaches forward beside the driveshaft; a drop link hangs its front eye from a crossmember,
 * so that the arm holds the housing against turning.
 */
public final class TorqueArm implements AxleLinkage {
  static final String LINK = "drop-link";

  @Override
  public String id() {
    return "torque-arm";
  }

  @Override
  public String title() {
    return "Torque arm, two lower bars and a lateral bar";
  }

  @Override
  public String summary() {
    return "Two lower bars carry thrust; a boxed arm on the axle reaches forward beside the shaft"
        + " and hangs from a crossmember on a drop link, which carries all that turns the housing."
        + " A lateral bar holds the axle central. Long side-view swing arm, nothing over the"
        + " axle, but it needs room beside the shaft and a crossmember ahead.";
  }

  @Override
  public List<Field<?>> options(Catalog catalog) {
    return TorqueArmOptions.fields(catalog);
  }

  @Override
  public AxleGuide propose(Site site) {
    return Drawn.orRefused(() -> new TorqueArmProposal(site).guide());
  }

  @Override
  public AxleGuide follow(Site site, AxleGuide moved) {
    return moved.withSolids(List.of(ArmRoom.of(site.chassis(), moved.bar(LINK))));
  }

  @Override
  public List<LimitedCheck> checks() {
    return List.of(ArmStrength.limited());
  }

  @Override
  public WorkPlan plan(Commission commission) {
    return Drawn.orRefused(() -> new TorqueArmWork(commission).plan());
  }
}
