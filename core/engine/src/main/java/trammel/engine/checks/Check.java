package trammel.engine.checks;

import java.util.List;

/** One question that a layout must answer. */
public interface Check {

  /** Short name under which its limit is kept, such as {@code lower-bar-angle}. */
  String id();

  /** What is checked, in a few words. */
  String title();

  /** What kind of quantity the value is. */
  Measure measure();

  /** The value on a layout, or why there is none. */
  Reading read(LayoutAnalysis analysis);

  /**
   * The limit for this layout, where it depends on the layout; else the given one.
   *
   * @param general the limit from the catalog or the job
   */
  default Limit limit(Limit general, LayoutAnalysis analysis) {
    return general;
  }

  /**
   * Further figures behind the value, asked for once, of the result that is shown.
   *
   * @param analysis the layout on which this check has a value
   */
  default List<Detail> details(LayoutAnalysis analysis) {
    return List.of();
  }

  /**
   * What to do where no single change within reach makes it good, in a sentence or two; may be
   * empty.
   */
  default String advice() {
    return "";
  }

  /** Changes worth trying when the value is not good, the most convenient first. */
  default List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of();
  }

  /** Whether it asks of the measurements alone, so that it reads the same off every layout. */
  default boolean isOfMeasurements() {
    return false;
  }
}
