package trammel.engine.clearance;

import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * A shape laid out as plain numbers for the inner loops: a core (a point or line, a block, or a
 * flat-ended cylinder) and a margin of equal thickness all round it.
 */
final class Placed {

  /** A link cut back further than its length keeps this much, so that it stays a body. */
  private static final double LEAST_REMAINDER_MM = 0.01;

  /** Squared sines of the angle between a direction and an axis. */
  private static final double NEARLY_AXIAL_SQUARED = 1e-8;

  private static final double AXIAL_SQUARED = 1e-30;

  private enum Core {
    LINE,
    BLOCK,
    CYLINDER
  }

  private Core core = Core.LINE;
  private double marginMm;
  private double rimMm;
  private double centreX;
  private double centreY;
  private double centreZ;

  // Half-size vectors: u along the line, cylinder or block; v and w of the block only.
  private double ux;
  private double uy;
  private double uz;
  private double vx;
  private double vy;
  private double vz;
  private double wx;
  private double wy;
  private double wz;

  static Placed of(Shape shape) {
    Placed placed = new Placed();
    if (shape instanceof Capsule capsule) {
      placed.setLine(capsule.from(), capsule.to());
      placed.marginMm = capsule.radiusMm();
    } else if (shape instanceof Cylinder cylinder) {
      placed.setLine(cylinder.from(), cylinder.to());
      placed.core = Core.CYLINDER;
      placed.rimMm = cylinder.radiusMm();
    } else if (shape instanceof Sphere sphere) {
      placed.setLine(sphere.centre(), sphere.centre());
      placed.marginMm = sphere.radiusMm();
    } else {
      placed.setBlock((Box) shape);
    }
    return placed;
  }

  private void setLine(Point3 from, Point3 to) {
    core = Core.LINE;
    ux = (to.xMm() - from.xMm()) / 2;
    uy = (to.yMm() - from.yMm()) / 2;
    uz = (to.zMm() - from.zMm()) / 2;
    centreX = from.xMm() + ux;
    centreY = from.yMm() + uy;
    centreZ = from.zMm() + uz;
  }

  private void setBlock(Box box) {
    core = Core.BLOCK;
    centreX = box.centre().xMm();
    centreY = box.centre().yMm();
    centreZ = box.centre().zMm();
    Vector3 along = box.lengthwise();
    ux = along.x() * box.halfLengthMm();
    uy = along.y() * box.halfLengthMm();
    uz = along.z() * box.halfLengthMm();
    Vector3 across = box.crosswise();
    vx = across.x() * box.halfWidthMm();
    vy = across.y() * box.halfWidthMm();
    vz = across.z() * box.halfWidthMm();
    Vector3 up = box.upright();
    wx = up.x() * box.halfHeightMm();
    wy = up.y() * box.halfHeightMm();
    wz = up.z() * box.halfHeightMm();
  }

  /** Becomes the line or cylinder {@code whole} with a length cut off at each end. */
  void setShortened(Placed whole, double cutFirstMm, double cutSecondMm) {
    core = whole.core;
    marginMm = whole.marginMm;
    rimMm = whole.rimMm;
    double halfMm = length(whole.ux, whole.uy, whole.uz);
    double leftMm = Math.max(2 * halfMm - cutFirstMm - cutSecondMm, LEAST_REMAINDER_MM);
    double shift = halfMm > 0 ? (cutFirstMm - cutSecondMm) / (2 * halfMm) : 0;
    double middle = Math.max(-1, Math.min(1, shift));
    double scale = halfMm > 0 ? leftMm / (2 * halfMm) : 0;
    centreX = whole.centreX + middle * whole.ux;
    centreY = whole.centreY + middle * whole.uy;
    centreZ = whole.centreZ + middle * whole.uz;
    ux = whole.ux * scale;
    uy = whole.uy * scale;
    uz = whole.uz * scale;
  }

  /** Furthest that any point of the core can have moved between two places of the same body, mm. */
  static double greatestMoveMm(Placed before, Placed after) {
    return length(
            after.centreX - before.centreX,
            after.centreY - before.centreY,
            after.centreZ - before.centreZ)
        + length(after.ux - before.ux, after.uy - before.uy, after.uz - before.uz)
        + length(after.vx - before.vx, after.vy - before.vy, after.vz - before.vz)
        + length(after.wx - before.wx, after.wy - before.wy, after.wz - before.wz);
  }

  private static double length(double x, double y, double z) {
    return Math.sqrt(x * x + y * y + z * z);
  }

  boolean isLine() {
    return core == Core.LINE;
  }

  double marginMm() {
    return marginMm;
  }

  double centreX() {
    return centreX;
  }

  double centreY() {
    return centreY;
  }

  double centreZ() {
    return centreZ;
  }

  double alongX() {
    return ux;
  }

  double alongY() {
    return uy;
  }

  double alongZ() {
    return uz;
  }

  /** Writes the core's furthest point in direction (dx, dy, dz), of any length, from out[at] on. */
  void furthest(double dx, double dy, double dz, double[] out, int at) {
    double alongU = dx * ux + dy * uy + dz * uz;
    double signU = alongU < 0 ? -1 : 1;
    double x = centreX + signU * ux;
    double y = centreY + signU * uy;
    double z = centreZ + signU * uz;
    if (core == Core.BLOCK) {
      double signV = dx * vx + dy * vy + dz * vz < 0 ? -1 : 1;
      double signW = dx * wx + dy * wy + dz * wz < 0 ? -1 : 1;
      x += signV * vx + signW * wx;
      y += signV * vy + signW * wy;
      z += signV * vz + signW * wz;
    } else if (core == Core.CYLINDER) {
      double axisSquare = ux * ux + uy * uy + uz * uz;
      double share = alongU / axisSquare;
      double px = dx - share * ux;
      double py = dy - share * uy;
      double pz = dz - share * uz;
      double square = px * px + py * py + pz * pz;
      double whole = dx * dx + dy * dy + dz * dz;
      if (square < NEARLY_AXIAL_SQUARED * whole) {
        // Rounding has left some of the axis in the remainder, which scaling up would show.
        double rest = (px * ux + py * uy + pz * uz) / axisSquare;
        px -= rest * ux;
        py -= rest * uy;
        pz -= rest * uz;
        square = px * px + py * py + pz * pz;
      }
      // Straight along the axis every point of the flat end is as far: its centre will do.
      if (square > AXIAL_SQUARED * whole) {
        double reach = rimMm / Math.sqrt(square);
        x += reach * px;
        y += reach * py;
        z += reach * pz;
      }
    }
    out[at] = x;
    out[at + 1] = y;
    out[at + 2] = z;
  }
}
