package trammel.plugins.coilspring;

import trammel.engine.layout.SpringUnit;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CoilOverSpring;
import trammel.planning.options.BoughtShocks;

/** Finds the catalog entry that a coil spring of a layout was drawn from. */
final class BoughtCoil {
  private static final double SAME_MM = 0.01;
  private static final double SAME_N_PER_MM = 1e-6;

  private BoughtCoil() {}

  /**
   * The coil spring.
   *
   * @throws IllegalArgumentException if the catalog has none of this rate and stroke
   */
  static CoilOverSpring of(SpringUnit unit, Catalog catalog) {
    double strokeMm = unit.longestMm() - unit.shortestMm();
    for (CoilOverSpring coil : catalog.coils().values()) {
      if (Math.abs(coil.rateNPerMm() - unit.rateNPerMm()) < SAME_N_PER_MM
          && Math.abs(coil.freeLengthMm() - coil.solidLengthMm() - strokeMm) < SAME_MM) {
        return coil;
      }
    }
    throw BoughtShocks.missing(
        unit.name(), unit.rateNPerMm() + " N/mm and " + strokeMm + " mm to solid");
  }
}
