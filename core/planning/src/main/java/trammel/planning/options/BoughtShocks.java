package trammel.planning.options;

import trammel.brackets.material.Shock;
import trammel.engine.layout.ShockUnit;
import trammel.planning.catalog.Catalog;

/**
 * Finds the catalog entry that a shock of a layout was drawn from.
 *
 * @param catalog the catalog
 */
public record BoughtShocks(Catalog catalog) {
  private static final double SAME_MM = 0.01;

  /**
   * The shock.
   *
   * @param coilOver whether a spring sits on it
   * @throws IllegalArgumentException if the catalog has none of these lengths
   */
  public Shock of(ShockUnit unit, boolean coilOver) {
    for (Shock shock : catalog.shocks().values()) {
      if (shock.coilOver() == coilOver
          && Math.abs(shock.closedMm() - unit.closedMm()) < SAME_MM
          && Math.abs(shock.openMm() - unit.openMm()) < SAME_MM) {
        return shock;
      }
    }
    throw missing(unit.name(), unit.closedMm() + " mm closed and " + unit.openMm() + " mm open");
  }

  /**
   * The refusal of a layout whose spring or shock the catalog does not have.
   *
   * @param name the spring or shock
   * @param what what the layout has of it
   */
  public static IllegalArgumentException missing(String name, String what) {
    return new IllegalArgumentException(
        name
            + " of the layout has "
            + what
            + "; the catalog has no such entry. Draw the layout from this catalog again.");
  }
}
