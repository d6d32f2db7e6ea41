package trammel.trade.plates;

import java.util.List;

/** Polygon sums by the shoelace rule, independent of the outlines' own integrals. */
final class Shoelace {
  private Shoelace() {}

  static double areaMm2(List<Point2> corners) {
    double twice = 0.0;
    for (int i = 0; i < corners.size(); i++) {
      Point2 a = corners.get(i);
      Point2 b = corners.get((i + 1) % corners.size());
      twice += a.xMm() * b.yMm() - b.xMm() * a.yMm();
    }
    return Math.abs(twice) / 2.0;
  }

  static double areaMm2(Outline outline, double chordToleranceMm) {
    double area = areaMm2(outline.polygon(chordToleranceMm));
    for (List<Point2> hole : outline.holePolygons(chordToleranceMm)) {
      area -= areaMm2(hole);
    }
    return area;
  }
}
