package trammel.planning.catalog;

import java.util.Optional;
import trammel.engine.checks.Measure;

/**
 * The checks of brackets, whose limits stand in the catalog beside those of the standard checks.
 */
public enum BracketCheck {
  /** The plates of a bracket about its bolt. */
  TABS("bracket-tabs", "force on a bracket's bolt holes, share of what its plates may bear"),
  /** The welds that hold a bracket. */
  WELDS("bracket-welds", "stress in the welds of a bracket, share of what 70 ksi wire may bear");

  private final String id;
  private final String title;

  BracketCheck(String id, String title) {
    this.id = id;
    this.title = title;
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
    return Measure.SHARE;
  }

  static Optional<BracketCheck> named(String id) {
    for (BracketCheck check : values()) {
      if (check.id.equals(id)) {
        return Optional.of(check);
      }
    }
    return Optional.empty();
  }
}
