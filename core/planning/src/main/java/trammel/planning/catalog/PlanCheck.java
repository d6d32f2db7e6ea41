package trammel.planning.catalog;

import java.util.Optional;
import trammel.engine.checks.Measure;

/**
 * The checks of what is planned for a layout, whose limits stand in the catalog beside those of the
 * standard checks.
 */
public enum PlanCheck {
  /** The plates of a bracket about its bolt. */
  TABS(
      "bracket-tabs",
      "force on a bracket's bolt holes, share of what its plates may bear",
      Measure.SHARE),
  /** The welds that hold a bracket. */
  WELDS(
      "bracket-welds",
      "stress in the welds of a bracket, share of what 70 ksi wire may bear",
      Measure.SHARE),
  /** Whether every outline can be cut, every seam run, and every part has room. */
  CAN_BE_MADE("can-be-made", "part that cannot be made: its outline, seam or room", Measure.COUNT);

  private final String id;
  private final String title;
  private final Measure measure;

  PlanCheck(String id, String title, Measure measure) {
    this.id = id;
    this.title = title;
    this.measure = measure;
  }

  /** Name under which its limit is kept. */
  public String id() {
    return id;
  }

  /** What is checked, in a few words. */
  public String title() {
    return title;
  }

  /** What kind of quantity its value is. */
  public Measure measure() {
    return measure;
  }

  static Optional<PlanCheck> named(String id) {
    for (PlanCheck check : values()) {
      if (check.id.equals(id)) {
        return Optional.of(check);
      }
    }
    return Optional.empty();
  }
}
