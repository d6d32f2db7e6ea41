package trammel.planning.mounts;

import java.util.ArrayList;
import java.util.List;
import trammel.assembly.Compound;
import trammel.assembly.Place;
import trammel.assembly.Solid;
import trammel.assembly.Turned;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.ShockUnit;
import trammel.planning.catalog.CoilOverSpring;
import trammel.planning.catalog.Shock;

/**
 * Shocks and the springs on them as simple solids: z from the lower eye to the upper one, x along
 * the eyes. What the catalog does not say of a shock (its eyes' radius, how far its body reaches)
 * follows common proportions: common practice, no source.
 */
public final class ShockForm {
  private static final double BODY_SHARE = 0.7;
  private static final double ROD_SHARE = 0.25;
  private static final double SEAT_MM = 8;

  private ShockForm() {}

  /** The axes of a shock whose bolts point a given way. */
  public static Place place(ShockUnit unit, Vector3 bolts) {
    Vector3 along = unit.axle().to(unit.frame()).normalized();
    Vector3 sleeve = bolts.minus(along.scaled(bolts.dot(along)));
    return Place.of(unit.axle(), sleeve, along.cross(sleeve));
  }

  private static double eyeMm(Shock shock) {
    return shock.boltMm();
  }

  /** Body and seats keep clear of the tabs about the eye. */
  private static double neckMm(Shock shock) {
    return 2 * shock.boltMm();
  }

  private static double bodyEndMm(ShockUnit unit, Shock shock) {
    return Math.min(BODY_SHARE * shock.closedMm(), unit.lengthMm() - 2 * neckMm(shock));
  }

  /** Body, rod and both eyes at the length that it has at ride. */
  public static Solid solid(ShockUnit unit, Shock shock) {
    double eyeMm = eyeMm(shock);
    double bodyEndMm = bodyEndMm(unit, shock);
    double lengthMm = unit.lengthMm();
    List<Compound.Member> members = new ArrayList<>();
    members.add(eye(shock, 0));
    double neckMm = neckMm(shock);
    double rodMm = ROD_SHARE * shock.bodyRadiusMm();
    members.add(member(eyeMm, Turned.bar(rodMm, neckMm - eyeMm)));
    members.add(member(neckMm, Turned.bar(shock.bodyRadiusMm(), bodyEndMm - neckMm)));
    members.add(member(bodyEndMm, Turned.bar(rodMm, lengthMm - eyeMm - bodyEndMm)));
    members.add(eye(shock, lengthMm));
    return new Compound(members);
  }

  private static Compound.Member eye(Shock shock, double alongMm) {
    double widthMm = shock.eyeWidthMm();
    return new Compound.Member(
        Place.along(new Point3(-widthMm / 2, 0, alongMm), new Vector3(1, 0, 0)),
        Turned.ring(shock.boltMm() / 2, eyeMm(shock), widthMm));
  }

  private static Compound.Member member(double alongMm, Solid solid) {
    return new Compound.Member(Place.at(new Point3(0, 0, alongMm)), solid);
  }

  /** Where the spring on a shock ends under its upper seat (mm from the lower eye). */
  private static double springTopMm(ShockUnit unit, Shock shock) {
    return unit.lengthMm() - neckMm(shock) - SEAT_MM;
  }

  /** The room that a coil takes round the shock at its length at ride. */
  public static Solid coil(ShockUnit unit, Shock shock, CoilOverSpring coil, double lengthMm) {
    double topMm = springTopMm(unit, shock);
    double insideMm = insideMm(shock, coil);
    return new Compound(
        List.of(member(topMm - lengthMm, Turned.ring(insideMm, coil.outsideRadiusMm(), lengthMm))));
  }

  private static double insideMm(Shock shock, CoilOverSpring coil) {
    return Math.min(shock.bodyRadiusMm(), 0.9 * coil.outsideRadiusMm());
  }

  /** Upper seat and collar of the spring on a shock. */
  public static Solid seats(ShockUnit unit, Shock shock, CoilOverSpring coil, double lengthMm) {
    double topMm = springTopMm(unit, shock);
    double outsideMm = coil.outsideRadiusMm();
    return new Compound(
        List.of(
            member(topMm, Turned.ring(ROD_SHARE * shock.bodyRadiusMm(), outsideMm, SEAT_MM)),
            member(
                topMm - lengthMm - SEAT_MM,
                Turned.ring(insideMm(shock, coil), outsideMm, SEAT_MM))));
  }

  /** A clip that keeps a loose coil on its upper seat. */
  public static Solid retainer(ShockUnit unit, Shock shock, CoilOverSpring coil) {
    double topMm = springTopMm(unit, shock);
    return new Compound(
        List.of(
            member(
                topMm - SEAT_MM / 2,
                Turned.ring(
                    ROD_SHARE * shock.bodyRadiusMm(), insideMm(shock, coil), SEAT_MM / 2))));
  }
}
