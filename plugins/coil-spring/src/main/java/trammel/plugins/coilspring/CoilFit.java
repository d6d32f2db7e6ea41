package trammel.plugins.coilspring;

import trammel.brackets.mount.ShockFit;
import trammel.engine.layout.SpringKind;
import trammel.engine.layout.SpringUnit;
import trammel.planning.catalog.CoilOverSpring;

/**
 * A coil spring on its shock.
 *
 * @param coil the spring
 * @param wantedNPerMm the rate that was looked for (N/mm)
 * @param forceN its load at ride (N)
 * @param lengthMm its length at ride (mm)
 * @param aboveSolidMm what is left above its solid length at full bump (mm)
 * @param tightInDroopMm how far it is still compressed at full droop (mm), negative when loose
 */
record CoilFit(
    CoilOverSpring coil,
    double wantedNPerMm,
    double forceN,
    double lengthMm,
    double aboveSolidMm,
    double tightInDroopMm) {

  /** The spring on the left as the layout keeps it, its seats taken at the shock's mounts. */
  public SpringUnit left(ShockFit shock) {
    double shockMm = shock.lengthMm();
    return new SpringUnit(
        "spring-left",
        SpringKind.COIL,
        shock.frame(),
        shock.axle(),
        coil.outsideRadiusMm(),
        coil.rateNPerMm(),
        shockMm - (lengthMm - coil.solidLengthMm()),
        shockMm + (coil.freeLengthMm() - lengthMm));
  }

  /** Its twin on the right. */
  public SpringUnit right(ShockFit shock) {
    SpringUnit left = left(shock);
    return new SpringUnit(
        "spring-right",
        left.kind(),
        left.frame().mirrored(),
        left.axle().mirrored(),
        left.radiusMm(),
        left.rateNPerMm(),
        left.shortestMm(),
        left.longestMm());
  }
}
