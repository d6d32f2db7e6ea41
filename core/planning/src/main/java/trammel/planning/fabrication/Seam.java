package trammel.planning.fabrication;

import trammel.trade.welding.FilletLegs;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldPosition;
import trammel.trade.welding.WeldSeam;

/** Fillet seams of brackets, as large as the edge of the thinner part takes. */
final class Seam {
  private Seam() {}

  /** Leg of a fillet between two parts (mm). */
  static double legMm(double oneMm, double otherMm) {
    return FilletLegs.largestAlongEdgeMm(Math.min(oneMm, otherMm));
  }

  /** Seams laid on the bench, turned to lie flat. */
  static WeldSeam onBench(
      String name, double oneMm, double otherMm, double lengthMm, int count, String why) {
    return seam(name, oneMm, otherMm, lengthMm, count, WeldPosition.FLAT, WeldPlace.BENCH, why);
  }

  /** Seams laid under the vehicle. */
  static WeldSeam onVehicle(
      String name,
      double oneMm,
      double otherMm,
      double lengthMm,
      int count,
      WeldPosition position,
      String why) {
    return seam(name, oneMm, otherMm, lengthMm, count, position, WeldPlace.VEHICLE, why);
  }

  private static WeldSeam seam(
      String name,
      double oneMm,
      double otherMm,
      double lengthMm,
      int count,
      WeldPosition position,
      WeldPlace place,
      String why) {
    FilletWeld fillet = FilletWeld.ofLeg(legMm(oneMm, otherMm));
    return WeldSeam.along(name, fillet, lengthMm, count, position, place, why);
  }
}
