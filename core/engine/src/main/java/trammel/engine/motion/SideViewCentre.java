package trammel.engine.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.engine.geometry.Point3;

/**
 * Side-view instant centre of a symmetric linkage by its link lines: where the side-view lines of
 * the two pairs of longitudinal links meet (Gillespie, Fundamentals of Vehicle Dynamics, SAE 1992,
 * ch. 7, from memory). A single link in the centre plane is a pair with itself.
 *
 * @param point where the lines meet, in the centre plane; empty if they are parallel, or if the
 *     linkage is not made of two symmetric pairs
 * @param slope rise over run of the line from the contact patch to it, or of the links themselves
 *     if they are parallel; empty if the linkage is not made of two symmetric pairs, or if that
 *     line is upright
 */
record SideViewCentre(Optional<Point3> point, OptionalDouble slope) {

  /** Pivots of a pair may be this much out of symmetry (mm). */
  private static final double SYMMETRY_MM = 1e-6;

  private static final double PARALLEL = 1e-12;

  private static final SideViewCentre NONE =
      new SideViewCentre(Optional.empty(), OptionalDouble.empty());

  static SideViewCentre of(List<Link> links) {
    List<Link> pairs = new ArrayList<>(2);
    List<Link> open = new ArrayList<>();
    for (Link link : links) {
      if (link.kind() == LinkKind.LONGITUDINAL && !closesPair(link, open)) {
        pairs.add(link);
      }
    }
    if (pairs.size() != 2 || !open.isEmpty()) {
      return NONE;
    }
    return crossing(pairs.get(0), pairs.get(1));
  }

  /** Whether the link completes a pair; if it starts one, it is kept open for its partner. */
  private static boolean closesPair(Link link, List<Link> open) {
    if (mirrors(link, link)) {
      return false;
    }
    for (int i = 0; i < open.size(); i++) {
      if (mirrors(link, open.get(i))) {
        open.remove(i);
        return true;
      }
    }
    open.add(link);
    return false;
  }

  private static boolean mirrors(Link link, Link other) {
    return link.frame().distanceMm(other.frame().mirrored()) <= SYMMETRY_MM
        && link.axle().distanceMm(other.axle().mirrored()) <= SYMMETRY_MM;
  }

  private static SideViewCentre crossing(Link first, Link other) {
    double ux = first.frame().xMm() - first.axle().xMm();
    double uz = first.frame().zMm() - first.axle().zMm();
    double wx = other.frame().xMm() - other.axle().xMm();
    double wz = other.frame().zMm() - other.axle().zMm();
    double sine = ux * wz - uz * wx;
    double size = Math.hypot(ux, uz) * Math.hypot(wx, wz);
    if (!(size > 0)) {
      return NONE;
    }
    if (Math.abs(sine) <= PARALLEL * size) {
      return new SideViewCentre(Optional.empty(), slope(ux, uz));
    }
    double dx = other.axle().xMm() - first.axle().xMm();
    double dz = other.axle().zMm() - first.axle().zMm();
    double along = (dx * wz - dz * wx) / sine;
    double x = first.axle().xMm() + along * ux;
    double z = first.axle().zMm() + along * uz;
    return new SideViewCentre(Optional.of(new Point3(x, 0, z)), slope(x, z));
  }

  private static OptionalDouble slope(double run, double rise) {
    double slope = rise / run;
    return Double.isFinite(slope) ? OptionalDouble.of(slope) : OptionalDouble.empty();
  }
}
