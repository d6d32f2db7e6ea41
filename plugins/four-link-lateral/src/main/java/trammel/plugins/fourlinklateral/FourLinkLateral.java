package trammel.plugins.fourlinklateral;

import java.util.List;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.AxleGuide;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Commission;
import trammel.planning.extension.Site;
import trammel.reading.fields.Field;

/** Two lower and two upper bars in planes along the rails, and a lateral bar behind the axle. */
public final class FourLinkLateral implements AxleLinkage {

  @Override
  public String id() {
    return "four-link-lateral";
  }

  @Override
  public String title() {
    return "Four links and a lateral bar";
  }

  @Override
  public String summary() {
    return "Two lower and two upper bars run along the rails, inside or outside them; a level bar"
        + " across the vehicle holds the axle central. Easy to set up and to adjust, and it leaves"
        + " the top of the housing free.";
  }

  @Override
  public List<Field<?>> options(Catalog catalog) {
    return FourLinkOptions.fields(catalog);
  }

  @Override
  public AxleGuide propose(Site site) {
    return AxleGuide.of(new FourLinkProposal(site).bars());
  }

  @Override
  public WorkPlan plan(Commission commission) {
    return new FourLinkWork(commission).plan();
  }
}
