package example.faulty;

import java.util.List;
import trammel.engine.layout.AxleGuide;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Commission;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;
import trammel.planning.extension.SpringMount;
import trammel.planning.extension.SpringSet;
import trammel.planning.extension.kit.SampleVehicle;
import trammel.reading.fields.Field;
import trammel.brackets.work.WorkPlan;

/** Springs of which one answer is not what it should be: a test puts the fault in its place. */
public final class Faulty implements SpringMount {
  public Faulty() throws Exception {
    /* constructor */
  }

  @Override
  public String id() {
    return "ID";
  }

  @Override
  public String title() {
    /* title */
    return "Springs that fail";
  }

  @Override
  public String summary() {
    return "Springs of a plugin with a fault in it.";
  }

  @Override
  public List<Field<?>> options(Catalog catalog) {
    /* options */
    return List.of();
  }

  @Override
  public SpringSet propose(Site site, AxleGuide guide) {
    /* propose */
    return new SpringSet(SampleVehicle.springs(site.chassis()), List.of());
  }

  @Override
  public List<LimitedCheck> checks() {
    /* checks */
    return List.of();
  }

  @Override
  public WorkPlan plan(Commission commission) {
    /* plan */
    return new WorkPlan.Builder().build();
  }

  static int deeper(int depth) {
    return depth == -1 ? 0 : 1 + deeper(depth + 1);
  }

  /** An exception that fails even at saying what it is. */
  static final class Sullen extends RuntimeException {
    @Override
    public String getMessage() {
      throw new IllegalStateException("no message either");
    }
  }
}
