package trammel.assembly;

import trammel.trade.plates.Arc;
import trammel.trade.plates.Edge;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Outline;

/**
 * Integrals of x^p y^q over an area, from its edges: 1/(p+1) times the integral of x^(p+1) y^q dy
 * round it (Green's theorem).
 *
 * @param area area, mm²
 * @param x integral of x, mm³
 * @param y integral of y, mm³
 * @param xx integral of x², mm⁴
 * @param xy integral of x y, mm⁴
 */
record AreaMoments(double area, double x, double y, double xx, double xy) {
  /** Gauss's five points and weights on -1..1: exact for every straight edge. */
  private static final double[] POINTS = {
    -0.9061798459386640, -0.5384693101056831, 0, 0.5384693101056831, 0.9061798459386640
  };

  private static final double[] WEIGHTS = {
    0.2369268850561891,
    0.4786286704993665,
    0.5688888888888889,
    0.4786286704993665,
    0.2369268850561891
  };

  /** An arc is taken in pieces of at most an eighth of a turn: then the rule is exact to 1e-9. */
  private static final double PIECE_RAD = Math.PI / 4;

  static AreaMoments of(Outline outline) {
    AreaMoments sum = of(outline.outer());
    for (Loop hole : outline.holeLoops()) {
      sum = sum.minus(of(hole));
    }
    return sum;
  }

  /** The moments of the area inside a path, whichever way round it runs. */
  static AreaMoments of(Loop loop) {
    double[] sums = new double[5];
    for (Edge edge : (loop.isAnticlockwise() ? loop : loop.reversed()).edges()) {
      add(sums, edge);
    }
    return new AreaMoments(sums[0], sums[1], sums[2], sums[3], sums[4]);
  }

  private static void add(double[] sums, Edge edge) {
    double turnRad = edge instanceof Arc arc ? arc.sweepRad() : 0;
    int pieces = Math.max(1, (int) Math.ceil(Math.abs(turnRad) / PIECE_RAD));
    for (int piece = 0; piece < pieces; piece++) {
      for (int i = 0; i < POINTS.length; i++) {
        double share = (piece + (1 + POINTS[i]) / 2) / pieces;
        double headingRad = edge.startHeadingRad() + share * turnRad;
        double dy = Math.sin(headingRad) * edge.lengthMm() * WEIGHTS[i] / 2 / pieces;
        double x = edge.at(share).xMm();
        double y = edge.at(share).yMm();
        sums[0] += x * dy;
        sums[1] += x * x / 2 * dy;
        sums[2] += x * y * dy;
        sums[3] += x * x * x / 3 * dy;
        sums[4] += x * x / 2 * y * dy;
      }
    }
  }

  private AreaMoments minus(AreaMoments hole) {
    return new AreaMoments(area - hole.area, x - hole.x, y - hole.y, xx - hole.xx, xy - hole.xy);
  }
}
