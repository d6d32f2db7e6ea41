package trammel.brackets.work;

import java.util.List;
import trammel.assembly.SeamRun;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.Point2;
import trammel.trade.plates.Straight;
import trammel.trade.welding.FilletLegs;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldPosition;
import trammel.trade.welding.WeldSeam;

/** Fillet seams of brackets, as large as the edge of the thinner part takes. */
public final class Seam {
  private Seam() {}

  /** Leg of a fillet between two parts (mm). */
  public static double legMm(double oneMm, double otherMm) {
    return FilletLegs.largestAlongEdgeMm(Math.min(oneMm, otherMm));
  }

  /** Seams laid on the bench, turned to lie flat. */
  public static WeldSeam onBench(
      String name, double oneMm, double otherMm, List<SeamRun> runs, Phrase why) {
    return seam(name, oneMm, otherMm, runs, WeldPosition.FLAT, WeldPlace.BENCH, why);
  }

  /** Seams laid under the vehicle. */
  public static WeldSeam onVehicle(
      String name,
      double oneMm,
      double otherMm,
      List<SeamRun> runs,
      WeldPosition position,
      Phrase why) {
    return seam(name, oneMm, otherMm, runs, position, WeldPlace.VEHICLE, why);
  }

  private static WeldSeam seam(
      String name,
      double oneMm,
      double otherMm,
      List<SeamRun> runs,
      WeldPosition position,
      WeldPlace place,
      Phrase why) {
    FilletWeld fillet = FilletWeld.ofLeg(legMm(oneMm, otherMm));
    return WeldSeam.along(name, fillet, runs, position, place, why);
  }

  /** A straight edge of an outline. */
  public static Straight edge(double startXMm, double startYMm, double endXMm, double endYMm) {
    return new Straight(new Point2(startXMm, startYMm), new Point2(endXMm, endYMm));
  }
}
