package trammel.assembly.fit;

import java.util.List;
import trammel.trade.plates.Point2;

/** Closed polygons, the outer one and those cut out of it, for how deep a point lies in them. */
final class Rings {
  /** Four numbers a side: from and to. */
  private final double[] sides;

  Rings(List<List<Point2>> loops) {
    int count = loops.stream().mapToInt(List::size).sum();
    sides = new double[4 * count];
    int at = 0;
    for (List<Point2> loop : loops) {
      for (int i = 0; i < loop.size(); i++) {
        Point2 from = loop.get(i);
        Point2 to = loop.get((i + 1) % loop.size());
        sides[at] = from.xMm();
        sides[at + 1] = from.yMm();
        sides[at + 2] = to.xMm();
        sides[at + 3] = to.yMm();
        at += 4;
      }
    }
  }

  /** Distance of a point inside from the nearest side; outside -1. */
  double depthMm(double x, double y) {
    return isInside(x, y) ? Math.sqrt(leastSquared(x, y)) : -1;
  }

  private boolean isInside(double x, double y) {
    boolean inside = false;
    for (int i = 0; i < sides.length; i += 4) {
      double ay = sides[i + 1];
      double by = sides[i + 3];
      if ((ay > y) != (by > y) && x < sides[i] + (sides[i + 2] - sides[i]) * (y - ay) / (by - ay)) {
        inside = !inside;
      }
    }
    return inside;
  }

  private double leastSquared(double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < sides.length; i += 4) {
      double ax = sides[i];
      double ay = sides[i + 1];
      double dx = sides[i + 2] - ax;
      double dy = sides[i + 3] - ay;
      double squared = dx * dx + dy * dy;
      double share = squared == 0 ? 0 : ((x - ax) * dx + (y - ay) * dy) / squared;
      double along = share < 0 ? 0 : share > 1 ? 1 : share;
      double offX = x - ax - along * dx;
      double offY = y - ay - along * dy;
      least = Math.min(least, offX * offX + offY * offY);
    }
    return least;
  }
}
