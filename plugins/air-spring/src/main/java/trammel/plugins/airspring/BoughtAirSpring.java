package trammel.plugins.airspring;

import trammel.engine.layout.SpringUnit;
import trammel.planning.catalog.AirSpring;
import trammel.planning.catalog.Catalog;
import trammel.planning.options.BoughtShocks;

/** Finds the catalog entry that an air spring of a layout was drawn from. */
final class BoughtAirSpring {
  private static final double SAME_MM = 0.01;

  private BoughtAirSpring() {}

  /**
   * The air spring.
   *
   * @throws IllegalArgumentException if the catalog has none of this radius and height
   */
  static AirSpring of(SpringUnit unit, Catalog catalog) {
    for (AirSpring spring : catalog.airSprings().values()) {
      if (Math.abs(spring.outsideRadiusMm() - unit.radiusMm()) < SAME_MM
          && Math.abs(spring.size().leastHeightMm() - unit.shortestMm()) < SAME_MM
          && Math.abs(spring.size().mostHeightMm() - unit.longestMm()) < SAME_MM) {
        return spring;
      }
    }
    throw BoughtShocks.missing(unit.name(), unit.radiusMm() + " mm radius");
  }
}
