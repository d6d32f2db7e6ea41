package trammel.planning.extension;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.layout.Layout;
import trammel.planning.catalog.Catalog;
import trammel.reading.fields.Field;

/**
 * Something that is built onto a linkage and its springs, such as limiting straps. A job asks for
 * any number of them. An addition works from the finished layout and leaves its points where they
 * are. Implementations hold no state: one object serves every job.
 */
public interface Addition extends Extension {

  /**
   * The options that a job may set under {@code chosen.additions}, below this addition's id. Every
   * option is optional or has a default.
   *
   * @param catalog gives the keys that an option may choose from
   */
  @Override
  List<Field<?>> options(Catalog catalog);

  /**
   * Questions that this addition asks of a layout it is built onto, each with its limit.
   *
   * @param site the addition's options, catalog and units; a check reads the vehicle off the layout
   *     that it is asked about, not off this chassis
   */
  default List<LimitedCheck> checks(Site site) {
    return List.of();
  }

  /**
   * The layout with what this addition puts between frame and axle, such as an anti-roll bar; the
   * layout itself for one that puts nothing there. Checks and plans are asked of what comes back.
   *
   * @param layout the layout that it is built onto, its notch cut
   * @param site the addition's options, catalog and units
   * @throws UnworkableLayoutException if the layout leaves no room for it; the message says what is
   *     in the way and what to change
   */
  default Layout onto(Layout layout, Site site) {
    return layout;
  }

  /**
   * How far below ride both wheels hang when this addition ends the droop (mm); empty for one that
   * does not.
   *
   * @param analysis the layout that it is built onto
   * @param site the addition's options, catalog and units
   */
  default OptionalDouble endOfDroopMm(LayoutAnalysis analysis, Site site) {
    return OptionalDouble.empty();
  }

  /**
   * Checks that it may make good: by their ids the options, as a job file has them in braces, such
   * as <code>{per_side: 2}</code>. A search for layouts tries it where such a check is not good; a
   * map that is empty has it built only where a job asks for it.
   */
  default Map<String, String> remedies() {
    return Map.of();
  }

  /**
   * The parts, plates, welds and operations that it asks for.
   *
   * @throws UnworkableLayoutException if the layout leaves no room for it; the message says what is
   *     missing and what to change
   */
  WorkPlan plan(Commission commission);
}
