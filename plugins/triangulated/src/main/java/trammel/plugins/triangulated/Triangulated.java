package trammel.plugins.triangulated;

import java.util.List;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.AxleGuide;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Commission;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;
import trammel.reading.fields.Field;

/** Lower bars along the rails; upper bars that spread from over the housing to the rails. */
public final class Triangulated implements AxleLinkage {

  @Override
  public String id() {
    return "triangulated";
  }

  @Override
  public String title() {
    return "Triangulated four-link";
  }

  @Override
  public String summary() {
    return "Two lower bars run along the rails; two upper bars spread from over the housing to the"
        + " rails and hold the axle central by themselves. No lateral bar and no sideways shift,"
        + " but it needs height over the housing.";
  }

  @Override
  public List<Field<?>> options(Catalog catalog) {
    return TriangulatedOptions.fields(catalog);
  }

  @Override
  public AxleGuide propose(Site site) {
    return AxleGuide.of(new TriangulatedProposal(site).bars());
  }

  @Override
  public List<LimitedCheck> checks() {
    return List.of(UpperPlanAngle.limited());
  }

  @Override
  public WorkPlan plan(Commission commission) {
    return new TriangulatedWork(commission).plan();
  }
}
