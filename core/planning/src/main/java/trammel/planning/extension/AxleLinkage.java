package trammel.planning.extension;

import java.util.List;
import java.util.Map;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.AxleGuide;
import trammel.planning.catalog.Catalog;
import trammel.reading.fields.Field;

/**
 * A way to carry a rigid axle on bars. Implementations hold no state: one object serves every job.
 */
public interface AxleLinkage extends Extension {

  /**
   * The options that a job may set under {@code chosen.linkage_options}. Every option is optional
   * or has a default.
   *
   * @param catalog gives the keys that an option may choose from
   */
  @Override
  List<Field<?>> options(Catalog catalog);

  /**
   * The bars with their pick-up points at ride, proposed from the measurements; further bodies,
   * sliders and solids where the linkage has them. Bars that a job moves are moved afterwards.
   *
   * @throws UnworkableLayoutException if the vehicle leaves no room for this linkage; the message
   *     says how much is missing and what to change
   */
  AxleGuide propose(Site site);

  /**
   * What belongs to bars that a job has moved: solids on them, pivots beside them. Asked for after
   * the job's own pick-up points are in place.
   *
   * @param moved the guide as proposed, its bars where the job puts them
   */
  default AxleGuide follow(Site site, AxleGuide moved) {
    return moved;
  }

  /**
   * Standard checks that say nothing about this linkage: their ids, each with the reason, which is
   * printed in place of a value.
   */
  default Map<String, String> declined() {
    return Map.of();
  }

  /** Questions that this linkage asks beyond the standard checks, each with its limit. */
  default List<LimitedCheck> checks() {
    return List.of();
  }

  /** The parts, plates, tubes, welds and operations of the bars and their brackets. */
  WorkPlan plan(Commission commission);
}
