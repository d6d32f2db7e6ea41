package example.chock;

import java.util.List;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Addition;
import trammel.planning.extension.Commission;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;
import trammel.reading.fields.Field;

/** An addition that asks for some bench work; a test puts faults in its places. */
public final class Chock implements Addition {
  private static final Field<Integer> PAIRS =
      Field.count("pairs", "how many pairs are drilled", 1, 4).withDefault(1);

  @Override
  public String id() {
    return "ID";
  }

  @Override
  public String title() {
    return "Chocks for the stands";
  }

  @Override
  public String summary() {
    return "Plates drilled on the bench, only there to try additions with.";
  }

  @Override
  public List<Field<?>> options(Catalog catalog) {
    return List.of(PAIRS);
  }

  @Override
  public List<LimitedCheck> checks(Site site) {
    /* checks */
    return List.of();
  }

  @Override
  public WorkPlan plan(Commission commission) {
    /* plan */
    int holes = 2 * commission.site().options().get(PAIRS);
    return new WorkPlan.Builder()
        .add(new OperationNeed("drill-plate", holes, holes + " holes in chocks", Phrase.of("bolt holes of the chocks")))
        .build();
  }
}
