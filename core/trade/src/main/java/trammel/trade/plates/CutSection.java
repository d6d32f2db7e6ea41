package trammel.trade.plates;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The metal along one straight cut through a plate, by its width alone: the plate is even in
 * thickness.
 *
 * @param widthMm metal along the cut (mm)
 * @param middleMm middle of that metal along the cut (mm)
 * @param inertiaMm3 second moment of that metal about its middle for a thickness of 1 mm (mm³)
 * @param farMm from the middle to the metal farthest from it (mm)
 */
record CutSection(double widthMm, double middleMm, double inertiaMm3, double farMm) {

  /** Where a cut at a height goes into the metal and out of it, by turns, from left to right. */
  static List<Double> crossings(double yMm, List<List<Point2>> polygons) {
    List<Double> crossings = new ArrayList<>();
    for (List<Point2> polygon : polygons) {
      addCrossings(yMm, polygon, crossings);
    }
    Collections.sort(crossings);
    return crossings;
  }

  /** The cut at a height through an outline; without metal where it misses it. */
  static CutSection at(double yMm, List<List<Point2>> polygons) {
    List<Double> crossings = crossings(yMm, polygons);
    double widthMm = 0;
    double momentMm2 = 0;
    for (int i = 0; i + 1 < crossings.size(); i += 2) {
      double runMm = crossings.get(i + 1) - crossings.get(i);
      widthMm += runMm;
      momentMm2 += runMm * (crossings.get(i + 1) + crossings.get(i)) / 2;
    }
    if (widthMm == 0) {
      return new CutSection(0, 0, 0, 0);
    }
    double middleMm = momentMm2 / widthMm;
    double inertiaMm3 = 0;
    for (int i = 0; i + 1 < crossings.size(); i += 2) {
      double fromMm = crossings.get(i) - middleMm;
      double toMm = crossings.get(i + 1) - middleMm;
      inertiaMm3 += (toMm * toMm * toMm - fromMm * fromMm * fromMm) / 3;
    }
    double farMm =
        Math.max(crossings.get(crossings.size() - 1) - middleMm, middleMm - crossings.get(0));
    return new CutSection(widthMm, middleMm, inertiaMm3, farMm);
  }

  private static void addCrossings(double yMm, List<Point2> polygon, List<Double> crossings) {
    for (int i = 0; i < polygon.size(); i++) {
      Point2 from = polygon.get(i);
      Point2 to = polygon.get((i + 1) % polygon.size());
      if (from.yMm() <= yMm != to.yMm() <= yMm) {
        double share = (yMm - from.yMm()) / (to.yMm() - from.yMm());
        crossings.add(from.xMm() + share * (to.xMm() - from.xMm()));
      }
    }
  }

  /**
   * Greatest stress from a force of 1 N in the plate's plane through a bolt, in a plate 1 mm thick:
   * pull or push over the metal, and bending about its middle. Source: N/A + M c/I, any handbook;
   * Young and Budynas, Roark's Formulas for Stress and Strain, 7th ed., sections 7.1 and 8.1, from
   * memory.
   *
   * @param leanRad lean of the force from the direction square to the cut (rad)
   * @param bolt where the force enters
   * @param yMm height of the cut (mm)
   */
  double stressMPa(double leanRad, Point2 bolt, double yMm) {
    if (widthMm == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double pullN = Math.cos(leanRad);
    double acrossN = Math.sin(leanRad);
    double momentNmm = Math.abs(acrossN * (yMm - bolt.yMm()) - pullN * (middleMm - bolt.xMm()));
    return Math.abs(pullN) / widthMm + momentNmm * farMm / inertiaMm3;
  }
}
