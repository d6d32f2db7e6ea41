package trammel.assembly.view;

import java.util.Optional;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/** A triangle as the eye sees it: x to the right, y up, z towards the eye (mm). */
final class Facet {
  private static final double NO_AREA_MM2 = 1e-9;
  private static final double PARALLEL = 1e-12;

  /** What is this little behind a facet lies on it (mm). */
  private static final double ON_IT_MM = 0.05;

  private final Point3 a;
  private final Point3 b;
  private final Point3 c;
  private final Vector3 normal;
  private final double leftMm;
  private final double rightMm;
  private final double bottomMm;
  private final double topMm;
  private final double nearestMm;

  private Facet(Point3 a, Point3 b, Point3 c, Vector3 normal) {
    this.a = a;
    this.b = b;
    this.c = c;
    this.normal = normal;
    leftMm = Math.min(a.xMm(), Math.min(b.xMm(), c.xMm()));
    rightMm = Math.max(a.xMm(), Math.max(b.xMm(), c.xMm()));
    bottomMm = Math.min(a.yMm(), Math.min(b.yMm(), c.yMm()));
    topMm = Math.max(a.yMm(), Math.max(b.yMm(), c.yMm()));
    nearestMm = Math.max(a.zMm(), Math.max(b.zMm(), c.zMm()));
  }

  /** The triangle, its corners anticlockwise from outside; empty if it has no area. */
  static Optional<Facet> of(Point3 a, Point3 b, Point3 c) {
    Vector3 across = a.to(b).cross(a.to(c));
    double twiceAreaMm2 = across.norm();
    return twiceAreaMm2 < NO_AREA_MM2
        ? Optional.empty()
        : Optional.of(new Facet(a, b, c, across.scaled(1 / twiceAreaMm2)));
  }

  Vector3 normal() {
    return normal;
  }

  double leftMm() {
    return leftMm;
  }

  double rightMm() {
    return rightMm;
  }

  double bottomMm() {
    return bottomMm;
  }

  double topMm() {
    return topMm;
  }

  boolean facesTheEye() {
    return normal.z() > PARALLEL;
  }

  /** How far its corner next to the eye stands towards the eye (mm). */
  double nearestMm() {
    return nearestMm;
  }

  /**
   * The box about an edge.
   *
   * @param furthestMm how far its end away from the eye stands towards the eye (mm)
   */
  record Box(double leftMm, double rightMm, double bottomMm, double topMm, double furthestMm) {
    static Box round(Point3 from, Point3 to) {
      return new Box(
          Math.min(from.xMm(), to.xMm()),
          Math.max(from.xMm(), to.xMm()),
          Math.min(from.yMm(), to.yMm()),
          Math.max(from.yMm(), to.yMm()),
          Math.min(from.zMm(), to.zMm()));
    }
  }

  /** False if all of an edge stands before it or on it, so that it hides nothing of it. */
  boolean isBefore(Box edge) {
    return nearestMm > edge.furthestMm + ON_IT_MM;
  }

  /** False if it hides nothing of an edge since it lies beside it in the picture. */
  boolean meets(Box edge) {
    return leftMm < edge.rightMm
        && rightMm > edge.leftMm
        && bottomMm < edge.topMm
        && topMm > edge.bottomMm;
  }

  /**
   * Cuts a span of an edge, from and to as shares of its length, down to where the edge lies within
   * this outline and behind this plane. It is empty if from is not before to.
   */
  void keepHidden(Point3 from, Point3 to, double[] span) {
    keep(span, leftOf(from, a, b), leftOf(to, a, b));
    keep(span, leftOf(from, b, c), leftOf(to, b, c));
    keep(span, leftOf(from, c, a), leftOf(to, c, a));
    keep(span, behindMm(from) - ON_IT_MM, behindMm(to) - ON_IT_MM);
  }

  /** How far a point is behind this plane, along the line of sight (mm). */
  private double behindMm(Point3 point) {
    double rise = normal.x() * (point.xMm() - a.xMm()) + normal.y() * (point.yMm() - a.yMm());
    return a.zMm() - rise / normal.z() - point.zMm();
  }

  private static double leftOf(Point3 point, Point3 from, Point3 to) {
    return (to.xMm() - from.xMm()) * (point.yMm() - from.yMm())
        - (to.yMm() - from.yMm()) * (point.xMm() - from.xMm());
  }

  /** Keeps of a span what has a value above 0 that runs straight from one end to the other. */
  private static void keep(double[] span, double atStart, double atEnd) {
    double rise = atEnd - atStart;
    if (Math.abs(rise) < PARALLEL) {
      span[1] = atStart > 0 ? span[1] : -1;
    } else if (rise > 0) {
      span[0] = Math.max(span[0], -atStart / rise);
    } else {
      span[1] = Math.min(span[1], -atStart / rise);
    }
  }
}
