package trammel.plugins.airspring;

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

/** Air springs on arms from the axle tube, with separate shocks. */
public final class AirSpringMount implements SpringMount {

  @Override
  public String id() {
    return "air-spring";
  }

  @Override
  public String title() {
    return "air springs with separate shocks";
  }

  @Override
  public String summary() {
    return "One air spring a side between a seat on the axle and a bridge or outrigger on the"
        + " frame, with its own shocks and air supply. The ride height is set by pressure.";
  }

  @Override
  public List<Field<?>> options(Catalog catalog) {
    return AirOptions.all(catalog);
  }

  @Override
  public SpringSet propose(Site site, AxleGuide guide) {
    return Drawn.orRefused(() -> AirProposal.of(site, guide));
  }

  @Override
  public WorkPlan plan(Commission commission) {
    return Drawn.orRefused(() -> new AirPlan(commission).work());
  }
}
