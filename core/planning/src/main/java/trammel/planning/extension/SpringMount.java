package trammel.planning.extension;

import java.util.List;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.AxleGuide;
import trammel.planning.catalog.Catalog;
import trammel.reading.fields.Field;

/**
 * A way to spring a rigid axle, with its shocks. Implementations hold no state: one object serves
 * every job.
 */
public interface SpringMount extends Extension {

  /**
   * The options that a job may set under {@code chosen.spring_options}. Every option is optional or
   * has a default. An option that sets the spring rate is called {@code rate}.
   *
   * @param catalog gives the keys that an option may choose from
   */
  @Override
  List<Field<?>> options(Catalog catalog);

  /**
   * The springs and shocks with their mounting points at ride.
   *
   * @param guide the bars, and what else guides the axle, that are there already
   * @throws UnworkableLayoutException if the vehicle leaves no room for these springs; the message
   *     says how much is missing and what to change
   */
  SpringSet propose(Site site, AxleGuide guide);

  /** Questions that this mount asks beyond the standard checks, each with its limit. */
  default List<LimitedCheck> checks() {
    return List.of();
  }

  /** The parts, plates, tubes, welds and operations of springs, shocks and their mounts. */
  WorkPlan plan(Commission commission);
}
