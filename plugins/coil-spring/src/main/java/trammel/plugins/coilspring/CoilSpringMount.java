package trammel.plugins.coilspring;

import java.util.List;
import trammel.brackets.Drawn;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.AxleGuide;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Commission;
import trammel.planning.extension.Site;
import trammel.planning.extension.SpringMount;
import trammel.planning.extension.SpringSet;
import trammel.reading.fields.Field;

/** Coil springs on shocks between brackets on the axle tube and a crossmember. */
public final class CoilSpringMount implements SpringMount {

  @Override
  public String id() {
    return "coil-spring";
  }

  @Override
  public String title() {
    return "coil springs on shocks";
  }

  @Override
  public String summary() {
    return "One coil-over a side, leaning inward from a bracket on the axle tube to a crossmember"
        + " between the rails. Simple and light; the ride height follows the load.";
  }

  @Override
  public List<Field<?>> options(Catalog catalog) {
    return CoilOptions.all(catalog);
  }

  @Override
  public SpringSet propose(Site site, AxleGuide guide) {
    return Drawn.orRefused(() -> new CoilProposal(site, guide).springs());
  }

  @Override
  public WorkPlan plan(Commission commission) {
    return Drawn.orRefused(() -> new CoilPlan(commission).work());
  }
}
