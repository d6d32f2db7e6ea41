package trammel.plugins.coilspring;

import java.util.List;
import trammel.assembly.Compound;
import trammel.assembly.Place;
import trammel.assembly.Solid;
import trammel.assembly.Turned;
import trammel.brackets.material.Shock;
import trammel.brackets.mount.ShockForm;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.ShockUnit;
import trammel.planning.catalog.CoilOverSpring;

/**
 * The coil on a shock, with its seats and its clip, as simple solids on the shock's axes: z from
 * the lower eye to the upper one. Thicknesses are common practice, no source.
 */
final class CoilForm {
  private static final double SEAT_MM = 8;

  private CoilForm() {}

  /** Where the spring on a shock ends under its upper seat (mm from the lower eye). */
  private static double springTopMm(ShockUnit unit, Shock shock) {
    return unit.lengthMm() - ShockForm.neckMm(shock) - SEAT_MM;
  }

  /** The room that a coil takes round the shock at its length at ride. */
  static Solid coil(ShockUnit unit, Shock shock, CoilOverSpring coil, double lengthMm) {
    double topMm = springTopMm(unit, shock);
    double insideMm = insideMm(shock, coil);
    return new Compound(
        List.of(member(topMm - lengthMm, Turned.ring(insideMm, coil.outsideRadiusMm(), lengthMm))));
  }

  private static double insideMm(Shock shock, CoilOverSpring coil) {
    return Math.min(shock.bodyRadiusMm(), 0.9 * coil.outsideRadiusMm());
  }

  /** Upper seat and collar of the spring on a shock. */
  static Solid seats(ShockUnit unit, Shock shock, CoilOverSpring coil, double lengthMm) {
    double topMm = springTopMm(unit, shock);
    double outsideMm = coil.outsideRadiusMm();
    return new Compound(
        List.of(
            member(topMm, Turned.ring(ShockForm.rodRadiusMm(shock), outsideMm, SEAT_MM)),
            member(
                topMm - lengthMm - SEAT_MM,
                Turned.ring(insideMm(shock, coil), outsideMm, SEAT_MM))));
  }

  /** A clip that keeps a loose coil on its upper seat. */
  static Solid retainer(ShockUnit unit, Shock shock, CoilOverSpring coil) {
    double topMm = springTopMm(unit, shock);
    return new Compound(
        List.of(
            member(
                topMm - SEAT_MM / 2,
                Turned.ring(ShockForm.rodRadiusMm(shock), insideMm(shock, coil), SEAT_MM / 2))));
  }

  private static Compound.Member member(double alongMm, Solid solid) {
    return new Compound.Member(Place.at(new Point3(0, 0, alongMm)), solid);
  }
}
