package trammel.cutting.outlines;

import java.util.ArrayList;
import java.util.List;

/**
 * The outline of a part as it is drawn, cut into convex pieces for quick tests of distance; mm.
 *
 * <p>Triangles by clipping ears, then joined while they stay convex (Hertel and Mehlhorn 1983, from
 * memory).
 */
final class OutlineForm {
  final OutlinePart part;
  final ConvexPiece[] pieces;

  OutlineForm(OutlinePart part) {
    this.part = part;
    double[][] plain = OutlineRing.of(part);
    this.pieces = convexPieces(plain[0], plain[1]);
  }

  /** The pieces as they lie once the form is turned. */
  ConvexPiece[] turned(OutlineTurn turn) {
    ConvexPiece[] turned = new ConvexPiece[pieces.length];
    for (int i = 0; i < turned.length; i++) {
      turned[i] = pieces[i].turned(turn);
    }
    return turned;
  }

  private static ConvexPiece[] convexPieces(double[] x, double[] y) {
    List<int[]> polygons = triangles(x, y);
    boolean joined = true;
    while (joined) {
      joined = false;
      for (int a = 0; a < polygons.size() && !joined; a++) {
        for (int b = a + 1; b < polygons.size() && !joined; b++) {
          int[] both = join(polygons.get(a), polygons.get(b), x, y);
          if (both != null) {
            polygons.set(a, both);
            polygons.remove(b);
            joined = true;
          }
        }
      }
    }
    ConvexPiece[] pieces = new ConvexPiece[polygons.size()];
    for (int i = 0; i < pieces.length; i++) {
      int[] polygon = polygons.get(i);
      double[] px = new double[polygon.length];
      double[] py = new double[polygon.length];
      for (int j = 0; j < polygon.length; j++) {
        px[j] = x[polygon[j]];
        py[j] = y[polygon[j]];
      }
      pieces[i] = new ConvexPiece(px, py);
    }
    return pieces;
  }

  private static List<int[]> triangles(double[] x, double[] y) {
    List<Integer> ring = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      ring.add(i);
    }
    List<int[]> triangles = new ArrayList<>();
    while (ring.size() > 3) {
      int ear = ear(ring, x, y);
      int n = ring.size();
      int[] triangle = {
        ring.get((ear + n - 1) % n), ring.get(ear), ring.get((ear + 1) % n),
      };
      if (turn(triangle[0], triangle[1], triangle[2], x, y) > 0) {
        triangles.add(triangle);
      }
      ring.remove(ear);
    }
    if (turn(ring.get(0), ring.get(1), ring.get(2), x, y) > 0) {
      triangles.add(new int[] {ring.get(0), ring.get(1), ring.get(2)});
    }
    return triangles;
  }

  /** A corner that can be cut off: the fattest ear, or a corner on a straight side. */
  private static int ear(List<Integer> ring, double[] x, double[] y) {
    int n = ring.size();
    int best = -1;
    double bestShape = -1;
    for (int i = 0; i < n; i++) {
      int a = ring.get((i + n - 1) % n);
      int b = ring.get(i);
      int c = ring.get((i + 1) % n);
      double twice = turn(a, b, c, x, y);
      if (twice == 0) {
        return i;
      }
      if (twice < 0 || holdsAny(ring, a, b, c, x, y)) {
        continue;
      }
      double side = Math.hypot(x[c] - x[a], y[c] - y[a]);
      double shape = twice / (side * side + 1e-300);
      if (shape > bestShape) {
        bestShape = shape;
        best = i;
      }
    }
    return Math.max(best, 0);
  }

  private static boolean holdsAny(List<Integer> ring, int a, int b, int c, double[] x, double[] y) {
    for (int p : ring) {
      boolean corner = p == a || p == b || p == c;
      boolean same =
          (x[p] == x[a] && y[p] == y[a])
              || (x[p] == x[b] && y[p] == y[b])
              || (x[p] == x[c] && y[p] == y[c]);
      if (!corner
          && !same
          && turn(a, b, p, x, y) >= 0
          && turn(b, c, p, x, y) >= 0
          && turn(c, a, p, x, y) >= 0) {
        return true;
      }
    }
    return false;
  }

  private static double turn(int a, int b, int c, double[] x, double[] y) {
    return (x[b] - x[a]) * (y[c] - y[a]) - (y[b] - y[a]) * (x[c] - x[a]);
  }

  /** The two polygons as one along a common side, or null when that is not convex. */
  private static int[] join(int[] a, int[] b, double[] x, double[] y) {
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < b.length; j++) {
        if (a[i] == b[(j + 1) % b.length] && a[(i + 1) % a.length] == b[j]) {
          int[] both = new int[a.length + b.length - 2];
          int at = 0;
          for (int k = 1; k <= a.length; k++) {
            both[at++] = a[(i + k) % a.length];
          }
          for (int k = 2; k < b.length; k++) {
            both[at++] = b[(j + k) % b.length];
          }
          return isConvex(both, x, y) ? both : null;
        }
      }
    }
    return null;
  }

  private static boolean isConvex(int[] polygon, double[] x, double[] y) {
    int n = polygon.length;
    for (int i = 0; i < n; i++) {
      if (turn(polygon[i], polygon[(i + 1) % n], polygon[(i + 2) % n], x, y) < 0) {
        return false;
      }
    }
    return true;
  }
}
