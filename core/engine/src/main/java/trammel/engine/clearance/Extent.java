package trammel.engine.clearance;

import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/** The upright block round a shape: two shapes are at least as far apart as their blocks. */
final class Extent {
  private final double lowX;
  private final double lowY;
  private final double lowZ;
  private final double highX;
  private final double highY;
  private final double highZ;

  private Extent(Point3 one, Point3 other, double halfX, double halfY, double halfZ) {
    lowX = Math.min(one.xMm(), other.xMm()) - halfX;
    lowY = Math.min(one.yMm(), other.yMm()) - halfY;
    lowZ = Math.min(one.zMm(), other.zMm()) - halfZ;
    highX = Math.max(one.xMm(), other.xMm()) + halfX;
    highY = Math.max(one.yMm(), other.yMm()) + halfY;
    highZ = Math.max(one.zMm(), other.zMm()) + halfZ;
  }

  static Extent of(Shape shape) {
    if (shape instanceof Box box) {
      return ofBox(box);
    }
    if (shape instanceof Capsule capsule) {
      return round(capsule.from(), capsule.to(), capsule.radiusMm());
    }
    if (shape instanceof Cylinder cylinder) {
      return round(cylinder.from(), cylinder.to(), cylinder.radiusMm());
    }
    Sphere sphere = (Sphere) shape;
    return round(sphere.centre(), sphere.centre(), sphere.radiusMm());
  }

  private static Extent round(Point3 from, Point3 to, double radiusMm) {
    return new Extent(from, to, radiusMm, radiusMm, radiusMm);
  }

  private static Extent ofBox(Box box) {
    Vector3 a = box.lengthwise();
    Vector3 b = box.crosswise();
    Vector3 c = box.upright();
    double length = box.halfLengthMm();
    double width = box.halfWidthMm();
    double height = box.halfHeightMm();
    return new Extent(
        box.centre(),
        box.centre(),
        Math.abs(a.x()) * length + Math.abs(b.x()) * width + Math.abs(c.x()) * height,
        Math.abs(a.y()) * length + Math.abs(b.y()) * width + Math.abs(c.y()) * height,
        Math.abs(a.z()) * length + Math.abs(b.z()) * width + Math.abs(c.z()) * height);
  }

  /** Distance between the blocks (mm); 0 where they touch or overlap. */
  double apartMm(Extent other) {
    double x = Math.max(0, Math.max(other.lowX - highX, lowX - other.highX));
    double y = Math.max(0, Math.max(other.lowY - highY, lowY - other.highY));
    double z = Math.max(0, Math.max(other.lowZ - highZ, lowZ - other.highZ));
    return Math.sqrt(x * x + y * y + z * z);
  }
}
