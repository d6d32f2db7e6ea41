package trammel.bin;

import java.util.ArrayList;
import java.util.List;
import trammel.assembly.Mesh;
import trammel.assembly.PlacedPart;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/** The surface of a placed part, for distances to it and for what lies inside. */
final class Surface {
  private final List<Point3[]> triangles = new ArrayList<>();
  private final double[] least = {1e9, 1e9, 1e9};
  private final double[] most = {-1e9, -1e9, -1e9};

  Surface(PlacedPart part) {
    Mesh mesh = part.solid().mesh().placed(part.place());
    for (Mesh.Face face : mesh.faces()) {
      triangles.add(
          new Point3[] {
            mesh.corners().get(face.a()), mesh.corners().get(face.b()), mesh.corners().get(face.c())
          });
    }
    for (Point3 corner : mesh.corners()) {
      double[] at = {corner.xMm(), corner.yMm(), corner.zMm()};
      for (int i = 0; i < 3; i++) {
        least[i] = Math.min(least[i], at[i]);
        most[i] = Math.max(most[i], at[i]);
      }
    }
  }

  /** Whether the boxes round two surfaces overlap by more than a bound. */
  boolean near(Surface other, double boundMm) {
    for (int i = 0; i < 3; i++) {
      if (Math.min(most[i], other.most[i]) - Math.max(least[i], other.least[i]) < boundMm) {
        return false;
      }
    }
    return true;
  }

  private boolean boxMeets(Point3[] t) {
    return Math.max(t[0].xMm(), Math.max(t[1].xMm(), t[2].xMm())) >= least[0]
        && Math.min(t[0].xMm(), Math.min(t[1].xMm(), t[2].xMm())) <= most[0]
        && Math.max(t[0].yMm(), Math.max(t[1].yMm(), t[2].yMm())) >= least[1]
        && Math.min(t[0].yMm(), Math.min(t[1].yMm(), t[2].yMm())) <= most[1]
        && Math.max(t[0].zMm(), Math.max(t[1].zMm(), t[2].zMm())) >= least[2]
        && Math.min(t[0].zMm(), Math.min(t[1].zMm(), t[2].zMm())) <= most[2];
  }

  private boolean boxHolds(Point3 point) {
    double[] at = {point.xMm(), point.yMm(), point.zMm()};
    for (int i = 0; i < 3; i++) {
      if (at[i] < least[i] || at[i] > most[i]) {
        return false;
      }
    }
    return true;
  }

  /** How deep this surface's own points lie inside another at most (mm); 0 for outside. */
  double depthIn(Surface other, double spacingMm) {
    double deepestMm = 0;
    for (Point3[] t : triangles) {
      if (!other.boxMeets(t)) {
        continue;
      }
      double longestMm =
          Math.max(t[0].distanceMm(t[1]), Math.max(t[1].distanceMm(t[2]), t[2].distanceMm(t[0])));
      int n = (int) Math.ceil(longestMm / spacingMm);
      for (int i = 0; i <= n; i++) {
        for (int j = 0; i + j <= n; j++) {
          Point3 point = between(t, (double) i / n, (double) j / n);
          if (other.boxHolds(point) && other.holds(point)) {
            deepestMm = Math.max(deepestMm, other.distanceMm(point));
          }
        }
      }
    }
    return deepestMm;
  }

  private static Point3 between(Point3[] t, double u, double v) {
    return t[0].plus(t[0].to(t[1]).scaled(u)).plus(t[0].to(t[2]).scaled(v));
  }

  /** Odd crossings of a ray in a direction that meets no edge by chance. */
  boolean holds(Point3 point) {
    Vector3 ray = new Vector3(0.5773, 0.5931, 0.5610);
    int crossings = 0;
    for (Point3[] t : triangles) {
      Vector3 one = t[0].to(t[1]);
      Vector3 two = t[0].to(t[2]);
      Vector3 across = ray.cross(two);
      double determinant = one.dot(across);
      if (Math.abs(determinant) < 1e-12) {
        continue;
      }
      Vector3 from = t[0].to(point);
      double u = from.dot(across) / determinant;
      Vector3 side = from.cross(one);
      double v = ray.dot(side) / determinant;
      if (u >= 0 && v >= 0 && u + v <= 1 && two.dot(side) / determinant > 0) {
        crossings++;
      }
    }
    return crossings % 2 == 1;
  }

  /** Least distance of a point from the surface (mm). */
  double distanceMm(Point3 point) {
    double least = Double.POSITIVE_INFINITY;
    for (Point3[] t : triangles) {
      least = Math.min(least, distanceMm(point, t));
    }
    return least;
  }

  private static double distanceMm(Point3 p, Point3[] t) {
    Vector3 normal = t[0].to(t[1]).cross(t[0].to(t[2]));
    double length = normal.norm();
    if (length > 1e-12) {
      Vector3 unit = normal.scaled(1 / length);
      double off = t[0].to(p).dot(unit);
      Point3 foot = p.plus(unit.scaled(-off));
      boolean inside = true;
      for (int i = 0; i < 3; i++) {
        Point3 a = t[i];
        Point3 b = t[(i + 1) % 3];
        inside &= a.to(b).cross(a.to(foot)).dot(unit) >= 0;
      }
      if (inside) {
        return Math.abs(off);
      }
    }
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 3; i++) {
      Point3 a = t[i];
      Vector3 edge = a.to(t[(i + 1) % 3]);
      double share = edge.dot(edge) > 0 ? a.to(p).dot(edge) / edge.dot(edge) : 0;
      Point3 foot = a.plus(edge.scaled(Math.max(0, Math.min(1, share))));
      least = Math.min(least, foot.distanceMm(p));
    }
    return least;
  }
}
