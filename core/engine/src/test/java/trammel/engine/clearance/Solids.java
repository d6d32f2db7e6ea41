package trammel.engine.clearance;

import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/** What the tests know of the shapes, straight from their definitions. */
final class Solids {

  private Solids() {}

  /** Distance in mm from a point to the nearest point of a shape; 0 inside. */
  static double distanceMm(Shape shape, Point3 point) {
    return nearestTo(shape, point).distanceMm(point);
  }

  /** Point of the shape nearest to a given point. */
  static Point3 nearestTo(Shape shape, Point3 point) {
    if (shape instanceof Sphere sphere) {
      return pulled(sphere.centre(), point, sphere.radiusMm());
    }
    if (shape instanceof Capsule capsule) {
      Vector3 line = capsule.from().to(capsule.to());
      double square = line.dot(line);
      double share = square > 0 ? capsule.from().to(point).dot(line) / square : 0;
      Point3 onLine = capsule.from().plus(line.scaled(Math.max(0, Math.min(1, share))));
      return pulled(onLine, point, capsule.radiusMm());
    }
    if (shape instanceof Cylinder cylinder) {
      Vector3 axis = cylinder.from().to(cylinder.to()).normalized();
      double along = cylinder.from().to(point).dot(axis);
      Vector3 outward = cylinder.from().to(point).minus(axis.scaled(along));
      double share = Math.min(1, cylinder.radiusMm() / Math.max(outward.norm(), 1e-300));
      double alongInside = Math.max(0, Math.min(cylinder.lengthMm(), along));
      return cylinder.from().plus(axis.scaled(alongInside)).plus(outward.scaled(share));
    }
    Box box = (Box) shape;
    Vector3 out = box.centre().to(point);
    return box.centre()
        .plus(box.lengthwise().scaled(clamp(out.dot(box.lengthwise()), box.halfLengthMm())))
        .plus(box.crosswise().scaled(clamp(out.dot(box.crosswise()), box.halfWidthMm())))
        .plus(box.upright().scaled(clamp(out.dot(box.upright()), box.halfHeightMm())));
  }

  /** How far a shape reaches in a unit direction, mm from the origin. */
  static double reachMm(Shape shape, Vector3 direction) {
    if (shape instanceof Sphere sphere) {
      return dot(direction, sphere.centre()) + sphere.radiusMm();
    }
    if (shape instanceof Capsule capsule) {
      return Math.max(dot(direction, capsule.from()), dot(direction, capsule.to()))
          + capsule.radiusMm();
    }
    if (shape instanceof Cylinder cylinder) {
      Vector3 axis = cylinder.from().to(cylinder.to()).normalized();
      return Math.max(dot(direction, cylinder.from()), dot(direction, cylinder.to()))
          + cylinder.radiusMm() * axis.cross(direction).norm();
    }
    Box box = (Box) shape;
    return dot(direction, box.centre())
        + box.halfLengthMm() * Math.abs(direction.dot(box.lengthwise()))
        + box.halfWidthMm() * Math.abs(direction.dot(box.crosswise()))
        + box.halfHeightMm() * Math.abs(direction.dot(box.upright()));
  }

  private static Point3 pulled(Point3 from, Point3 towards, double atMostMm) {
    double distanceMm = from.distanceMm(towards);
    return distanceMm <= atMostMm
        ? towards
        : from.plus(from.to(towards).scaled(atMostMm / distanceMm));
  }

  private static double clamp(double value, double limit) {
    return Math.max(-limit, Math.min(limit, value));
  }

  private static double dot(Vector3 direction, Point3 point) {
    return direction.x() * point.xMm() + direction.y() * point.yMm() + direction.z() * point.zMm();
  }
}
