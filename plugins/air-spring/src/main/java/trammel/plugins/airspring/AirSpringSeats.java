package trammel.plugins.airspring;

import trammel.brackets.mount.MemberStress;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Rails;
import trammel.planning.catalog.AirSpring;
import trammel.trade.plates.TubeBracket;

/**
 * Sizes and heights of the seats of an air spring.
 *
 * @param rails the rails
 * @param across side of the rails
 * @param bridgeHeightMm height of the bridge's tube (mm)
 * @param plateMm thickness of the seats (mm)
 */
record AirSpringSeats(Rails rails, AirSpringAcross across, double bridgeHeightMm, double plateMm) {
  /** An outrigger's gusset stands 2 in or more up the rail: common practice, no source. */
  private static final double LEAST_GUSSET_MM = 2 * 25.4;

  /** The arms of a lower seat stand 0.3 of its diameter to each side of its middle. */
  private static final double ARM_SHARE = 0.3;

  /**
   * Length of the chord over a seat where an arm stands, as a share of its diameter: 2√(¼−0.3²).
   */
  private static final double CHORD_SHARE = 0.8;

  /** Diameter of the seats: as wide as the spring (mm). */
  static double diameterMm(AirSpring spring) {
    return 2 * spring.outsideRadiusMm();
  }

  /** Middle of an arm from the middle of its seat, along the axle (mm). */
  static double armOffMm(double diameterMm) {
    return ARM_SHARE * diameterMm;
  }

  /** Level edge of an arm under its seat (mm). */
  static double armEdgeMm(double diameterMm) {
    return CHORD_SHARE * diameterMm;
  }

  /**
   * Bending stress of both arms where they leave the axle tube, for 1 N on the seat (MPa).
   *
   * @param seat middle of the seat
   * @param plateMm thickness of each arm
   */
  static double armAtTube(Chassis chassis, Point3 seat, double plateMm) {
    double radiusMm = chassis.axle().tubeRadiusMm();
    double halfWrapRad = TubeBracket.USUAL_WRAP_RAD / 2;
    double leverMm =
        Math.abs(seat.xMm() - chassis.axleCentre().xMm()) - radiusMm * Math.cos(halfWrapRad);
    return MemberStress.plate(leverMm / 2, plateMm, 2 * radiusMm * Math.sin(halfWrapRad));
  }

  /** Half the length along the axle tube that both arms take (mm). */
  double halfArmsMm(AirSpring spring) {
    return armOffMm(diameterMm(spring)) + plateMm / 2;
  }

  /**
   * Height of the upper seat's face above ground: over the axle's centre by the spring's height if
   * the rails allow it, else as near to that as they do (mm). The base of an outrigger lies on the
   * rail's outer face over all of its length, though the rail may climb.
   */
  double upperMm(AirSpring spring, double forwardMm, double wantedMm) {
    if (across == AirSpringAcross.INBOARD) {
      double highestMm = rails.topMm(forwardMm) - bridgeHeightMm - plateMm;
      return within(rails.undersideMm(forwardMm) - plateMm, highestMm, wantedMm);
    }
    double rearMm = forwardMm - diameterMm(spring) / 2;
    double frontMm = forwardMm + diameterMm(spring) / 2;
    double lowestMm = Math.max(rails.undersideMm(rearMm), rails.undersideMm(frontMm));
    double topMm = Math.min(rails.topMm(rearMm), rails.topMm(frontMm));
    return within(lowestMm, topMm - LEAST_GUSSET_MM - plateMm, wantedMm);
  }

  private static double within(double lowestMm, double highestMm, double wantedMm) {
    return Math.max(lowestMm, Math.min(highestMm, wantedMm));
  }
}
