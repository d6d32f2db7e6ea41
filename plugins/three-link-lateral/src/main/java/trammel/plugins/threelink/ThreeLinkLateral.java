package trammel.plugins.threelink;

import java.util.List;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.AxleGuide;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Commission;
import trammel.planning.extension.Site;
import trammel.reading.fields.Field;

/** Two lower bars and one upper bar along the rails, and a lateral bar behind the axle. */
public final class ThreeLinkLateral implements AxleLinkage {

  @Override
  public String id() {
    return "three-link-lateral";
  }

  @Override
  public String title() {
    return "Three links and a lateral bar";
  }

  @Override
  public String summary() {
    return "Two lower bars and one upper bar run along the rails; a level bar across the vehicle"
        + " holds the axle central. Nothing binds in roll, and one side of the axle stays free"
        + " over the tube; the one upper bar carries all that turns the housing.";
  }

  @Override
  public List<Field<?>> options(Catalog catalog) {
    return ThreeLinkOptions.fields(catalog);
  }

  @Override
  public AxleGuide propose(Site site) {
    return AxleGuide.of(new ThreeLinkProposal(site).bars());
  }

  @Override
  public WorkPlan plan(Commission commission) {
    return new ThreeLinkWork(commission).plan();
  }
}
