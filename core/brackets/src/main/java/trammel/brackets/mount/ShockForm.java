package trammel.brackets.mount;

import java.util.ArrayList;
import java.util.List;
import trammel.assembly.Compound;
import trammel.assembly.Place;
import trammel.assembly.Solid;
import trammel.assembly.Turned;
import trammel.brackets.material.Shock;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.ShockUnit;

/**
 * Shocks as simple solids: z from the lower eye to the upper one, x along the eyes. What the
 * catalog does not say of a shock (its eyes' radius, how far its body reaches) follows common
 * proportions: common practice, no source.
 */
public final class ShockForm {
  private static final double BODY_SHARE = 0.7;
  private static final double ROD_SHARE = 0.25;

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

  /** From the eye's centre to the body, and to what sits on it: clear of the tabs (mm). */
  public static double neckMm(Shock shock) {
    return 2 * shock.boltMm();
  }

  private static double bodyEndMm(ShockUnit unit, Shock shock) {
    return Math.min(BODY_SHARE * shock.closedMm(), unit.lengthMm() - 2 * neckMm(shock));
  }

  /** Radius of its rod (mm). */
  public static double rodRadiusMm(Shock shock) {
    return ROD_SHARE * shock.bodyRadiusMm();
  }

  /** Body, rod and both eyes at the length that it has at ride. */
  public static Solid solid(ShockUnit unit, Shock shock) {
    double eyeMm = eyeMm(shock);
    double bodyEndMm = bodyEndMm(unit, shock);
    double lengthMm = unit.lengthMm();
    List<Compound.Member> members = new ArrayList<>();
    members.add(eye(shock, 0));
    double neckMm = neckMm(shock);
    double rodMm = rodRadiusMm(shock);
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
}
