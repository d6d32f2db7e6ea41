package trammel.planning.mounts;

import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.planning.catalog.AirSpring;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CoilOverSpring;
import trammel.planning.catalog.Shock;

/**
 * Finds the catalog entry that a spring or shock of a layout was drawn from.
 *
 * @param catalog the catalog
 */
public record BoughtSprings(Catalog catalog) {
  private static final double SAME_MM = 0.01;
  private static final double SAME_N_PER_MM = 1e-6;

  /**
   * The shock.
   *
   * @param coilOver whether a spring sits on it
   * @throws IllegalArgumentException if the catalog has none of these lengths
   */
  public Shock shock(ShockUnit unit, boolean coilOver) {
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
   * The coil spring.
   *
   * @throws IllegalArgumentException if the catalog has none of this rate and stroke
   */
  public CoilOverSpring coil(SpringUnit unit) {
    double strokeMm = unit.longestMm() - unit.shortestMm();
    for (CoilOverSpring coil : catalog.coils().values()) {
      if (Math.abs(coil.rateNPerMm() - unit.rateNPerMm()) < SAME_N_PER_MM
          && Math.abs(coil.freeLengthMm() - coil.solidLengthMm() - strokeMm) < SAME_MM) {
        return coil;
      }
    }
    throw missing(unit.name(), unit.rateNPerMm() + " N/mm and " + strokeMm + " mm to solid");
  }

  /**
   * The air spring.
   *
   * @throws IllegalArgumentException if the catalog has none of this radius and height
   */
  public AirSpring airSpring(SpringUnit unit) {
    for (AirSpring spring : catalog.airSprings().values()) {
      if (Math.abs(spring.outsideRadiusMm() - unit.radiusMm()) < SAME_MM
          && Math.abs(spring.size().leastHeightMm() - unit.shortestMm()) < SAME_MM
          && Math.abs(spring.size().mostHeightMm() - unit.longestMm()) < SAME_MM) {
        return spring;
      }
    }
    throw missing(unit.name(), unit.radiusMm() + " mm radius");
  }

  private static IllegalArgumentException missing(String name, String what) {
    return new IllegalArgumentException(
        name
            + " of the layout has "
            + what
            + "; the catalog has no such entry. Draw the layout from this catalog again.");
  }
}
