package trammel.cutting.outlines;

import java.util.ArrayList;
import java.util.List;

/**
 * A plainer outline around one with many corners, so that arcs drawn as many short sides cost
 * little time. It always contains the outline, and adds little area.
 */
final class OutlineHull {
  /** Outlines of up to this many corners are left as they are. */
  private static final int FEW_CORNERS = 16;

  /** Corners from which more area is added to get rid of the rest. */
  private static final int MANY_CORNERS = 32;

  private static final double LITTLE_AREA = 0.002;
  private static final double SOME_AREA = 0.01;

  private final List<double[]> ring = new ArrayList<>();
  private double added;

  private OutlineHull(double[] x, double[] y) {
    for (int i = 0; i < x.length; i++) {
      ring.add(new double[] {x[i], y[i]});
    }
  }

  /**
   * @param x corners counter-clockwise
   * @return {x, y} of the plainer outline, counter-clockwise
   */
  static double[][] of(double[] x, double[] y) {
    OutlineHull hull = new OutlineHull(x, y);
    if (x.length > FEW_CORNERS) {
      hull.simplify();
    }
    double[][] result = new double[2][hull.ring.size()];
    for (int i = 0; i < hull.ring.size(); i++) {
      result[0][i] = hull.ring.get(i)[0];
      result[1][i] = hull.ring.get(i)[1];
    }
    return result;
  }

  private void simplify() {
    double area = 0;
    for (int i = 0; i < ring.size(); i++) {
      double[] p = at(i);
      double[] q = at(i + 1);
      area += (p[0] * q[1] - q[0] * p[1]) / 2;
    }
    boolean changed = true;
    while (changed && ring.size() > FEW_CORNERS) {
      double budget = (ring.size() > MANY_CORNERS ? SOME_AREA : LITTLE_AREA) * area - added;
      changed = simplifyOnce(budget);
    }
  }

  private double[] at(int i) {
    int n = ring.size();
    return ring.get(((i % n) + n) % n);
  }

  /** The cheapest change within the budget that touches no other corner. */
  private boolean simplifyOnce(double budget) {
    int n = ring.size();
    double[] cost = new double[2 * n];
    for (int i = 0; i < n; i++) {
      double turn = turn(at(i - 1), at(i), at(i + 1));
      cost[i] = turn <= 0 ? -turn / 2 : Double.POSITIVE_INFINITY;
      double[] tip = turn > 0 ? tip(i) : null;
      cost[n + i] = tip == null ? Double.POSITIVE_INFINITY : turn(at(i), tip, at(i + 1)) / 2;
    }
    while (true) {
      int best = 0;
      for (int c = 1; c < cost.length; c++) {
        best = cost[c] < cost[best] ? c : best;
      }
      if (cost[best] > budget) {
        return false;
      }
      if (apply(best, n)) {
        added += cost[best];
        return true;
      }
      cost[best] = Double.POSITIVE_INFINITY;
    }
  }

  private boolean apply(int change, int n) {
    if (change < n) {
      // An inward corner: the straight line past it lies outside the part.
      if (holdsCorner(at(change - 1), at(change + 1), at(change))) {
        return false;
      }
      ring.remove(change);
      return true;
    }
    int i = change - n;
    double[] tip = tip(i);
    if (holdsCorner(at(i), tip, at(i + 1))) {
      return false;
    }
    // Two outward corners become one where the sides beside them meet.
    ring.set(i, tip);
    ring.remove((i + 1) % n);
    return true;
  }

  /** Where the sides before corner i and behind corner i + 1 meet; null when they do not. */
  private double[] tip(int i) {
    double[] a = at(i - 1);
    double[] b = at(i);
    double[] c = at(i + 1);
    double[] d = at(i + 2);
    if (turn(b, c, d) <= 0) {
      return null;
    }
    double ux = b[0] - a[0];
    double uy = b[1] - a[1];
    double vx = c[0] - d[0];
    double vy = c[1] - d[1];
    double cross = ux * vy - uy * vx;
    if (cross >= -1e-9 * Math.sqrt((ux * ux + uy * uy) * (vx * vx + vy * vy))) {
      return null;
    }
    double along = ((c[0] - b[0]) * vy - (c[1] - b[1]) * vx) / cross;
    return along < 0 ? null : new double[] {b[0] + along * ux, b[1] + along * uy};
  }

  private boolean holdsCorner(double[] a, double[] b, double[] c) {
    double sign = Math.signum(turn(a, b, c));
    for (double[] p : ring) {
      if (p != a
          && p != b
          && p != c
          && sign * turn(a, b, p) >= 0
          && sign * turn(b, c, p) >= 0
          && sign * turn(c, a, p) >= 0) {
        return true;
      }
    }
    return false;
  }

  private static double turn(double[] a, double[] b, double[] c) {
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  }
}
